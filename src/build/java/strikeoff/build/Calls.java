package strikeoff.build;

import java.util.List;
import java.util.Optional;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Turns the calls of a class that the JVM links by a bootstrap method into calls of plain methods
 * that take and return the same. What is not known to mean the same stays as it is.
 */
final class Calls {

  static final String COMPARED = "strikeoff/build/Compared";

  private static final Handle LAMBDA =
      bootstrap(
          "java/lang/invoke/LambdaMetafactory",
          "metafactory",
          "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;"
              + "Ljava/lang/invoke/MethodType;Ljava/lang/invoke/MethodType;"
              + "Ljava/lang/invoke/MethodHandle;Ljava/lang/invoke/MethodType;)"
              + "Ljava/lang/invoke/CallSite;");

  private static final Handle MARKED_LAMBDA =
      bootstrap(
          "java/lang/invoke/LambdaMetafactory",
          "altMetafactory",
          "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;"
              + "Ljava/lang/invoke/MethodType;[Ljava/lang/Object;)Ljava/lang/invoke/CallSite;");

  private static final Handle JOINED =
      bootstrap(
          "java/lang/invoke/StringConcatFactory",
          "makeConcatWithConstants",
          "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;"
              + "Ljava/lang/invoke/MethodType;Ljava/lang/String;[Ljava/lang/Object;)"
              + "Ljava/lang/invoke/CallSite;");

  private static final Handle RECORD =
      bootstrap(
          "java/lang/runtime/ObjectMethods",
          "bootstrap",
          "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;"
              + "Ljava/lang/invoke/TypeDescriptor;Ljava/lang/Class;Ljava/lang/String;"
              + "[Ljava/lang/invoke/MethodHandle;)Ljava/lang/Object;");

  private final ClassNode in;
  private final Lambdas lambdas;
  private final Hierarchy types;
  private int methods;

  /**
   * @param in the class, which changes
   * @param lambdas of its nest
   */
  Calls(ClassNode in, Lambdas lambdas, Hierarchy types) {
    this.in = in;
    this.lambdas = lambdas;
    this.types = types;
  }

  private static Handle bootstrap(String owner, String name, String descriptor) {
    return new Handle(Opcodes.H_INVOKESTATIC, owner, name, descriptor, false);
  }

  /** True if anything changed. */
  boolean rewrite() {
    boolean changes = false;
    for (MethodNode method : List.copyOf(in.methods)) {
      // What javac adds for lambdas to be read from a stream holds each of them once more.
      if (method.name.equals("$deserializeLambda$")) {
        continue;
      }
      for (AbstractInsnNode each : method.instructions.toArray()) {
        Optional<MethodInsnNode> plain =
            each instanceof InvokeDynamicInsnNode call
                ? plain(call)
                : each instanceof MethodInsnNode call ? compared(call) : Optional.empty();
        plain.ifPresent(p -> method.instructions.set(each, p));
        changes |= plain.isPresent();
      }
    }
    return changes;
  }

  /** Comparators that the JDK makes of lambdas are made by {@link Compared}. */
  private Optional<MethodInsnNode> compared(MethodInsnNode call) {
    boolean comparator = call.owner.equals("java/util/Comparator");
    boolean entry = call.owner.equals("java/util/Map$Entry");
    boolean made =
        call.getOpcode() == Opcodes.INVOKESTATIC
            && (comparator || entry)
            && call.name.startsWith("comparing");
    boolean further = comparator && call.name.startsWith("thenComparing");
    if (in.name.equals(COMPARED) || !made && !further) {
      return Optional.empty();
    }
    String descriptor = made ? call.desc : "(Ljava/util/Comparator;" + call.desc.substring(1);
    return Optional.of(
        new MethodInsnNode(Opcodes.INVOKESTATIC, COMPARED, call.name, descriptor, false));
  }

  private Optional<MethodInsnNode> plain(InvokeDynamicInsnNode call) {
    if (call.bsm.equals(LAMBDA) || call.bsm.equals(MARKED_LAMBDA)) {
      return Lambda.of(call, in.name, types).map(lambda -> lambdas.made(lambda));
    }
    if (call.bsm.equals(JOINED)) {
      return Optional.of(added(Joined.method("joined$" + methods++, call)));
    }
    if (call.bsm.equals(RECORD)) {
      return Optional.of(added(RecordMethod.method("record$" + call.name, simpleName(), call)));
    }
    return Optional.empty();
  }

  /** As {@code Class.getSimpleName} has it: a record in a method is called by a number as well. */
  private String simpleName() {
    return in.innerClasses.stream()
        .filter(inner -> inner.name.equals(in.name) && inner.innerName != null)
        .map(inner -> inner.innerName)
        .findFirst()
        .orElseGet(() -> in.name.substring(in.name.lastIndexOf('/') + 1));
  }

  private MethodInsnNode added(MethodNode method) {
    in.methods.add(method);
    boolean isInterface = (in.access & Opcodes.ACC_INTERFACE) != 0;
    return new MethodInsnNode(Opcodes.INVOKESTATIC, in.name, method.name, method.desc, isInterface);
  }
}

package strikeoff.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import strikeoff.build.Hierarchy.Declared;

/**
 * A lambda or a method reference, for which {@code LambdaMetafactory} would build a class at a
 * start.
 *
 * @param factory takes what is captured and returns the interface
 * @param name of the interface's method
 * @param erased what that method takes and returns
 * @param actual the same for this use of the interface
 * @param body the method behind it
 * @param markers interfaces without methods that it is of as well
 */
record Lambda(
    Type factory, String name, Type erased, Type actual, Handle body, List<String> markers) {

  /** Flags of {@code LambdaMetafactory.altMetafactory}. */
  private static final int SERIALIZABLE = 1;

  private static final int MARKERS = 2;
  private static final int BRIDGES = 4;

  /** Empty where a class of its own may not call the body. */
  static Optional<Lambda> of(InvokeDynamicInsnNode call, String in, Hierarchy types) {
    Lambda lambda =
        new Lambda(
            Type.getMethodType(call.desc),
            call.name,
            (Type) call.bsmArgs[0],
            (Type) call.bsmArgs[2],
            (Handle) call.bsmArgs[1],
            markers(call));
    return bridges(call) == 0 && callable(lambda.body, in, types)
        ? Optional.of(lambda)
        : Optional.empty();
  }

  /** How many more forms of its method it has; javac writes that there are none. */
  private static int bridges(InvokeDynamicInsnNode call) {
    int flags = flags(call);
    int after = (flags & MARKERS) == 0 ? 4 : 5 + (Integer) call.bsmArgs[4];
    return (flags & BRIDGES) == 0 ? 0 : (Integer) call.bsmArgs[after];
  }

  private static int flags(InvokeDynamicInsnNode call) {
    return call.bsmArgs.length > 3 ? (Integer) call.bsmArgs[3] : 0;
  }

  /** What can be written to a stream still can, by its fields and not by its name in the source. */
  private static List<String> markers(InvokeDynamicInsnNode call) {
    List<String> markers = new ArrayList<>();
    if ((flags(call) & SERIALIZABLE) != 0) {
      markers.add("java/io/Serializable");
    }
    if ((flags(call) & MARKERS) != 0) {
      for (int i = 0; i < (Integer) call.bsmArgs[4]; i++) {
        markers.add(((Type) call.bsmArgs[5 + i]).getInternalName());
      }
    }
    return markers;
  }

  private static boolean callable(Handle body, String in, Hierarchy types) {
    if (body.getOwner().equals(in)) {
      // What the class inherits it may call in ways that others may not.
      return types
          .method(in, body.getName(), body.getDesc())
          .filter(declared -> declared.type().name.equals(in))
          .isPresent();
    }
    if (body.getTag() == Opcodes.H_INVOKESPECIAL || body.getOwner().startsWith("[")) {
      return false;
    }
    Optional<ClassNode> owner = types.type(body.getOwner());
    Optional<Declared> declared = types.method(body.getOwner(), body.getName(), body.getDesc());
    return owner.isPresent()
        && isPublic(owner.get().access)
        && declared.isPresent()
        && isPublic(declared.get().access());
  }

  private static boolean isPublic(int access) {
    return (access & Opcodes.ACC_PUBLIC) != 0;
  }

  /** What is captured, in its order. */
  Type[] captured() {
    return factory.getArgumentTypes();
  }

  /** The interface, and the one of its methods that is meant. */
  Shape shape() {
    List<String> types = new ArrayList<>(List.of(factory.getReturnType().getInternalName()));
    markers.stream().filter(marker -> !types.contains(marker)).forEach(types::add);
    return new Shape(types, name, erased);
  }

  /**
   * What lambdas must have in common to be of one class.
   *
   * @param types interfaces that it implements
   */
  record Shape(List<String> types, String method, Type erased) {}

  /**
   * Writes the call of the body, from what {@code this} and the method's own parameters hold.
   *
   * @param from writes the code that loads a captured value, by its number
   */
  void call(MethodVisitor code, IntConsumer from) {
    boolean makes = body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
    if (makes) {
      code.visitTypeInsn(Opcodes.NEW, body.getOwner());
      code.visitInsn(Opcodes.DUP);
    }
    List<Type> taken = taken();
    Type[] captured = captured();
    for (int i = 0; i < captured.length; i++) {
      from.accept(i);
      Shapes.convert(code, captured[i], taken.get(i));
    }
    Type[] given = erased.getArgumentTypes();
    Type[] really = actual.getArgumentTypes();
    int local = 1;
    for (int i = 0; i < given.length; i++) {
      code.visitVarInsn(given[i].getOpcode(Opcodes.ILOAD), local);
      local += given[i].getSize();
      Shapes.convert(code, given[i], really[i]);
      Shapes.convert(code, really[i], taken.get(captured.length + i));
    }
    code.visitMethodInsn(
        opcode(), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
    Type returned =
        makes ? Type.getObjectType(body.getOwner()) : Type.getReturnType(body.getDesc());
    Shapes.convert(code, returned, erased.getReturnType());
    code.visitInsn(erased.getReturnType().getOpcode(Opcodes.IRETURN));
  }

  /** What the body takes, with the object that it is called on. */
  private List<Type> taken() {
    List<Type> taken = new ArrayList<>();
    if (body.getTag() != Opcodes.H_INVOKESTATIC && body.getTag() != Opcodes.H_NEWINVOKESPECIAL) {
      taken.add(Type.getObjectType(body.getOwner()));
    }
    taken.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
    return taken;
  }

  private int opcode() {
    return switch (body.getTag()) {
      case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
      case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
      // A private method of the nest is called like any other.
      default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
    };
  }
}

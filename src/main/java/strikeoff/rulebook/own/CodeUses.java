package strikeoff.rulebook.own;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Gathers what a compiled class names: classes, and the methods and fields that it uses of them.
 */
final class CodeUses extends ClassVisitor {

  /** What the compiler writes for lambdas and for texts that are put together. */
  private static final Set<String> BOOTSTRAPS =
      Set.of("java/lang/invoke/LambdaMetafactory", "java/lang/invoke/StringConcatFactory");

  private final Set<CodeUse> uses = new TreeSet<>();

  private CodeUses() {
    super(Opcodes.ASM9);
  }

  static Set<CodeUse> of(Collection<byte[]> classes) {
    CodeUses all = new CodeUses();
    for (byte[] one : classes) {
      new ClassReader(one).accept(all, ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
    }
    return all.uses;
  }

  private void type(Type type) {
    switch (type.getSort()) {
      case Type.METHOD -> {
        for (Type argument : type.getArgumentTypes()) {
          type(argument);
        }
        type(type.getReturnType());
      }
      case Type.ARRAY -> type(type.getElementType());
      case Type.OBJECT -> uses.add(new CodeUse(type.getClassName(), ""));
      default -> {} // numbers
    }
  }

  private void member(String owner, String name, String descriptor) {
    Type type = Type.getObjectType(owner);
    if (type.getSort() == Type.OBJECT) {
      uses.add(new CodeUse(type.getClassName(), name));
    } else {
      type(type);
    }
    type(Type.getType(descriptor));
  }

  private void constant(Object value) {
    if (value instanceof Type type) {
      type(type);
    } else if (value instanceof Handle handle) {
      member(handle.getOwner(), handle.getName(), handle.getDesc());
    } else if (value instanceof ConstantDynamic dynamic) {
      constant(dynamic.getBootstrapMethod());
    }
  }

  @Override
  public void visit(
      int version, int access, String name, String signature, String above, String[] interfaces) {
    type(Type.getObjectType(above));
    for (String one : interfaces) {
      type(Type.getObjectType(one));
    }
  }

  @Override
  public FieldVisitor visitField(
      int access, String name, String descriptor, String signature, Object value) {
    type(Type.getType(descriptor));
    return null;
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String name, String descriptor, String signature, String[] exceptions) {
    type(Type.getType(descriptor));
    return new InMethod();
  }

  private final class InMethod extends MethodVisitor {

    InMethod() {
      super(Opcodes.ASM9);
    }

    @Override
    public void visitMethodInsn(
        int opcode, String owner, String name, String descriptor, boolean isInterface) {
      member(owner, name, descriptor);
    }

    @Override
    public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
      member(owner, name, descriptor);
    }

    @Override
    public void visitTypeInsn(int opcode, String type) {
      type(Type.getObjectType(type));
    }

    @Override
    public void visitMultiANewArrayInsn(String descriptor, int dimensions) {
      type(Type.getType(descriptor));
    }

    @Override
    public void visitTryCatchBlock(Label start, Label end, Label handler, String type) {
      if (type != null) {
        type(Type.getObjectType(type));
      }
    }

    @Override
    public void visitLdcInsn(Object value) {
      constant(value);
    }

    @Override
    public void visitInvokeDynamicInsn(
        String name, String descriptor, Handle bootstrap, Object... arguments) {
      if (!BOOTSTRAPS.contains(bootstrap.getOwner())) {
        constant(bootstrap);
      }
      type(Type.getType(descriptor));
      for (Object argument : arguments) {
        constant(argument);
      }
    }
  }
}

package strikeoff.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import strikeoff.build.Hierarchy.Declared;

/**
 * A lambda or a method reference, as a class that {@code LambdaMetafactory} would build at a start.
 *
 * @param factory takes what is captured and returns the interface
 * @param name of the interface's method
 * @param erased what that method takes and returns
 * @param actual the same for this use of the interface
 * @param body the method behind it
 */
record Lambda(Type factory, String name, Type erased, Type actual, Handle body) {

  /** The method that makes one; without anything captured it returns the same one each time. */
  static final String MAKE = "make";

  private static final String ONLY = "ONLY";

  /** Empty where a class of its own may not call the body. */
  static Optional<Lambda> of(InvokeDynamicInsnNode call, String in, Hierarchy types) {
    Lambda lambda =
        new Lambda(
            Type.getMethodType(call.desc),
            call.name,
            (Type) call.bsmArgs[0],
            (Type) call.bsmArgs[2],
            (Handle) call.bsmArgs[1]);
    return callable(lambda.body, in, types) ? Optional.of(lambda) : Optional.empty();
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

  /** The class file, as a member of the host's nest, so that it may call what is private there. */
  byte[] written(String type, String host) {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    writer.visit(
        Opcodes.V17,
        Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC,
        type,
        null,
        "java/lang/Object",
        new String[] {factory.getReturnType().getInternalName()});
    writer.visitNestHost(host);
    Type[] captured = factory.getArgumentTypes();
    for (int i = 0; i < captured.length; i++) {
      writer.visitField(
          Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL,
          "c" + i,
          captured[i].getDescriptor(),
          null,
          null);
    }
    constructor(writer, type, captured);
    factory(writer, type, captured);
    method(writer, type, captured);
    writer.visitEnd();
    return writer.toByteArray();
  }

  private static void constructor(ClassWriter writer, String type, Type[] captured) {
    MethodVisitor code =
        writer.visitMethod(
            Opcodes.ACC_PRIVATE,
            "<init>",
            Type.getMethodDescriptor(Type.VOID_TYPE, captured),
            null,
            null);
    code.visitCode();
    code.visitVarInsn(Opcodes.ALOAD, 0);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
    int local = 1;
    for (int i = 0; i < captured.length; i++) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitVarInsn(captured[i].getOpcode(Opcodes.ILOAD), local);
      code.visitFieldInsn(Opcodes.PUTFIELD, type, "c" + i, captured[i].getDescriptor());
      local += captured[i].getSize();
    }
    code.visitInsn(Opcodes.RETURN);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private void factory(ClassWriter writer, String type, Type[] captured) {
    if (captured.length == 0) {
      writer.visitField(
          Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL,
          ONLY,
          "L" + type + ";",
          null,
          null);
      MethodVisitor start = writer.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
      start.visitCode();
      made(start, type, captured);
      start.visitFieldInsn(Opcodes.PUTSTATIC, type, ONLY, "L" + type + ";");
      start.visitInsn(Opcodes.RETURN);
      start.visitMaxs(0, 0);
      start.visitEnd();
    }
    MethodVisitor code =
        writer.visitMethod(Opcodes.ACC_STATIC, MAKE, factory.getDescriptor(), null, null);
    code.visitCode();
    if (captured.length == 0) {
      code.visitFieldInsn(Opcodes.GETSTATIC, type, ONLY, "L" + type + ";");
    } else {
      made(code, type, captured);
    }
    code.visitInsn(Opcodes.ARETURN);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private static void made(MethodVisitor code, String type, Type[] captured) {
    code.visitTypeInsn(Opcodes.NEW, type);
    code.visitInsn(Opcodes.DUP);
    int local = 0;
    for (Type each : captured) {
      code.visitVarInsn(each.getOpcode(Opcodes.ILOAD), local);
      local += each.getSize();
    }
    code.visitMethodInsn(
        Opcodes.INVOKESPECIAL,
        type,
        "<init>",
        Type.getMethodDescriptor(Type.VOID_TYPE, captured),
        false);
  }

  private void method(ClassWriter writer, String type, Type[] captured) {
    MethodVisitor code =
        writer.visitMethod(Opcodes.ACC_PUBLIC, name, erased.getDescriptor(), null, null);
    code.visitCode();
    boolean makes = body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
    if (makes) {
      code.visitTypeInsn(Opcodes.NEW, body.getOwner());
      code.visitInsn(Opcodes.DUP);
    }
    List<Type> taken = taken();
    for (int i = 0; i < captured.length; i++) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitFieldInsn(Opcodes.GETFIELD, type, "c" + i, captured[i].getDescriptor());
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
    code.visitMaxs(0, 0);
    code.visitEnd();
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

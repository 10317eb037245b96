package strikeoff.build;

import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Joins strings with a builder, as {@code StringConcatFactory} would. */
final class Joined {

  private static final char ARGUMENT = '\1';
  private static final char CONSTANT = '\2';
  private static final String BUILDER = "java/lang/StringBuilder";

  private Joined() {}

  static MethodNode method(String name, InvokeDynamicInsnNode call) {
    MethodNode method = Shapes.helper(name, call.desc);
    Type[] arguments = Type.getArgumentTypes(call.desc);
    method.visitTypeInsn(Opcodes.NEW, BUILDER);
    method.visitInsn(Opcodes.DUP);
    method.visitMethodInsn(Opcodes.INVOKESPECIAL, BUILDER, "<init>", "()V", false);
    String recipe = (String) call.bsmArgs[0];
    StringBuilder words = new StringBuilder();
    int argument = 0;
    int constant = 1;
    int local = 0;
    for (char c : recipe.toCharArray()) {
      if (c == ARGUMENT) {
        words(words, method);
        Type type = arguments[argument++];
        method.visitVarInsn(type.getOpcode(Opcodes.ILOAD), local);
        local += type.getSize();
        append(method, taken(type));
      } else if (c == CONSTANT) {
        words.append(call.bsmArgs[constant++]);
      } else {
        words.append(c);
      }
    }
    words(words, method);
    method.visitMethodInsn(
        Opcodes.INVOKEVIRTUAL, BUILDER, "toString", "()Ljava/lang/String;", false);
    method.visitInsn(Opcodes.ARETURN);
    return method;
  }

  private static void words(StringBuilder words, MethodNode method) {
    if (!words.isEmpty()) {
      method.visitLdcInsn(words.toString());
      append(method, "Ljava/lang/String;");
      words.setLength(0);
    }
  }

  private static void append(MethodNode method, String taken) {
    method.visitMethodInsn(
        Opcodes.INVOKEVIRTUAL, BUILDER, "append", "(" + taken + ")L" + BUILDER + ";", false);
  }

  /** A builder takes bytes and shorts as int. Characters in an array would be taken as text. */
  private static String taken(Type type) {
    return switch (type.getSort()) {
      case Type.BYTE, Type.SHORT -> "I";
      case Type.ARRAY -> "Ljava/lang/Object;";
      case Type.OBJECT ->
          type.getInternalName().equals("java/lang/String")
              ? type.getDescriptor()
              : "Ljava/lang/Object;";
      default -> type.getDescriptor();
    };
  }
}

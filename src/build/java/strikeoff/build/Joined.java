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
    begin(method);
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
        append(type, method);
      } else if (c == CONSTANT) {
        words.append(call.bsmArgs[constant++]);
      } else {
        words.append(c);
      }
    }
    words(words, method);
    end(method);
    return method;
  }

  /** Leaves an empty builder on the stack. */
  static void begin(MethodNode method) {
    method.visitTypeInsn(Opcodes.NEW, BUILDER);
    method.visitInsn(Opcodes.DUP);
    method.visitMethodInsn(Opcodes.INVOKESPECIAL, BUILDER, "<init>", "()V", false);
  }

  /** Adds words to the builder on the stack. */
  static void append(String words, MethodNode method) {
    method.visitLdcInsn(words);
    append(method, "Ljava/lang/String;");
  }

  /** Adds the value on top of the stack to the builder below it. */
  static void append(Type type, MethodNode method) {
    append(method, taken(type));
  }

  /** Returns what the builder holds. */
  static void end(MethodNode method) {
    method.visitMethodInsn(
        Opcodes.INVOKEVIRTUAL, BUILDER, "toString", "()Ljava/lang/String;", false);
    method.visitInsn(Opcodes.ARETURN);
  }

  private static void words(StringBuilder words, MethodNode method) {
    if (!words.isEmpty()) {
      append(words.toString(), method);
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

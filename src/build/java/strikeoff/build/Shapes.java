package strikeoff.build;

import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.MethodNode;

/** Values on their way from one type to another. */
final class Shapes {

  private static final Type OBJECT = Type.getObjectType("java/lang/Object");

  private Shapes() {}

  /** A method that only its own class calls; {@code visitMaxs} is left to the writer. */
  static MethodNode helper(String name, String descriptor) {
    return new MethodNode(
        Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC,
        name,
        descriptor,
        null,
        null);
  }

  static boolean isPrimitive(Type type) {
    return type.getSort() < Type.ARRAY;
  }

  /** The class that boxes a primitive. */
  static String wrapper(Type primitive) {
    return switch (primitive.getSort()) {
      case Type.BOOLEAN -> "java/lang/Boolean";
      case Type.CHAR -> "java/lang/Character";
      case Type.BYTE -> "java/lang/Byte";
      case Type.SHORT -> "java/lang/Short";
      case Type.INT -> "java/lang/Integer";
      case Type.LONG -> "java/lang/Long";
      case Type.FLOAT -> "java/lang/Float";
      case Type.DOUBLE -> "java/lang/Double";
      default -> throw new IllegalArgumentException(primitive + " has no wrapper");
    };
  }

  /** The primitive in a wrapper, else null. */
  private static Type unwrapped(Type wrapper) {
    return switch (wrapper.getInternalName()) {
      case "java/lang/Boolean" -> Type.BOOLEAN_TYPE;
      case "java/lang/Character" -> Type.CHAR_TYPE;
      case "java/lang/Byte" -> Type.BYTE_TYPE;
      case "java/lang/Short" -> Type.SHORT_TYPE;
      case "java/lang/Integer" -> Type.INT_TYPE;
      case "java/lang/Long" -> Type.LONG_TYPE;
      case "java/lang/Float" -> Type.FLOAT_TYPE;
      case "java/lang/Double" -> Type.DOUBLE_TYPE;
      default -> null;
    };
  }

  /** Loads a small number. */
  static void push(MethodVisitor code, int number) {
    if (number <= 5) {
      code.visitInsn(Opcodes.ICONST_0 + number);
    } else {
      code.visitIntInsn(Opcodes.BIPUSH, number);
    }
  }

  /** Loads what a field has before anything is put there. */
  static void nothing(MethodVisitor code, Type type) {
    code.visitInsn(
        switch (type.getSort()) {
          case Type.LONG -> Opcodes.LCONST_0;
          case Type.FLOAT -> Opcodes.FCONST_0;
          case Type.DOUBLE -> Opcodes.DCONST_0;
          case Type.OBJECT, Type.ARRAY -> Opcodes.ACONST_NULL;
          default -> Opcodes.ICONST_0;
        });
  }

  /** Turns what lies on the stack from one type into another, by the rules of method references. */
  static void convert(MethodVisitor code, Type from, Type to) {
    if (from.equals(to)) {
      return;
    }
    if (to.equals(Type.VOID_TYPE)) {
      code.visitInsn(from.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
    } else if (isPrimitive(from) && isPrimitive(to)) {
      widen(code, from, to);
    } else if (isPrimitive(from)) {
      code.visitMethodInsn(
          Opcodes.INVOKESTATIC,
          wrapper(from),
          "valueOf",
          "(" + from.getDescriptor() + ")L" + wrapper(from) + ";",
          false);
    } else if (isPrimitive(to)) {
      unbox(code, from, to);
    } else if (!to.equals(OBJECT)) {
      code.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
    }
  }

  /** What is no wrapper may hold another number than the one wanted, as a list of Integer may. */
  private static void unbox(MethodVisitor code, Type from, Type to) {
    Type boxed = unwrapped(from);
    if (boxed == null) {
      String holder = isNumber(to) ? "java/lang/Number" : wrapper(to);
      code.visitTypeInsn(Opcodes.CHECKCAST, holder);
      value(code, holder, to);
    } else {
      value(code, wrapper(boxed), boxed);
      widen(code, boxed, to);
    }
  }

  private static boolean isNumber(Type primitive) {
    return primitive.getSort() != Type.BOOLEAN && primitive.getSort() != Type.CHAR;
  }

  private static void value(MethodVisitor code, String holder, Type primitive) {
    code.visitMethodInsn(
        Opcodes.INVOKEVIRTUAL,
        holder,
        primitive.getClassName() + "Value",
        "()" + primitive.getDescriptor(),
        false);
  }

  private static void widen(MethodVisitor code, Type from, Type to) {
    int rank = rank(from);
    int wanted = rank(to);
    if (rank == wanted) {
      return;
    }
    code.visitInsn(
        switch (rank * 4 + wanted) {
          case 1 -> Opcodes.I2L;
          case 2 -> Opcodes.I2F;
          case 3 -> Opcodes.I2D;
          case 6 -> Opcodes.L2F;
          case 7 -> Opcodes.L2D;
          case 11 -> Opcodes.F2D;
          default -> throw new IllegalArgumentException(from + " is no " + to);
        });
  }

  private static int rank(Type type) {
    return switch (type.getSort()) {
      case Type.LONG -> 1;
      case Type.FLOAT -> 2;
      case Type.DOUBLE -> 3;
      default -> 0;
    };
  }
}

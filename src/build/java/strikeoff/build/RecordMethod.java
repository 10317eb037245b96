package strikeoff.build;

import java.util.Arrays;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Compares, hashes and names a record's components, as {@code ObjectMethods} would. */
final class RecordMethod {

  private final String simpleName;
  private final Type type;
  private final String[] names;
  private final Handle[] components;
  private final MethodNode method;

  private RecordMethod(String simpleName, InvokeDynamicInsnNode call, MethodNode method) {
    this.simpleName = simpleName;
    this.type = (Type) call.bsmArgs[0];
    this.names = ((String) call.bsmArgs[1]).split(";");
    this.components =
        Arrays.stream(call.bsmArgs).skip(2).map(Handle.class::cast).toArray(Handle[]::new);
    this.method = method;
  }

  /**
   * @param simpleName of the record, as its source has it
   */
  static MethodNode method(String name, String simpleName, InvokeDynamicInsnNode call) {
    RecordMethod of = new RecordMethod(simpleName, call, Shapes.helper(name, call.desc));
    switch (call.name) {
      case "equals" -> of.equality();
      case "hashCode" -> of.hash();
      case "toString" -> of.text();
      default -> throw new IllegalArgumentException("records have no " + call.name);
    }
    return of.method;
  }

  private void equality() {
    Label unlike = new Label();
    method.visitVarInsn(Opcodes.ALOAD, 1);
    method.visitTypeInsn(Opcodes.INSTANCEOF, type.getInternalName());
    method.visitJumpInsn(Opcodes.IFEQ, unlike);
    for (Handle component : components) {
      load(component, 0);
      load(component, 1);
      Type of = Type.getType(component.getDesc());
      switch (of.getSort()) {
        case Type.BOOLEAN, Type.BYTE, Type.CHAR, Type.SHORT, Type.INT ->
            method.visitJumpInsn(Opcodes.IF_ICMPNE, unlike);
        case Type.LONG -> {
          method.visitInsn(Opcodes.LCMP);
          method.visitJumpInsn(Opcodes.IFNE, unlike);
        }
        case Type.FLOAT, Type.DOUBLE -> {
          String one = of.getDescriptor();
          call(Shapes.wrapper(of), "compare", "(" + one + one + ")I");
          method.visitJumpInsn(Opcodes.IFNE, unlike);
        }
        default -> {
          call("java/util/Objects", "equals", "(Ljava/lang/Object;Ljava/lang/Object;)Z");
          method.visitJumpInsn(Opcodes.IFEQ, unlike);
        }
      }
    }
    method.visitInsn(Opcodes.ICONST_1);
    method.visitInsn(Opcodes.IRETURN);
    method.visitLabel(unlike);
    method.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
    method.visitInsn(Opcodes.ICONST_0);
    method.visitInsn(Opcodes.IRETURN);
  }

  private void hash() {
    method.visitInsn(Opcodes.ICONST_0);
    for (Handle component : components) {
      method.visitIntInsn(Opcodes.BIPUSH, 31);
      method.visitInsn(Opcodes.IMUL);
      load(component, 0);
      Type of = Type.getType(component.getDesc());
      if (Shapes.isPrimitive(of)) {
        call(Shapes.wrapper(of), "hashCode", "(" + of.getDescriptor() + ")I");
      } else {
        call("java/util/Objects", "hashCode", "(Ljava/lang/Object;)I");
      }
      method.visitInsn(Opcodes.IADD);
    }
    method.visitInsn(Opcodes.IRETURN);
  }

  private void text() {
    Joined.begin(method);
    for (int i = 0; i < components.length; i++) {
      Joined.append((i == 0 ? simpleName + "[" : ", ") + names[i] + "=", method);
      load(components[i], 0);
      Joined.append(Type.getType(components[i].getDesc()), method);
    }
    Joined.append(components.length == 0 ? simpleName + "[]" : "]", method);
    Joined.end(method);
  }

  private void call(String owner, String name, String descriptor) {
    method.visitMethodInsn(Opcodes.INVOKESTATIC, owner, name, descriptor, false);
  }

  private void load(Handle component, int local) {
    method.visitVarInsn(Opcodes.ALOAD, local);
    if (local == 1) {
      method.visitTypeInsn(Opcodes.CHECKCAST, type.getInternalName());
    }
    method.visitFieldInsn(
        Opcodes.GETFIELD, type.getInternalName(), component.getName(), component.getDesc());
  }
}

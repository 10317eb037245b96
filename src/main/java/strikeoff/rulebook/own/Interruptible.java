package strikeoff.rulebook.own;

import java.util.HashSet;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Rewrites a compiled class of own rules so that it asks {@link RuleThread#ask()} where each method
 * begins and before each jump back: a thread can't be stopped from outside, and a loop that a
 * rule's writer got wrong would run until the program ends.
 */
final class Interruptible extends ClassVisitor {

  private static final String ASKED = Type.getInternalName(RuleThread.class);

  private Interruptible(ClassWriter writer) {
    super(Opcodes.ASM9, writer);
  }

  static byte[] of(byte[] compiled) {
    ClassReader reader = new ClassReader(compiled);
    // Asking leaves nothing on the stack and in no variable, so frames and sizes stay right.
    ClassWriter writer = new ClassWriter(reader, 0);
    reader.accept(new Interruptible(writer), 0);
    return writer.toByteArray();
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String name, String descriptor, String signature, String[] exceptions) {
    MethodVisitor method = super.visitMethod(access, name, descriptor, signature, exceptions);
    return method == null ? null : new Asking(method);
  }

  private static final class Asking extends MethodVisitor {

    private final Set<Label> behind = new HashSet<>();

    Asking(MethodVisitor method) {
      super(Opcodes.ASM9, method);
    }

    private void ask() {
      super.visitMethodInsn(Opcodes.INVOKESTATIC, ASKED, "ask", "()V", false);
    }

    @Override
    public void visitCode() {
      super.visitCode();
      ask();
    }

    @Override
    public void visitLabel(Label label) {
      behind.add(label);
      super.visitLabel(label);
    }

    @Override
    public void visitJumpInsn(int opcode, Label label) {
      askIfBack(label);
      super.visitJumpInsn(opcode, label);
    }

    @Override
    public void visitTableSwitchInsn(int min, int max, Label otherwise, Label... labels) {
      askIfBack(otherwise);
      askIfBack(labels);
      super.visitTableSwitchInsn(min, max, otherwise, labels);
    }

    @Override
    public void visitLookupSwitchInsn(Label otherwise, int[] keys, Label[] labels) {
      askIfBack(otherwise);
      askIfBack(labels);
      super.visitLookupSwitchInsn(otherwise, keys, labels);
    }

    private void askIfBack(Label... labels) {
      for (Label label : labels) {
        if (behind.contains(label)) {
          ask();
          return;
        }
      }
    }
  }
}

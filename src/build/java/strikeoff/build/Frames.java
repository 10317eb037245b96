package strikeoff.build;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/** Makes a class of Java 5 or older one of Java 8, by working its frames out. */
final class Frames {

  private Frames() {}

  static byte[] added(byte[] old, Hierarchy types) {
    ClassWriter writer =
        new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
          @Override
          protected String getCommonSuperClass(String a, String b) {
            return types.commonSuperclass(a, b);
          }
        };
    ClassVisitor newer =
        new ClassVisitor(Opcodes.ASM9, writer) {
          @Override
          public void visit(
              int version, int access, String name, String signature, String above, String[] also) {
            super.visit(Opcodes.V1_8, access, name, signature, above, also);
          }
        };
    new ClassReader(old).accept(newer, ClassReader.SKIP_FRAMES);
    return writer.toByteArray();
  }
}

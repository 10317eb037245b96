package strikeoff.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * One class for all lambdas of a nest that are of one interface: each class costs a start as much
 * as many calls. An object of it knows by a number which lambda it is.
 */
final class LambdaClass {

  /** Larger methods are never compiled: each lambda takes some 30 bytes of 8000. */
  static final int MOST = 100;

  private static final String WHICH = "which";

  private final String name;
  private final String host;
  private final Lambda.Shape shape;
  private final List<Lambda> lambdas = new ArrayList<>();

  /**
   * @param host of the nest, whose members may call what is private there
   */
  LambdaClass(String name, String host, Lambda.Shape shape) {
    this.name = name;
    this.host = host;
    this.shape = shape;
  }

  String name() {
    return name;
  }

  boolean isFull() {
    return lambdas.size() >= MOST;
  }

  /**
   * Adds a lambda.
   *
   * @return the static method that makes one; without anything captured it returns the same one
   *     each time
   */
  String add(Lambda lambda) {
    lambdas.add(lambda);
    return maker(lambdas.size() - 1);
  }

  private static String maker(int number) {
    return "make" + number;
  }

  private static String only(int number) {
    return "ONLY" + number;
  }

  byte[] written() {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    writer.visit(
        Opcodes.V17,
        Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC,
        name,
        null,
        "java/lang/Object",
        shape.types().toArray(String[]::new));
    writer.visitNestHost(host);
    Slots slots = new Slots();
    lambdas.forEach(slots::of);
    List<Slot> fields = slots.all();
    fields.forEach(
        field ->
            writer.visitField(
                Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL,
                field.name(),
                field.kind().getDescriptor(),
                null,
                null));
    constructor(writer, fields);
    madeWithTheClass(writer, fields);
    for (int number = 0; number < lambdas.size(); number++) {
      factory(writer, fields, slots, number);
    }
    method(writer, slots);
    writer.visitEnd();
    return writer.toByteArray();
  }

  private String constructs(List<Slot> fields) {
    return Type.getMethodDescriptor(
        Type.VOID_TYPE, fields.stream().map(Slot::kind).toArray(Type[]::new));
  }

  private void constructor(ClassWriter writer, List<Slot> fields) {
    MethodVisitor code =
        writer.visitMethod(Opcodes.ACC_PRIVATE, "<init>", constructs(fields), null, null);
    code.visitCode();
    code.visitVarInsn(Opcodes.ALOAD, 0);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
    int local = 1;
    for (Slot field : fields) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitVarInsn(field.kind().getOpcode(Opcodes.ILOAD), local);
      code.visitFieldInsn(Opcodes.PUTFIELD, name, field.name(), field.kind().getDescriptor());
      local += field.kind().getSize();
    }
    code.visitInsn(Opcodes.RETURN);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  /** The lambdas that capture nothing are made with the class. */
  private void madeWithTheClass(ClassWriter writer, List<Slot> fields) {
    MethodVisitor start = null;
    for (int number = 0; number < lambdas.size(); number++) {
      if (lambdas.get(number).captured().length > 0) {
        continue;
      }
      writer.visitField(
          Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL,
          only(number),
          "L" + name + ";",
          null,
          null);
      if (start == null) {
        start = writer.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
        start.visitCode();
      }
      made(start, fields, number, Map.of());
      start.visitFieldInsn(Opcodes.PUTSTATIC, name, only(number), "L" + name + ";");
    }
    if (start != null) {
      start.visitInsn(Opcodes.RETURN);
      start.visitMaxs(0, 0);
      start.visitEnd();
    }
  }

  private void factory(ClassWriter writer, List<Slot> fields, Slots slots, int number) {
    Lambda lambda = lambdas.get(number);
    MethodVisitor code =
        writer.visitMethod(
            Opcodes.ACC_STATIC, maker(number), lambda.factory().getDescriptor(), null, null);
    code.visitCode();
    if (lambda.captured().length == 0) {
      code.visitFieldInsn(Opcodes.GETSTATIC, name, only(number), "L" + name + ";");
    } else {
      Map<Slot, Integer> locals = new HashMap<>();
      List<Slot> own = slots.of(lambda);
      int local = 0;
      for (int i = 0; i < own.size(); i++) {
        locals.put(own.get(i), local);
        local += lambda.captured()[i].getSize();
      }
      made(code, fields, number, locals);
    }
    code.visitInsn(Opcodes.ARETURN);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private void made(MethodVisitor code, List<Slot> fields, int number, Map<Slot, Integer> locals) {
    code.visitTypeInsn(Opcodes.NEW, name);
    code.visitInsn(Opcodes.DUP);
    for (Slot field : fields) {
      if (field.name().equals(WHICH)) {
        Shapes.push(code, number);
      } else if (locals.containsKey(field)) {
        code.visitVarInsn(field.kind().getOpcode(Opcodes.ILOAD), locals.get(field));
      } else {
        Shapes.nothing(code, field.kind());
      }
    }
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, name, "<init>", constructs(fields), false);
  }

  private void method(ClassWriter writer, Slots slots) {
    MethodVisitor code =
        writer.visitMethod(
            Opcodes.ACC_PUBLIC, shape.method(), shape.erased().getDescriptor(), null, null);
    code.visitCode();
    if (lambdas.size() == 1) {
      call(code, slots, lambdas.get(0));
    } else {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitFieldInsn(Opcodes.GETFIELD, name, WHICH, "I");
      Label[] cases = new Label[lambdas.size()];
      for (int number = 0; number < cases.length; number++) {
        cases[number] = new Label();
      }
      code.visitTableSwitchInsn(0, cases.length - 1, cases[cases.length - 1], cases);
      for (int number = 0; number < cases.length; number++) {
        code.visitLabel(cases[number]);
        code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
        call(code, slots, lambdas.get(number));
      }
    }
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private void call(MethodVisitor code, Slots slots, Lambda lambda) {
    List<Slot> own = slots.of(lambda);
    lambda.call(
        code,
        i -> {
          Slot slot = own.get(i);
          code.visitVarInsn(Opcodes.ALOAD, 0);
          code.visitFieldInsn(Opcodes.GETFIELD, name, slot.name(), slot.kind().getDescriptor());
          Type captured = lambda.captured()[i];
          if (Slots.isReference(captured)) {
            Shapes.convert(code, slot.kind(), captured);
          }
        });
  }

  /** A field. Those of references hold any of them. */
  private record Slot(String name, Type kind) {}

  /** The fields that several lambdas use in turn: as many of a kind as one of them needs. */
  private final class Slots {

    private static final Type ANY = Type.getObjectType("java/lang/Object");

    private final Map<String, Slot> all = new TreeMap<>();

    /** The fields that hold what a lambda captures, in its order. */
    List<Slot> of(Lambda lambda) {
      Map<Type, Integer> used = new HashMap<>();
      List<Slot> own = new ArrayList<>();
      for (Type captured : lambda.captured()) {
        Type kind = isReference(captured) ? ANY : captured;
        int number = used.merge(kind, 1, Integer::sum) - 1;
        String field = kind.getDescriptor().substring(0, 1).toLowerCase(Locale.ROOT) + number;
        own.add(all.computeIfAbsent(field, f -> new Slot(f, kind)));
      }
      return own;
    }

    List<Slot> all() {
      List<Slot> fields = new ArrayList<>();
      if (lambdas.size() > 1) {
        fields.add(new Slot(WHICH, Type.INT_TYPE));
      }
      fields.addAll(all.values());
      return fields;
    }

    static boolean isReference(Type type) {
      return type.getSort() == Type.OBJECT || type.getSort() == Type.ARRAY;
    }
  }
}

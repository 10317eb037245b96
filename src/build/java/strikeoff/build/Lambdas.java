package strikeoff.build;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.MethodInsnNode;

/** The classes that the lambdas of one nest become. */
final class Lambdas {

  private final String host;
  private final Map<Lambda.Shape, LambdaClass> open = new HashMap<>();
  private final Map<String, LambdaClass> all = new LinkedHashMap<>();

  Lambdas(String host) {
    this.host = host;
  }

  /** The call that makes a lambda, in place of the one that links it. */
  MethodInsnNode made(Lambda lambda) {
    LambdaClass type = open.get(lambda.shape());
    if (type == null || type.isFull()) {
      String name = host + "$$Lambda" + all.size();
      type = new LambdaClass(name, host, lambda.shape());
      open.put(lambda.shape(), type);
      all.put(name, type);
    }
    return new MethodInsnNode(
        Opcodes.INVOKESTATIC,
        type.name(),
        type.add(lambda),
        lambda.factory().getDescriptor(),
        false);
  }

  /** New members of the nest, by name. */
  Map<String, byte[]> classes() {
    Map<String, byte[]> classes = new LinkedHashMap<>();
    all.forEach((name, type) -> classes.put(name, type.written()));
    return classes;
  }
}

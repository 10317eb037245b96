package strikeoff.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.MethodNode;

/** The types of a jar and of the JDK. Names are those of class files, with slashes. */
final class Hierarchy {

  private static final String OBJECT = "java/lang/Object";

  private final JarFile jar;
  private final Map<String, Optional<ClassNode>> known = new HashMap<>();

  Hierarchy(JarFile jar) {
    this.jar = jar;
  }

  /** Makes a class known that the jar gets. */
  void add(ClassNode type) {
    known.put(type.name, Optional.of(type));
  }

  /** Without its code; empty if it is neither in the jar nor in the JDK. */
  Optional<ClassNode> type(String name) {
    return known.computeIfAbsent(name, this::read);
  }

  private Optional<ClassNode> read(String name) {
    JarEntry entry = jar.getJarEntry(name + ".class");
    try (InputStream in =
        entry != null
            ? jar.getInputStream(entry)
            : ClassLoader.getPlatformClassLoader().getResourceAsStream(name + ".class")) {
      if (in == null) {
        return Optional.empty();
      }
      ClassNode node = new ClassNode();
      new ClassReader(in)
          .accept(node, ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
      return Optional.of(node);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The nearest class that both extend, as a verifier sees it: any interface is an object. */
  String commonSuperclass(String a, String b) {
    List<String> above = superclasses(a);
    return superclasses(b).stream().filter(above::contains).findFirst().orElse(OBJECT);
  }

  private List<String> superclasses(String name) {
    List<String> above = new ArrayList<>();
    Optional<ClassNode> type = type(name);
    while (type.isPresent() && (type.get().access & Opcodes.ACC_INTERFACE) == 0) {
      above.add(type.get().name);
      type = type.get().superName == null ? Optional.empty() : type(type.get().superName);
    }
    return above;
  }

  /** Where a method is declared that a type has or inherits. */
  Optional<Declared> method(String owner, String name, String descriptor) {
    Optional<ClassNode> type = type(owner);
    if (type.isEmpty()) {
      return Optional.empty();
    }
    for (MethodNode method : type.get().methods) {
      if (method.name.equals(name) && method.desc.equals(descriptor)) {
        return Optional.of(new Declared(type.get(), method.access));
      }
    }
    List<String> above = new ArrayList<>(type.get().interfaces);
    if (type.get().superName != null) {
      above.add(0, type.get().superName);
    }
    return above.stream()
        .map(parent -> method(parent, name, descriptor))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** A type, and the access flags of a method that it declares. */
  record Declared(ClassNode type, int access) {}
}

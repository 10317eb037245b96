package strikeoff.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.ClassNode;

/**
 * Rewrites a jar so that it starts quickly, and means the same:
 *
 * <ul>
 *   <li>classes older than Java 6, which no archive of JDK 25 keeps, get the frames of newer ones;
 *   <li>lambdas, joined strings and records' own methods, which the JVM links by building code when
 *       it comes by for the first time, become plain classes and methods;
 *   <li>comparators that the JDK makes of such lambdas are made by {@link Compared}, which the jar
 *       gets;
 *   <li>entries of folders go, since nobody asks for them and each start reads the jar's index.
 * </ul>
 */
public final class QuickJar {

  /** What a start runs through; more classes would only make the index longer. */
  private static final List<String> STARTED =
      List.of(
          "strikeoff/",
          "gg/jte/",
          "org/drools/base/",
          "org/drools/core/",
          "org/drools/kiesession/",
          "org/drools/model/",
          "org/drools/modelcompiler/",
          "org/drools/util/",
          "org/kie/api/",
          "org/kie/internal/");

  private static final int VERSION = 7;

  private QuickJar() {}

  /**
   * @param args the jar, which is replaced as a whole or not at all
   */
  public static void main(String... args) throws IOException {
    Path jar = Path.of(args[0]);
    Path quick = jar.resolveSibling(jar.getFileName() + ".part");
    try (JarFile from = new JarFile(jar.toFile());
        OutputStream file = Files.newOutputStream(quick);
        JarOutputStream to = new JarOutputStream(file)) {
      Map<String, byte[]> classes = rewritten(from);
      for (JarEntry entry : Collections.list(from.entries())) {
        if (!entry.isDirectory()) {
          byte[] bytes = classes.remove(entry.getName());
          write(
              to,
              entry.getName(),
              entry.getTime(),
              bytes != null ? bytes : from.getInputStream(entry).readAllBytes());
        }
      }
      // What is left is new. The jar's own age is that of its first entry.
      long age = from.entries().nextElement().getTime();
      for (Map.Entry<String, byte[]> added : new TreeMap<>(classes).entrySet()) {
        write(to, added.getKey(), age, added.getValue());
      }
    }
    Files.move(quick, jar, StandardCopyOption.REPLACE_EXISTING);
  }

  private static void write(JarOutputStream to, String name, long time, byte[] bytes)
      throws IOException {
    JarEntry entry = new JarEntry(name);
    entry.setTime(time);
    to.putNextEntry(entry);
    to.write(bytes);
    to.closeEntry();
  }

  private static ClassNode compared() throws IOException {
    try (InputStream in = QuickJar.class.getResourceAsStream("Compared.class")) {
      ClassNode node = new ClassNode();
      new ClassReader(in).accept(node, 0);
      return node;
    }
  }

  /** Classes that change, and new ones, by the names of their entries. */
  private static Map<String, byte[]> rewritten(JarFile jar) throws IOException {
    Hierarchy types = new Hierarchy(jar);
    Map<String, byte[]> changed = new LinkedHashMap<>();
    Map<String, ClassNode> rewritten = new LinkedHashMap<>();
    Set<String> hosts = new HashSet<>();
    for (JarEntry entry : Collections.list(jar.entries())) {
      String name = entry.getName();
      if (!name.endsWith(".class")) {
        continue;
      }
      byte[] bytes = jar.getInputStream(entry).readAllBytes();
      if (bytes[VERSION] < Opcodes.V1_6) {
        changed.put(name, Frames.added(bytes, types));
      } else if (bytes[VERSION] >= Opcodes.V11 && STARTED.stream().anyMatch(name::startsWith)) {
        ClassNode node = new ClassNode();
        new ClassReader(bytes).accept(node, 0);
        rewritten.put(node.name, node);
      }
    }
    if (!rewritten.isEmpty()) {
      ClassNode compared = compared();
      types.add(compared);
      rewritten.put(compared.name, compared);
      hosts.add(compared.name);
    }
    Map<String, Lambdas> nests = new LinkedHashMap<>();
    for (ClassNode node : List.copyOf(rewritten.values())) {
      String host = node.nestHostClass == null ? node.name : node.nestHostClass;
      // A nest has to be told of its new members, so its host has to be at hand.
      if (!rewritten.containsKey(host)) {
        rewritten.remove(node.name);
      } else if (new Calls(node, nests.computeIfAbsent(host, Lambdas::new), types).rewrite()) {
        hosts.add(node.name);
      }
    }
    nests.forEach(
        (host, lambdas) -> {
          Map<String, byte[]> added = lambdas.classes();
          if (added.isEmpty()) {
            return;
          }
          added.forEach((name, bytes) -> changed.put(name + ".class", bytes));
          ClassNode node = rewritten.get(host);
          if (node.nestMembers == null) {
            node.nestMembers = new ArrayList<>();
          }
          node.nestMembers.addAll(added.keySet());
          hosts.add(host);
        });
    for (String name : hosts) {
      ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
      rewritten.get(name).accept(writer);
      changed.put(name + ".class", writer.toByteArray());
    }
    return changed;
  }
}

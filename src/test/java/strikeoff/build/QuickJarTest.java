package strikeoff.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import picocli.CommandLine;

/** A jar means the same before and after; javac and the JDK's own bootstrap methods say what. */
class QuickJarTest {

  private static final String SAMPLE =
      """
      package strikeoff;

      import java.util.*;
      import java.util.concurrent.Callable;
      import java.util.function.*;
      import java.util.stream.*;

      public class Sample implements Callable<List<String>> {
        record Point(int x, double y, String name, long l, float f, boolean b, char c, byte t, short s, int[] a) {}
        record Nothing() {}
        record Half(double of) {}
        record Dollar$Sign(int of) {}
        interface Named { String name(); default Supplier<String> twice() { return () -> name() + name(); }
          private String hidden() { return name() + "!"; } default Supplier<String> open() { return this::hidden; } }
        static class Above { String loud() { return "above"; } protected static int shared(int i) { return i + 1; } }
        static class Below extends Above {
          @Override String loud() { return "below"; }
          Supplier<String> up() { return super::loud; }
          IntUnaryOperator inherited() { return Above::shared; }
        }
        class Inner { int held = 7; Supplier<Integer> later(long a, double b, String c) { return () -> held + (int) a + (int) b + c.length(); } }
        enum Letter { A, B }
        private static int twice(int i) { return 2 * i; }
        private String own(Object o) { return "own " + o; }
        static Supplier<String> same() { return () -> "same"; }
        static Supplier<String> other(int i) { return () -> "other" + i; }
        static long sum(long... all) { return LongStream.of(all).sum(); }

        public List<String> call() throws Exception {
          List<String> out = new ArrayList<>();
          Point p = new Point(1, -0.0, "π", 1L << 40, Float.NaN, true, 'c', (byte) -1, (short) 2, null);
          Point q = new Point(1, 0.0, "π", 1L << 40, Float.NaN, true, 'c', (byte) -1, (short) 2, null);
          out.add(p.toString()); out.add("" + p.equals(q) + p.equals(p) + p.equals(null) + p.equals("p"));
          out.add("" + p.hashCode() + " " + q.hashCode() + new Nothing() + new Nothing().hashCode() + new Nothing().equals(new Nothing()));
          out.add("" + new Half(Double.NaN).equals(new Half(0.0 / 0.0)) + new Half(1).equals(new Half(2)));
          char[] letters = null; Object none = null; String text = null; byte eight = 5; short sixteen = 6;
          out.add(letters + "\\1" + none + text + eight + sixteen + 'x' + 1.5f + 2.5 + 3L + true + new int[0].length + Letter.B);
          IntFunction<Integer> boxed = Sample::twice; out.add("" + boxed.apply(4));
          ToLongFunction<Integer> widened = Integer::intValue; out.add("" + widened.applyAsLong(5));
          Function<Integer, Number> wider = Integer::doubleValue; out.add("" + wider.apply(6));
          ToDoubleFunction<Object> asked = o -> o.hashCode(); out.add("" + asked.applyAsDouble(7));
          Supplier<List<String>> made = ArrayList::new; out.add("" + made.get());
          Function<String, Integer> parsed = Integer::new; out.add("" + parsed.apply("8"));
          IntFunction<int[]> array = int[]::new; out.add("" + array.apply(3).length);
          Function<Object, String> bound = this::own; out.add(bound.apply('z'));
          BiFunction<String, String, Boolean> same = String::equals; out.add("" + same.apply("a", "a"));
          Function<Long, Long> variable = Sample::sum; out.add("" + variable.apply(9L));
          Consumer<String> dropped = out::add; dropped.accept("dropped");
          BinaryOperator<Long> larger = Math::max; out.add("" + larger.apply(3L, 4L));
          Named n = () -> "n"; out.add(n.twice().get() + n.open().get());
          out.add(new Below().up().get() + new Below().inherited().applyAsInt(1));
          out.add("" + new Inner().later(1L, 2.0, "three").get());
          Supplier<Supplier<String>> nested = () -> () -> "deep" + out.size(); out.add(nested.get().get());
          out.add(Stream.of("b", "a").sorted(Comparator.comparing((String s) -> s).reversed()).collect(Collectors.joining(",")));
          out.add(Stream.of(1, 2, 3).map(i -> i * 1.5).mapToDouble(Double::doubleValue).sum() + "");
          Runnable serial = (Runnable & java.io.Serializable) () -> out.add("serial"); serial.run();
          out.add("" + IntStream.range(0, 4).mapToObj(i -> (char) ('a' + i)).map(String::valueOf).collect(Collectors.joining()));
          record Local(Object of) { static final int NONE = 0; }
          Object mute = new Object() { @Override public String toString() { return null; } };
          out.add(new Local(mute).toString() + new Dollar$Sign(1) + mute);
          ToLongFunction<Supplier<Integer>> longer = Supplier::get; out.add("" + longer.applyAsLong(() -> 11));
          ToDoubleFunction<Supplier<Short>> real = Supplier::get; out.add("" + real.applyAsDouble(() -> (short) 12));
          Predicate<Supplier<Boolean>> yes = Supplier::get; out.add("" + yes.test(() -> true));
          long l = 1L << 33; double d = 0.5; float f = 2.5f; boolean b = true; char c = 'q'; byte by = -3; short sh = 300; int[] row = {4, 5};
          Supplier<String> all = () -> l + " " + d + f + b + c + by + sh + row[1] + p.name();
          Supplier<String> few = () -> d + c + "few"; Supplier<String> swapped = () -> c + " " + f + d + l;
          out.add(all.get() + few.get() + swapped.get());
          List<Supplier<Integer>> many = new ArrayList<>();
          MANY
          out.add(many.stream().map(Supplier::get).toList().toString()); out.add("" + (same() == same()) + (other(1) == other(1)));
          Comparator<String> byLength = Comparator.comparingInt(String::length);
          out.add(Stream.of("bb", "a", "ccc", "aa").sorted(byLength.thenComparing(Comparator.reverseOrder())).toList() + "");
          out.add(Stream.of("b2", "a3", "a1").sorted(Comparator.comparing((String s) -> s.charAt(0)).thenComparing(s -> s.charAt(1), Comparator.reverseOrder())).toList() + "");
          out.add(Stream.of("b2", "a3", "a1").sorted(Comparator.comparing((String s) -> s, Comparator.reverseOrder()).thenComparingInt(s -> 1)).toList() + "");
          out.add(Stream.of(2.5, -1.0, 0.0, -0.0).sorted(Comparator.comparingDouble((Double x) -> x).thenComparingDouble(x -> x).thenComparingLong(x -> 0)).toList() + "");
          out.add(Stream.of(3L, 1L).sorted(Comparator.comparingLong(Long::longValue).reversed()).toList() + "");
          Map<String, Integer> counts = new TreeMap<>(Map.of("x", 2, "y", 1, "z", 3));
          out.add(counts.entrySet().stream().max(Map.Entry.comparingByValue()) + "" + counts.entrySet().stream().min(Map.Entry.comparingByKey(Comparator.reverseOrder())));
          out.add(counts.entrySet().stream().sorted(Map.Entry.<String, Integer>comparingByKey().thenComparing(Map.Entry.comparingByValue(Comparator.naturalOrder()))).toList() + "");
          out.add(Stream.of("q", null, "p", null).sorted(Comparator.nullsFirst(Comparator.<String>naturalOrder()).thenComparing(s -> s.length())).toList() + "");
          Comparator<String> own = new Comparator<>() {
            public int compare(String x, String y) { return 0; }
            @Override public Comparator<String> thenComparing(Comparator<? super String> other) { return (x, y) -> y.compareTo(x); } };
          out.add(Stream.of("a", "b").sorted(own.thenComparing(Comparator.naturalOrder())).toList() + "");
          try { Comparator.comparing((Function<String, String>) null); } catch (NullPointerException e) { out.add("no key"); }
          try { byLength.thenComparing((Comparator<String>) null); } catch (NullPointerException e) { out.add("no order"); }
          interface Mark {}
          Supplier<String> marked = (Supplier<String> & Mark & java.io.Serializable) () -> "marked" + l;
          out.add(marked.get() + (marked instanceof Mark) + (marked instanceof java.io.Serializable));
          java.io.ByteArrayOutputStream stream = new java.io.ByteArrayOutputStream();
          try (java.io.ObjectOutputStream to = new java.io.ObjectOutputStream(stream)) { to.writeObject(marked); }
          try (java.io.ObjectInputStream from = new java.io.ObjectInputStream(new java.io.ByteArrayInputStream(stream.toByteArray())) {
            @Override protected Class<?> resolveClass(java.io.ObjectStreamClass type) throws ClassNotFoundException {
              return Class.forName(type.getName(), false, Sample.class.getClassLoader()); } }) {
            out.add(((Supplier<?>) from.readObject()).get() + "");
          }
          Callable<String> thrown = () -> { throw new IllegalStateException("thrown"); };
          try { thrown.call(); } catch (IllegalStateException e) { out.add(e.getMessage()); }
          return out;
        }
      }
      """;

  /** More of one interface than one class takes, with and without something captured. */
  private static final String MANY =
      IntStream.range(0, 240)
          .mapToObj(i -> "many.add(() -> " + (i % 3 == 0 ? "row[0] + " : "") + i + ");")
          .collect(Collectors.joining("\n"));

  @TempDir Path folder;

  private Path jar;

  @BeforeEach
  void compile() throws IOException {
    JavaCompiler javac = ToolProvider.getSystemJavaCompiler();
    Path classes = Files.createDirectories(folder.resolve("classes"));
    boolean done =
        javac
            .getTask(
                null,
                null,
                d -> {},
                List.of(
                    "-d",
                    classes.toString(),
                    "--release",
                    "17",
                    "-XDstringConcat=indyWithConstants"),
                null,
                List.of(
                    new SimpleJavaFileObject(
                        URI.create("string:///strikeoff/Sample.java"),
                        javax.tools.JavaFileObject.Kind.SOURCE) {
                      @Override
                      public CharSequence getCharContent(boolean ignore) {
                        return SAMPLE.replace("MANY", MANY);
                      }
                    }))
            .call();
    assertThat(done).as("compiled").isTrue();
    jar = folder.resolve("sample.jar");
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream to = new JarOutputStream(file);
        Stream<Path> all = Files.walk(classes)) {
      for (Path each : all.sorted().toList()) {
        String name = classes.relativize(each).toString();
        if (!name.isEmpty()) {
          to.putNextEntry(new JarEntry(Files.isDirectory(each) ? name + "/" : name));
          if (!Files.isDirectory(each)) {
            Files.copy(each, to);
          }
          to.closeEntry();
        }
      }
    }
  }

  @Test
  void everyCallMeansTheSame() throws Exception {
    List<String> before = called();
    QuickJar.main(jar.toString());
    assertThat(called()).hasSizeGreaterThan(25).isEqualTo(before);
  }

  /**
   * What stays: what a superclass or an array has, new arrays, what reads lambdas from a stream.
   */
  @Test
  void fewCallsAreLeftToTheJvm() throws IOException {
    int before = linked().size();
    QuickJar.main(jar.toString());
    assertThat(before).isGreaterThan(50);
    assertThat(linked()).hasSizeLessThan(6);
  }

  /** One of a hundred suppliers each, not one class for every lambda. */
  @Test
  void lambdasOfOneInterfaceShareAClass() throws IOException {
    QuickJar.main(jar.toString());
    assertThat(entries().stream().filter(name -> name.contains("$$Lambda")).count())
        .isBetween(10L, 40L);
  }

  @Test
  void entriesOfFoldersGoAndNothingElseIsLost() throws IOException {
    List<String> before = entries();
    QuickJar.main(jar.toString());
    List<String> after = entries();
    assertThat(before).contains("strikeoff/");
    assertThat(after)
        .containsAll(before.stream().filter(name -> !name.endsWith("/")).toList())
        .noneMatch(name -> name.endsWith("/"));
    assertThat(folder.resolve("sample.jar.part")).doesNotExist();
  }

  /** picocli is built for Java 5; its classes are verified when they are linked. */
  @Test
  void oldClassesGetTheFramesOfNewerOnes() throws Exception {
    Path old =
        Path.of(CommandLine.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Path newer = Files.copy(old, folder.resolve("old.jar"));
    QuickJar.main(newer.toString());
    try (URLClassLoader loader = new URLClassLoader(new URL[] {newer.toUri().toURL()}, null);
        JarFile in = new JarFile(newer.toFile())) {
      for (JarEntry entry : Collections.list(in.entries())) {
        String name = entry.getName();
        if (name.matches("picocli/.*\\.class")) {
          assertThat(in.getInputStream(entry).readAllBytes()[7])
              .as(name)
              .isGreaterThanOrEqualTo((byte) 52);
          Class.forName(name.replace('/', '.').replace(".class", ""), true, loader);
        }
      }
    }
  }

  @Test
  void theSameJarGivesTheSameBytes() throws IOException {
    Path copy = Files.copy(jar, folder.resolve("copy.jar"));
    QuickJar.main(jar.toString());
    QuickJar.main(copy.toString());
    assertThat(jar).hasSameBinaryContentAs(copy);
  }

  @SuppressWarnings("unchecked")
  private List<String> called() throws Exception {
    try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
      return ((Callable<List<String>>)
              loader.loadClass("strikeoff.Sample").getDeclaredConstructor().newInstance())
          .call();
    }
  }

  private List<String> entries() throws IOException {
    try (JarFile in = new JarFile(jar.toFile())) {
      return in.stream().map(JarEntry::getName).toList();
    }
  }

  /** Calls that a bootstrap method links. */
  private List<String> linked() throws IOException {
    List<String> calls = new ArrayList<>();
    try (JarFile in = new JarFile(jar.toFile())) {
      for (JarEntry entry : Collections.list(in.entries())) {
        if (!entry.getName().endsWith(".class")) {
          continue;
        }
        ClassNode node = new ClassNode();
        new ClassReader(in.getInputStream(entry).readAllBytes()).accept(node, 0);
        node.methods.forEach(
            method -> {
              for (AbstractInsnNode each : method.instructions) {
                if (each instanceof InvokeDynamicInsnNode call) {
                  calls.add(node.name + " " + call.name + " " + call.bsm.getName());
                }
              }
            });
      }
    }
    return calls;
  }
}

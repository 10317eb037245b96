import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes {@code target/image/strikeoff} of what {@code mvn package} made: a folder that holds the
 * program and a Java of its own, for the system that it is made on. Run by {@code mvn -Pimage
 * package}.
 */
public final class Image {

  /**
   * What the program loads; the rest of the JDK stays out. {@code jdeps} names more, for code that
   * never runs.
   */
  private static final String MODULES =
      "java.base,java.desktop,java.logging,java.xml,jdk.httpserver,jdk.unsupported";

  /**
   * The start cache beside the jar holds the JDK's classes too. Nobody is spoken to over TLS, and
   * nothing is drawn: of what pictures need outside Java, what holds them in memory stays.
   */
  private static final String FILES_LEFT_OUT =
      "/java.base/lib/server/classes*.jsa,/java.base/lib/classlist,/java.base/lib/jrt-fs.jar,"
          + "/java.base/bin/keytool*,/java.base/lib/security/cacerts,"
          + "/java.base/lib/security/public_suffix_list.dat,"
          + "/java.desktop/conf/**,regex:/java\\.desktop/lib/(?!libawt(_headless)?\\.).*";

  /**
   * The engine asks java.desktop for one listener, films for its pictures. Its windows, printers and
   * sounds go, and XSL and schemas of java.xml; what reads and draws pictures stays. Nobody is spoken
   * to over TLS.
   */
  private static final List<String> PACKAGES_LEFT_OUT =
      List.of(
          "java.base/sun/security/ssl",
          "java.base/sun/security/tools/keytool",
          "java.desktop/javax/print",
          "java.desktop/com/sun/java/swing",
          "java.desktop/com/sun/media/sound",
          "java.desktop/com/sun/swing",
          "java.desktop/javax/swing",
          "java.desktop/sun/awt/X11",
          "java.desktop/sun/java2d/opengl",
          "java.desktop/sun/java2d/xr",
          "java.desktop/sun/print",
          "java.desktop/sun/swing",
          "java.xml/com/sun/org/apache/bcel",
          "java.xml/com/sun/org/apache/xalan",
          "java.xml/com/sun/org/apache/xerces/internal/dom",
          "java.xml/com/sun/org/apache/xerces/internal/impl/dv/xs",
          "java.xml/com/sun/org/apache/xerces/internal/impl/xpath",
          "java.xml/com/sun/org/apache/xerces/internal/impl/xs",
          "java.xml/com/sun/org/apache/xerces/internal/jaxp/validation",
          "java.xml/com/sun/org/apache/xml/internal/dtm",
          "java.xml/com/sun/org/apache/xml/internal/res",
          "java.xml/com/sun/org/apache/xml/internal/serialize",
          "java.xml/com/sun/org/apache/xml/internal/serializer",
          "java.xml/com/sun/org/apache/xpath");

  /** What the library for drawings names, and never calls. */
  private static final Set<String> CLASSES_KEPT =
      Set.of(
          "java.desktop/javax/swing/JComponent.class",
          "java.desktop/javax/swing/TransferHandler$HasGetTransferHandler.class");

  private final Path project;
  private final Path target;
  private final Path image;

  private Image(Path project) {
    this.project = project;
    this.target = project.resolve("target");
    this.image = target.resolve("image/strikeoff");
  }

  /**
   * @param args the project's folder
   */
  public static void main(String... args) throws IOException, InterruptedException {
    new Image(Path.of(args[0])).make();
  }

  private void make() throws IOException, InterruptedException {
    delete(image);
    Files.createDirectories(image.resolve("lib"));
    runtime();
    copy(target.resolve("strikeoff.jar"), "lib/strikeoff.jar");
    copy(target.resolve("strikeoff"), "bin/strikeoff");
    copy(target.resolve("strikeoff.cmd"), "bin/strikeoff.cmd");
    copyAll(target.resolve("man"), "share/man");
    for (String plan : List.of("first-border.yaml", "estuary-curtains.yaml", "README.md")) {
      copy(project.resolve("plans").resolve(plan), "examples/" + plan);
    }
    copyAll(project.resolve("plans/films"), "examples/films");
    for (String text : List.of("LICENSE", "NOTICE")) {
      copy(project.resolve("src/main/resources/META-INF").resolve(text), text);
    }
    if (File.separatorChar == '/') {
      completion();
      startCache();
    }
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }

  private void runtime() throws IOException, InterruptedException {
    Path leftOut = Files.createTempFile(target, "left-out", ".txt");
    Files.write(leftOut, classesLeftOut());
    ToolProvider jlink =
        ToolProvider.findFirst("jlink")
            .orElseThrow(() -> new IllegalStateException("this Java has no jlink; a whole JDK has"));
    boolean newer = Runtime.version().feature() >= 21;
    int exit =
        jlink.run(
            new PrintStream(System.out, true),
            System.err,
            "--add-modules",
            MODULES,
            "--strip-debug",
            "--no-header-files",
            "--no-man-pages",
            newer ? "--compress=zip-9" : "--compress=2",
            "--exclude-files=" + FILES_LEFT_OUT,
            "--exclude-resources=@" + leftOut,
            "--output",
            image.resolve("runtime").toString());
    if (exit != 0) {
      throw new IllegalStateException("jlink ended with " + exit);
    }
    Files.delete(leftOut);
    stripped();
  }

  /** All of these packages but a class in each, since a module's packages may not be empty. */
  private static List<String> classesLeftOut() throws IOException {
    Path modules = Path.of(URI.create("jrt:/"));
    List<String> all = new ArrayList<>();
    for (String name : PACKAGES_LEFT_OUT) {
      Set<Path> kept = new HashSet<>();
      try (Stream<Path> files = Files.walk(modules.resolve(name))) {
        for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
          boolean named = CLASSES_KEPT.contains(modules.relativize(file).toString());
          if (!named && !kept.add(file.getParent())) {
            all.add("/" + modules.relativize(file));
          }
        }
      }
    }
    return all;
  }

  /** Debian's JVM brings names for debuggers; where binutils can't take them out, they stay. */
  private void stripped() throws IOException, InterruptedException {
    Path jvm = image.resolve("runtime/lib/server/libjvm.so");
    boolean able =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, "strip")));
    if (Files.exists(jvm) && able) {
      run(new ProcessBuilder("strip", "--strip-unneeded", jvm.toString()));
    }
  }

  private void completion() throws IOException, InterruptedException {
    Path script = image.resolve("share/bash-completion/completions/strikeoff");
    Files.createDirectories(script.getParent());
    run(new ProcessBuilder(launcher(), "completion", "bash").redirectOutput(script.toFile()));
  }

  /**
   * Keeps the classes of a trial run beside the jar, as the build does for its own Java. JDK 17 takes
   * them only where the jar still lies where it lay; elsewhere all works as well, a second later.
   */
  private void startCache() throws IOException, InterruptedException {
    Path work = Files.createTempDirectory(target, "image-trial");
    boolean aheadOfTime = Runtime.version().feature() >= 25;
    Path classes = work.resolve("trial.classes");
    Path cache = image.resolve(aheadOfTime ? "lib/strikeoff.aot" : "lib/strikeoff.jsa");
    ProcessBuilder trial =
        new ProcessBuilder(
            launcher(),
            "check",
            "plans/estuary-curtains.yaml",
            "plans/mistakes/four-stations.yaml",
            "--verbose",
            "--format=text",
            "--format=json=" + work.resolve("results.json"),
            "--reports=" + work.resolve("reports"),
            "--fail-on=none");
    trial.directory(project.toFile()).redirectOutput(work.resolve("told.txt").toFile());
    trial
        .environment()
        .put(
            "STRIKEOFF_OPTS",
            aheadOfTime ? "-XX:AOTCacheOutput=" + cache : "-XX:DumpLoadedClassList=" + classes);
    run(trial);
    if (!aheadOfTime) {
      run(
          new ProcessBuilder(
                  image.resolve("runtime/bin/java").toString(),
                  "-Xshare:dump",
                  // As the launcher has it; objects that only another collector could map stay out.
                  "-XX:+UseSerialGC",
                  "-XX:SharedClassListFile=" + classes,
                  "-XX:SharedArchiveFile=" + cache,
                  "-cp",
                  image.resolve("lib/strikeoff.jar").toString())
              .redirectOutput(work.resolve("dump.txt").toFile()));
    }
    if (!Files.isRegularFile(cache)) {
      throw new IllegalStateException("no start cache was made; " + work + " says why");
    }
    delete(work);
  }

  private String launcher() {
    return image.resolve("bin/strikeoff").toString();
  }

  private static void run(ProcessBuilder builder) throws IOException, InterruptedException {
    int code = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start().waitFor();
    if (code != 0) {
      throw new IllegalStateException(builder.command() + " ended with " + code);
    }
  }

  /** The time of the jar is kept: the start cache is of just this file. */
  private void copy(Path from, String to) throws IOException {
    Path there = image.resolve(to);
    Files.createDirectories(there.getParent());
    Files.copy(from, there, StandardCopyOption.COPY_ATTRIBUTES);
  }

  private void copyAll(Path from, String to) throws IOException {
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.walk(from)) {
      all.filter(Files::isRegularFile).forEach(files::add);
    }
    for (Path file : files) {
      copy(file, to + "/" + from.relativize(file).toString().replace(File.separatorChar, '/'));
    }
  }
}

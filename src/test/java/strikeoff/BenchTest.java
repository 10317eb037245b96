package strikeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What measures the program has a build of its own, which few run: it has to compile with it. */
class BenchTest {

  @TempDir private Path classes;

  @Test
  void itCompilesWithTheProgram() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter told = new StringWriter();
    try (Stream<Path> sources = Files.walk(Path.of("src/bench/java"));
        StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      List<Path> all =
          sources.filter(path -> path.toString().endsWith(".java") && !needsJmh(path)).toList();
      assertThat(all).hasSizeGreaterThan(3);
      boolean compiled =
          compiler
              .getTask(
                  told,
                  files,
                  null,
                  List.of("-proc:none", "-d", classes.toString()),
                  null,
                  files.getJavaFileObjectsFromPaths(all))
              .call();
      assertThat(compiled).as("%s", told).isTrue();
    }
  }

  /** Its library is there in the build of the measurements alone. */
  private static boolean needsJmh(Path source) {
    try {
      return Files.readString(source).contains("import org.openjdk.jmh.");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

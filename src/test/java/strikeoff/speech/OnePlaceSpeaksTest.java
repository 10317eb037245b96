package strikeoff.speech;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ThrowTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Facts hold what is true, typed; only {@code speech} makes words of it. */
class OnePlaceSpeaksTest {

  private static final Path SOURCES = Path.of("src/main/java/strikeoff");

  /**
   * Packages that derive facts; {@code day} has {@code day.facts} in it. A moment on the day's
   * clock tells itself, as quantities do.
   */
  private static final List<String> FACTS =
      List.of(
          "artwork.facts",
          "evidence",
          "chemistry",
          "screens",
          "layout",
          "drying",
          "day",
          "colour",
          "sequence",
          "cloth",
          "paste",
          "bath",
          "care",
          "materials",
          "facts");

  private static final Pattern TWO_WORDS = Pattern.compile("\\p{L}{2,}['’]?\\p{L}* +\\p{L}{2,}");

  /** Words that are written into a plan, or into a rule of a studio's own. */
  private static final Set<String> LANGUAGE =
      Set.of(
          "baking soda",
          "before moving",
          ", dry between colours: ",
          "dry between colours",
          "drying place",
          "drying places",
          "hair dryers",
          "dry between neighbours",
          "dry between passes",
          "dry: until fix-safe",
          "dry: until lift-safe",
          "end of day",
          "every other",
          "soda ash",
          "start on");

  @Test
  void factsHoldNoSentences() throws IOException {
    assertThat(speaking()).as("classes of the facts that speak").isEmpty();
  }

  /**
   * Texts of two words and more, by class; what an exception says is for whoever mends the tool.
   */
  private static Map<String, List<String>> speaking() throws IOException {
    Map<String, List<String>> speaking = new TreeMap<>();
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  files,
                  null,
                  List.of("-proc:none"),
                  null,
                  files.getJavaFileObjectsFromPaths(sources()));
      for (CompilationUnitTree unit : task.parse()) {
        Path file = SOURCES.toAbsolutePath().relativize(Path.of(unit.getSourceFile().toUri()));
        String name = file.toString().replace(".java", "").replace('/', '.');
        unit.accept(
            new TreeScanner<Void, Void>() {
              @Override
              public Void visitLiteral(LiteralTree literal, Void none) {
                if (literal.getValue() instanceof String text
                    && !LANGUAGE.contains(text)
                    && TWO_WORDS.matcher(text).find()) {
                  speaking.computeIfAbsent(name, n -> new ArrayList<>()).add(text);
                }
                return null;
              }

              @Override
              public Void visitThrow(ThrowTree thrown, Void none) {
                return null;
              }

              @Override
              public Void visitAnnotation(AnnotationTree annotation, Void none) {
                return null;
              }

              @Override
              public Void visitNewClass(NewClassTree made, Void none) {
                return made.getIdentifier().toString().endsWith("Exception")
                    ? null
                    : super.visitNewClass(made, none);
              }
            },
            null);
      }
    }
    return speaking;
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> all = Files.walk(SOURCES)) {
      return all.filter(
              file ->
                  file.toString().endsWith(".java")
                      && FACTS.contains(SOURCES.relativize(file).getName(0).toString()))
          .filter(file -> !file.endsWith("day/Moment.java"))
          .sorted()
          .toList();
    }
  }
}

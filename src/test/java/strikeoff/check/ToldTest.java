package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.findings.Finding;
import strikeoff.mend.EditTrials;

/**
 * Whole plans and what printers are told about them. Lines of a plan that begin with {@code #:} say
 * it: {@code finds stop RULE} and so on, {@code not RULE}, {@code says TEXT} and {@code says not
 * TEXT} of all messages and remedies together, {@code writes TEXT} and {@code writes not TEXT} of
 * the lines of mends that were tried. Further lines that begin with {@code #= FIND ==> PUT} make a
 * second plan of the first, for which the {@code #:} lines after it hold.
 */
class ToldTest {

  private static final Path PLANS = Path.of("src/test/resources/strikeoff/check/told");

  private static final Checker CHECKER = Checker.builtIn();

  static Stream<Path> plans() throws IOException {
    try (Stream<Path> files = Files.list(PLANS)) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void saysWhatAPrinterNeeds(Path file) throws IOException {
    String text = Files.readString(file);
    String now = text;
    Checked.Judged judged = judged(file, now);
    int said = 0;
    for (String line : text.lines().toList()) {
      if (line.startsWith("#= ")) {
        String[] parts = line.substring(3).split(" ==> ", 2);
        assertThat(now).contains(parts[0]);
        now = now.replace(parts[0], parts[1]);
        judged = judged(file, now);
      } else if (line.startsWith("#: ")) {
        said++;
        expect(judged, line.substring(3).strip());
      }
    }
    assertThat(said).isPositive();
  }

  private static Checked.Judged judged(Path file, String text) {
    Checked checked = EditTrials.tried(CHECKER.check(file.toString(), text), CHECKER);
    assertThat(checked).isInstanceOf(Checked.Judged.class);
    return (Checked.Judged) checked;
  }

  private static void expect(Checked.Judged judged, String what) {
    List<Finding> findings = judged.findings();
    String told =
        String.join("\n", findings.stream().map(f -> f.message() + " " + f.remedy()).toList());
    String written =
        String.join(
            "\n",
            findings.stream()
                .flatMap(f -> f.mends().stream())
                .flatMap(m -> m.hunks().stream())
                .flatMap(h -> h.come().stream())
                .toList());
    List<String> found =
        findings.stream().map(f -> f.severity().text() + " " + f.rule().id()).toList();
    if (what.startsWith("finds ")) {
      assertThat(found).as(what).contains(what.substring(6));
    } else if (what.startsWith("not ")) {
      assertThat(found).as(what).noneMatch(f -> f.endsWith(" " + what.substring(4)));
    } else if (what.startsWith("says not ")) {
      assertThat(told).as(what).doesNotContain(what.substring(9));
    } else if (what.startsWith("says ")) {
      assertThat(told).as(what).contains(what.substring(5));
    } else if (what.startsWith("writes not ")) {
      assertThat(written).as(what).doesNotContain(what.substring(11));
    } else if (what.startsWith("writes ")) {
      assertThat(written).as(what).contains(what.substring(7));
    } else {
      throw new IllegalArgumentException(what);
    }
  }
}

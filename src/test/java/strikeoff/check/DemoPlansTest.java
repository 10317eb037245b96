package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.findings.Severity;

/** The plans that come with the project: what each is there to show, and nothing else. */
class DemoPlansTest {

  private static final Path PLANS = Path.of("plans");
  private static final Checker CHECKER = Checker.builtIn();

  @ParameterizedTest
  @CsvSource({
    "estuary-curtains, 160",
    "first-border, 40",
  })
  void isPrintableWithNothingToChangeAndShortEnough(String plan, int mostLines) throws IOException {
    Path file = PLANS.resolve(plan + ".yaml");

    assertThat(stopsAndRisks(file)).isEmpty();
    assertThat(Files.readAllLines(file)).hasSizeLessThanOrEqualTo(mostLines);
  }

  /**
   * Rules that find a stop or a risk, in alphabetical order; the whole list, so nothing else may.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "mistakes/dark-first         | order/dark-before-light",
        "mistakes/four-stations      | table/too-many-stations",
        "mistakes/frame-too-small    | screens/image-too-large-for-frame",
        "mistakes/hot-bath           | fixing/bath-too-hot",
        "mistakes/moved-wet          | drying/moved-before-lift-safe",
        "mistakes/no-mask            | care/dye-powder-without-mask care/soda-without-gloves",
        "mistakes/open-skirt         | layout/tube-does-not-close",
        "mistakes/paint-for-dye      | drying/frame-on-wet-film drying/frame-on-wet-neighbour drying/paint-dries-in-screen",
        "mistakes/sand-on-slate      | order/colour-lighter-than-ground",
        "mistakes/short-blue         | paste/short",
        "mistakes/soda-in-paste      | fixing/alkali-twice paste/may-be-past-its-life paste/past-its-life",
        "mistakes/thin-bath          | fixing/soda-too-weak",
        "mistakes/unsewn-seam        | seams/never-sewn",
        "class/ivo                   | -",
        "class/mina                  | -",
        "class/otis                  | drying/frame-on-wet-film",
        "class/sunniva               | paste/short",
        "class/tobias                | fixing/heat-set-too-early",
        "class/vigo                  | cloth/dye-on-unsuited-fibre",
        "class-second/otis           | -",
        "class-second/sunniva        | paste/short",
        "class-second/tobias         | -",
        "class-second/uma            | drying/frame-on-wet-film",
        "class-second/vigo           | -",
      })
  void showsItsMistakeAndNothingElse(String plan, String rules) {
    List<String> expected = rules == null ? List.of() : List.of(rules.split(" "));

    assertThat(stopsAndRisks(PLANS.resolve(plan + ".yaml"))).containsExactlyElementsOf(expected);
  }

  @Test
  void aPlanWithSlipsOfThePenIsUnreadableAndEachSlipIsTold() {
    Checked uma = CHECKER.check(PLANS.resolve("class/uma.yaml"), "uma.yaml");

    assertThat(uma).isInstanceOf(Checked.Unreadable.class);
    assertThat(((Checked.Unreadable) uma).problems())
        .extracting(p -> p.position() + " " + p.path())
        .containsExactly(
            "21:60 screens.shell ribs.mesh",
            "30:37 designs.cockle.separations[1].paste",
            "39:5 run[4]");
  }

  @Test
  void everyPlanIsNamedHere() throws IOException {
    String self = Files.readString(Path.of("src/test/java/strikeoff/check/DemoPlansTest.java"));
    try (Stream<Path> files = Files.walk(PLANS)) {
      // A workshop's class is checked under its own policy, by a test of its own.
      assertThat(
              files
                  .filter(f -> f.toString().endsWith(".yaml") && !f.startsWith("plans/workshop"))
                  .sorted())
          .allSatisfy(
              file -> {
                String name = PLANS.relativize(file).toString().replace('\\', '/');
                assertThat(self).contains(name.substring(0, name.length() - ".yaml".length()));
              });
    }
  }

  private static TreeSet<String> stopsAndRisks(Path file) {
    Checked checked = CHECKER.check(file, file.getFileName().toString());
    assertThat(checked).as(checked.sentence()).isInstanceOf(Checked.Judged.class);
    Checked.Judged judged = (Checked.Judged) checked;
    assertThat(judged.failedRules()).isEmpty();
    TreeSet<String> rules = new TreeSet<>();
    judged.findings().stream()
        .filter(f -> f.severity() != Severity.ADVICE)
        .forEach(f -> rules.add(f.rule().id()));
    return rules;
  }
}

package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Plans as long as one may be, all of one kind of thing: none costs the square of its length. */
class ManyOfOneKindTest {

  private static final Checker CHECKER = Checker.builtIn();

  /** Took 44 s and more on the machine where it now takes 3. */
  private static final Duration SOON = Duration.ofSeconds(60);

  private String border;

  @BeforeEach
  void plan() throws Exception {
    border = Files.readString(Path.of("plans/first-border.yaml"));
    CHECKER.check("border.yaml", border);
  }

  private static String many(int count, IntFunction<String> line) {
    return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining("\n", "", "\n"));
  }

  private Checked soon(String plan) {
    return assertTimeoutPreemptively(SOON, () -> CHECKER.check("many.yaml", plan));
  }

  @Test
  void acceptancesThatNothingAnswersTo() {
    String accept =
        many(15_500, i -> "  - {rule: seams/ridge-under-squeegee, because: tried " + i + "}");
    Checked checked = soon(border + "accept:\n" + accept);
    assertThat(((Checked.Judged) checked).findings())
        .filteredOn(f -> f.rule().id().equals("acceptance/matches-nothing"))
        .hasSize(101)
        .anySatisfy(f -> assertThat(f.message()).contains("15400 times more"));
  }

  @Test
  void placesThatAreNotThere() {
    String accept =
        many(
            11_000,
            i -> "  - {rule: seams/ridge-under-squeegee, at: \"seam.s" + i + "\", because: tried}");
    Checked checked = soon(border + "accept:\n" + accept);
    assertThat(((Checked.Unreadable) checked).problems()).hasSize(101);
  }

  @Test
  void rulesThatThereAreNone() {
    String accept = many(15_500, i -> "  - {rule: seams/rigde-" + i + ", because: tried}");
    Checked checked = soon(border + "accept:\n" + accept);
    assertThat(((Checked.Unreadable) checked).problems())
        .hasSize(101)
        .last()
        .satisfies(
            p ->
                assertThat(p.message())
                    .isEqualTo("and 15400 more; mend these first, then check again"));
  }

  @Test
  void pastesOfWhichNoneIsPrinted() {
    String pastes = many(3000, i -> "  p" + i + ": {medium: dye, group: DCT, colour: \"#1d3f72\"}");
    Checked checked = soon(border.replace("pastes:\n", "pastes:\n" + pastes));
    assertThat(checked).isInstanceOf(Checked.Judged.class);
  }

  /** Two hundred colours are twenty thousand pairs; what is reported of them is bounded. */
  @Test
  void coloursOfOneDesignThatAllLookAlike() {
    int colours = 400;
    String pastes =
        many(colours, i -> "  p" + i + ": {medium: dye, group: DCT, colour: \"#1d3f72\"}");
    String separations =
        many(colours, i -> "      - {screen: reeds, paste: p" + i + ", covers: 1 %}");
    Checked checked =
        soon(
            border
                .replace("pastes:\n", "pastes:\n" + pastes)
                .replace("    separations:\n", "    separations:\n" + separations));
    assertThat(checked.verdict()).isIn(Verdict.NOT_PRINTABLE, Verdict.NOT_CHECKED);
  }

  /**
   * Each is lost on hundreds of others, and a deeper tone that shows was looked for on each of them
   * apart, which took twice as long as anybody waits.
   */
  @Test
  void aThousandColoursOfOneDesign() {
    int colours = 1000;
    String pastes =
        many(
            colours,
            i ->
                "  p"
                    + i
                    + ": {medium: dye, group: DCT, colour: \"#"
                    + String.format("%06x", i * 40_503 % 0xffffff)
                    + "\"}");
    String separations =
        many(colours, i -> "      - {screen: reeds, paste: p" + i + ", covers: 1 %}");
    Checked.Judged judged =
        (Checked.Judged)
            soon(
                border
                    .replace("pastes:\n", "pastes:\n" + pastes)
                    .replace("    separations:\n", "    separations:\n" + separations));
    assertThat(judged.findings())
        .filteredOn(f -> f.rule().id().equals("order/colour-lost-on-others"))
        .hasSizeGreaterThan(50);
  }

  /** Four hundred are eighty thousand pairs, of which some thousands are told apart. */
  @Test
  void placementsThatAllLieOnEachOther() {
    String placements =
        many(400, i -> "  p" + i + ": {design: reeds, at: [\"" + (10 + i % 20) + " cm, 40 cm\"]}");
    Checked.Judged judged =
        (Checked.Judged) soon(border.replace("placements:\n", "placements:\n" + placements));
    assertThat(judged.failedRules()).isEmpty();
    assertThat(judged.findings())
        .filteredOn(f -> f.rule().id().equals("layout/placements-overlap"))
        .hasSizeGreaterThan(100);
  }

  @Test
  void placementsThatHangOnOneAnother() {
    String chain =
        "  p0: {design: reeds, at: [\"10 cm, 40 cm\"]}\n"
            + many(
                4_000,
                i ->
                    "  p"
                        + (i + 1)
                        + ": {design: reeds, anchor: p"
                        + i
                        + ", offset: \"1 mm, 0 cm\"}");
    Checked checked = soon(border.replace("placements:\n", "placements:\n" + chain));
    assertThat(((Checked.Judged) checked).failedRules()).isEmpty();
  }
}

package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.check.Checked;
import strikeoff.check.Checker;

/** What may lie on what, and over the table's edge: common practice, no source. */
class OnPurposeTest {

  private static final Checker CHECKER = Checker.builtIn();

  private static final String STARS_ON_WAVES =
      """
      plan: Stars on waves
      cloth: {length: 2 m, width: 90 cm, washed: yes}
      screens:
        wave: {frame: 64 x 64 cm, image: 40 x 40 cm, mesh: 43/cm}
        star: {frame: 34 x 34 cm, image: 10 x 10 cm, mesh: 43/cm}
      pastes:
        navy: {medium: paint, colour: navy}
        white: {medium: paint, colour: white, transparent: no}
      designs:
        wave: {size: 40 x 40 cm, separations: [{screen: wave, paste: navy, covers: 60 %}]}
        star: {size: 10 x 10 cm, separations: [{screen: star, paste: white, covers: 40 %}]}
      placements:
        waves: {design: wave, series: 3, pitch: 50 cm, start: 20 cm, across: 25 cm}
        stars: {design: star, series: 3, pitch: 50 cm, start: 35 cm, across: 40 cm}
      """;

  @Test
  void whatIsPrintedOverAnotherOnPurposeIsNoOverlapByMistake() {
    assertThat(found(STARS_ON_WAVES)).contains("layout/placements-overlap");
    assertThat(found(STARS_ON_WAVES.replace("stars: {", "stars: {over: waves, ")))
        .doesNotContain("layout/placements-overlap");
  }

  /** Only what it names: a star on a third thing is a mistake still. */
  @Test
  void itLiesOnNothingElseOnPurpose() {
    String third =
        STARS_ON_WAVES.replace("stars: {", "stars: {over: waves, ")
            + "  more: {design: star, at: \"38 cm, 42 cm\", over: waves}\n";
    assertThat(found(third)).contains("layout/placements-overlap");
  }

  @Test
  void aFillLeavesNoRoomForWhatIsPrintedOverIt() {
    String fill =
        STARS_ON_WAVES.replace(
            "{design: wave, series: 3, pitch: 50 cm, start: 20 cm, across: 25 cm}",
            "{design: wave, fill: grid, pitch: 45 x 45 cm, from: 0 cm, to: 2 m, near: 0 cm, far: 90 cm}");
    assertThat(copies(fill.replace("stars: {", "stars: {over: waves, "), "waves")).isEqualTo(8);
    assertThat(copies(fill, "waves")).isLessThan(8);
  }

  /** Cloth of 45 in at 10.5 in on a table of 48 in hangs 7.5 in over its far side. */
  @ParameterizedTest
  @CsvSource({
    // frames of 20 in from the near edge on end at 20 in, 30.5 in on the table
    "45 in, 10.5 in, 5 in, false",
    // from 22 in on they end 42 in up the cloth, 52.5 in up the table
    "45 in, 10.5 in, 27 in, true",
  })
  void aClothMayHangOverOneSideIfAllFramesLieOnTheTable(
      String width, String at, String across, boolean over) {
    String plan =
        """
        plan: A cloth that hangs over
        cloth: {length: 2 yd, width: %s, washed: yes}
        table: {length: 2.5 yd, width: 48 in, cloth at: %s}
        screens:
          leaf: {frame: 20 x 20 in, image: 10 x 10 in, mesh: 43/cm}
        pastes:
          green: {medium: dye, group: DCT, colour: green}
        designs:
          leaf: {size: 10 x 10 in, separations: [{screen: leaf, paste: green, covers: 40 %%}]}
        placements:
          leaves: {design: leaf, series: 3, pitch: 21 in, start: 8 in, across: %s}
        """
            .formatted(width, at, across);
    assertThat(found(plan)).doesNotContain("table/frame-off-table");
    assertThat(found(plan).contains("table/frame-over-table-edge")).isEqualTo(over);
  }

  private static List<String> found(String plan) {
    return judged(plan).findings().stream().map(f -> f.rule().id()).toList();
  }

  private static int copies(String plan, String arrangement) {
    return judged(plan).facts().layout().of(arrangement).size();
  }

  private static Checked.Judged judged(String plan) {
    Checked checked = CHECKER.check("plan.yaml", plan);
    assertThat(checked).as(checked.sentence()).isInstanceOf(Checked.Judged.class);
    return (Checked.Judged) checked;
  }
}

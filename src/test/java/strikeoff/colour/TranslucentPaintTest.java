package strikeoff.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.check.Checked;
import strikeoff.check.Checker;

/**
 * Paint of no stated grade on grounds from black to white: a print shop on its primer layer has it
 * that such inks don't register on black, a hobby page of 2008 that light ones fail on very dark
 * red, black or blue and dark ones do well on white, pastel and middle colours.
 */
class TranslucentPaintTest {

  private static final Checker CHECKER = Checker.builtIn();

  @ParameterizedTest
  @CsvSource({
    "'#f2c800', black, STOP order/colour-lighter-than-ground",
    "white, '#5a0f14', STOP order/colour-lighter-than-ground",
    "'#f4d6dc', navy, STOP order/colour-lighter-than-ground",
    "'#f4d6dc', '#5b7a99', RISK order/colour-dulled-by-ground",
    "'#f2c800', '#7a5230', RISK order/colour-dulled-by-ground",
    "'#f2c800', '#b8c4a8', ''",
    "white, '#e6d9b8', ''",
    "black, '#f2c800', ''",
    "'#2b3440', '#b5653a', ''",
    "'#2b3440', white, ''",
  })
  void isFoundWhereLightCoversDark(String paint, String ground, String expected) {
    assertThat(found(paint, ground, "")).isEqualTo(expected);
  }

  /** The grade that is bought for dark cloth, said so. */
  @ParameterizedTest
  @CsvSource({"'#f2c800', black", "white, '#5a0f14'", "'#f4d6dc', '#5b7a99'"})
  void anOpaqueGradeShows(String paint, String ground) {
    assertThat(found(paint, ground, ", transparent: no")).isEmpty();
  }

  /**
   * It is neither as on white nor as dye would be: between the two, the more so the more it hides.
   */
  @ParameterizedTest
  @CsvSource({"'#f2c800', black", "'#f4d6dc', '#5b7a99'", "'#d98a6a', '#6f7f45'"})
  void looksBetweenDyeAndOpaquePaint(String paint, String ground) {
    double translucent = lightness(paint, ground, "medium: paint");
    assertThat(translucent).isGreaterThan(lightness(paint, ground, "medium: dye, group: DCT") + 3);
    assertThat(translucent)
        .isLessThan(lightness(paint, ground, "medium: paint, transparent: no") - 3);
  }

  private static double lightness(String colour, String ground, String medium) {
    Checked.Judged judged = check(plan(colour, ground, medium));
    return judged.facts().swatches().of("ink").onGroundLab().lightness();
  }

  private static String found(String paint, String ground, String more) {
    Checked.Judged judged = check(plan(paint, ground, "medium: paint" + more));
    return judged.findings().stream()
        .filter(f -> f.rule().id().startsWith("order/colour"))
        .map(f -> f.severity() + " " + f.rule().id())
        .reduce("", (a, b) -> a + b);
  }

  private static Checked.Judged check(String plan) {
    return (Checked.Judged) CHECKER.check("paint.yaml", plan);
  }

  private static String plan(String colour, String ground, String medium) {
    return """
    plan: Cockle shells
    cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes, ground: "%s"}
    table: {length: 2.4 m, width: 1.4 m, railed: yes}
    screens:
      shell: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
    pastes:
      ink: {%s, colour: "%s"}
    designs:
      shell: {size: 30 x 22 cm, separations: [{screen: shell, paste: ink, covers: 40 %%}]}
    placements:
      shells: {design: shell, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
    """
        .formatted(ground, medium, colour);
  }
}

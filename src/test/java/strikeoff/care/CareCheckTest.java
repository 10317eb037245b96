package strikeoff.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.bath.Soak;
import strikeoff.checks.Check;
import strikeoff.checks.Rows;
import strikeoff.checks.Worked;
import strikeoff.speech.HazardSpeech;

/** Figures that cautions rest on, and who states them. */
public class CareCheckTest {

  public static List<Check> checks() {
    Rows rows = new Rows();
    rows.published("city code of Godley, Texas")
        .row("highest pH to the sewer", "the strictest that was read", 9.5, 1e-9, () -> drain());
    return rows.checks();
  }

  private static double drain() {
    return Worked.POLICY.limit("care/drain-ph").amount();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void limitsAreTheStatedOnes(Check check) {
    check.assertHolds();
  }

  /** A bath of 40 g/L breaks both codes by the model, as its pH of 11.3 to 11.7 says. */
  @Test
  void aSodaBathBreaksEveryCodeThatWasRead() {
    Soak bath =
        Worked.reeds(
                "medium: dye, group: DCT, colour: green, amount: 100 g",
                """
                - mix: all
                - print: reeds
                - dry: until fix-safe
                - fix: soak
                  bath: {soda ash: 200 g, water: 5 L}
                  for: 60 min
                """)
            .the(Soak.class);
    assertThat(bath.lowestPh()).isGreaterThan(11.0);
    assertThat(bath.highestPh()).isLessThan(12.5);
  }

  @Test
  void everyHazardNamesWhoStatesIt() {
    assertThat(Hazard.values()).allSatisfy(h -> assertThat(HazardSpeech.body(h)).isNotBlank());
    assertThat(HazardSpeech.body(Hazard.DYE_POWDER)).contains("HSE", "EN 149");
    assertThat(HazardSpeech.body(Hazard.ALKALI))
        .contains("International Chemical Safety Card 1135");
    assertThat(HazardSpeech.body(Hazard.DRAIN)).contains("40 CFR 403.5");
  }
}

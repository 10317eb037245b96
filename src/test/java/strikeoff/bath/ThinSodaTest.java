package strikeoff.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.plan.Colour;
import strikeoff.policy.ReactiveGroup;
import strikeoff.speech.FixSpeech;
import strikeoff.units.Measures;
import strikeoff.units.Range;

/** What water and cloth leave of little soda, and which share of dye a stop is held against. */
class ThinSodaTest {

  /** 360 g of cotton in 4 L; 38 °C, 45 min, on green of DCT. */
  private static FixTime soaked(String soda) {
    return Worked.reeds(
            "medium: dye, group: DCT, colour: green, amount: 200 g",
            """
            - mix: all
            - print: reeds
            - dry: until fix-safe
            - fix: soak
              bath: {soda ash: %s, salt: 600 g, water: 4 L}
              temperature: 35 °C
              for: 45 min
            - rinse: 15 °C
            """
                .formatted(soda))
        .the(FixTime.class);
  }

  /**
   * 1.5 g are 14 mmol. Middling water takes 1.4 mmol a litre of it, 5.7, and 0.36 kg of cotton with
   * 30 mmol/kg 10.8: nothing is left of it, and 4.8 mmol a litre of bicarbonate hold the pH down.
   */
  @Test
  void aPinchOfSodaIsUsedUpByWaterAndCloth() {
    assertThat(soaked("1.5 g").median()).isLessThan(0.15);
    assertThat(soaked("1.5 g").fixed()).isLessThan(0.15);
  }

  /** 150 g are 1415 mmol, of which both take one in a hundred. */
  @Test
  void aBathAsDyersMixItDoesNotNoticeThem() {
    assertThat(soaked("150 g").fixed()).isGreaterThan(0.95);
  }

  /** Alkali in the paste and in the bath is one too much already: fixing/alkali-twice. */
  @Test
  void nobodyIsToldToAddSodaForPastesThatHoldTheirOwn() {
    FixTime own =
        Worked.reeds(
                "medium: dye, group: DCT, colour: green, amount: 200 g, alkali: in paste",
                """
                - mix: all
                - print: reeds
                - dry: until fix-safe
                - fix: soak
                  bath: {soda ash: 1.5 g, salt: 600 g, water: 4 L}
                  temperature: 35 °C
                  for: 45 min
                - rinse: 15 °C
                """)
            .the(FixTime.class);
    assertThat(FixSpeech.mending(own, Measures.METRIC))
        .startsWith("Steam it")
        .doesNotContain("soda ash");
    assertThat(own.thin()).isEmpty();
    assertThat(FixSpeech.mending(soaked("1.5 g"), Measures.METRIC)).contains("of soda ash");
  }

  @Test
  void moreSodaNeverFixesLess() {
    double before = 0;
    for (double grams : new double[] {1, 2, 4, 8, 12, 20, 40, 80, 160}) {
      double now = soaked(grams + " g").fixed();
      assertThat(now).as("%s g", grams).isGreaterThanOrEqualTo(before - 1e-9);
      before = now;
    }
  }

  /**
   * Steam of 30 s on a dye that needs 8 to 24 min, likeliest 8: the middle factor is 8 · √3 = 13.9
   * min, and 1 − 0.05^(0.5/13.86) = 10.2 %, where the likeliest is 17.1 %.
   */
  @Test
  void theMiddleOfARangeIsThatOfTheTimesFactor() {
    Range share = new Range(left(0.5 / 24), left(0.5 / 8), left(0.5 / 8));
    assertThat(share(share).median()).isCloseTo(0.1024, within(0.0005));
    assertThat(share(Range.exactly(0.4)).median()).isCloseTo(0.4, within(1e-12));
    assertThat(share(new Range(0, 0.3, 0.5)).median()).isZero();
    assertThat(share(new Range(0.2, 1, 1)).median()).isBetween(0.2, 1.0);
  }

  private static double left(double parts) {
    return 1 - Math.pow(0.05, parts);
  }

  private static FixedShare share(Range share) {
    ReactiveGroup group = Worked.POLICY.groups().get(0);
    Colour any =
        Worked.reeds("medium: dye, group: DCT, colour: green", "- mix: all\n- print: reeds\n")
            .plan()
            .pastes()
            .get("green")
            .colour();
    return new FixedShare("green", group, false, share, Range.exactly(1), any, any, any);
  }
}

package strikeoff.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.day.facts.ClothTakenUp;
import strikeoff.speech.BathSpeech;
import strikeoff.speech.FixSpeech;
import strikeoff.speech.HeatSpeech;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Measures;

/**
 * Two pastes printed and fixed in turn: each step sees what lies on the cloth then, and no more.
 */
class FixedInPhasesTest {

  private static final String DCT = "medium: dye, group: DCT, colour: green, amount: 100 g";
  private static final String MCT = "medium: dye, group: MCT, colour: blue, amount: 100 g";
  private static final String PAINT = "medium: paint, colour: blue, amount: 100 g";
  private static final String SOAK =
      """
      - fix: soak
        bath: {soda ash: 200 g, water: 5 L}
        temperature: %d °C
        for: %s
      """;

  @Test
  void theSlowestAndTheMostDelicateGroupEachSetALimit() {
    // DCT reacts from 25 °C and stands 40, MCT from 80 to 85: too cold for one or too hot for the
    // other
    Worked worked =
        two(DCT, MCT, "- mix: all\n- print: all\n- dry: until fix-safe\n" + soak(35, "60 min"));
    Warmth warmth = worked.the(FixTemperature.class).warmth();
    assertThat(warmth.coolestGroup()).isEqualTo("monochlorotriazine");
    assertThat(warmth.warmestGroup()).isEqualTo("dichlorotriazine");
    assertThat(warmth.windowsMeet()).isFalse();
    assertThat(warmth.windows()).hasSize(2);
    assertThat(HeatSpeech.degreesCold(warmth, Measures.METRIC)).isEqualTo("45 °C");
    assertThat(HeatSpeech.degreesHot(warmth, Measures.METRIC)).isEqualTo("-5 °C");
    assertThat(warmth.neededGroup()).isEqualTo("monochlorotriazine");
    assertThat(warmth.timeKnown()).isFalse();
    assertThat(worked.the(Soak.class).dyes()).containsExactly("green", "blue");
  }

  @Test
  void theTimeNeededIsToldInWholeMinutes() {
    // 30 min at 32 °C for a middle green, carried to 20 °C by Arrhenius with 81 kJ/mol:
    // 30 · exp(81000 / 8.314 · (1/293.15 − 1/305.15)) = 110.8
    FixTime time =
        two(DCT, PAINT, "- mix: green\n- print: reeds\n- dry: 1 day\n" + soak(20, "40 min"))
            .the(FixTime.class);
    Warmth warmth = time.warmth();
    assertThat(warmth.neededMinutes().best()).isCloseTo(110.8, within(1.0));
    // first order: 1 − 0.05^(40/110.8)
    assertThat(time.fixed()).isCloseTo(0.661, within(0.005));
    assertThat(FixSpeech.mending(time, Measures.METRIC)).startsWith("Keep it at 32 °C for 30 min");
    assertThat(warmth.timeKnown()).isTrue();
    assertThat(HeatSpeech.degreesCold(warmth, Measures.METRIC)).isEqualTo("1 °C");
  }

  @Test
  void aWashEndsWhatWasPrintedBeforeIt() {
    Worked worked =
        two(
            DCT,
            MCT,
            "- mix: all\n- print: reeds\n- dry: until fix-safe\n"
                + soak(30, "60 min")
                + "- rinse: 20 °C\n- wash: 60 °C\n- dry: 1 day\n- print: shells\n"
                + "- dry: until fix-safe\n"
                + soak(82, "60 min"));
    assertThat(worked.all(Soak.class))
        .extracting(Soak::dyes)
        .containsExactly(List.of("green"), List.of("blue"));
    assertThat(worked.all(FixTime.class))
        .extracting(f -> f.warmth().dyes())
        .containsExactly(List.of("green"), List.of("blue"));
    assertThat(worked.all(DyePrinted.class, AsRulesAsk::neverFixed)).isEmpty();
    // after the last fixing nothing is rinsed or washed: what came before does not count
    WashOff off = worked.the(WashOff.class);
    assertThat(off.rinsed()).isFalse();
    assertThat(off.washed()).isFalse();
    assertThat(BathSpeech.leftOut(off)).isEqualTo("rinse and no wash");
    assertThat(off.firstCelsius()).isNaN();
    assertThat(off.hottestCelsius()).isNaN();
  }

  @Test
  void theFirstRinseAndTheHottestWashCount() {
    WashOff off =
        two(
                DCT,
                MCT,
                "- mix: all\n- print: reeds\n- dry: until fix-safe\n"
                    + soak(30, "60 min")
                    + "- rinse: 20 °C\n- rinse: 30 °C\n- wash: 40 °C\n- wash: 95 °C\n"
                    + "- wash: 60 °C\n- dry: 1 day\n- print: shells\n")
            .the(WashOff.class);
    assertThat(off.dyes()).containsExactly("green");
    assertThat(off.firstCelsius()).isEqualTo(20);
    assertThat(off.hottestCelsius()).isEqualTo(95);
    assertThat(off.rinsed() && off.washed()).isTrue();
  }

  @Test
  void dyePrintedAfterTheFixingStaysUnfixed() {
    DyePrinted unfixed =
        two(
                DCT,
                MCT,
                "- mix: all\n- print: reeds\n- dry: until fix-safe\n"
                    + soak(30, "60 min")
                    + "- dry: 1 day\n- print: shells\n")
            .the(DyePrinted.class, AsRulesAsk::neverFixed);
    assertThat(unfixed.dyes()).containsExactly("blue");
    assertThat(unfixed.impressions()).isEqualTo(1);
    assertThat(unfixed.marks()).containsExactly("shells 1");
  }

  @Test
  void aSoakBeforeTheRinseBringsNoAlkaliToASteamingAfterIt() {
    Worked worked =
        two(
            DCT,
            MCT,
            "- mix: all\n"
                + soak(25, "20 min")
                + "- dry: 1 day\n- print: reeds\n- dry: until fix-safe\n- fix: steam\n  for: 3 min\n"
                + "- rinse: 20 °C\n- dry: 1 day\n- print: shells\n- dry: until fix-safe\n"
                + "- fix: steam\n  for: 30 min\n");
    assertThat(worked.the(AlkaliForDye.class, AsRulesAsk::noAlkali).dyes()).containsExactly("blue");
    Steaming brief = worked.all(Steaming.class).get(0);
    assertThat(brief.longest().minutes()).isEqualTo(60);
    // 3 of 5 min of steam, after 20 min at 25 °C of a bath for 45 at 32 are long rinsed away
    FixTime time = worked.all(FixTime.class).get(0);
    assertThat(time.fixed()).isCloseTo(1 - Math.pow(0.05, 3.0 / 5), within(1e-9));
    assertThat(FixSpeech.mending(time, Measures.METRIC)).isEqualTo("Steam it 2 min longer");
  }

  @Test
  void saltWaterBringsNoAlkali() {
    Worked worked =
        two(
            DCT,
            MCT,
            "- mix: all\n- fix: soak\n  bath: {salt: 100 g, water: 5 L}\n  for: 20 min\n"
                + "- dry: 1 day\n- print: reeds\n- dry: until fix-safe\n- fix: steam\n  for: 8 min\n");
    assertThat(worked.the(AlkaliForDye.class, AsRulesAsk::noAlkali).dyes())
        .containsExactly("green");
    assertThat(worked.the(Soak.class).hasAlkali()).isFalse();
  }

  @Test
  void onlyThePaintSinceTheLastIroningIsIronedAgain() {
    Worked worked =
        two(
            DCT,
            PAINT,
            "- mix: all\n- print: shells\n- dry: until fix-safe\n- heat-set: iron\n"
                + "- print: shells\n- dry: until fix-safe\n- heat-set: iron\n");
    // 30 by 22 cm is 660 cm², four soles of 200 cm²; the second coat lies on the first
    assertThat(worked.all(IronTime.class)).hasSize(2);
    for (IronTime iron : worked.all(IronTime.class)) {
      assertThat(iron.images().squareCm()).isCloseTo(660, within(1e-6));
      assertThat(iron.spots()).isEqualTo(4);
    }
    assertThat(worked.all(PaintPrinted.class, AsRulesAsk::neverSet)).isEmpty();
  }

  @Test
  void paintBeforeASoakIsAMatterOfMediaNotOfHeat() {
    String print = "- mix: all\n- print: shells\n- dry: until fix-safe\n";
    assertThat(
            two(DCT, PAINT, print + soak(25, "1 h")).all(PaintPrinted.class, AsRulesAsk::neverSet))
        .isEmpty();
    assertThat(
            two(DCT, PAINT, print + "- rinse: 20 °C\n")
                .all(PaintPrinted.class, AsRulesAsk::neverSet))
        .isEmpty();
    assertThat(two(DCT, PAINT, print).the(PaintPrinted.class, AsRulesAsk::neverSet).paints())
        .containsExactly("blue");
    // steam wets nothing, and sets no paint
    assertThat(
            two(DCT, PAINT, print + "- fix: steam\n  for: 8 min\n")
                .the(PaintPrinted.class, AsRulesAsk::neverSet)
                .paints())
        .containsExactly("blue");
    // what was wet before the print doesn't matter
    assertThat(
            two(DCT, PAINT, "- rinse: 20 °C\n- dry: 1 day\n" + print)
                .the(PaintPrinted.class, AsRulesAsk::neverSet)
                .paints())
        .containsExactly("blue");
  }

  @Test
  void onlyFilmsStillWetWhenItStartsAreTooWet() {
    String first = "- mix: all\n- print: reeds\n- dry: until fix-safe\n";
    ClothTakenUp wet = two(DCT, MCT, first + "- print: shells\n" + steam()).the(ClothTakenUp.class);
    assertThat(wet.marks()).containsExactly("shells 1");
    assertThat(wet.example()).startsWith("shells 1, blue");
    assertThat(wet.films()).isEqualTo(1);
    assertThat(StepSpeech.title(wet, Measures.METRIC)).isEqualTo("fix by steam");
    assertThat(wet.early().quick().minutes()).isPositive();
    assertThat(wet.early().quick().minutes()).isLessThan(wet.early().ordinary().minutes());
    assertThat(wet.early().ordinary().minutes()).isLessThan(wet.early().slow().minutes());
    assertThat(wet.surelySafeAt().since(wet.at()).minutes())
        .isCloseTo(wet.early().slow().minutes(), within(1e-9));
    // A batch keeps the print damp on purpose: it only has to be so dry that wrapping smears
    // nothing.
    String batch = "- fix: batch\n  for: 12 h\n";
    assertThat(two(DCT, MCT, first + "- print: shells\n" + batch).all(ClothTakenUp.class))
        .singleElement()
        .satisfies(taken -> assertThat(taken.wrapped()).isTrue())
        .satisfies(taken -> assertThat(taken.early().quick()).isLessThan(wet.early().quick()));
    assertThat(
            two(DCT, MCT, first + "- print: shells\n- dry: until lift-safe\n" + batch)
                .all(ClothTakenUp.class))
        .isEmpty();
  }

  @Test
  void dryEnoughToLiftIsNotDryEnoughToSteam() {
    String print = "- mix: all\n- print: reeds\n";
    assertThat(two(DCT, MCT, print + "- dry: until lift-safe\n" + steam()).all(ClothTakenUp.class))
        .hasSize(1);
    assertThat(two(DCT, MCT, print + "- dry: until fix-safe\n" + steam()).all(ClothTakenUp.class))
        .isEmpty();
    // the test by touch after the steam tells nothing of before
    assertThat(two(DCT, MCT, print + steam() + "- dry: until fix-safe\n").all(ClothTakenUp.class))
        .hasSize(1);
  }

  private static String soak(int celsius, String lasts) {
    return SOAK.formatted(celsius, lasts);
  }

  private static String steam() {
    return "- fix: steam\n  for: 8 min\n";
  }

  private static Worked two(String green, String blue, String steps) {
    return Worked.reeds(
        """
        pastes:
          green: {%s}
          blue: {%s}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
          shells: {size: 30 x 22 cm, separations: [{screen: reeds, paste: blue, covers: 40 %%}]}
        placements:
          reeds: {design: reeds, at: "10 cm, 30 cm"}
          shells: {design: shells, at: "110 cm, 30 cm"}
        run:
        %s"""
            .formatted(green, blue, steps.indent(2)));
  }
}

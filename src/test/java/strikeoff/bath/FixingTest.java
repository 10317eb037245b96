package strikeoff.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow;
import strikeoff.checks.CheckRow.Status;
import strikeoff.checks.Rows;
import strikeoff.checks.Worked;
import strikeoff.chemistry.Arrhenius;
import strikeoff.day.facts.ClothTakenUp;
import strikeoff.policy.ReactiveGroup;
import strikeoff.speech.BathSpeech;
import strikeoff.speech.HeatSpeech;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Measures;

/** Alkali, warmth and time of dye, heat on paint. */
public class FixingTest {

  private static final String DYE = "medium: dye, group: DCT, colour: green, amount: 100 g";
  private static final String ALKALINE = DYE + ", alkali: in paste";
  private static final String PAINT = "medium: paint, colour: green, amount: 100 g";
  private static final String COURSE = "a textile course's table of reactive groups";

  public static List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    window(checks, "dichlorotriazine", 25, 40);
    window(checks, "vinyl sulphone", 40, 60);
    window(checks, "monofluorotriazine", 40, 60);
    window(checks, "difluorochloropyrimidine", 30, 50);
    window(checks, "dichloroquinoxaline", 50, 70);
    window(checks, "monochlorotriazine", 80, 85);
    window(checks, "trichloropyrimidine", 80, 95);
    window(checks, "nicotinyltriazine", 100, 130);
    String steam = "lecture note on reactive printing";
    checks.add(
        row("shortest steam, min", "DCT, 100-102 °C", 5, steam, dct().shortestSteam().minutes()));
    checks.add(
        new Check(
            CheckRow.within(
                20,
                60,
                "longest steam, min",
                "DCT on silk, pot steamer",
                "a hand-dyeing site's forum",
                Status.PUBLISHED),
            () -> dct().longestSteam().minutes()));
    checks.add(
        new Check(
            CheckRow.within(
                12,
                24,
                "batch, h",
                "DCT, 21-27 °C, pale shade",
                "staff forum of a US dye maker, setting dyes",
                Status.PUBLISHED),
            () -> dct().batch().pale().hours()));
    checks.add(
        new Check(
            new CheckRow(
                "surely sets from, °C",
                "acrylic binder",
                150,
                10,
                "textile note of 2013",
                Status.PUBLISHED),
            () -> Worked.POLICY.limit("fixing/sure-heat-set").amount()));
    checks.add(
        new Check(
            CheckRow.within(
                4,
                5,
                "shortest heat-set, min",
                "acrylic binder, 150 °C",
                "textile note of 2013",
                Status.PUBLISHED),
            () -> Worked.POLICY.limit("fixing/shortest-heat-set").amount()));
    checks.addAll(more());
    return checks;
  }

  private static List<Check> more() {
    Rows rows = new Rows();
    rows.published("lecture note on reactive printing")
        .row("steam taken, °C", "100-102 °C", 101, 1, () -> standard("fix.temperature.steam"));
    rows.published("a laboratory manual's page on printing")
        .within("steam taken, °C", "saturated", 100, 105, () -> standard("fix.temperature.steam"));
    rows.computed("IAPWS-IF97, boiling points at 500 to 1500 m")
        .within(
            "coolest steam, °C",
            "pot in the hills",
            95.0,
            98.3,
            () -> limit("fixing/coolest-steam"));
    rows.published("a binder maker's test method")
        .row("heat-set taken, °C", "oven", 150, 1e-9, () -> heatSet().temperature().celsius())
        .row("heat-set taken, min", "oven, 150 °C", 5, 1e-9, () -> heatSet().lasts().minutes());
    rows.published("hand-dyeing FAQ of 2005")
        .row("life with soda, min", "DCT", 60, 1e-9, () -> dct().lifeWithAlkali().minutes())
        .row(
            "life without soda, days",
            "DCT",
            7,
            1e-9,
            () -> dct().lifeWithoutAlkali().hours() / 24);
    rows.published("suppliers' guidance for hand dyeing")
        .within(
            "weakest bath, g/L",
            "1 US cup of light soda ash to the US gallon",
            35.6,
            40.6,
            () -> limit("fixing/usual-bath"));
    rows.published("Burch, hand-dyeing blog, May 2008: forgotten soda")
        .within(
            "weakest bath, g/L",
            "a third of a US cup to 1 US cup of light soda ash to the US gallon",
            11.9,
            40.6,
            () -> limit("fixing/weakest-bath"));
    rows.published("Burch, hand-dyeing FAQ on temperature: three times for ten degrees")
        .row(
            "factor of the rate",
            "20 → 30 °C",
            3,
            0.05,
            () -> Arrhenius.factor(limit("fixing/activation-energy-usual"), 20, 30))
        .within(
            "factor of the rate",
            "4 → 24 °C, 9 within the source's factor of 1.5",
            6,
            13.5,
            () -> Arrhenius.factor(limit("fixing/activation-energy-usual"), 4, 24));
    rows.published("staff forum of a US dye maker and Burch: batches of a DCT")
        .within("batch, h", "21 °C, overnight", 8, 14, () -> batch(21))
        .within("batch, h", "32 °C, a few hours", 2.4, 5.4, () -> batch(32))
        .within("batch, h", "35 °C, a couple of hours", 1.8, 4, () -> batch(35));
    rows.published("UK supplier's instructions for dichlorotriazines")
        .row("soak, min", "pale", 30, 1e-9, () -> dct().soak().pale().minutes())
        .row("soak, min", "deep", 45, 1e-9, () -> dct().soak().deep().minutes());
    rows.published("class handout on direct application of a monofluorotriazine")
        .row("batch, h", "MFT, pale", 24, 1e-9, () -> mft().batch().pale().hours())
        .row("batch, h", "MFT, dark", 48, 1e-9, () -> mft().batch().deep().hours());
    rows.published("Australian ink supplier, setting inks")
        .row("heat-set, min", "tunnel, 160 °C", 3, 0.3, () -> oven(160))
        .row("heat-set, min", "tunnel, 180 °C", 2, 0.3, () -> oven(180))
        .row(
            "heat-set, s",
            "press, 180 °C",
            30,
            1e-9,
            () -> 60 * heated(PAINT, 180, 30).needed().minutes());
    return rows.checks();
  }

  private static double standard(String name) {
    return Double.parseDouble(Worked.POLICY.defaults().get(name).text().replace(" °C", ""));
  }

  private static ReactiveGroup mft() {
    return Worked.POLICY.group("monofluorotriazine");
  }

  /** Hours that a pale print needs, damp and wrapped. */
  private static double batch(int celsius) {
    return Worked.reeds(
                ALKALINE.replace("colour: green", "colour: yellow"),
                "- mix: all\n- print: reeds\n- fix: batch\n  temperature: %d °C\n  for: 4 h\n"
                    .formatted(celsius))
            .the(FixTime.class)
            .warmth()
            .neededMinutes()
            .best()
        / 60;
  }

  private static double oven(int celsius) {
    return Worked.reeds(
            PAINT,
            "- mix: all\n- print: reeds\n- heat-set: oven\n  temperature: %d °C\n"
                .formatted(celsius))
        .the(HeatTime.class)
        .needed()
        .minutes();
  }

  private static double limit(String name) {
    return Worked.POLICY.limit(name).amount();
  }

  private static HeatSetting heatSet() {
    return Worked.reeds(PAINT, "- mix: all\n- print: reeds\n- heat-set: oven\n")
        .the(HeatSetting.class);
  }

  private static void window(List<Check> checks, String group, double coolest, double warmest) {
    ReactiveGroup is = Worked.POLICY.group(group);
    checks.add(row("coolest bath, °C", group, coolest, COURSE, is.coolest().celsius()));
    checks.add(row("warmest bath, °C", group, warmest, COURSE, is.warmest().celsius()));
  }

  private static Check row(
      String quantity, String conditions, double value, String source, double is) {
    return new Check(
        new CheckRow(quantity, conditions, value, 1e-9, source, Status.PUBLISHED), () -> is);
  }

  private static ReactiveGroup dct() {
    return Worked.POLICY.group("dichlorotriazine");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void tablesAreThePublishedOnes(Check check) {
    check.assertHolds();
  }

  /**
   * Rates of hydrolysis at 60 °C and pH 10 of one chromophore, min⁻¹, a textile-printing article of
   * 2006/07: DCT 0.33, DFCP 0.06, ethyl sulphone 0.035, MCT 0.00047. A faster dye can't live
   * longer.
   */
  @Test
  void livesRankAsPublishedRatesOfHydrolysis() {
    List<String> fastestFirst =
        List.of(
            "dichlorotriazine", "difluorochloropyrimidine", "vinyl sulphone", "monochlorotriazine");
    assertThat(fastestFirst)
        .extracting(g -> Worked.POLICY.group(g).lifeWithAlkali().minutes())
        .isSorted();
    assertThat(Worked.POLICY.group("monochlorotriazine").lifeWithAlkali().minutes())
        .isGreaterThan(10 * dct().lifeWithAlkali().minutes());
  }

  /** 30 min for pale and 45 for deep shades at 32 to 41 °C; green is no deep one. */
  @Test
  void fromItsTemperatureOnASoakTakesTheStatedTimeAndNoLess() {
    for (int celsius : List.of(32, 36, 40)) {
      Warmth warmth = soaked(celsius, 60).the(FixTime.class).warmth();
      assertThat(warmth.neededMinutes().low()).isCloseTo(30, within(1e-9));
      assertThat(warmth.neededMinutes().best()).isCloseTo(30, within(1e-9));
      assertThat(warmth.neededMinutes().high()).isCloseTo(45, within(1e-9));
    }
    Warmth ink =
        Worked.reeds(
                DYE.replace("colour: green", "colour: navy"),
                "- mix: all\n- print: reeds\n- dry: 1 day\n- fix: soak\n"
                    + "  bath: {soda ash: 200 g, water: 5 L}\n  temperature: 35 °C\n  for: 1 h\n")
            .the(FixTime.class)
            .warmth();
    assertThat(ink.neededMinutes().best()).isCloseTo(45, within(1e-9));
    // A deep shade has its own range: from that of a pale one up to as much above 45 as 30 lies
    // below.
    assertThat(ink.neededMinutes().low()).isCloseTo(30, within(1e-9));
    assertThat(ink.neededMinutes().high()).isCloseTo(67.5, within(1e-9));
  }

  /** Ten degrees cooler, 32 → 22 °C: Arrhenius with 81 kJ/mol; at most a batch's hours. */
  @Test
  void aCoolSoakTakesLongerUpToTheHoursOfABatch() {
    Warmth warmth = soaked(22, 60).the(FixTime.class).warmth();
    assertThat(warmth.neededMinutes().best()).isCloseTo(30 * 2.951, within(0.5));
    Warmth cold = soaked(21, 60).the(FixTime.class).warmth();
    assertThat(cold.neededMinutes().high()).isCloseTo(24 * 60, within(1e-6));
  }

  /** The law is too kind in the cold: at 15 °C two to three days may still not do, Burch's FAQ. */
  @Test
  void aColdBatchMayTakeDays() {
    Worked cold =
        Worked.reeds(
            ALKALINE.replace("colour: green", "colour: yellow"),
            "- mix: all\n- print: reeds\n- fix: batch\n  temperature: 15 °C\n  for: 24 h\n");
    Warmth warmth = cold.the(FixTime.class).warmth();
    assertThat(warmth.neededMinutes().best() / 60).isBetween(20.0, 30.0);
    assertThat(warmth.neededMinutes().high() / 60).isGreaterThan(72);
  }

  /** What is left after twice the time is the square of what was left: first order. */
  @Test
  void whatIsFixedGrowsFirstOrderInTime() {
    double once = 1 - soaked(25, 30).the(FixTime.class).fixed();
    double twice = 1 - soaked(25, 60).the(FixTime.class).fixed();
    assertThat(twice).isCloseTo(once * once, within(1e-9));
  }

  @Test
  void hotterThanTheGroupStandsSavesNoMoreTime() {
    Warmth warm = soaked(40, 60).the(FixTime.class).warmth();
    Warmth hot = soaked(60, 60).the(FixTime.class).warmth();
    assertThat(hot.neededMinutes()).isEqualTo(warm.neededMinutes());
    assertThat(hot.hotBy()).isEqualTo(20);
  }

  @Test
  void aSoakBeforeABatchOnlyBringsTheAlkali() {
    Worked worked =
        Worked.reeds(
            DYE,
            """
            - mix: all
            - print: reeds
            - dry: until fix-safe
            - fix: soak
              bath: {soda ash: 200 g, water: 5 L}
              for: 10 min
            - fix: batch
              temperature: 25 °C
              for: 12 h
            """);
    assertThat(worked.all(AlkaliForDye.class, AsRulesAsk::noAlkali)).isEmpty();
    assertThat(worked.the(FixTime.class).warmth().how()).isEqualTo("batch");
  }

  @Test
  void aSoakBeforePrintingBringsTheAlkaliToo() {
    Worked worked =
        Worked.reeds(
            DYE,
            """
            - fix: soak
              bath: {soda ash: 200 g, water: 5 L}
              for: 10 min
            - mix: all
            - print: reeds
            - fix: batch
              temperature: 25 °C
              for: 12 h
            """);
    assertThat(worked.all(AlkaliForDye.class, AsRulesAsk::noAlkali)).isEmpty();
    assertThat(worked.all(DyePrinted.class, AsRulesAsk::neverFixed)).isEmpty();
    assertThat(worked.the(Soak.class).dyes()).containsExactly("green");
  }

  @Test
  void aRinseBeforeTheBatchTakesTheAlkaliOutAgain() {
    Worked worked =
        Worked.reeds(
            DYE,
            """
            - fix: soak
              bath: {soda ash: 200 g, water: 5 L}
              for: 10 min
            - rinse: 20 °C
            - mix: all
            - print: reeds
            - fix: batch
              temperature: 25 °C
              for: 12 h
            """);
    assertThat(worked.the(AlkaliForDye.class, AsRulesAsk::noAlkali).dyes())
        .containsExactly("green");
  }

  @Test
  void alkaliInThePasteIsEnoughForSteam() {
    assertThat(steamed(ALKALINE).all(AlkaliForDye.class, AsRulesAsk::noAlkali)).isEmpty();
    assertThat(steamed(DYE).all(AlkaliForDye.class, AsRulesAsk::noAlkali)).hasSize(1);
  }

  @Test
  void anAlkalineRecipeIsAlkaliInThePaste() {
    String recipe =
        "medium: dye, group: DCT, colour: green,"
            + " recipe: {dye: 3 g, baking soda: 2 g, alginate: 2 g, water: 90 ml}";
    assertThat(steamed(recipe).all(AlkaliForDye.class, AsRulesAsk::noAlkali)).isEmpty();
  }

  @Test
  void dyeThatIsRinsedBeforeItIsFixedIsNeverFixed() {
    Worked worked =
        Worked.reeds(
            DYE,
            """
            - mix: all
            - print: reeds
            - rinse: 20 °C
            - fix: soak
              bath: {soda ash: 200 g, water: 5 L}
              for: 60 min
            """);
    DyeAtWater washed = worked.the(DyeAtWater.class, AsRulesAsk::fixedTooLate);
    assertThat(washed.impressions()).isEqualTo(3);
    assertThat(washed.marks()).containsExactly("reeds 1", "reeds 2", "reeds 3");
    assertThat(washed.path().text()).isEqualTo("run[2]");
    assertThat(StepSpeech.water(washed, Measures.METRIC)).isEqualTo("rinse at 20 °C");
    assertThat(washed.fixStep()).isEqualTo(4);
    assertThat(worked.all(DyePrinted.class, AsRulesAsk::neverFixed)).isEmpty();
  }

  @Test
  void aWashWithoutARinseBeforeItLeavesTheRinseOut() {
    Worked worked =
        Worked.reeds(
            ALKALINE,
            """
            - mix: all
            - print: reeds
            - dry: until fix-safe
            - fix: steam
              for: 8 min
            - wash: 60 °C
            - rinse: 20 °C
            """);
    WashOff off = worked.the(WashOff.class);
    assertThat(off.rinsed()).isFalse();
    assertThat(off.washed()).isTrue();
    assertThat(BathSpeech.leftOut(off)).isEqualTo("cool rinse before the wash");
  }

  @Test
  void whoDriesUntilFixSafeHasTestedByTouch() {
    assertThat(soaked(25, 60).all(ClothTakenUp.class)).isEmpty();
  }

  @Test
  void waitingAsLongAsAWetPrintAsksForMakesItSafe() {
    ClothTakenUp early = painted("- dry: 15 min").the(ClothTakenUp.class);
    assertThat(early.early().quick().minutes()).isPositive();
    long wait = 15 + early.remedy().minutes();
    assertThat(painted("- dry: " + wait + " min").all(ClothTakenUp.class)).isEmpty();
    assertThat(painted("- dry: " + (wait - 2) + " min").all(ClothTakenUp.class)).hasSize(1);
  }

  /**
   * 4 min at 150 °C in an oven, half of it 25 °C hotter; a press takes a quarter, 30 s at least.
   */
  @Test
  void aHotterHeatSetIsShorterAndAPressShorterStill() {
    assertThat(oven(150)).isCloseTo(4, within(1e-9));
    assertThat(oven(175)).isCloseTo(2, within(1e-9));
    assertThat(heated(PAINT, 150, 180).needed().minutes()).isCloseTo(1, within(1e-9));
    assertThat(heated(PAINT, 185, 180).needed().seconds()).isCloseTo(30, within(1e-9));
    HeatTime cooler = heated(PAINT, 125, 60);
    assertThat(cooler.needed().minutes()).isCloseTo(2, within(1e-9));
    assertThat(cooler.lacks().minutes()).isCloseTo(1, within(1e-9));
    assertThat(cooler.reached().fraction()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void aLabelWinsOverTheEstimate() {
    HeatTime brief = heated(PAINT + ", label: {temperature: 160 °C, for: 40 s}", 160, 40);
    assertThat(brief.lacks().minutes()).isZero();
    assertThat(brief.heat().coolest().celsius()).isEqualTo(160);
    assertThat(HeatSpeech.basis(brief)).contains("label");
    HeatTime slow = heated(PAINT + ", label: {temperature: 120 °C, for: 8 min}", 120, 300);
    assertThat(slow.lacks().minutes()).isCloseTo(3, within(1e-9));
    assertThat(slow.heat().coolest().celsius()).isEqualTo(120);
  }

  /** One cause, one finding: the bath is told of as a matter of media. */
  @Test
  void paintThatIsWashedIsNoLongerThereToBeSet() {
    assertThat(
            Worked.reeds(PAINT, "- mix: all\n- print: reeds\n- dry: 1 h\n- wash: 40 °C\n")
                .all(PaintPrinted.class, AsRulesAsk::neverSet))
        .isEmpty();
  }

  /**
   * Three motifs of 30 by 22 cm, whose paint lies here and there in them: four soles of 200 cm² on
   * each, 5 min at a spot, and the clock counts what the card says.
   */
  @Test
  void anIronGoesFromSpotToSpot() {
    IronTime iron = painted("- dry: 30 min").the(IronTime.class);
    assertThat(iron.images().squareCm()).isCloseTo(3 * 30 * 22, within(1e-6));
    assertThat(iron.spots()).isEqualTo(12);
    assertThat(iron.motifs()).isEqualTo(3);
    assertThat(iron.total().minutes()).isEqualTo(60);
    Worked both =
        Worked.reeds(
            PAINT,
            "- mix: all\n- print: reeds\n- dry: 1 day\n"
                + "- heat-set: iron\n  for: 4 min\n  both sides: yes\n");
    assertThat(both.the(IronTime.class).total().minutes()).isEqualTo(96);
    assertThat(
            both.facts().timeline().tasks().stream()
                .filter(t -> t.kind() == strikeoff.day.Task.Kind.HEAT_SET)
                .mapToDouble(t -> t.end().since(t.start()).minutes())
                .sum())
        .isCloseTo(96, within(0.1));
    // a press holds one of them at a time, an oven all
    assertThat(heatSetWith("press").the(IronTime.class).spots()).isEqualTo(3);
    assertThat(heatSetWith("oven").all(IronTime.class)).isEmpty();
  }

  private static Worked heatSetWith(String device) {
    return Worked.reeds(PAINT, "- mix: all\n- print: reeds\n- heat-set: " + device + "\n");
  }

  private static HeatTime heated(String paint, int celsius, int seconds) {
    return Worked.reeds(
            paint,
            """
            - mix: all
            - print: reeds
            - dry: until fix-safe
            - heat-set: press
              temperature: %d °C
              for: %d s
            """
                .formatted(celsius, seconds))
        .the(HeatTime.class);
  }

  @Test
  void paintPrintedAfterTheHeatIsNeverSet() {
    Worked worked =
        Worked.reeds(
            PAINT,
            """
            - mix: all
            - print: reeds
              only: [1, 2]
            - dry: until fix-safe
            - heat-set: iron
            - print: reeds
              only: [3]
            """);
    PaintPrinted unset = worked.the(PaintPrinted.class, AsRulesAsk::neverSet);
    assertThat(unset.marks()).containsExactly("reeds 3");
    assertThat(worked.the(HeatSetting.class).paints()).containsExactly("green");
  }

  private static Worked soaked(int celsius, int minutes) {
    return Worked.reeds(
        DYE,
        """
        - mix: all
        - print: reeds
        - dry: until fix-safe
        - fix: soak
          bath: {soda ash: 200 g, water: 5 L}
          temperature: %d °C
          for: %d min
        """
            .formatted(celsius, minutes));
  }

  private static Worked steamed(String paste) {
    return Worked.reeds(
        paste,
        """
        - mix: all
        - print: reeds
        - dry: until fix-safe
        - fix: steam
          for: 8 min
        """);
  }

  private static Worked painted(String drying) {
    return Worked.reeds(
        PAINT,
        """
        - mix: all
        - print: reeds
        %s
        - heat-set: iron
        """
            .formatted(drying));
  }
}

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
import strikeoff.policy.ReactiveGroup;

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
        row("longest steam, min", "DCT, 100-102 °C", 10, steam, dct().longestSteam().minutes()));
    checks.add(
        new Check(
            CheckRow.within(
                8,
                16,
                "shortest batch, h",
                "DCT, cold pad-batch at 20-30 °C",
                "dye maker's process card",
                Status.PUBLISHED),
            () -> dct().shortestBatch().hours()));
    checks.add(
        new Check(
            new CheckRow(
                "coolest heat-set, °C",
                "acrylic binder",
                150,
                10,
                "textile note of 2013",
                Status.PUBLISHED),
            () -> Worked.POLICY.limit("fixing/coolest-heat-set").amount()));
    checks.add(
        new Check(
            CheckRow.within(
                3,
                6,
                "shortest heat-set, min",
                "acrylic binder, 150 °C, 4-5 min give or take one",
                "textile note of 2013",
                Status.PUBLISHED),
            () -> Worked.POLICY.limit("fixing/shortest-heat-set").amount()));
    checks.addAll(more());
    return checks;
  }

  private static List<Check> more() {
    Rows rows = new Rows();
    rows.published("lecture note on reactive printing")
        .within("coolest steam, °C", "100-102 °C", 100, 102, () -> limit("fixing/coolest-steam"));
    rows.published("a laboratory manual's page on printing")
        .within("coolest steam, °C", "100-105 °C", 100, 105, () -> limit("fixing/coolest-steam"));
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
            "half a US cup of light soda ash to the US gallon, as for silk",
            17.8,
            20.3,
            () -> limit("fixing/weakest-bath"));
    rows.published("Dyestuffs & Coloration 2004(6):331")
        .within(
            "activation energy, kJ/mol",
            "C.I. Reactive Red 24 at pH 13, 74.8 to 92.2 from its rates",
            74.8,
            92.2,
            () -> limit("fixing/activation-energy-usual"));
    rows.computed("Dyestuffs & Coloration 2004(6):331, rates 0.0101 and 0.0599")
        .row(
            "factor of the rate",
            "70 → 90 °C with 92.2 kJ/mol",
            0.0599 / 0.0101,
            0.06,
            () -> Arrhenius.factor(92.2, 70, 90));
    return rows.checks();
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

  @Test
  void atTheCoolestTemperatureTheNeededTimeIsTheStatedOne() {
    Warmth warmth = soaked(25, 60).the(FixTime.class).warmth();
    assertThat(warmth.neededMinutes().isExact()).isTrue();
    assertThat(warmth.neededMinutes().best()).isCloseTo(30, within(1e-9));
    assertThat(warmth.minutesMore().minutes()).isZero();
  }

  /** Ten degrees cooler, 25 → 15 °C: Arrhenius with 60, 80 and 100 kJ/mol. */
  @Test
  void tenDegreesCoolerItTakesTwoToFourTimesAsLong() {
    Warmth warmth = soaked(15, 60).the(FixTime.class).warmth();
    assertThat(warmth.neededMinutes().low()).isCloseTo(30 * 2.3163, within(0.1));
    assertThat(warmth.neededMinutes().best()).isCloseTo(30 * 3.0648, within(0.1));
    assertThat(warmth.neededMinutes().high()).isCloseTo(30 * 4.0550, within(0.1));
    assertThat(warmth.minutesMore().minutes()).isEqualTo(62);
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
    assertThat(worked.all(MissingAlkali.class)).isEmpty();
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
    assertThat(worked.all(MissingAlkali.class)).isEmpty();
    assertThat(worked.all(UnfixedDye.class)).isEmpty();
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
    assertThat(worked.the(MissingAlkali.class).dyes()).containsExactly("green");
  }

  @Test
  void alkaliInThePasteIsEnoughForSteam() {
    assertThat(steamed(ALKALINE).all(MissingAlkali.class)).isEmpty();
    assertThat(steamed(DYE).all(MissingAlkali.class)).hasSize(1);
  }

  @Test
  void anAlkalineRecipeIsAlkaliInThePaste() {
    String recipe =
        "medium: dye, group: DCT, colour: green,"
            + " recipe: {dye: 3 g, baking soda: 2 g, alginate: 2 g, water: 90 ml}";
    assertThat(steamed(recipe).all(MissingAlkali.class)).isEmpty();
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
    UnfixedDye unfixed = worked.the(UnfixedDye.class);
    assertThat(unfixed.impressions()).isEqualTo(3);
    assertThat(unfixed.marks()).containsExactly("reeds 1", "reeds 2", "reeds 3");
    assertThat(unfixed.path().text()).isEqualTo("run[1]");
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
    assertThat(off.leftOut()).isEqualTo("cool rinse");
  }

  @Test
  void whoDriesUntilFixSafeHasTestedByTouch() {
    assertThat(soaked(25, 60).all(TooWet.class)).isEmpty();
  }

  @Test
  void waitingAsLongAsAWetPrintAsksForMakesItSafe() {
    TooWet early = painted("- dry: 30 min").the(TooWet.class);
    assertThat(early.shortLeast().minutes()).isPositive();
    long wait = 30 + Math.round(early.waitNeeded().minutes());
    assertThat(painted("- dry: " + wait + " min").all(TooWet.class)).isEmpty();
    assertThat(painted("- dry: " + (wait - 2) + " min").all(TooWet.class)).hasSize(1);
  }

  /** The hotter the shorter: 3 min at 150 °C, half of it 15 °C hotter, twice 15 °C cooler. */
  @Test
  void aHotterHeatSetIsShorter() {
    assertThat(heated(PAINT, 150, 180).needed().minutes()).isCloseTo(3, within(1e-9));
    assertThat(heated(PAINT, 165, 180).needed().minutes()).isCloseTo(1.5, within(1e-9));
    HeatTime cooler = heated(PAINT, 142, 180);
    assertThat(cooler.needed().minutes()).isBetween(3.0, 6.0);
    assertThat(cooler.lacks().minutes()).isCloseTo(cooler.needed().minutes() - 3, within(1e-9));
  }

  @Test
  void aLabelWinsOverTheEstimate() {
    HeatTime brief = heated(PAINT + ", label: {temperature: 160 °C, for: 40 s}", 160, 40);
    assertThat(brief.lacks().minutes()).isZero();
    assertThat(brief.heat().coolest().celsius()).isEqualTo(160);
    assertThat(brief.basis()).contains("label");
    HeatTime slow = heated(PAINT + ", label: {temperature: 120 °C, for: 8 min}", 120, 300);
    assertThat(slow.lacks().minutes()).isCloseTo(3, within(1e-9));
    assertThat(slow.heat().coolest().celsius()).isEqualTo(120);
  }

  /** One cause, one finding: the bath is told of as a matter of media. */
  @Test
  void paintThatIsWashedIsNoLongerThereToBeSet() {
    assertThat(
            Worked.reeds(PAINT, "- mix: all\n- print: reeds\n- dry: 1 h\n- wash: 40 °C\n")
                .all(UnsetPaint.class))
        .isEmpty();
  }

  /** Three motifs of 40 % of 30 by 22 cm: 792 cm², four soles of 200 cm², 3 min each at 150 °C. */
  @Test
  void anIronGoesFromSpotToSpot() {
    IronTime iron = painted("- dry: 30 min").the(IronTime.class);
    assertThat(iron.printed().squareCm()).isCloseTo(3 * 0.4 * 30 * 22, within(1e-6));
    assertThat(iron.spots()).isEqualTo(4);
    assertThat(iron.total().minutes()).isEqualTo(12);
    assertThat(heatSetWith("press").all(IronTime.class)).isEmpty();
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
    UnsetPaint unset = worked.the(UnsetPaint.class);
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

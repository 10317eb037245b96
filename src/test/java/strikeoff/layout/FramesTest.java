package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static strikeoff.layout.LayoutEvidence.one;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.plan.Arrangement.Edge;
import strikeoff.speech.FillSpeech;
import strikeoff.units.Measures;

/**
 * Frames on table, stations and neighbours, worked by hand in centimetres. A frame is 20 longer and
 * wider than its design, its rails take 4; policy leaves 3 for paste at either end of an image and
 * 2 beside it, so the smallest frame for an image of l by w is l + 14 by w + 12.
 */
class FramesTest {

  private static List<String> choices(Sheet sheet) {
    return one(sheet.layout(), FrameChoices.class).choices().stream()
        .map(
            c ->
                c.motifs()
                    + " on "
                    + Math.round(c.length().cm() * 100) / 100.0
                    + ": "
                    + c.lays()
                    + " lays, "
                    + c.abreast()
                    + " abreast"
                    + (c.present() ? ", present" : "")
                    + (c.byHand() ? ", by hand" : ""))
        .toList();
  }

  @Test
  void theChoicesGoFromTheSmallestFrameToTheLongestThatTheTableHolds() {
    // smallest 20 + 14 = 34, present 40; with two 40 + 50 = 90, which one person still lays; with
    // three 140, with four 190, with five 240 of 280
    assertThat(choices(Sheet.open(800, 60).design("bud", 20, 20).series("b", "bud", 5, 50, 20, 20)))
        .containsExactly(
            "1 on 34.0: 5 lays, 8 abreast, by hand",
            "1 on 40.0: 5 lays, 7 abreast, present, by hand",
            "2 on 90.0: 3 lays, 3 abreast, by hand",
            "3 on 140.0: 2 lays, 2 abreast",
            "4 on 190.0: 2 lays, 1 abreast",
            "5 on 240.0: 1 lays, 1 abreast");
  }

  @Test
  void aFrameAsLongAsTheTableIsAChoiceAndALongerOneIsNone() {
    Sheet sheet = Sheet.open(800, 60).design("bud", 20, 20);
    assertThat(choices(sheet.table(90, 60).series("b", "bud", 5, 50, 20, 20))).hasSize(3);
    Sheet shorter = Sheet.open(800, 60).design("bud", 20, 20);
    assertThat(choices(shorter.table(89.9, 60).series("b", "bud", 5, 50, 20, 20))).hasSize(2);
  }

  @Test
  void betweenStationsLieTheGapAndTheirClearance() {
    // a table of 280 with a gap of 10: n stations of 40 + 2 · 5 and n − 1 gaps, so
    // ⌊(280 + 10) / (50 + 10)⌋ = 4; of 34 + 10, ⌊290 / 54⌋ = 5; of 90 + 10, ⌊290 / 110⌋ = 2
    assertThat(
            choices(
                Sheet.open(800, 60)
                    .design("bud", 20, 20)
                    .stations(4, 50, 60, 10, 5)
                    .series("b", "bud", 2, 50, 20, 20)))
        .containsExactly(
            "1 on 34.0: 2 lays, 5 abreast, by hand",
            "1 on 40.0: 2 lays, 4 abreast, present, by hand",
            "2 on 90.0: 1 lays, 2 abreast, by hand");
  }

  @Test
  void aRowOfManyMotifsIsNoFrameButABanner() {
    // twelve on 21 + 11 · 2 = 43; thirteen are not told
    assertThat(choices(Sheet.open(800, 60).design("dot", 1, 1).series("b", "dot", 40, 2, 20, 20)))
        .hasSize(13)
        .last()
        .isEqualTo("12 on 43.0: 4 lays, 6 abreast, by hand");
  }

  @Test
  void aQuarterTurnLaysTheFramesWidthAlongTheCloth() {
    // design 20 by 40: the frame lies 60 long and 40 wide; the smallest 40 + 12 = 52
    assertThat(
            choices(
                Sheet.open(800, 100)
                    .design("reed", 20, 40)
                    .turned(90)
                    .series("r", "reed", 1, 50, 20, 20)))
        .containsExactly(
            "1 on 52.0: 1 lays, 5 abreast, by hand",
            "1 on 60.0: 1 lays, 4 abreast, present, by hand");
  }

  @Test
  void whereTheSmallestFrameIsThePlansThereIsOneChoiceLess() {
    // single placements are no row, so no longer frame holds several
    assertThat(
            choices(Sheet.open(800, 60).design("bud", 20, 20).placed("p", "bud", 20, 20, 90, 20)))
        .containsExactly(
            "1 on 34.0: 2 lays, 8 abreast, by hand",
            "1 on 40.0: 2 lays, 7 abreast, present, by hand");
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # pitch, overhang 10 at each side of a motif of 20: a frame reaches 30 from its start
          40, 20, -10, 1
          31, 11, -1,  1
          30, 10, 0,   1
          29, 9,  1,   2
          20, 0,  10,  2
          15, -5, 15,  2
          14, -6, 16,  3
          10, -10, 20, 3
          9,  -11, 21, 4
          7,  -13, 23, 5
          """)
  void aFrameReachesOverAsManyNeighboursAsStandWithinIt(
      double pitch, double gap, double covered, int nth) {
    NeighbourGap told =
        one(
            Sheet.open(800, 60).design("bud", 20, 20).series("b", "bud", 5, pitch, 20, 20).layout(),
            NeighbourGap.class);
    assertThat(told.gap().cm()).isCloseTo(gap, within(1e-9));
    assertThat(told.overhang().cm()).isCloseTo(10, within(1e-9));
    assertThat(told.covered().cm()).isCloseTo(covered, within(1e-9));
    assertThat(told.everyNth()).isEqualTo(nth);
    assertThat(told.printed()).as("no step prints it").isFalse();
    assertThat(FillSpeech.everyText(told))
        .isEqualTo(
            List.of(
                    "every one",
                    "every other one",
                    "every third one",
                    "every 4th one",
                    "every 5th one")
                .get(nth - 1));
    assertThat(FillSpeech.apartText(told, Measures.METRIC))
        .isEqualTo(
            gap < 0
                ? "run " + Math.round(-gap) + " cm into each other"
                : "lie " + (gap == 0 ? "0 mm" : Math.round(gap) + " cm") + " apart");
  }

  @Test
  void aDesignThatLiesToOneSideInItsFrameReachesFurtherToTheOther() {
    // image 10 of 40 from the design's start, frame 30 about it: from −10 to 20 of the design;
    // images lie 0 to 10, so a frame reaches 10 over either side
    NeighbourGap told =
        one(
            Sheet.open(800, 60)
                .design("bud", 40, 20, 0, 0, 10, 20)
                .border("b", "bud", Edge.NEAR, 20, 200, 45, 5)
                .layout(),
            NeighbourGap.class);
    assertThat(told.gap().cm()).isCloseTo(35, within(1e-9));
    assertThat(told.covered().cm()).isCloseTo(-25, within(1e-9));
    assertThat(told.everyNth()).isEqualTo(1);
  }

  @Test
  void stationsAreHeldAgainstTheLongestFrameAndTheWidest() {
    // reed: frame 40 by 80; wave: 90 by 40; stations 85 by 70, clearance 3
    StationFit fit =
        one(
            Sheet.open(800, 100)
                .design("reed", 20, 60)
                .design("wave", 70, 20)
                .stations(3, 85, 70, 5, 3)
                .placed("a", "reed", 20, 10)
                .placed("b", "wave", 100, 10)
                .layout(),
            StationFit.class);
    assertThat(fit.longest()).isEqualTo("wave");
    assertThat(fit.widest()).isEqualTo("reed");
    assertThat(fit.screens()).containsExactly("wave", "reed");
    assertThat(fit.lengthNeeded().cm()).isCloseTo(96, within(1e-9));
    assertThat(fit.widthNeeded().cm()).isCloseTo(86, within(1e-9));
    // 5 too long, 10 too wide, and twice 3 besides
    assertThat(fit.frameExcess().cm()).isCloseTo(10, within(1e-9));
    assertThat(fit.excess().cm()).isCloseTo(16, within(1e-9));
    StationFit exact =
        one(
            Sheet.open(800, 100)
                .design("reed", 20, 60)
                .stations(3, 46, 86, 5, 3)
                .placed("a", "reed", 20, 10)
                .layout(),
            StationFit.class);
    assertThat(exact.screens()).containsExactly("reed");
    assertThat(exact.excess().mm()).isZero();
    assertThat(exact.frameExcess().cm()).isCloseTo(-6, within(1e-9));
  }

  @Test
  void aTableHoldsStationsAndTheGapsBetweenThem() {
    // three of 80 with gaps of 20 take 3 · 80 + 2 · 20 = 280 sharp
    StationRow row = one(stations(280, 3), StationRow.class);
    assertThat(row.holds()).isEqualTo(3);
    assertThat(row.tableNeeded().cm()).isCloseTo(280, within(1e-9));
    assertThat(row.stationThatFits().cm()).isCloseTo(80, within(1e-9));
    StationRow less = one(stations(279, 3), StationRow.class);
    assertThat(less.holds()).isEqualTo(2);
    // (279 − 2 · 20) / 3
    assertThat(less.stationThatFits().cm()).isCloseTo(239.0 / 3, within(1e-9));
    assertThat(one(stations(280, 5), StationRow.class).tableNeeded().cm())
        .isCloseTo(5 * 80 + 4 * 20, within(1e-9));
  }

  private static Layout stations(double table, int count) {
    return Sheet.open(800, 60)
        .design("bud", 20, 20)
        .table(table, 100)
        .stations(count, 80, 60, 20, 0)
        .placed("a", "bud", 20, 10)
        .layout();
  }

  @Test
  void aFrameMayLackLengthOrWidthOfTheTable() {
    // frame 90 by 40 on a table of 80 by 100; the cloth of 60 leaves 40
    FrameOnTable lacks = fit(80, 100, 20);
    assertThat(lacks.lacksLength().cm()).isCloseTo(10, within(1e-9));
    assertThat(lacks.lacksWidth().mm()).isZero();
    assertThat(lacks.lacks().cm()).isCloseTo(10, within(1e-9));
    assertThat(lacks.lengthNeeded().cm()).isCloseTo(90, within(1e-9));
    assertThat(lacks.widthNeeded().cm()).isCloseTo(100, within(1e-9));
    assertThat(fit(90, 100, 20).lacks().mm()).as("as long as the table").isZero();
    // at y = 0 the frame begins 10 before the near edge and ends at 30: on a table of 60 the cloth
    // of
    // 60 is laid 10 in and hangs over the far side
    FrameOnTable over = fit(100, 60, 0);
    assertThat(over.reachesFrom().cm()).isCloseTo(-10, within(1e-9));
    assertThat(over.reachesTo().cm()).isCloseTo(30, within(1e-9));
    assertThat(over.lacks().mm()).isZero();
    assertThat(over.widthNeeded().cm()).isCloseTo(60, within(1e-9));
    // a cloth wider than the table hangs over it; only the frames must lie on it
    FrameOnTable hangs = fit(100, 39, 20);
    assertThat(hangs.lacksWidth().cm()).isCloseTo(1, within(1e-9));
    assertThat(fit(100, 40, 20).lacks().mm()).isZero();
    // three rows of frames 40 wide, 20 apart, reach over 80; a cloth of 100 hangs over a table of
    // 60
    FrameOnTable rows =
        one(
            Sheet.open(800, 100)
                .design("wave", 70, 20)
                .table(100, 60)
                .placed("w", "wave", 20, 0, 20, 20, 20, 40)
                .layout(),
            FrameOnTable.class);
    assertThat(rows.reach().cm()).isCloseTo(80, within(1e-9));
    assertThat(rows.lacksWidth().cm()).isCloseTo(20, within(1e-9));
  }

  private static FrameOnTable fit(double length, double width, double across) {
    return one(
        Sheet.open(800, 60)
            .design("wave", 70, 20)
            .table(length, width)
            .placed("w", "wave", 20, across)
            .layout(),
        FrameOnTable.class);
  }

  @Test
  void aTurnedDesignTakesItsDiagonal() {
    // a square of 20 turned by 45°: √2 · 20 along and across about the same centre
    Layout layout =
        Sheet.open(800, 100)
            .design("bud", 20, 20)
            .turned(45)
            .series("b", "bud", 2, 50, 20, 20)
            .layout();
    double half = 10 * Math.sqrt(2);
    SeriesSpan span = one(layout, SeriesSpan.class);
    assertThat(span.designLength().cm()).isCloseTo(2 * half, within(1e-9));
    assertThat(span.span().cm()).isCloseTo(50 + 2 * half, within(1e-9));
    // what is seen begins at 20
    assertThat(span.end().cm()).isCloseTo(70 + 2 * half, within(1e-9));
    // squares on their corners touch where their corners do
    assertThat(span.gap().cm()).isCloseTo(50 - 2 * half, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 20, 60",
    "90, 60, 20",
    "180, 20, 60",
    "270, 60, 20",
    "360, 20, 60",
    "-90, 60, 20"
  })
  void quarterTurnsAreExact(double degrees, double length, double width) {
    Layout layout =
        Sheet.open(800, 100)
            .design("reed", 20, 60, 0, 0, 5, 5)
            .turned(degrees)
            .placed("r", "reed", 100, 20)
            .layout();
    var outline = layout.placements().get(0).outline().getEnvelopeInternal();
    assertThat(outline.getWidth()).isEqualTo(length * 10);
    assertThat(outline.getHeight()).isEqualTo(width * 10);
    // what is seen has its corner at 100, 20
    assertThat(outline.getMinX()).isEqualTo(1000);
    assertThat(outline.getMinY()).isEqualTo(200);
    // the image lay at the lower left corner, 7.5 and 27.5 from the centre; a quarter turn
    // anticlockwise takes (−7.5, −27.5) to (27.5, −7.5)
    var image = layout.footprint(0, 1).image().getEnvelopeInternal().centre();
    double turns = Math.floorMod((int) degrees, 360) / 90;
    double[][] at = {{-75, -275}, {275, -75}, {75, 275}, {-275, 75}};
    assertThat(image.x).isEqualTo(1000 + length * 5 + at[(int) turns][0]);
    assertThat(image.y).isEqualTo(200 + width * 5 + at[(int) turns][1]);
  }
}

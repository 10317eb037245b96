package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static strikeoff.layout.LayoutEvidence.facts;
import static strikeoff.layout.LayoutEvidence.one;

import org.junit.jupiter.api.Test;
import strikeoff.plan.Arrangement.Edge;
import strikeoff.plan.Arrangement.Lattice;
import strikeoff.speech.ClothSpeech;
import strikeoff.speech.EdgeSpeech;
import strikeoff.speech.FillSpeech;
import strikeoff.speech.SeamSpeech;
import strikeoff.units.Measures;

/** Every expected value is worked out by hand in the comment beside it. */
class LayoutFactsTest {

  private static final double EXACT = 1e-6;

  @Test
  void nineMotifsAtFortyCentimetresSpanAndMisfitATube() {
    Layout layout =
        Sheet.tube(375, 100)
            .design("heron", 24, 52)
            .series("herons", "heron", 9, 40, 0, 10)
            .layout();
    SeriesSpan span = one(layout, SeriesSpan.class);
    // 8 · 40 + 24 = 344 cm
    assertThat(span.span().cm()).isCloseTo(344, within(EXACT));
    assertThat(span.gap().cm()).isCloseTo(16, within(EXACT));
    TubeClosing closing = one(layout, TubeClosing.class);
    // 375 − 9 · 40 = 15; the seam's gap 16 + 15 = 31; 375 / 9 = 41.667
    assertThat(closing.misfit().cm()).isCloseTo(15, within(EXACT));
    assertThat(closing.seamGap().cm()).isCloseTo(31, within(EXACT));
    assertThat(closing.closingPitch().cm()).isCloseTo(41.6666667, within(1e-6));
    assertThat(closing.roomFor()).isZero();
  }

  // Open run, by n = floor((L − w) / p) + 1: L 3000, w 200, p 350 gives n = 9 and uses 3000.
  @Test
  void anOpenRunOfNineUsesTheWholeLength() {
    Layout layout =
        Sheet.open(300, 100).design("motif", 20, 20).series("row", "motif", 9, 35, 0, 10).layout();
    assertThat(one(layout, SeriesSpan.class).span().mm()).isCloseTo(3000, within(EXACT));
    assertThat(facts(layout, EdgeReach.class)).isEmpty();
    assertThat(
            one(
                    Sheet.open(300, 100)
                        .design("motif", 20, 20)
                        .series("row", "motif", 10, 35, 0, 10)
                        .layout(),
                    EdgeReach.class)
                .beyond()
                .mm())
        .isCloseTo(350, within(EXACT));
  }

  // Closed loop: L 3000 at 350 is 8.571, not whole: 8 close at 375.000, 9 at 333.333.
  @Test
  void aTubeOfThreeMetresTakesEightOrNine() {
    assertThat(closing(8).closingPitch().mm()).isCloseTo(375.000, within(1e-3));
    assertThat(closing(9).closingPitch().mm()).isCloseTo(333.333, within(1e-3));
    assertThat(closing(9).misfit().mm()).isCloseTo(-150, within(EXACT));
    assertThat(closing(7).roomFor()).isEqualTo(1);
  }

  private static TubeClosing closing(int n) {
    return one(
        Sheet.tube(300, 100).design("motif", 20, 20).series("row", "motif", n, 35, 0, 10).layout(),
        TubeClosing.class);
  }

  @Test
  void aBorderTellsItsRestAndTheRepeatsThatClose() {
    BorderRepeats repeats =
        one(
            Sheet.open(430, 140)
                .design("reeds", 30, 22)
                .border("hem", "reeds", Edge.NEAR, 5, 425, 32, 6)
                .layout(),
            BorderRepeats.class);
    // 420 = 13 · 32 + 4; 420 / 13 = 32.3077; 420 / 14 = 30
    assertThat(repeats.whole()).isEqualTo(13);
    assertThat(repeats.rest().cm()).isCloseTo(4, within(EXACT));
    assertThat(repeats.longer().cm()).isCloseTo(32.3076923, within(1e-6));
    assertThat(repeats.shorter().cm()).isCloseTo(30, within(EXACT));
  }

  @Test
  void aHalfDropRoundATubeNeedsPairsOfColumns() {
    FillRound round =
        one(
            Sheet.tube(375, 100)
                .design("leaf", 20, 20)
                .fill(
                    "leaves",
                    "leaf",
                    Lattice.HALF_DROP,
                    new double[] {25, 40},
                    new double[] {0, 375, 0, 60},
                    0,
                    0)
                .layout(),
            FillRound.class);
    // 375 / 25 = 15 columns, odd; 375 / 14 = 26.7857, 375 / 16 = 23.4375, both told rounded down so
    // that as many still fit
    assertThat(round.misfit().mm()).isZero();
    assertThat(round.oddHalfDrop()).isTrue();
    assertThat(FillSpeech.closings(round, Measures.METRIC))
        .isEqualTo(
            "Set the pitch along the length to 26.785 cm for 14 columns or 23.437 cm for 16 columns");
  }

  @Test
  void anImageIsMeasuredAgainstEdgeSelvedgeAndAllowance() {
    Layout layout =
        Sheet.open(200, 60)
            .margins(5, 5, 4, 4, 1)
            .design("leaf", 20, 20)
            .series("leaves", "leaf", 6, 30, 35, 2)
            .layout();
    // the last one ends at 35 + 150 + 20 = 205: 5 past the end, 10 into the strip; two are in it
    EdgeReach end = facts(layout, EdgeReach.class).get(0);
    assertThat(end.edge()).isEqualTo(ClothEdge.END);
    assertThat(end.beyond().cm()).isCloseTo(5, within(EXACT));
    assertThat(end.into().cm()).isCloseTo(10, within(EXACT));
    assertThat(EdgeSpeech.placements(end)).isEqualTo("leaves 6");
    // all lie 2 cm from the near edge: clear of the selvedge of 1, 3 cm into 1 + 4
    EdgeReach near = facts(layout, EdgeReach.class).get(1);
    assertThat(EdgeSpeech.placements(near)).isEqualTo("leaves 1–6");
    assertThat(near.intoSelvedge().mm()).isZero();
    assertThat(near.into().cm()).isCloseTo(3, within(EXACT));
    assertThat(facts(layout, EdgeReach.class)).hasSize(2);
    // 30 cm are free at the start, so 10 can be moved
    assertThat(EdgeSpeech.mending(end, Measures.METRIC))
        .isEqualTo("Move leaves by 10 cm, away from the end");
  }

  /** Nobody is told to move a row by 7 cm where there are 3. */
  @Test
  void anImageIsMovedNoFurtherThanThereIsRoom() {
    Layout layout =
        Sheet.open(200, 60)
            .margins(5, 5, 0, 0, 0)
            .design("leaf", 20, 20)
            .series("leaves", "leaf", 6, 34.8, 8, 2)
            .layout();
    // 8 + 174 + 20 = 202: 7 into the strip at the end, and 3 free before the one at the start
    EdgeReach end = facts(layout, EdgeReach.class).get(0);
    assertThat(EdgeSpeech.mending(end, Measures.METRIC))
        .isEqualTo(
            "Print 5 of leaves in place of 6, or set their pitch to 34 cm, and move it by 3 cm, away"
                + " from the end");
  }

  @Test
  void aTubeHasNoEnds() {
    Layout layout =
        Sheet.tube(200, 60)
            .margins(5, 5, 0, 0, 0)
            .design("leaf", 20, 20)
            .placed("leaf", "leaf", 190, 20)
            .layout();
    assertThat(facts(layout, EdgeReach.class)).isEmpty();
  }

  @Test
  void strangersThatOverlapAreToldOnceForTwoArrangements() {
    Layout layout =
        Sheet.open(300, 100)
            .design("leaf", 20, 20)
            .series("row", "leaf", 4, 40, 0, 0)
            .series("other", "leaf", 3, 40, 15, 5)
            .layout();
    // each of the other row lies 5 cm over its left neighbour and 0 over the right one (35 < 40):
    // 5 · 15 = 75 cm², 75 / 400
    Overlap overlap = one(layout, Overlap.class);
    assertThat(overlap.pairs()).isEqualTo(3);
    assertThat(overlap.area().squareCm()).isCloseTo(75, within(EXACT));
    assertThat(overlap.share().fraction()).isCloseTo(0.1875, within(EXACT));
    assertThat(overlap.arrangement()).isEqualTo("other");
    assertThat(overlap.other()).isEqualTo("row");
  }

  @Test
  void whatIsAnchoredMayLieOnItsAnchorAndOnThatOnesAnchor() {
    Layout layout =
        Sheet.open(300, 100)
            .design("leaf", 20, 20)
            .design("dot", 4, 4)
            .series("row", "leaf", 4, 40, 0, 0)
            .anchored("dots", "dot", "row", 3, 3)
            .anchored("specks", "dot", "dots", 1, 1)
            .layout();
    assertThat(facts(layout, Overlap.class)).isEmpty();
  }

  @Test
  void overlapsAreFoundAcrossTheSeamOfATube() {
    Layout layout =
        Sheet.tube(100, 60)
            .design("leaf", 20, 20)
            .placed("last", "leaf", 90, 10)
            .placed("first", "leaf", 5, 10)
            .layout();
    // 90–110 wraps to 0–10, the other covers 5–25: 5 · 20 = 100 cm²
    assertThat(one(layout, Overlap.class).area().squareCm()).isCloseTo(100, within(EXACT));
  }

  @Test
  void aCrowdedPitchIsToldByItsWorstNeighbours() {
    Crowding crowding =
        one(
            Sheet.open(300, 100)
                .design("leaf", 20, 20)
                .series("row", "leaf", 6, 15, 0, 10)
                .layout(),
            Crowding.class);
    // 5 · 20 = 100 cm² of 400
    assertThat(crowding.area().squareCm()).isCloseTo(100, within(EXACT));
    assertThat(crowding.needed().text(Measures.METRIC)).isEqualTo("20 cm");
    assertThat(
            facts(
                Sheet.open(300, 100)
                    .design("leaf", 20, 20)
                    .series("row", "leaf", 6, 20, 0, 10)
                    .layout(),
                Crowding.class))
        .isEmpty();
  }

  @Test
  void aBrickMayHaveRowsCloserThanTheDesignIfColumnsLeaveRoom() {
    // rows 12 apart with designs of 20: neighbours lie 25 cm aside; the row after next 24 up
    assertThat(facts(brick(50, 12), Crowding.class)).isEmpty();
    // rows 9 apart: the row after next is 18 up, 2 cm too close: 20 · 2 = 40 cm²
    assertThat(one(brick(50, 9), Crowding.class).area().squareCm()).isCloseTo(40, within(EXACT));
  }

  private static Layout brick(double x, double y) {
    return Sheet.open(300, 100)
        .design("leaf", 20, 20)
        .fill(
            "leaves",
            "leaf",
            Lattice.BRICK,
            new double[] {x, y},
            new double[] {0, 300, 0, 100},
            0,
            0)
        .layout();
  }

  @Test
  void stationsAreCountedByTheirFormula() {
    Layout layout =
        Sheet.open(430, 140)
            .design("leaf", 20, 20)
            .table(240, 120)
            .stations(5, 50, 60, 5, 2)
            .series("row", "leaf", 6, 30, 10, 20)
            .layout();
    // ⌊(240 + 5) / (50 + 5)⌋ = 4; five need 5 · 50 + 4 · 5 = 270; (240 − 20) / 5 = 44
    StationRow row = one(layout, StationRow.class);
    assertThat(row.holds()).isEqualTo(4);
    assertThat(row.tableNeeded().cm()).isCloseTo(270, within(EXACT));
    assertThat(row.stationThatFits().cm()).isCloseTo(44, within(EXACT));
    // frames of 40 cm and 2 · 2 cm clearance
    StationFit fit = one(layout, StationFit.class);
    assertThat(fit.lengthNeeded().cm()).isCloseTo(44, within(EXACT));
    assertThat(fit.excess().cm()).isCloseTo(-6, within(EXACT));
  }

  @Test
  void theClothMayLieNearerToOneEdgeOfTheTable() {
    // frame 40 wide about y 13: from −7 to 33; table 75, cloth 60: 7.5 spare on each side
    assertThat(lay(onTable(75, 3)).over().mm()).isZero();
    // table 70, 5 spare on each side: 2 over; near edge from 7 to 70 − 33
    ClothLay shifted = lay(onTable(70, 3));
    assertThat(shifted.over().cm()).isCloseTo(2, within(EXACT));
    assertThat(shifted.from().cm()).isCloseTo(7, within(EXACT));
    assertThat(shifted.to().cm()).isCloseTo(37, within(EXACT));
    assertThat(EdgeSpeech.place(shifted, Measures.METRIC)).isEqualTo("7 cm");
    // laid as proposed, nothing reaches over
    assertThat(lay(onTable(70, 3).clothAt(7)).over().mm()).isZero();
    assertThat(lay(onTable(70, 3).clothAt(6)).over().cm()).isCloseTo(1, within(EXACT));
    // the far edge: 7 + 33 = 40, so 38 more is 8 over
    assertThat(lay(onTable(70, 3).clothAt(45)).over().cm()).isCloseTo(8, within(EXACT));
    // table 64: laid 7 in, the cloth hangs 3 over the far side
    assertThat(fit(onTable(64, 3)).lacks().mm()).isZero();
    // a table narrower than the cloth counts against the frame's own width only
    assertThat(fit(onTable(45, 3)).lacks().mm()).isZero();
    assertThat(fit(onTable(38, 3)).lacksWidth().cm()).isCloseTo(2, within(EXACT));
  }

  @Test
  void rowsAtBothEdgesMayNeedTheClothInTwoPlaces() {
    // frames 40 wide about y 13 and y 47: −7 to 33 and 27 to 67; table 70: near edge at 7 or more
    // for the one, at 3 or less for the other, so 4 of width are missing
    ClothLay lay = lay(onTable(70, 3).series("far", "leaf", 3, 30, 10, 37));
    assertThat(lay.onePlace()).isFalse();
    assertThat(lay.arrangements()).containsExactly("row", "far");
    assertThat(lay.from().cm()).isCloseTo(7, within(EXACT));
    assertThat(lay.to().cm()).isCloseTo(3, within(EXACT));
    assertThat(lay.needsFar()).isEqualTo("row");
    assertThat(lay.needsNear()).isEqualTo("far");
    assertThat(lay.widthNeeded().cm()).isCloseTo(74, within(EXACT));
    ClothLay wider = lay(onTable(74, 3).series("far", "leaf", 3, 30, 10, 37));
    assertThat(wider.over().mm()).isZero();
  }

  private static FrameOnTable fit(Sheet sheet) {
    return one(sheet.layout(), FrameOnTable.class);
  }

  private static ClothLay lay(Sheet sheet) {
    return one(sheet.layout(), ClothLay.class);
  }

  private static Sheet onTable(double tableWidth, double across) {
    return Sheet.open(200, 60)
        .design("leaf", 20, 20)
        .table(240, tableWidth)
        .series("row", "leaf", 3, 30, 10, across);
  }

  @Test
  void aFrameCoversItsNeighbourWhereTheGapIsLessThanItsOverhang() {
    // image 20, frame 40: overhang 10. Pitch 25: gap 5, 5 covered; every second is 30 free
    NeighbourGap gap = gap(25);
    assertThat(gap.gap().cm()).isCloseTo(5, within(EXACT));
    assertThat(gap.overhang().cm()).isCloseTo(10, within(EXACT));
    assertThat(gap.covered().cm()).isCloseTo(5, within(EXACT));
    assertThat(gap.everyNth()).isEqualTo(2);
    // pitch 30: gap 10, just free. Pitch 12: (30) / 12 = 2.5, so every third
    assertThat(gap(30).everyNth()).isEqualTo(1);
    assertThat(gap(12).everyNth()).isEqualTo(3);
  }

  private static NeighbourGap gap(double pitch) {
    return one(
        Sheet.open(300, 100)
            .design("leaf", 20, 20)
            .series("row", "leaf", 3, pitch, 10, 20)
            .layout(),
        NeighbourGap.class);
  }

  @Test
  void aBladeIsFollowedOverTheEdgeOfTheCloth() {
    // image 20 about y 12, frame −8 to 32, blade of 26, which doesn't span the 30: −1 to 25
    BladeOverEdge over =
        one(
            Sheet.open(200, 60)
                .design("leaf", 30, 20)
                .squeegee("leaf", 26)
                .series("row", "leaf", 3, 30, 10, 2)
                .layout(),
            BladeOverEdge.class);
    assertThat(over.framePast().cm()).isCloseTo(8, within(EXACT));
    assertThat(over.bladePast().cm()).isCloseTo(1, within(EXACT));
    assertThat(EdgeSpeech.edge(over)).isEqualTo("near edge");
    // an image of 20 by 20 may be pulled across as well, with the blade along the edge
    BladeOverEdge kinder =
        one(
            Sheet.open(200, 60)
                .design("leaf", 20, 20)
                .squeegee("leaf", 26)
                .series("row", "leaf", 3, 30, 10, 2)
                .layout(),
            BladeOverEdge.class);
    assertThat(kinder.bladePast().cm()).isZero();
  }

  @Test
  void aBorderThatClosesRoundATubeIsNotToldToMove() {
    // 8 repeats of 27.5 make the 220; the first begins at the seam, all 1.5 of its allowance
    SeamAllowanceReach reach =
        one(
            Sheet.tube(220, 75)
                .design("reeds", 27.5, 22)
                .border("hem", "reeds", Edge.NEAR, 0, 220, 27.5, 5)
                .seam("side", 0, true)
                .layout(),
            SeamAllowanceReach.class);
    assertThat(reach.into().cm()).isCloseTo(1.5, within(EXACT));
    assertThat(SeamSpeech.mending(reach, Measures.METRIC))
        .contains("can't move", "`series`", "crosses the seam");
  }

  @Test
  void anImageBesideASeamIsInItsAllowance() {
    // allowance 1.5; the third image ends at 19 + 60 + 20 = 99, 1 cm before the seam
    SeamAllowanceReach reach =
        one(
            Sheet.open(200, 60)
                .design("leaf", 20, 20)
                .series("row", "leaf", 5, 30, 19, 20)
                .seam("middle", 100, true)
                .layout(),
            SeamAllowanceReach.class);
    assertThat(reach.into().cm()).isCloseTo(0.5, within(EXACT));
    assertThat(SeamSpeech.mending(reach, Measures.METRIC))
        .startsWith("Move row by 5 mm towards the start (`start: 18.5 cm`)");
    assertThat(SeamSpeech.placements(reach)).isEqualTo("row 3");
  }

  @Test
  void aLongerFrameOfSeveralMotifsSavesLays() {
    // frame 28 + 4 · 15 = 88 ≤ 90: five motifs; 50 copies take 10 lays instead of 50
    Lays lays =
        one(
            Sheet.open(800, 60).design("bud", 8, 8).series("buds", "bud", 50, 15, 10, 20).layout(),
            Lays.class);
    assertThat(lays.motifs()).isEqualTo(5);
    assertThat(lays.laysThen()).isEqualTo(10);
    assertThat(lays.frameThen().cm()).isCloseTo(88, within(EXACT));
  }

  @Test
  void eachFrameHasItsLaysAndItsRoomOnTheTable() {
    FrameChoices frames =
        one(
            Sheet.open(800, 60)
                .design("bud", 8, 8)
                .table(100, 60)
                .series("buds", "bud", 10, 15, 10, 20)
                .layout(),
            FrameChoices.class);
    FrameChoices.Choice present =
        frames.choices().stream().filter(FrameChoices.Choice::present).findFirst().orElseThrow();
    // a frame of 28 cm: 10 lays, ⌊100 / 28⌋ = 3 on the table
    assertThat(present.lays()).isEqualTo(10);
    assertThat(present.abreast()).isEqualTo(3);
    // three motifs: 28 + 2 · 15 = 58 cm, ⌈10 / 3⌉ = 4 lays, one on the table; five: 88 cm, 2 lays
    assertThat(frames.choices().stream().filter(c -> c.motifs() == 3))
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.length().cm()).isCloseTo(58, within(EXACT));
              assertThat(c.lays()).isEqualTo(4);
              assertThat(c.abreast()).isEqualTo(1);
            });
    // six would be 103 cm, longer than the table
    assertThat(frames.choices()).extracting(FrameChoices.Choice::motifs).doesNotContain(6);
  }

  @Test
  void setsAreStationsFull() {
    Lays lays =
        one(
            Sheet.open(800, 60)
                .design("bud", 8, 8)
                .stations(4, 50, 60, 5, 2)
                .series("buds", "bud", 10, 15, 10, 20)
                .layout(),
            Lays.class);
    // ⌈10 / 4⌉
    assertThat(lays.sets()).isEqualTo(3);
  }

  // Plain cotton loses about 6 % in length and 2.5 % in width: a trade table of 2018.
  @Test
  void unwashedClothFinishesSmaller() {
    Shrinkage shrinkage =
        one(
            Sheet.open(200, 60)
                .unwashed(0.06, 0.025)
                .design("leaf", 20, 20)
                .series("row", "leaf", 5, 30, 10, 20)
                .layout(),
            Shrinkage.class);
    // 200 · 0.94 = 188, 60 · 0.975 = 58.5, 200 / 0.94 = 212.766, up to 212.8, pitch 30 · 0.94 =
    // 28.2
    assertThat(shrinkage.finishedLength().cm()).isCloseTo(188, within(EXACT));
    assertThat(shrinkage.finishedWidth().cm()).isCloseTo(58.5, within(EXACT));
    assertThat(shrinkage.lengthToCut().cm()).isCloseTo(212.8, within(EXACT));
    assertThat(ClothSpeech.pitches(shrinkage, Measures.METRIC))
        .isEqualTo("; the pitch of row shrinks from 30 cm to 28.2 cm");
  }
}

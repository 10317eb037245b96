package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static strikeoff.layout.LayoutEvidence.facts;
import static strikeoff.layout.LayoutEvidence.one;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import strikeoff.document.PlanPath;
import strikeoff.plan.Arrangement.Edge;
import strikeoff.plan.Arrangement.Lattice;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.speech.EdgeSpeech;
import strikeoff.speech.StationSpeech;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** What lies close to an edge or to a neighbour. Every expected value is worked out by hand. */
class EdgesAndNeighboursTest {

  private static final double EXACT = 1e-6;

  /** The fill would have left these out. Its own copies start a metre off, out of the way. */
  @Nested
  class Clearance {

    /** A heron at 50 to 80 by 20 to 60, and shells of 8 by 8 filled in from 100 on. */
    private Sheet herons(Sheet sheet, String... around) {
      return sheet
          .design("heron", 30, 40)
          .design("shell", 8, 8)
          .placed("herons", "heron", 50, 20)
          .fill(
              "shells",
              "shell",
              Lattice.GRID,
              new double[] {30, 30},
              new double[] {100, 180, 0, 100},
              5,
              0,
              around);
    }

    private Sheet strays() {
      // 3 cm to the right of it, 2 cm to the left, and 10 and 20 cm off
      return herons(Sheet.open(200, 100), "herons")
          .placed("strays", "shell", 83, 30, 40, 30, 90, 80);
    }

    @Test
    void theClosestCopyAndItsNeighbourAreTold() {
      FillerNear breach = one(strays().layout(), FillerNear.class);
      assertThat(breach.arrangement()).isEqualTo("strays");
      assertThat(breach.fill()).isEqualTo("shells");
      assertThat(breach.count()).isEqualTo(2);
      assertThat(breach.nearest().cm()).isCloseTo(2, within(EXACT));
      assertThat(breach.move().cm()).isCloseTo(3, within(EXACT));
      assertThat(breach.clear().cm()).isEqualTo(5);
      assertThat(breach.closest()).isEqualTo("strays 2");
      assertThat(breach.to()).isEqualTo("herons 1");
      assertThat(breach.marks()).containsExactly("strays 1", "strays 2");
      assertThat(breach.related())
          .extracting(related -> related.path())
          .containsExactly(new PlanPath("placements.shells"));
    }

    @Test
    void exactlyTheClearanceIsEnough() {
      assertThat(
              facts(
                  herons(Sheet.open(200, 100), "herons").placed("strays", "shell", 85, 30).layout(),
                  FillerNear.class))
          .extracting(FillerNear::count)
          .containsExactly(0);
    }

    @Test
    void whatOverlapsIsToldAsThatAlone() {
      Layout layout =
          herons(Sheet.open(200, 100), "herons").placed("strays", "shell", 75, 30).layout();
      assertThat(facts(layout, FillerNear.class)).isEmpty();
      assertThat(facts(layout, Overlap.class)).hasSize(1);
    }

    @Test
    void anotherDesignMayComeCloser() {
      assertThat(
              facts(
                  herons(Sheet.open(200, 100), "herons")
                      .design("moth", 8, 8)
                      .placed("moths", "moth", 83, 30)
                      .layout(),
                  FillerNear.class))
          .isEmpty();
    }

    @Test
    void whatTheFillGoesAroundKeepsNoClearanceItself() {
      assertThat(
              facts(
                  herons(Sheet.open(200, 100), "herons", "strays")
                      .placed("strays", "shell", 83, 30)
                      .layout(),
                  FillerNear.class))
          .isEmpty();
    }

    @Test
    void aFillAroundNothingHasNothingToKeepClearOf() {
      assertThat(
              facts(
                  herons(Sheet.open(200, 100)).placed("strays", "shell", 83, 30).layout(),
                  FillerNear.class))
          .isEmpty();
    }

    /** A shell that is set from a heron is meant to lie there; one set from a post is not. */
    @Test
    void aCopyThatIsSetFromTheMotifIsMeant() {
      assertThat(
              facts(
                  herons(Sheet.open(200, 100), "herons")
                      .anchored("set", "shell", "herons", 33, 10)
                      .layout(),
                  FillerNear.class))
          .isEmpty();
      FillerNear breach =
          one(
              herons(Sheet.open(200, 100), "herons")
                  .design("post", 4, 4)
                  .placed("posts", "post", 90, 90)
                  .anchored("set", "shell", "posts", -7, -60)
                  .layout(),
              FillerNear.class);
      assertThat(breach.arrangement()).isEqualTo("set");
      assertThat(breach.nearest().cm()).isCloseTo(3, within(EXACT));
    }

    /** Two fills of one design, one of them close by: a fill has a clearance of its own. */
    @Test
    void anotherFillIsNotJudgedByThisOnesClearance() {
      assertThat(
              facts(
                  herons(Sheet.open(200, 100), "herons")
                      .fill(
                          "more",
                          "shell",
                          Lattice.GRID,
                          new double[] {30, 30},
                          new double[] {83, 92, 20, 30},
                          0,
                          0)
                      .layout(),
                  FillerNear.class))
          .isEmpty();
    }

    @Test
    void theSeamOfATubeIsNoDistance() {
      FillerNear breach =
          one(
              Sheet.tube(120, 100)
                  .design("heron", 30, 40)
                  .design("shell", 8, 8)
                  .placed("herons", "heron", 2, 20)
                  .placed("strays", "shell", 110, 30)
                  .fill(
                      "shells",
                      "shell",
                      Lattice.GRID,
                      new double[] {30, 30},
                      new double[] {60, 100, 70, 100},
                      5,
                      0,
                      "herons")
                  .layout(),
              FillerNear.class);
      // the stray lies from 110 to 118 of 120 round, and the heron begins at 2: 120 − 118 + 2
      assertThat(breach.nearest().cm()).isCloseTo(4, within(EXACT));
      assertThat(breach.move().cm()).isCloseTo(1, within(EXACT));
    }
  }

  @Nested
  class Stencils {

    @Test
    void oneScreenCannotPrintBothWays() {
      Sheet sheet =
          Sheet.open(200, 100)
              .design("heron", 20, 20)
              .design("reed", 10, 10)
              .series("left", "heron", 2, 40, 0, 10)
              .series("again", "heron", 1, 40, 100, 10)
              .series("reeds", "reed", 1, 40, 0, 50)
              .mirrored()
              .series("right", "heron", 2, 40, 0, 60)
              .series("far", "heron", 1, 40, 100, 60);
      List<MirroredPrint> found = facts(sheet.layout(), MirroredPrint.class);
      assertThat(found).extracting(MirroredPrint::mirrored).containsExactly("right", "far");
      assertThat(found).extracting(MirroredPrint::arrangement).containsOnly("left");
      assertThat(found.get(0).screens()).containsExactly("heron");
      assertThat(found.get(0).path()).isEqualTo(new PlanPath("placements.right"));
      assertThat(found.get(0).related())
          .extracting(related -> related.path())
          .containsExactly(new PlanPath("placements.left"));
    }

    @Test
    void mirroredAloneOrAsDrawnAloneOneScreenDoes() {
      assertThat(
              facts(
                  Sheet.open(200, 100)
                      .design("heron", 20, 20)
                      .design("reed", 10, 10)
                      .series("reeds", "reed", 1, 40, 0, 50)
                      .mirrored()
                      .series("right", "heron", 2, 40, 0, 60)
                      .layout(),
                  MirroredPrint.class))
          .extracting(MirroredPrint::drawnToo)
          .containsExactly(false);
    }
  }

  /**
   * Frames are 10 cm larger all round than their image of 30 by 20; a blade of 26 cm lies across.
   */
  @Nested
  class Blades {

    private Sheet leaf(double width) {
      return Sheet.open(200, width).design("leaf", 30, 20).squeegee("leaf", 26);
    }

    @Test
    void theFarEdgeCountsAsTheNearOne() {
      // image 38 to 58 of 60: frame to 68, blade 48 ± 13
      BladeOverEdge over =
          one(leaf(60).series("row", "leaf", 1, 30, 10, 38).layout(), BladeOverEdge.class);
      assertThat(EdgeSpeech.edge(over)).isEqualTo("far edge");
      assertThat(over.framePast().cm()).isCloseTo(8, within(EXACT));
      assertThat(over.bladePast().cm()).isCloseTo(1, within(EXACT));
      assertThat(over.screen()).isEqualTo("leaf");
    }

    @Test
    void aFrameWiderThanTheClothReachesPastBoth() {
      // image 7 to 27 of 30: frame −3 to 37, blade 17 ± 13
      BladeOverEdge over =
          one(leaf(30).series("row", "leaf", 1, 30, 10, 7).layout(), BladeOverEdge.class);
      assertThat(EdgeSpeech.edge(over)).isEqualTo("near and far edge");
      assertThat(over.framePast().cm()).isCloseTo(7, within(EXACT));
      assertThat(over.bladePast().cm()).isCloseTo(0, within(EXACT));
    }

    @Test
    void theWorstCopyIsToldWhereverItStands() {
      for (double[] across : new double[][] {{2, 5}, {5, 2}}) {
        BladeOverEdge over =
            one(
                leaf(60).placed("two", "leaf", 10, across[0], 100, across[1]).layout(),
                BladeOverEdge.class);
        assertThat(EdgeSpeech.edge(over)).isEqualTo("near edge");
        assertThat(over.framePast().cm()).isCloseTo(8, within(EXACT));
        assertThat(over.bladePast().cm()).isCloseTo(1, within(EXACT));
      }
    }

    @Test
    void aFrameThatEndsWithTheClothStaysOnIt() {
      assertThat(
              facts(leaf(60).placed("two", "leaf", 10, 10, 100, 30).layout(), BladeOverEdge.class))
          .isEmpty();
    }
  }

  /** Designs of 20 by 20. */
  @Nested
  class Crowds {

    private Sheet lattice(Lattice lattice, double x, double y) {
      return Sheet.open(300, 200)
          .design("leaf", 20, 20)
          .fill(
              "leaves",
              "leaf",
              lattice,
              new double[] {x, y},
              new double[] {10, 200, 10, 190},
              0,
              0);
    }

    @Test
    void neighboursOfABorderAreARow() {
      Sheet sheet = Sheet.open(300, 100).design("leaf", 20, 20);
      // 5 · 20
      Crowding crowding =
          one(sheet.border("hem", "leaf", Edge.NEAR, 5, 65, 15, 6).layout(), Crowding.class);
      assertThat(crowding.area().squareCm()).isCloseTo(100, within(EXACT));
      assertThat(crowding.needed().text(Measures.METRIC)).isEqualTo("20 cm");
      assertThat(crowding.path()).isEqualTo(new PlanPath("placements.hem.repeat"));
    }

    @Test
    void oneAloneHasNoNeighbours() {
      Sheet sheet = Sheet.open(300, 100).design("leaf", 20, 20);
      assertThat(
              facts(
                  sheet
                      .series("row", "leaf", 1, 15, 10, 10)
                      .border("hem", "leaf", Edge.FAR, 5, 25, 15, 6)
                      .layout(),
                  Crowding.class))
          .isEmpty();
    }

    @Test
    void shiftedRowsAndColumnsMeetAtHalfThePitch() {
      // (15, 30 / 2) and (30 / 2, 15) away: 5 · 5
      assertThat(one(lattice(Lattice.HALF_DROP, 15, 30).layout(), Crowding.class).area().squareCm())
          .isCloseTo(25, within(EXACT));
      assertThat(one(lattice(Lattice.BRICK, 30, 15).layout(), Crowding.class).area().squareCm())
          .isCloseTo(25, within(EXACT));
      assertThat(facts(lattice(Lattice.HALF_DROP, 15, 40).layout(), Crowding.class)).isEmpty();
      assertThat(facts(lattice(Lattice.BRICK, 40, 15).layout(), Crowding.class)).isEmpty();
    }

    @Test
    void aGridMeetsAlongItsRowsAndColumns() {
      // 5 · 20, and 2 · 20 the other way
      assertThat(one(lattice(Lattice.GRID, 25, 15).layout(), Crowding.class).area().squareCm())
          .isCloseTo(100, within(EXACT));
      assertThat(one(lattice(Lattice.GRID, 18, 25).layout(), Crowding.class).area().squareCm())
          .isCloseTo(40, within(EXACT));
    }
  }

  @Nested
  class Rounds {

    private BorderRepeats hem(Sheet sheet, double to) {
      return one(
          sheet
              .design("reeds", 27.5, 22)
              .border("hem", "reeds", Edge.NEAR, 0, to, 27.5, 6)
              .layout(),
          BorderRepeats.class);
    }

    @Test
    void aBorderGoesAllRoundOnlyAClosedCloth() {
      // 220 = 8 · 27.5
      assertThat(hem(Sheet.tube(220, 75), 220).allRound()).isTrue();
      assertThat(hem(Sheet.tube(220, 75), 220).rest()).isEqualTo(new Length(0));
      assertThat(hem(Sheet.tube(220, 75), 219).allRound()).isFalse();
      assertThat(hem(Sheet.open(220, 75), 220).allRound()).isFalse();
    }
  }

  /** The policy's longest frame by hand is 90 cm; frames are 20 cm longer than their design. */
  @Nested
  class LongerFrames {

    private Lays lays(Sheet sheet) {
      return one(sheet.layout(), Lays.class);
    }

    @Test
    void aFrameHoldsAsManyMotifsAsHandsCanLay() {
      assertThat(PolicyReader.builtIn().limit("table/longest-hand-frame").amount()).isEqualTo(900);
      // a frame of 40: 90 − 40 = 50 leaves room for 1 more at 45; 7 copies in 4 lays, 40 + 45 = 85
      Lays lays =
          lays(
              Sheet.open(400, 100)
                  .design("leaf", 20, 20)
                  .stations(3, 60, 60, 5, 2)
                  .series("row", "leaf", 7, 45, 10, 20));
      assertThat(lays.placements()).isEqualTo(7);
      assertThat(lays.separations()).isEqualTo(1);
      assertThat(lays.lays()).isEqualTo(7);
      assertThat(lays.sets()).isEqualTo(3);
      assertThat(lays.motifs()).isEqualTo(2);
      assertThat(lays.laysThen()).isEqualTo(4);
      assertThat(lays.saved()).isEqualTo(3);
      assertThat(lays.frameLength().cm()).isCloseTo(40, within(EXACT));
      assertThat(lays.frameThen().cm()).isCloseTo(85, within(EXACT));
      // with 2 cm free at both ends
      assertThat(lays.stationThen().cm()).isCloseTo(89, within(EXACT));
      assertThat(StationSpeech.setsText(lays)).isEqualTo(" in 3 sets");
      assertThat(StationSpeech.stationText(lays, Measures.METRIC))
          .isEqualTo(", and stations of 89 cm");
    }

    @Test
    void exactlyTheLongestFrameCanBeLaid() {
      // 40 + 50 = 90; 6 copies in 3 lays
      Lays lays =
          lays(Sheet.open(400, 100).design("leaf", 20, 20).series("row", "leaf", 6, 50, 10, 20));
      assertThat(lays.motifs()).isEqualTo(2);
      assertThat(lays.laysThen()).isEqualTo(3);
      assertThat(lays.saved()).isEqualTo(3);
      assertThat(lays.sets()).isEqualTo(1);
      assertThat(StationSpeech.setsText(lays)).isEmpty();
      assertThat(StationSpeech.stationText(lays, Measures.METRIC)).isEmpty();
    }

    @Test
    void noFrameIsLongerThanTheTable() {
      // a table of 80: 80 − 40 = 40 is less than the pitch
      Lays lays =
          lays(
              Sheet.open(400, 100)
                  .table(80, 160)
                  .design("leaf", 20, 20)
                  .series("row", "leaf", 6, 45, 10, 20));
      assertThat(lays.motifs()).isEqualTo(1);
      assertThat(lays.laysThen()).isEqualTo(6);
      assertThat(lays.saved()).isZero();
    }

    @Test
    void oneCopyNeedsOneFrameAndAnAskewOneNoLonger() {
      assertThat(
              lays(Sheet.open(400, 100).design("leaf", 20, 20).series("r", "leaf", 1, 45, 10, 20))
                  .motifs())
          .isEqualTo(1);
      assertThat(
              lays(Sheet.open(400, 100)
                      .design("leaf", 20, 20)
                      .turned(30)
                      .series("r", "leaf", 6, 45, 10, 30))
                  .motifs())
          .isEqualTo(1);
    }
  }
}

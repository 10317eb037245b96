package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static strikeoff.layout.LayoutEvidence.facts;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Arrangement.Edge;
import strikeoff.plan.Arrangement.Lattice;

class LayoutTest {

  @Test
  void aSeriesStandsAtItsPitch() {
    Layout layout =
        Sheet.open(430, 140)
            .design("heron", 34, 52)
            .series("herons", "heron", 6, 70, 23, 46)
            .layout();
    assertThat(layout.of("herons")).hasSize(6);
    Placement third = layout.of("herons").get(2);
    assertThat(third.name()).isEqualTo("herons 3");
    // 23 + 2·70 = 163 cm
    assertThat(box(third)).isEqualTo(new Envelope(1630, 1970, 460, 980));
  }

  @Test
  void aBorderHoldsWholeRepeatsOnlyAndTellsItsRest() {
    Layout layout =
        Sheet.open(430, 140)
            .design("reeds", 30, 22)
            .border("hem", "reeds", Edge.NEAR, 5, 425, 32, 6)
            .layout();
    // 420 = 13·32 + 4
    assertThat(layout.of("hem")).hasSize(13);
    assertThat(box(layout.of("hem").get(12)).getMinX()).isEqualTo(50 + 12 * 320);
  }

  @Test
  void aBorderAlongTheFarEdgeKeepsItsInsetFromIt() {
    Layout layout =
        Sheet.open(430, 140)
            .design("reeds", 30, 22)
            .border("top", "reeds", Edge.FAR, 0, 60, 30, 6)
            .layout();
    // 140 − 6 − 22 = 112 cm
    assertThat(box(layout.of("top").get(0))).isEqualTo(new Envelope(0, 300, 1120, 1340));
  }

  @Test
  void aDesignTurnedByAQuarterKeepsToTheEdgeAsItLies() {
    Layout layout =
        Sheet.open(430, 140)
            .design("reeds", 30, 22)
            .turned(90)
            .border("hem", "reeds", Edge.NEAR, 5, 49, 22, 6)
            .layout();
    // the turned design is 22 long and 30 wide
    assertThat(box(layout.of("hem").get(1))).isEqualTo(new Envelope(270, 490, 60, 360));
  }

  @Test
  void theFrameIsCentredOverTheSeparationsImage() {
    Layout layout =
        Sheet.open(430, 140)
            .design("heron", 34, 52, 10, 30, 12, 8)
            .placed("one", "heron", 100, 50)
            .layout();
    Footprint only = layout.footprint(0, 1);
    assertThat(only.image().getEnvelopeInternal()).isEqualTo(new Envelope(1100, 1220, 800, 880));
    // frame 32 × 28 cm about the image's centre, 116 / 84 cm
    assertThat(only.frame().getEnvelopeInternal()).isEqualTo(new Envelope(1000, 1320, 700, 980));
  }

  @Test
  void mirroringReflectsTheImageInsideItsDesign() {
    Layout layout =
        Sheet.open(430, 140)
            .design("heron", 34, 52, 10, 30, 12, 8)
            .mirrored()
            .placed("one", "heron", 100, 50)
            .layout();
    // 34 − 10 − 12 = 12 cm from the left
    assertThat(layout.footprint(0, 1).image().getEnvelopeInternal())
        .isEqualTo(new Envelope(1120, 1240, 800, 880));
  }

  @Test
  void aTurnGoesAnticlockwiseAndItsPlaceIsTheCornerOfWhatIsSeen() {
    Layout layout =
        Sheet.open(430, 140)
            .design("heron", 34, 52, 0, 0, 10, 10)
            .turned(90)
            .placed("one", "heron", 100, 50)
            .layout();
    // 52 by 34 from 100, 50; the lower left corner has gone to the lower right one, 152, 50
    assertThat(layout.footprint(0, 1).image().getEnvelopeInternal())
        .isEqualTo(new Envelope(1420, 1520, 500, 600));
  }

  @Test
  void anchorsMakeChainsWhateverTheirOrderInThePlan() {
    Layout layout =
        Sheet.open(430, 140)
            .design("heron", 34, 52)
            .design("shell", 8, 7)
            .anchored("strings", "shell", "eyes", 5, 5)
            .anchored("eyes", "shell", "herons", 20, 40, 2, 3)
            .series("herons", "heron", 3, 70, 23, 46)
            .layout();
    assertThat(layout.of("eyes")).hasSize(2);
    Placement string = layout.of("strings").get(0);
    // second heron at 93 / 46, its eye at 113 / 86, the string at 118 / 91
    assertThat(string.x().cm()).isEqualTo(118);
    assertThat(string.y().cm()).isEqualTo(91);
    Placement eye = layout.placements().get(string.anchor().getAsInt());
    assertThat(eye.name()).isEqualTo("eyes 1");
    assertThat(layout.placements().get(eye.anchor().getAsInt()).name()).isEqualTo("herons 2");
  }

  @Test
  void aRingOfAnchorsIsToldByItsMembersAndNotLaid() {
    Layout layout =
        Sheet.open(430, 140)
            .design("shell", 8, 7)
            .anchored("tail", "shell", "b", 1, 1)
            .anchored("a", "shell", "b", 1, 1)
            .anchored("b", "shell", "c", 1, 1)
            .anchored("c", "shell", "a", 1, 1)
            .placed("free", "shell", 10, 10)
            .layout();
    assertThat(layout.placements()).extracting(Placement::name).containsExactly("free 1");
    assertThat(facts(layout, AnchorCircle.class))
        .singleElement()
        .satisfies(
            circle -> {
              assertThat(circle.members()).containsExactly("a", "b", "c");
              assertThat(circle.waiting()).containsExactly("tail");
            });
  }

  @Test
  void anAnchorNumberThatIsNotThereIsToldAndTheRestIsLaid() {
    Layout layout =
        Sheet.open(430, 140)
            .design("shell", 8, 7)
            .series("row", "shell", 3, 20, 0, 0)
            .anchored("more", "shell", "row", 0, 10, 1, 4)
            .layout();
    assertThat(layout.of("more")).hasSize(1);
    assertThat(facts(layout, Anchoring.class).get(0).beyond()).containsExactly(4);
  }

  @Test
  void aGridHoldsWhatTheOpenRunFormulaSays() {
    // floor((100−8)/18)+1 = 6 columns, floor((60−7)/20)+1 = 3 rows
    assertThat(count(Lattice.GRID)).isEqualTo(18);
  }

  @Test
  void aBrickShiftsItsSecondRow() {
    // rows 1 and 3: 6; row 2, 9 cm on: floor((92−9)/18)+1 = 5
    assertThat(count(Lattice.BRICK)).isEqualTo(17);
  }

  @Test
  void aHalfDropShiftsEverySecondColumn() {
    // columns 1, 3, 5: 3 repeats; columns 2, 4, 6, 10 cm higher: floor((53−10)/20)+1 = 3
    assertThat(count(Lattice.HALF_DROP)).isEqualTo(18);
    // with a rectangle 5 cm narrower: floor(48/20)+1 = 3, shifted floor(38/20)+1 = 2
    Layout layout = fill(Lattice.HALF_DROP, 55);
    assertThat(layout.of("shells")).hasSize(15);
    // the fourth placement opens the second column: x 18, y 10
    Placement shifted = layout.of("shells").get(3);
    assertThat(shifted.x().cm()).isEqualTo(18);
    assertThat(shifted.y().cm()).isEqualTo(10);
  }

  @Test
  void aFillLeavesOutWhatComesCloserThanItsClearance() {
    Layout layout =
        Sheet.open(300, 100)
            .design("heron", 30, 30)
            .design("shell", 10, 10)
            .placed("heron", "heron", 40, 0)
            .fill(
                "shells",
                "shell",
                Lattice.GRID,
                new double[] {20, 50},
                new double[] {0, 110, 0, 10},
                5,
                5,
                "heron")
            .layout();
    // shells at 0, 20, 40, 60, 80, 100; heron 40–70: at 20 the gap is 10, at 80 it is 10
    assertThat(layout.of("shells"))
        .extracting(p -> p.x().cm())
        .containsExactly(0.0, 20.0, 80.0, 100.0);
    FillFit fit = facts(layout, FillFit.class).get(0);
    assertThat(fit.candidates()).isEqualTo(6);
    assertThat(fit.dropped()).isEqualTo(2);
    assertThat(fit.missing()).isEqualTo(1);
    assertThat(fit.enoughWith().mm()).isNegative(); // both lie on the heron
  }

  @Test
  void aFillTellsWithWhichClearanceAsManyAsExpectedFit() {
    Layout layout =
        Sheet.open(300, 100)
            .design("heron", 30, 30)
            .design("shell", 10, 10)
            .placed("heron", "heron", 42, 0)
            .fill(
                "shells",
                "shell",
                Lattice.GRID,
                new double[] {20, 50},
                new double[] {0, 110, 0, 10},
                12.5,
                3,
                "heron")
            .layout();
    // gaps to the heron at 42–72: 32, 12, on it, on it, 8, 28 cm
    FillFit fit = facts(layout, FillFit.class).get(0);
    assertThat(fit.fitted()).isEqualTo(2);
    assertThat(fit.enoughWith().cm()).isCloseTo(12, within(1e-9));
  }

  @Test
  void aFillOnATubeKeepsClearAcrossTheSeam() {
    Layout layout =
        Sheet.tube(100, 50)
            .design("shell", 10, 10)
            .placed("at the end", "shell", 88, 0)
            .fill(
                "shells",
                "shell",
                Lattice.GRID,
                new double[] {20, 50},
                new double[] {0, 50, 0, 10},
                5,
                0,
                "at the end")
            .layout();
    // the one at 88–98 ends 2 cm before the seam, so the shell at 0 comes too close
    assertThat(layout.of("shells")).extracting(p -> p.x().cm()).containsExactly(20.0, 40.0);
  }

  @Test
  void aSeamIsCrossedByImagesThatLieOnBothSides() {
    Layout layout =
        Sheet.open(430, 140)
            .design("reeds", 30, 22)
            .border("hem", "reeds", Edge.NEAR, 5, 425, 30, 6)
            .seam("centre", 200, true)
            .layout();
    // the seventh repeat runs from 185 to 215 cm
    assertThat(facts(layout, SeamCrossing.class))
        .singleElement()
        .satisfies(crossing -> assertThat(crossing.names()).containsExactly("hem 7"));
  }

  @Test
  void anImageThatEndsAtTheSeamDoesNotCrossIt() {
    Layout layout =
        Sheet.open(430, 140)
            .design("reeds", 30, 22)
            .border("hem", "reeds", Edge.NEAR, 5, 425, 30, 6)
            .seam("centre", 185, true)
            .layout();
    assertThat(facts(layout, SeamCrossing.class)).isEmpty();
  }

  @Test
  void onATubeTheSeamAtItsBeginningIsCrossedFromTheOtherEnd() {
    Layout layout =
        Sheet.tube(375, 100)
            .design("reeds", 30, 22)
            .placed("last", "reeds", 360, 10)
            .seam("side", 0, true)
            .layout();
    assertThat(facts(layout, SeamCrossing.class)).hasSize(1);
  }

  @Test
  void morePlacementsThanAnyTableHoldsAreToldNotLaid() {
    Layout layout =
        Sheet.open(4300, 1400)
            .design("dot", 0.1, 0.1)
            .fill(
                "dots",
                "dot",
                Lattice.HALF_DROP,
                new double[] {1e-4, 1e-4},
                new double[] {0, 4300, 0, 1400},
                0,
                0)
            .anchored("more dots", "dot", "dots", 1, 1, 1)
            .layout();
    assertThat(layout.placements()).isEmpty();
    assertThat(facts(layout, BeyondCounting.class)).hasSize(1);
    assertThat(facts(layout, Anchoring.class)).isEmpty();
  }

  private static int count(Lattice lattice) {
    return fill(lattice, 60).of("shells").size();
  }

  private static Layout fill(Lattice lattice, double far) {
    return Sheet.open(430, 140)
        .design("shell", 8, 7)
        .fill(
            "shells", "shell", lattice, new double[] {18, 20}, new double[] {0, 100, 0, far}, 0, 0)
        .layout();
  }

  private static Envelope box(Placement placement) {
    return placement.outline().getEnvelopeInternal();
  }
}

package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.plan.Arrangement.Edge;
import strikeoff.plan.Arrangement.Lattice;
import strikeoff.speech.SeamSpeech;
import strikeoff.units.Measures;

/** Every expected value is worked out by hand in the comment beside it. */
class MirroredPanelsTest {

  private static final double EXACT = 1e-6;

  private static Sheet cloth() {
    return Sheet.open(400, 140).design("heron", 20, 30).design("reeds", 30, 20);
  }

  @Test
  void panelsAnswerEachOtherAboutTheSeamBetweenThem() {
    // centres 20, 50, 80 and 120, 150, 180: each pair adds up to 200, so the line is at 100
    MirroredPanels even = panels(row(100, 110, 20));
    assertThat(even.axis().cm()).isCloseTo(100, within(EXACT));
    assertThat(even.misfit().mm()).isZero();
    assertThat(SeamSpeech.lineText(even, Measures.METRIC)).isEqualTo("the seam centre, at 1 m");
    // 90 to 110: 20 apart
    assertThat(even.apart().cm()).isCloseTo(20, within(EXACT));
    // the seam 2 cm on: the right panel should begin at 2 · 102 − 90 = 114
    MirroredPanels off = panels(row(102, 110, 20));
    assertThat(off.misfitAlong().cm()).isCloseTo(4, within(EXACT));
    assertThat(off.misfitAcross().mm()).isZero();
    assertThat(SeamSpeech.mend(off, Measures.METRIC)).isEqualTo("`start: 114 cm`");
    // one panel 1 cm higher: no line mends that; √(4² + 1²) = 4.1231
    MirroredPanels askew = panels(row(102, 110, 21));
    assertThat(askew.misfit().cm()).isCloseTo(4.1231056, within(1e-6));
    assertThat(SeamSpeech.mend(askew, Measures.METRIC)).isEqualTo("`start: 114 cm, across: 20 cm`");
  }

  private static Sheet row(double seam, double start, double across) {
    return cloth()
        .seam("centre", seam, true)
        .series("left", "heron", 3, 30, 10, 20)
        .mirrored()
        .series("right", "heron", 3, 30, start, across);
  }

  @Test
  void panelsSetWithoutRegardToTheSeamAnswerEachOtherAboutTheirOwnLine() {
    // 12 out is more than half of 20, the shorter side: so the line between them counts
    assertThat(SeamSpeech.lineText(panels(row(106, 110, 20)), Measures.METRIC))
        .isEqualTo("the line between them, at 1 m");
    // 10 out is half of it
    assertThat(panels(row(105, 110, 20)).misfit().cm()).isCloseTo(10, within(EXACT));
    // a row 11 higher than the other is no answer to it
    assertThat(all(row(100, 110, 31))).isEmpty();
  }

  @Test
  void anotherPitchIsTold() {
    // left 10, 40, 70; right 110, 142, 174 in place of 110, 140, 170: sums of the centres' places
    // 80 + 120, 50 + 152, 20 + 184, the middle one 202: line at 101; right should be 112, 142, 172
    MirroredPanels panels =
        panels(
            cloth()
                .series("left", "heron", 3, 30, 10, 20)
                .mirrored()
                .series("right", "heron", 3, 32, 110, 20));
    assertThat(panels.axis().cm()).isCloseTo(101, within(EXACT));
    assertThat(panels.misfit().cm()).isCloseTo(2, within(EXACT));
    assertThat(SeamSpeech.mend(panels, Measures.METRIC)).isEqualTo("`start: 112 cm, pitch: 30 cm`");
  }

  @Test
  void oneCopyThatStraysIsNamedAndDoesNotMoveTheLine() {
    MirroredPanels panels =
        panels(
            cloth()
                .series("left", "heron", 3, 30, 10, 20)
                .mirrored()
                .placed("right", "heron", 110, 20, 140, 20, 171, 18));
    assertThat(panels.axis().cm()).isCloseTo(100, within(EXACT));
    // √(1² + 2²); the outermost of the left row is its first
    assertThat(panels.misfit().cm()).isCloseTo(2.2360680, within(1e-6));
    assertThat(panels.first()).isEqualTo("left 1");
    assertThat(panels.second()).isEqualTo("right 3");
    assertThat(SeamSpeech.mend(panels, Measures.METRIC))
        .isEqualTo("`at: [\"1.1 m, 20 cm\", \"1.4 m, 20 cm\", \"1.7 m, 20 cm\"]`");
  }

  @Test
  void motifsThatFaceEachOtherInTurnAreNoPanels() {
    assertThat(
            all(
                cloth()
                    .series("right-facing", "heron", 3, 60, 10, 20)
                    .mirrored()
                    .series("left-facing", "heron", 3, 60, 40, 20)))
        .isEmpty();
  }

  @Test
  void anotherNumberOrAnotherSizeIsNoAnswer() {
    assertThat(
            all(
                cloth()
                    .series("left", "heron", 3, 30, 10, 20)
                    .mirrored()
                    .series("right", "heron", 4, 30, 110, 20)
                    .series("reeds", "reeds", 3, 30, 240, 20)))
        .isEmpty();
  }

  @Test
  void twoCurtainsOnOneLengthAreTwoPairs() {
    // lines at 50 and 150; the second panel and the third lie as near to each other
    List<MirroredPanels> pairs =
        all(
            cloth()
                .series("b left", "heron", 2, 30, 105, 20)
                .series("a left", "heron", 2, 30, 5, 20)
                .mirrored()
                .series("b right", "heron", 2, 30, 145, 20)
                .series("a right", "heron", 2, 30, 45, 20));
    assertThat(pairs)
        .extracting(p -> p.arrangement() + " | " + p.mirrored())
        .containsExactly("a left | a right", "b left | b right");
    assertThat(pairs).allSatisfy(p -> assertThat(p.misfit().mm()).isZero());
  }

  @Test
  void rowsOverEachOtherPairWithTheirOwn() {
    List<MirroredPanels> pairs =
        all(
            cloth()
                .series("low", "heron", 2, 30, 10, 10)
                .series("high", "heron", 2, 30, 10, 60)
                .mirrored()
                .series("high right", "heron", 2, 30, 110, 60)
                .series("low right", "heron", 2, 30, 110, 10));
    assertThat(pairs)
        .extracting(p -> p.arrangement() + " | " + p.mirrored())
        .containsExactlyInAnyOrder("low | low right", "high | high right");
  }

  @Test
  void whatElseHangsOnThePanelsSharesTheirLine() {
    // herons: line at 100; reeds 10–100 and 104–194: a line of their own would be at 102
    List<MirroredPanels> pairs =
        all(
            cloth()
                .series("herons", "heron", 3, 30, 10, 40)
                .border("reeds", "reeds", Edge.NEAR, 10, 100, 30, 6)
                .mirrored()
                .series("herons right", "heron", 3, 30, 110, 40)
                .border("reeds right", "reeds", Edge.NEAR, 104, 194, 30, 6));
    assertThat(pairs).hasSize(2);
    MirroredPanels reeds = pairs.get(1);
    assertThat(SeamSpeech.lineText(reeds, Measures.METRIC))
        .isEqualTo("the line of herons and herons right, at 1 m");
    assertThat(reeds.misfitAlong().cm()).isCloseTo(4, within(EXACT));
    assertThat(SeamSpeech.apartText(reeds, Measures.METRIC)).isEqualTo("4 cm apart");
    assertThat(SeamSpeech.mend(reeds, Measures.METRIC)).isEqualTo("`from: 1 m, to: 1.9 m`");
  }

  /** Mirrored and turned by half is a mirror image across the cloth. */
  @Test
  void bordersAtBothEdgesMirrorEachOtherInTheMiddleOfTheCloth() {
    Sheet sheet =
        cloth()
            .border("near", "reeds", Edge.NEAR, 10, 130, 30, 6)
            .mirrored()
            .turned(180)
            .border("far", "reeds", Edge.FAR, 12, 132, 30, 6);
    // centres across 16 and 140 − 16: the line at 70; 2 cm out along the cloth
    MirroredPanels panels = panels(sheet);
    assertThat(SeamSpeech.lineText(panels, Measures.METRIC))
        .isEqualTo("the line between them, 70 cm from the near edge");
    assertThat(panels.misfitAlong().cm()).isCloseTo(2, within(EXACT));
    assertThat(panels.misfitAcross().mm()).isZero();
    assertThat(SeamSpeech.mend(panels, Measures.METRIC)).isEqualTo("`from: 10 cm, to: 1.3 m`");
    // turned by half alone, it is a border seen from the other side and no mirror image
    assertThat(
            all(
                cloth()
                    .border("near", "reeds", Edge.NEAR, 10, 130, 30, 6)
                    .turned(180)
                    .border("far", "reeds", Edge.FAR, 12, 132, 30, 6)))
        .isEmpty();
  }

  @Test
  void aTurnIsAnsweredByTheTurnTheOtherWay() {
    assertThat(all(turned(30, -30))).hasSize(1);
    assertThat(all(turned(30, 330))).hasSize(1);
    assertThat(all(turned(30, 30))).isEmpty();
  }

  private static Sheet turned(double left, double right) {
    return cloth()
        .turned(left)
        .series("left", "heron", 3, 40, 20, 20)
        .mirrored()
        .turned(right)
        .series("right", "heron", 3, 40, 160, 20);
  }

  /** Round a tube, a mirror in the seam is a mirror in the line opposite to it. */
  @Test
  void aTubesSeamLiesBetweenTheLastAndTheFirst() {
    // circumference 300, seam at 0: 40–60 answers 240–260; 244–264 is 4 out
    Sheet sheet =
        Sheet.tube(300, 100)
            .design("heron", 20, 30)
            .seam("side", 0, true)
            .placed("front", "heron", 40, 20)
            .mirrored()
            .placed("back", "heron", 244, 20);
    MirroredPanels panels = panels(sheet);
    assertThat(panels.line().setBy()).isEqualTo(MirrorLine.SetBy.SEAM);
    assertThat(panels.misfit().cm()).isCloseTo(4, within(EXACT));
    assertThat(SeamSpeech.mend(panels, Measures.METRIC)).isEqualTo("`at: [\"2.4 m, 20 cm\"]`");
  }

  @Test
  void fillsAndWhatIsAnchoredAreMovedAsAWhole() {
    // shells 0–90 of pitch 20: columns at 0, 20, 40, 60, 80 end at 90; line at 100: 110 to 200
    Sheet fills =
        cloth()
            .design("shell", 10, 10)
            .seam("centre", 100, true)
            .fill("l", "shell", Lattice.GRID, PITCH, new double[] {0, 90, 10, 50}, 0, 0)
            .mirrored()
            .fill("r", "shell", Lattice.GRID, PITCH, new double[] {112, 202, 11, 51}, 0, 0);
    assertThat(SeamSpeech.mend(panels(fills), Measures.METRIC))
        .isEqualTo("`from: 1.1 m, to: 2 m, near: 10 cm, far: 50 cm`");
    // eyes 4 cm into herons 20 long and 2 long themselves: in the mirror 20 − 4 − 2 = 14
    Sheet eyes =
        cloth()
            .design("eye", 2, 2)
            .seam("centre", 100, true)
            .series("left", "heron", 3, 30, 10, 20)
            .anchored("eyes", "eye", "left", 4, 25)
            .mirrored()
            .series("right", "heron", 3, 30, 110, 20)
            .anchored("right eyes", "eye", "right", 14.5, 25);
    assertThat(all(eyes))
        .anySatisfy(
            p -> {
              assertThat(p.mirrored()).isEqualTo("right eyes");
              assertThat(p.misfit().mm()).isCloseTo(5, within(EXACT));
              assertThat(SeamSpeech.mend(p, Measures.METRIC))
                  .isEqualTo("`offset: \"14 cm, 25 cm\"`");
            });
  }

  private static final double[] PITCH = {20, 20};

  @Test
  void manyPlacesAreToldByTheirSum() {
    double[] corners = new double[26];
    double[] answers = new double[26];
    for (int i = 0; i < 13; i++) {
      corners[2 * i] = 10 + 22 * (i % 4);
      answers[2 * i] = 190 - 20 - corners[2 * i] + (i == 5 ? 1 : 0);
      corners[2 * i + 1] = 10 + 31 * (i / 4);
      answers[2 * i + 1] = corners[2 * i + 1];
    }
    MirroredPanels panels =
        panels(
            cloth().placed("left", "heron", corners).mirrored().placed("right", "heron", answers));
    // corner + corner = 190 − 20 = 170, by the line at 95 and the heron's length of 20
    assertThat(panels.misfit().cm()).isCloseTo(1, within(EXACT));
    assertThat(SeamSpeech.mend(panels, Measures.METRIC)).contains("1.7 m less that of the partner");
  }

  private static MirroredPanels panels(Sheet sheet) {
    List<MirroredPanels> all = all(sheet);
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  private static List<MirroredPanels> all(Sheet sheet) {
    return sheet.layout().evidence().stream()
        .filter(MirroredPanels.class::isInstance)
        .map(MirroredPanels.class::cast)
        .toList();
  }
}

package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.plan.Arrangement.Edge;
import strikeoff.plan.Arrangement.Lattice;
import strikeoff.speech.SeamSpeech;
import strikeoff.units.Measures;

/**
 * What to write so that a mirrored panel answers its partner, worked by hand in centimetres. Herons
 * are 20 long and 30 wide; where a seam is at 100, a left edge at x is answered by 200 − 20 − x.
 */
class MirrorMendTest {

  private static final double[] PITCH = {20, 20};

  private static Sheet cloth() {
    return Sheet.open(400, 140).design("heron", 20, 30).design("shell", 10, 10);
  }

  private static Sheet seamed() {
    return cloth().seam("centre", 100, true);
  }

  private static MirroredPanels the(Sheet sheet) {
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

  @Test
  void theMirroredPanelIsMendedEvenWhereItIsTheLeftOne() {
    // the right one stands at 110, 140, 170, so the left belongs at 70, 40, 10
    MirroredPanels off =
        the(
            seamed()
                .mirrored()
                .series("left", "heron", 3, 30, 12, 21)
                .asDrawn()
                .series("right", "heron", 3, 30, 110, 20));
    assertThat(off.mirrored()).isEqualTo("left");
    assertThat(off.arrangement()).isEqualTo("right");
    assertThat(SeamSpeech.mend(off, Measures.METRIC)).isEqualTo("`start: 10 cm, across: 20 cm`");
    assertThat(off.first()).startsWith("right");
    assertThat(off.second()).startsWith("left");
    // left at 6, 38, 70
    assertThat(
            SeamSpeech.mend(
                the(
                    seamed()
                        .mirrored()
                        .series("left", "heron", 3, 32, 6, 20)
                        .asDrawn()
                        .series("right", "heron", 3, 30, 110, 20)),
                Measures.METRIC))
        .isEqualTo("`start: 10 cm, pitch: 30 cm`");
    assertThat(
            SeamSpeech.mend(
                the(
                    seamed()
                        .mirrored()
                        .placed("left", "heron", 10, 20, 40, 20, 69, 18)
                        .asDrawn()
                        .series("right", "heron", 3, 30, 110, 20)),
                Measures.METRIC))
        .isEqualTo("`at: [\"10 cm, 20 cm\", \"40 cm, 20 cm\", \"70 cm, 20 cm\"]`");
  }

  @Test
  void aPanelThatFitsHasNothingToMend() {
    MirroredPanels fits =
        the(
            seamed()
                .series("left", "heron", 3, 30, 10, 20)
                .mirrored()
                .series("right", "heron", 3, 30, 110, 20));
    assertThat(fits.misfit().mm()).isZero();
    assertThat(fits.copies()).isEqualTo(3);
  }

  @Test
  void aBordersInsetIsMeasuredFromItsOwnEdge() {
    assertThat(SeamSpeech.mend(borders(Edge.NEAR, 110, 200, 30, 7), Measures.METRIC))
        .isEqualTo("`inset: 6 cm`");
    assertThat(SeamSpeech.mend(borders(Edge.FAR, 110, 200, 30, 7), Measures.METRIC))
        .isEqualTo("`inset: 6 cm`");
    assertThat(SeamSpeech.mend(borders(Edge.FAR, 110, 200, 30, 5), Measures.METRIC))
        .isEqualTo("`inset: 6 cm`");
    assertThat(SeamSpeech.mend(borders(Edge.NEAR, 112, 202, 30, 6), Measures.METRIC))
        .isEqualTo("`from: 1.1 m, to: 2 m`");
  }

  @Test
  void aBordersRepeatTakesItsEndAlong() {
    // at 110, 142, 174 in place of 110, 140, 170: three repeats of 30 end at 200
    assertThat(SeamSpeech.mend(borders(Edge.NEAR, 110, 206, 32, 6), Measures.METRIC))
        .isEqualTo("`repeat: 30 cm, to: 2 m`");
  }

  private static MirroredPanels borders(
      Edge edge, double from, double to, double repeat, double inset) {
    return the(
        seamed()
            .border("left", "heron", edge, 10, 100, 30, 6)
            .mirrored()
            .border("right", "heron", edge, from, to, repeat, inset));
  }

  @Test
  void aFillThatIsNoLatticeOfItsPartnerIsListed() {
    // left 0, 20, 40 and 10 high; right 150, 170, 190 would answer, and stands at 150, 171, 192
    MirroredPanels told =
        the(
            seamed()
                .fill("left", "shell", Lattice.GRID, PITCH, new double[] {0, 50, 10, 20}, 0, 0)
                .mirrored()
                .fill(
                    "right",
                    "shell",
                    Lattice.GRID,
                    new double[] {21, 20},
                    new double[] {150, 202, 10, 20},
                    0,
                    0));
    assertThat(SeamSpeech.mend(told, Measures.METRIC))
        .isEqualTo(
            "`at: [\"1.5 m, 10 cm\", \"1.7 m, 10 cm\", \"1.9 m, 10 cm\"]` in place of how they are"
                + " set now");
  }

  @Test
  void oneCopyAloneHasAPlaceAndNoPitch() {
    assertThat(
            SeamSpeech.mend(
                the(
                    seamed()
                        .series("left", "heron", 1, 30, 10, 20)
                        .mirrored()
                        .series("right", "heron", 1, 30, 173, 20)),
                Measures.METRIC))
        // 200 − 20 − 10
        .isEqualTo("`start: 1.7 m`");
  }

  @Test
  void twelvePlacesAreListedAndThirteenAreASum() {
    assertThat(SeamSpeech.mend(the(columns(12)), Measures.METRIC))
        .startsWith("`at: [\"0 mm, 1 m\", \"25 cm, 1 m\",");
    // centres at 35 and 115 across, so the line is at 75: corners add up to 150 − 30
    assertThat(SeamSpeech.mend(the(columns(13)), Measures.METRIC))
        .isEqualTo(
            "places `at:` whose y is 1.2 m less that of the partner, and whose x is the same");
  }

  /** Rows along the cloth that mirror each other across it, one copy a centimetre along too far. */
  private static Sheet columns(int count) {
    double[] near = new double[2 * count];
    double[] far = new double[2 * count];
    for (int i = 0; i < count; i++) {
      near[2 * i] = 25 * i;
      near[2 * i + 1] = 20;
      far[2 * i] = 25 * i + (i == 5 ? 1 : 0);
      far[2 * i + 1] = 100;
    }
    return cloth().placed("near", "heron", near).mirrored().turned(180).placed("far", "heron", far);
  }

  @Test
  void panelsLieApartEdgeToEdgeOrOverEachOther() {
    assertThat(apart(110)).isEqualTo("20 cm apart");
    assertThat(apart(90)).isEqualTo("edge to edge");
    assertThat(apart(88)).isEqualTo("2 cm over each other");
  }

  private static String apart(double start) {
    return SeamSpeech.apartText(
        the(
            cloth()
                .series("left", "heron", 3, 30, 10, 20)
                .mirrored()
                .series("right", "heron", 3, 30, start, 20)),
        Measures.METRIC);
  }

  @Test
  void onATubeTheLineOppositeToASeamMirrorsAsWell() {
    // seam at 0 of 200 round: what is mirrored in it is mirrored at 100
    MirroredPanels told =
        the(
            Sheet.tube(200, 140)
                .design("heron", 20, 30)
                .seam("side", 0, true)
                .series("left", "heron", 2, 30, 20, 20)
                .mirrored()
                .series("right", "heron", 2, 30, 132, 20));
    assertThat(told.axis().cm()).isEqualTo(100);
    assertThat(SeamSpeech.lineText(told, Measures.METRIC)).startsWith("the seam side");
    // 200 − 20 − 50 = 130
    assertThat(SeamSpeech.mend(told, Measures.METRIC)).isEqualTo("`start: 1.3 m`");
  }

  @Test
  void panelsOfOtherHeightsAreNoAnswerBeyondHalfAMotif() {
    // shorter side 20: a row 10 higher may be meant, one 11 higher not
    assertThat(all(heights(30))).hasSize(1);
    assertThat(all(heights(31))).isEmpty();
  }

  private static Sheet heights(double across) {
    return cloth()
        .series("left", "heron", 3, 30, 10, 20)
        .mirrored()
        .series("right", "heron", 3, 30, 110, across);
  }

  @Test
  void columnsAreReadFromTheLineAndRowsWithinThem() {
    // two by two at 10 and 40, 20 and 70 high; the mirror of it at 140 and 170 about 100, but the
    // copy nearest the line and low stands 2 out and 1 high
    MirroredPanels told =
        the(
            seamed()
                .placed("left", "heron", 10, 70, 40, 20, 10, 20, 40, 70)
                .mirrored()
                .placed("right", "heron", 170, 20, 142, 21, 170, 70, 140, 70));
    assertThat(told.misfitAlong().cm()).isEqualTo(2);
    assertThat(told.misfitAcross().cm()).isEqualTo(1);
    assertThat(told.first()).isEqualTo("left 2");
    assertThat(told.second()).isEqualTo("right 2");
    assertThat(SeamSpeech.mend(told, Measures.METRIC))
        .isEqualTo(
            "`at: [\"1.7 m, 20 cm\", \"1.4 m, 20 cm\", \"1.7 m, 70 cm\", \"1.4 m, 70 cm\"]`");
  }
}

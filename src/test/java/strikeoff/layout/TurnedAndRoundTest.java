package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Arrangement.Edge;
import strikeoff.plan.Arrangement.Lattice;
import strikeoff.speech.BorderSpeech;
import strikeoff.speech.FillSpeech;
import strikeoff.units.Measures;

/** Turned and mirrored motifs, and what goes round a tube; each value worked out by hand. */
class TurnedAndRoundTest {

  private static final double EXACT = 1e-6;

  @Test
  void mirroringComesBeforeTheTurn() {
    Layout layout =
        Sheet.open(430, 140)
            .design("heron", 34, 52, 10, 30, 12, 8)
            .mirrored()
            .turned(90)
            .placed("one", "heron", 100, 50)
            .layout();
    // mirrored 12–24, 30–38; from the centre 17, 26: −5–7, 4–12; turned −12–−4, −5–7; the turned
    // design is 52 by 34, so that its centre lies at 126, 67: 114–122, 62–74
    assertThat(layout.footprint(0, 1).image().getEnvelopeInternal())
        .isEqualTo(new Envelope(1140, 1220, 620, 740));
  }

  @Test
  void squaresOnTheirCornersNeedTheirDiagonal() {
    Sheet sheet =
        Sheet.open(300, 100).design("leaf", 20, 20).turned(45).series("row", "leaf", 4, 25, 20, 20);
    Crowding crowding = one(sheet, Crowding.class);
    // 20 · √2 = 28.284: the corners cross by 3.284, a square of that diagonal: 3.284² / 2 = 5.393
    assertThat(crowding.area().squareCm()).isCloseTo(5.3932, within(1e-4));
    assertThat(crowding.needed().text(Measures.METRIC)).isEqualTo("28.3 cm");
  }

  @Test
  void turnedMotifsSlantPastEachOther() {
    Sheet sheet =
        Sheet.open(300, 100).design("leaf", 20, 30).turned(30).series("row", "leaf", 4, 29, 20, 20);
    assertThat(all(sheet, Crowding.class)).isEmpty();
    SeriesSpan span = one(sheet, SeriesSpan.class);
    // the sides part at 20 / cos 30° = 23.0940, though the bounds are 20 cos 30° + 30 sin 30° =
    // 32.3205 long: 3 · 29 + 32.3205
    assertThat(span.gap().cm()).isCloseTo(5.9060, within(1e-4));
    assertThat(span.span().cm()).isCloseTo(119.3205, within(1e-4));
    NeighbourGap gap = one(sheet, NeighbourGap.class);
    // frame 40 × 50: half of 20 + 40 is 30, and 30 / cos 30° = 34.6410
    assertThat(gap.gap().cm()).isCloseTo(5.9060, within(1e-4));
    assertThat(gap.covered().cm()).isCloseTo(5.6410, within(1e-4));
    assertThat(gap.everyNth()).isEqualTo(2);
    // at a pitch of 23 they cross
    assertThat(
            one(
                    Sheet.open(300, 100)
                        .design("leaf", 20, 30)
                        .turned(30)
                        .series("row", "leaf", 4, 23, 20, 20),
                    Crowding.class)
                .needed()
                .text(Measures.METRIC))
        .isEqualTo("23.1 cm");
  }

  @Test
  void aFrameThatLiesAskewHoldsOneMotif() {
    FrameChoices choices =
        one(
            Sheet.open(300, 100)
                .design("leaf", 20, 20)
                .turned(45)
                .series("row", "leaf", 4, 60, 20, 20),
            FrameChoices.class);
    assertThat(choices.choices()).allSatisfy(c -> assertThat(c.motifs()).isEqualTo(1));
    // frame 40 × 40 on its corner: 40 · √2
    FrameChoices.Choice present =
        choices.choices().stream().filter(FrameChoices.Choice::present).findFirst().orElseThrow();
    assertThat(present.length().cm()).isCloseTo(56.5685, within(1e-4));
    assertThat(
            one(
                    Sheet.open(300, 100)
                        .design("leaf", 20, 20)
                        .turned(45)
                        .series("row", "leaf", 4, 60, 20, 20),
                    Lays.class)
                .motifs())
        .isEqualTo(1);
  }

  @Test
  void anOffsetBelowZeroReachesRoundTheSeam() {
    Sheet sheet =
        Sheet.tube(300, 100)
            .design("leaf", 20, 20)
            .series("row", "leaf", 3, 100, 10, 10)
            .anchored("hung", "leaf", "row", -25, 40, 1)
            .placed("last", "leaf", 280, 55);
    // 10 − 25 = −15 to 5 is 285–300 and 0–5; the last one 280–300: 15 · (70 − 55) = 225 cm²
    Overlap overlap = one(sheet, Overlap.class);
    assertThat(overlap.area().squareCm()).isCloseTo(225, within(EXACT));
    // on an open cloth it hangs over the start instead
    assertThat(
            one(
                    Sheet.open(300, 100)
                        .design("leaf", 20, 20)
                        .series("row", "leaf", 3, 100, 10, 10)
                        .anchored("hung", "leaf", "row", -25, 40, 1),
                    EdgeReach.class)
                .beyond()
                .cm())
        .isCloseTo(15, within(EXACT));
  }

  @Test
  void everyRowOfABrickRoundATubeHoldsAsMany() {
    Sheet sheet = round(Lattice.BRICK, 25, 300);
    // 300 / 25 = 12 in each of ⌊(80 − 20) / 25⌋ + 1 = 3 rows; the shifted row's last lies at
    // 12.5 + 11 · 25 = 287.5 to 307.5, 5 before its first at 312.5
    assertThat(sheet.layout().of("leaves")).hasSize(36);
    assertThat(all(sheet, Overlap.class)).isEmpty();
    assertThat(all(sheet, Crowding.class)).isEmpty();
    assertThat(sheet.layout().of("leaves").stream().mapToDouble(p -> p.x().cm()).max())
        .hasValue(287.5);
  }

  @Test
  void columnsRoundATubeAreWholePitches() {
    // 300 / 28 = 10.71: ten, though an eleventh would lie between 280 and 300, against the first
    Sheet sheet = round(Lattice.GRID, 28, 300);
    assertThat(sheet.layout().of("leaves")).hasSize(30);
    assertThat(one(sheet, FillRound.class).columns()).isEqualTo(10);
    // a rectangle of more than once round is filled once
    assertThat(round(Lattice.GRID, 30, 330).layout().of("leaves")).hasSize(30);
    // part of the way it is an open run: ⌊(299 − 20) / 28⌋ + 1
    assertThat(round(Lattice.GRID, 28, 299).layout().of("leaves")).hasSize(30);
    assertThat(round(Lattice.GRID, 27, 299).layout().of("leaves")).hasSize(33);
  }

  private static Sheet round(Lattice lattice, double pitch, double to) {
    return Sheet.tube(300, 100)
        .design("leaf", 20, 20)
        .fill(
            "leaves",
            "leaf",
            lattice,
            new double[] {pitch, 25},
            new double[] {0, to, 10, 90},
            0,
            0);
  }

  @Test
  void aBorderOfMoreThanOnceRoundLiesOnItself() {
    Sheet sheet =
        Sheet.tube(300, 100)
            .design("reeds", 30, 20)
            .border("hem", "reeds", Edge.NEAR, 10, 350, 30, 6);
    RoundTwice twice = one(sheet, RoundTwice.class);
    // ⌊340 / 30⌋ = 11 repeats of 30 are 330, 30 more than 300
    assertThat(twice.over().cm()).isCloseTo(30, within(EXACT));
    assertThat(BorderSpeech.endText(twice, Measures.METRIC)).isEqualTo("3.1 m");
  }

  /** A pitch or repeat that is written as it is told holds as often as it was told to. */
  @Test
  void whatIsToldToAHundredthFitsAsOften() {
    BorderRepeats told = border(32);
    // 420 / 13 = 32.3077, told as 32.307; 13 · 32.307 leaves 0.009, too little to see
    assertThat(told.longer().fineText(Measures.METRIC)).isEqualTo("32.307 cm");
    assertThat(border(32.307).whole()).isEqualTo(13);
    assertThat(border(32.307).rest().cm()).isZero();
    // 300 / 11 = 27.2727: eleven columns
    assertThat(
            FillSpeech.closings(
                one(round(Lattice.GRID, 28, 300), FillRound.class), Measures.METRIC))
        .isEqualTo(
            "Set the pitch along the length to 30 cm for 10 columns or 27.272 cm for 11 columns");
    assertThat(one(round(Lattice.GRID, 27.272, 300), FillRound.class).columns()).isEqualTo(11);
  }

  private static BorderRepeats border(double repeat) {
    return one(
        Sheet.open(430, 140)
            .design("reeds", 30, 22)
            .border("hem", "reeds", Edge.NEAR, 5, 425, repeat, 6),
        BorderRepeats.class);
  }

  @Test
  void aHalfDropAcrossASeamIsCrossedByItsColumnsRows() {
    // columns at 95, 125, 155, 185 …: the fourth, 185–205, crosses 200; it is shifted by 20, so it
    // holds ⌊(100 − 20 − 20) / 40⌋ + 1 = 2
    SeamCrossing crossing =
        one(
            Sheet.open(400, 100)
                .design("leaf", 20, 20)
                .seam("centre", 200, true)
                .fill(
                    "leaves",
                    "leaf",
                    Lattice.HALF_DROP,
                    new double[] {30, 40},
                    new double[] {95, 305, 0, 100},
                    0,
                    0),
            SeamCrossing.class);
    // before it 3 + 2 + 3 leaves
    assertThat(crossing.names()).containsExactly("leaves 9", "leaves 10");
  }

  private static <T> T one(Sheet sheet, Class<T> kind) {
    return LayoutEvidence.one(sheet.layout(), kind);
  }

  private static <T> List<T> all(Sheet sheet, Class<T> kind) {
    return LayoutEvidence.facts(sheet.layout(), kind);
  }
}

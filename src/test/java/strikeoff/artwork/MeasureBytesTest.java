package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.plan.Artwork.Tone;
import strikeoff.plan.Joint;
import strikeoff.plan.PrintedCells;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** What is kept of films comes back as it was, or not at all. */
class MeasureBytesTest {

  private static final Pair SIZE = new Pair(new Length(40), new Length(30));

  private static final Wanted WANTED =
      new Wanted("f.png", Tone.DARK, false, Optional.empty(), new Length(0), SIZE);

  private static OpenPoints open(Drawn drawn) throws Exception {
    OpenPoints open = new OpenPoints(Drawn.picture(drawn.png()), 0, 0);
    Drawn.picture(drawn.png()).read(Tone.DARK, open);
    return open;
  }

  private static OpenPoints lines() throws Exception {
    return open(
        new Drawn(40, 30, 300)
            .with(Drawn.bar(20, 15, 30, 0.6, 20))
            .with(Drawn.disc(10, 20, 8))
            .with(Drawn.wedge(20, 3, 12, 5, 90)));
  }

  private static int[] cells(PrintedCells cells) {
    int[] all = new int[cells.columns() * cells.rows()];
    for (int i = 0; i < all.length; i++) {
      all[i] = cells.share(i % cells.columns(), i / cells.columns());
    }
    return all;
  }

  private static PictureMeasures withoutCells(PictureMeasures m, PrintedCells cells) {
    return new PictureMeasures(
        m.columns(),
        m.rows(),
        m.open(),
        m.tones(),
        m.left(),
        m.top(),
        m.right(),
        m.bottom(),
        cells,
        m.halftone(),
        m.fine(),
        m.mirrorApart(),
        m.traced());
  }

  @Test
  void measuresOfAPictureComeBackToTheBit() throws Exception {
    Drawn dots = new Drawn(40, 30, 300).with(Drawn.halftone(12, 45, (x, y) -> 0.3));
    for (OpenPoints open : new OpenPoints[] {lines(), open(dots), open(new Drawn(40, 30, 100))}) {
      PictureMeasures measures = PictureMeasures.of(open, WANTED, true);
      PictureMeasures back = MeasureBytes.picture(MeasureBytes.of(measures)).orElseThrow();
      assertThat(withoutCells(back, measures.cells())).isEqualTo(measures);
      assertThat(cells(back.cells())).isEqualTo(cells(measures.cells()));
      assertThat(back.cells().cellLength()).isEqualTo(measures.cells().cellLength());
      assertThat(MeasureBytes.of(back)).isEqualTo(MeasureBytes.of(measures));
    }
  }

  @Test
  void jointsComeBackToTheBit() throws Exception {
    Bits one = lines().bits();
    Bits other = open(new Drawn(40, 30, 300).with(Drawn.disc(15, 20, 8))).bits();
    double point = 25.4 / 300;
    Joint joint =
        FilmJoints.of(
            TwoFilms.alone(one, other),
            FilmsNear.everywhere(one.columns(), one.rows()),
            point,
            point,
            Limited.by(5, 1),
            new KnownEdges());
    assertThat(joint.both().squareCm()).isPositive();
    assertThat(MeasureBytes.joint(MeasureBytes.of(joint))).contains(joint);
  }

  @Test
  void whatIsTornOrLongerOrOfAnotherKindIsNone() throws Exception {
    byte[] bytes = MeasureBytes.of(PictureMeasures.of(lines(), WANTED, true));
    for (int length = 0; length < bytes.length; length += 1 + length / 20) {
      assertThat(MeasureBytes.picture(Arrays.copyOf(bytes, length))).as("%d", length).isEmpty();
    }
    assertThat(MeasureBytes.picture(Arrays.copyOf(bytes, bytes.length + 1))).isEmpty();
    assertThat(MeasureBytes.joint(bytes)).isEmpty();
    byte[] huge = bytes.clone();
    Arrays.fill(huge, 16, 20, (byte) 0x7f);
    assertThat(MeasureBytes.picture(huge)).as("more tones than bytes").isEmpty();
  }
}

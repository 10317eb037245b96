package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.plan.Artwork.Tone;

/** A halftone is told by its ruling, and nothing else is taken for one. */
class HalftoneTest {

  private static final double SIDE = 60;

  private static Optional<Double> ruling(Drawn drawn, double perInch) throws Exception {
    Picture picture = Drawn.picture(drawn.png());
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    return Halftone.ruling(open.bits(), 25.4 / perInch, 25.4 / perInch);
  }

  private static Optional<Double> ruling(Drawn.Shape shape) throws Exception {
    return ruling(new Drawn(SIDE, SIDE, 600).with(shape), 600);
  }

  /** Of a film of 35 mm square, where a few squares have to tell. */
  private static Optional<Double> small(Drawn.Shape shape) throws Exception {
    return ruling(new Drawn(35, 35, 600).with(shape), 600);
  }

  @ParameterizedTest
  @CsvSource({
    "300,8,45", "300,12,45", "300,20,45", "600,8,0", "600,8,45", "600,12,15", "600,12,45",
    "600,12,75", "600,20,30", "600,20,45", "600,25,45", "1200,8,45", "1200,12,45", "1200,20,45"
  })
  void fromLightToDark(double perInch, double perCm, double degrees) throws Exception {
    Drawn drawn =
        new Drawn(SIDE, 40, perInch).with(Drawn.halftone(perCm, degrees, (x, y) -> x / SIDE));
    assertThat(ruling(drawn, perInch).orElseThrow()).isCloseTo(perCm, within(perCm * 0.02));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 0.95})
  void inOneTone(double tone) throws Exception {
    assertThat(ruling(Drawn.halftone(12, 45, (x, y) -> tone)).orElseThrow())
        .isCloseTo(12, within(0.24));
  }

  /** In a part of the film alone, which leaves off into nothing. */
  @Test
  void inTheShadeOfARoundBody() throws Exception {
    assertThat(
            ruling(Drawn.halftone(12, 45, (x, y) -> 1 - Math.hypot(x - 30, y - 30) / 20))
                .orElseThrow())
        .isCloseTo(12, within(0.24));
  }

  /** The same motif again and again, so far apart in mm and so large. */
  private static Drawn.Shape repeated(double pitch, Drawn.Shape motif) {
    return (x, y) ->
        motif.covers(x - pitch * Math.floor(x / pitch), y - pitch * Math.floor(y / pitch));
  }

  private static Drawn.Shape between(double near, double far, Drawn.Shape shape) {
    return (x, y) -> y > near && y < far && shape.covers(x, y);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.8, 1, 1.25, 1.5, 2})
  void aDottedBorderIsNone(double pitch) throws Exception {
    Drawn.Shape dots = repeated(pitch, Drawn.disc(pitch / 2, pitch / 2, pitch * 0.6));
    for (int rows = 1; rows <= 5; rows++) {
      assertThat(ruling(between(20 * pitch, (20 + rows) * pitch, dots))).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1.5,0.6", "2,0.8", "2,1.8", "2.5,1", "2.5,2.2", "3,1.2", "3,2.7", "4,1.6", "5,2", "8,5"
  })
  void dotsAsMotifsAreNone(double pitch, double diameter) throws Exception {
    assertThat(ruling(repeated(pitch, Drawn.disc(pitch / 2, pitch / 2, diameter)))).isEmpty();
  }

  /** Five petals, and a leaf, at small pitches. */
  @ParameterizedTest
  @ValueSource(doubles = {1.8, 2.5, 4, 6, 9, 14})
  void smallRepeatsAreNone(double pitch) throws Exception {
    Drawn.Shape flower =
        (x, y) -> {
          for (int i = 0; i < 5; i++) {
            double turn = i * 2 * Math.PI / 5;
            double away =
                Math.hypot(
                    x - pitch * (0.5 + 0.25 * Math.cos(turn)),
                    y - pitch * (0.5 + 0.25 * Math.sin(turn)));
            if (away < pitch * 0.12) {
              return true;
            }
          }
          return false;
        };
    assertThat(ruling(repeated(pitch, flower))).isEmpty();
    assertThat(ruling(repeated(pitch, Drawn.leaf(pitch / 2, pitch / 2, pitch * 0.8, pitch * 0.4))))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.15, 0.2, 0.3})
  void linesThatCrossAreLines(double width) throws Exception {
    double pitch = 1.25;
    Drawn.Shape one = (x, y) -> (x + y) / Math.sqrt(2) % pitch < width;
    Drawn.Shape other = (x, y) -> ((y - x) / Math.sqrt(2) + 100 * pitch) % pitch < width;
    assertThat(ruling(one)).isEmpty();
    assertThat(ruling((x, y) -> one.covers(x, y) || other.covers(x, y))).isEmpty();
  }

  /** Cross-hatching in black, and white lines on black, at any ruling that a halftone has. */
  @ParameterizedTest
  @CsvSource({
    "8,0.4,45",
    "8,0.4,0",
    "8,0.25,20",
    "8,0.6,30",
    "10,0.5,45",
    "12,0.3,30",
    "15,0.25,45"
  })
  void hatchingAcrossIsNone(double perCm, double width, double degrees) throws Exception {
    double pitch = 10 / perCm;
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    Drawn.Shape hatched =
        (x, y) ->
            (x * cos + y * sin + 100 * pitch) % pitch < width
                || (y * cos - x * sin + 100 * pitch) % pitch < width;
    assertThat(small(hatched)).isEmpty();
    assertThat(small((x, y) -> !hatched.covers(x, y))).isEmpty();
  }

  /** The dots of a known grid, round and all of one size, and round holes. */
  @ParameterizedTest
  @CsvSource({
    "8,0.3,0",
    "8,0.54,20",
    "8,0.7,45",
    "10,0.6,45",
    "12,0.6,75",
    "15,0.5,45",
    "25,0.5,30"
  })
  void roundDotsAndRoundHolesAreOne(double perCm, double covered, double degrees) throws Exception {
    double pitch = 10 / perCm;
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    double radius = pitch * Math.sqrt(covered / Math.PI);
    Drawn.Shape dots =
        (x, y) -> {
          double u = x * cos + y * sin + 100 * pitch;
          double v = y * cos - x * sin + 100 * pitch;
          return Math.hypot(u % pitch - pitch / 2, v % pitch - pitch / 2) < radius;
        };
    assertThat(small(dots).orElseThrow()).isCloseTo(perCm, within(perCm * 0.02));
    assertThat(small((x, y) -> !dots.covers(x, y)).orElseThrow())
        .isCloseTo(perCm, within(perCm * 0.02));
  }

  @Test
  void checksBricksAndScatteredDotsAreNone() throws Exception {
    for (int mm = 1; mm <= 4; mm++) {
      int side = mm;
      assertThat(ruling((x, y) -> ((int) (x / side) + (int) (y / side)) % 2 == 0)).isEmpty();
    }
    assertThat(ruling((x, y) -> y % 1 < 0.2 || (x + (int) y % 2) % 2 < 0.2)).isEmpty();
    Drawn scattered = new Drawn(SIDE, SIDE, 600);
    Random random = new Random(3);
    double[][] dots = new double[40 * 40][2];
    for (int i = 0; i < dots.length; i++) {
      dots[i][0] = i % 40 * 1.5 + random.nextDouble() * 1.2;
      dots[i][1] = i / 40 * 1.5 + random.nextDouble() * 1.2;
    }
    scattered.with(
        (x, y) -> {
          for (int near : new int[] {-41, -40, -39, -1, 0, 1, 39, 40, 41}) {
            int i = (int) (y / 1.5) * 40 + (int) (x / 1.5) + near;
            if (i >= 0 && i < dots.length && Math.hypot(x - dots[i][0], y - dots[i][1]) < 0.25) {
              return true;
            }
          }
          return false;
        });
    assertThat(ruling(scattered, 600)).isEmpty();
  }

  @Test
  void whatIsSmallerThanItsDotsCanBeToldByIsNone() throws Exception {
    assertThat(ruling(new Drawn(2, 2, 600).with(Drawn.halftone(12, 45, (x, y) -> 0.3)), 600))
        .isEmpty();
    assertThat(ruling((x, y) -> true)).isEmpty();
    assertThat(ruling((x, y) -> false)).isEmpty();
  }

  /** Dots that touch look like lines, and are none. */
  @Test
  void nothingIsFineInAHalftone() throws Exception {
    Drawn drawn = new Drawn(100, 100, 300).with(Drawn.halftone(12, 45, (x, y) -> x / 100));
    Picture picture = Drawn.picture(drawn.png());
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    PictureMeasures measures = PictureMeasures.of(open, Drawn.WANTED, true);
    assertThat(measures.halftone().orElseThrow().perCm()).isCloseTo(12, within(0.24));
    assertThat(measures.fine()).isEmpty();
  }
}

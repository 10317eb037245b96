package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Traced;
import strikeoff.policy.yaml.PolicyReader;

/** Outlines for a page against the films, by area and by the JDK's own filling of paths. */
class TracingTest {

  private static final double INCH = 25.4;

  private static Optional<Traced> traced(Drawn drawn, int perInch, boolean wrong) {
    return Tracing.of(drawn.bits(), INCH / perInch, INCH / perInch, wrong);
  }

  private static double inked(Drawn drawn, int perInch) {
    return drawn.bits().count() * INCH / perInch * INCH / perInch;
  }

  @Test
  void everyFilmOfTheCurtainsKeepsItsArea() throws Exception {
    PrintPlan plan =
        DemoFilms.plan(
            Files.readString(Path.of("plans/estuary-curtains.yaml")), PolicyReader.builtIn());
    int corners = 0;
    for (var design : plan.designs().values()) {
      for (Separation colour : design.separations()) {
        Artwork film = colour.artwork().orElseThrow();
        Traced traced = film.traced().orElseThrow();
        assertThat(traced.area() / 100)
            .as(film.file())
            .isCloseTo(colour.printed().squareCm(), Percentage.withPercentage(1));
        corners += traced.corners();
      }
    }
    // Six letters and signs a corner: a page is to grow by less than 40 KiB.
    assertThat(corners).isLessThan(40 * 1024 / 6);
  }

  /** Area of a disc and of a ring, by elementary geometry. */
  @Test
  void discsAndRingsKeepTheirs() {
    Drawn disc = new Drawn(40, 40, 300).with(Drawn.disc(20, 20, 10));
    assertThat(traced(disc, 300, false).orElseThrow().area())
        .isCloseTo(78.54, Percentage.withPercentage(1));
    Drawn ring =
        new Drawn(40, 40, 300)
            .with(
                (x, y) -> {
                  double off = Math.hypot(x - 20, y - 20);
                  return off <= 15 && off >= 14;
                });
    Traced traced = traced(ring, 300, false).orElseThrow();
    assertThat(traced.rings()).hasNumberOfRows(2);
    assertThat(Traced.twiceArea(traced.rings()[0]) * Traced.twiceArea(traced.rings()[1]))
        .as("a hole goes round the other way")
        .isNegative();
    assertThat(traced.area()).isCloseTo(Math.PI * (225 - 196), Percentage.withPercentage(1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.3, 0.5, 1})
  void linesOfEachWidthKeepTheirs(double width) {
    for (int degrees = 0; degrees < 90; degrees += 10) {
      Drawn bar = new Drawn(40, 40, 600).with(Drawn.bar(20, 20, 30, width, degrees));
      assertThat(traced(bar, 600, false).orElseThrow().area())
          .as("%s°", degrees)
          .isCloseTo(inked(bar, 600), Percentage.withPercentage(2));
    }
  }

  /** The JDK fills the same points, but for a part of the edge. */
  @Test
  void aPathCoversWhatTheFilmDoes() {
    Drawn leaves =
        new Drawn(60, 80, 300)
            .with(Drawn.leaf(20, 40, 70, 20))
            .with(Drawn.leaf(40, 40, 60, 16))
            .with(Drawn.bar(30, 40, 50, 1, 30));
    Traced traced = traced(leaves, 300, false).orElseThrow();
    int apart = 0;
    int all = 0;
    BufferedImage filled = filled(traced, leaves.columns(), leaves.rows(), INCH / 300);
    for (int y = 0; y < leaves.rows(); y++) {
      for (int x = 0; x < leaves.columns(); x++) {
        apart += leaves.isDark(x, y) != (filled.getRGB(x, y) == -1) ? 1 : 0;
        all += leaves.isDark(x, y) ? 1 : 0;
      }
    }
    assertThat((double) apart / all).isLessThan(0.02);
  }

  private static BufferedImage filled(Traced traced, int columns, int rows, double point) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double scale = traced.step() / point;
    for (int[] ring : traced.rings()) {
      path.moveTo(ring[0] * scale, ring[1] * scale);
      for (int i = 2; i < ring.length; i += 2) {
        path.lineTo(ring[i] * scale, ring[i + 1] * scale);
      }
      path.closePath();
    }
    BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
    image.createGraphics().fill(path);
    return image;
  }

  @Test
  void aFilmSeenThroughItsBackIsTurnedOver() {
    Drawn left = new Drawn(40, 20, 254).with(Drawn.bar(10, 10, 10, 10, 0));
    int right = 0;
    for (int[] ring : traced(left, 254, true).orElseThrow().rings()) {
      for (int i = 0; i < ring.length; i += 2) {
        right = Math.max(right, ring[i]);
      }
    }
    assertThat(right * traced(left, 254, true).orElseThrow().step()).isCloseTo(35, within(0.2));
  }

  @Test
  void nothingAndTexturesAreNotDrawn() {
    assertThat(traced(new Drawn(10, 10, 300), 300, false)).isEmpty();
    Drawn dots =
        new Drawn(200, 200, 254).with((x, y) -> (int) (x * 10) % 4 < 2 && (int) (y * 10) % 4 < 2);
    assertThat(traced(dots, 254, false)).isEmpty();
  }

  @Test
  void pointsThatTouchAtACornerEndTheirRings() {
    Drawn checks = new Drawn(8, 8, 254).with((x, y) -> ((int) (x / 2) + (int) (y / 2)) % 2 == 0);
    Traced traced = traced(checks, 254, false).orElseThrow();
    assertThat(traced.rings()).hasNumberOfRows(8);
    assertThat(traced.area()).isCloseTo(32, Percentage.withPercentage(2));
  }

  /** A thousand teeth in one ring: were each looked at for each other one it would take minutes. */
  @Test
  void aLongRingIsFollowedInTimeThatGrowsWithIt() {
    Bits comb = new Bits(8000, 1000);
    for (int y = 0; y < comb.rows(); y++) {
      for (int x = 0; x < comb.columns() - 4 * y; x++) {
        if (y < 4 || x % 8 < 4) {
          comb.set(x, y);
        }
      }
    }
    assertTimeoutPreemptively(
        Duration.ofSeconds(30),
        () -> assertThat(Tracing.of(comb, 0.05, 0.05, false).orElseThrow().corners()).isPositive());
  }
}

package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import strikeoff.checks.Draws;
import strikeoff.plan.Arrangement.Lattice;
import strikeoff.units.Length;

class LayoutProperties {

  @Property(tries = 300, seed = Draws.ALIKE)
  void aSeriesEndsAPitchFurtherWithEachCopy(
      @ForAll @IntRange(min = 1, max = 60) int n,
      @ForAll @DoubleRange(min = 1, max = 90) double pitch,
      @ForAll @DoubleRange(max = 360) double turn) {
    assertThat(end(n + 1, pitch, turn) - end(n, pitch, turn)).isCloseTo(pitch * 10, within(1e-6));
  }

  @Property(tries = 300, seed = Draws.ALIKE)
  void aWholeTurnChangesNothing(
      @ForAll @DoubleRange(max = 360) double turn, @ForAll boolean mirrored) {
    Geometry once = turned(turn, mirrored);
    assertThat(turned(turn + 360, mirrored).equalsExact(once, 1e-6)).isTrue();
    assertThat(turned(turn - 720, mirrored).equalsExact(once, 1e-6)).isTrue();
  }

  @Property(tries = 300, seed = Draws.ALIKE)
  void overlapAndDistanceRoundATubeAreTheSameFromBothSides(
      @ForAll @DoubleRange(min = -150, max = 250) double x,
      @ForAll @DoubleRange(min = -150, max = 250) double otherX,
      @ForAll @DoubleRange(max = 40) double otherY,
      @ForAll @DoubleRange(max = 90) double turn) {
    Layout layout =
        Sheet.tube(100, 80)
            .design("heron", 34, 52)
            .design("shell", 20, 10)
            .placed("one", "heron", x, 10)
            .turned(turn)
            .placed("other", "shell", otherX, otherY)
            .layout();
    Geometry one = layout.placements().get(0).outline();
    Geometry other = layout.placements().get(1).outline();
    Tube tube = layout.tube();
    double area = tube.overlap(one, other).squareCm();
    assertThat(tube.overlap(other, one).squareCm()).isCloseTo(area, within(1e-6));
    assertThat(tube.distance(other, one)).isCloseTo(tube.distance(one, other), within(1e-6));
    if (area > 0.01) {
      assertThat(tube.distance(one, other)).isZero();
      ClothIndex<String> index = new ClothIndex<>(tube);
      index.add(one, "one");
      assertThat(index.near(other, 0)).containsExactly("one");
    }
  }

  @Property(tries = 200, seed = Draws.ALIKE)
  void noRepeatOfAFillLiesInsideItsClearance(
      @ForAll Lattice lattice,
      @ForAll boolean closed,
      @ForAll @DoubleRange(min = 5, max = 40) double pitchX,
      @ForAll @DoubleRange(min = 5, max = 40) double pitchY,
      @ForAll @DoubleRange(max = 12) double clear,
      @ForAll @DoubleRange(max = 90) double turn) {
    Sheet sheet = closed ? Sheet.tube(210, 100) : Sheet.open(210, 100);
    Layout layout =
        sheet
            .design("heron", 34, 52)
            .design("shell", 8, 7)
            .turned(turn)
            .series("herons", "heron", 3, 70, 12, 30)
            .fill(
                "shells",
                "shell",
                lattice,
                new double[] {pitchX, pitchY},
                new double[] {0, 210, 0, 100},
                clear,
                0,
                "herons")
            .layout();
    for (Placement shell : layout.of("shells")) {
      Envelope box = shell.outline().getEnvelopeInternal();
      assertThat(box.getMinX()).isGreaterThanOrEqualTo(-Length.TOLERANCE);
      // Round a tube, a row may run on over the seam, but not to its own first repeat.
      assertThat(closed ? box.getMinX() : box.getMaxX())
          .isLessThanOrEqualTo(2100 + Length.TOLERANCE);
      for (Placement heron : layout.of("herons")) {
        assertThat(layout.tube().distance(shell.outline(), heron.outline()))
            .isGreaterThanOrEqualTo(clear * 10 - 2 * Length.TOLERANCE);
        assertThat(layout.tube().overlaps(shell.outline(), heron.outline())).isFalse();
      }
    }
    FillFit fit =
        layout.evidence().stream()
            .filter(FillFit.class::isInstance)
            .map(FillFit.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(fit.fitted()).isEqualTo(layout.of("shells").size());
    assertThat(fit.fitted() + fit.dropped()).isEqualTo(fit.candidates());
  }

  private static double end(int n, double pitch, double turn) {
    Layout layout =
        Sheet.open(9000, 100)
            .design("heron", 34, 52)
            .turned(turn)
            .series("herons", "heron", n, pitch, 20, 20)
            .layout();
    return layout.of("herons").get(n - 1).outline().getEnvelopeInternal().getMaxX();
  }

  private static Geometry turned(double degrees, boolean mirrored) {
    Sheet sheet = Sheet.open(900, 100).design("heron", 34, 52, 3, 4, 12, 20);
    if (mirrored) {
      sheet.mirrored();
    }
    Layout layout = sheet.turned(degrees).placed("one", "heron", 100, 20).layout();
    return layout.footprint(0, 1).image();
  }
}

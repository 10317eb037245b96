package strikeoff.units;

import java.util.Optional;

/** A length in millimetres, so that whole centimetres and inches stay exact. */
public record Length(double mm) implements Quantity, Comparable<Length> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Length {
    Numbers.requireFinite(mm, "Length");
  }

  /**
   * What nobody can lay, cut or see, in mm: the one tolerance wherever lengths on cloth, table and
   * screens are compared, and it counts both ways. Half of what a frame is out on a railed table (1
   * mm); and a plan written in inches to three decimals, each out by up to 0.013 mm, may add up
   * some forty of them along a row and still mean what it means in centimetres.
   */
  public static final double TOLERANCE = 0.5;

  /**
   * The same for what is drawn finer than a millimetre, as traps and lines are: half of the last of
   * three decimals of an inch, in mm.
   */
  public static final double FINE_TOLERANCE = 0.0127;

  /** The same for threads and films, which are written in µm: half of one, in mm. */
  private static final double THIN_TOLERANCE = 0.0005;

  /** Lengths from this on are told in cm, and shorter ones in mm. */
  private static final double IN_CM = 10;

  /** The thickest thread of a mesh and more, in mm; all details are longer. */
  private static final double THIN = 0.25;

  /**
   * The tolerance by which something of a length is compared where nobody says what it is.
   *
   * @param mm the longer one
   */
  public static double tolerance(double mm) {
    return mm >= IN_CM ? TOLERANCE : mm >= THIN ? FINE_TOLERANCE : THIN_TOLERANCE;
  }

  public static Length ofCm(double cm) {
    return new Length(cm * 10);
  }

  public double cm() {
    return mm / 10;
  }

  public double m() {
    return mm / 1000;
  }

  public Length plus(Length other) {
    return new Length(mm + other.mm);
  }

  public Length minus(Length other) {
    return new Length(mm - other.mm);
  }

  public Length times(double factor) {
    return new Length(mm * factor);
  }

  /** True if longer than so many mm by more than the tolerance. */
  public boolean above(double limit) {
    return mm > limit + TOLERANCE;
  }

  /** True if shorter than so many mm by more than the tolerance. */
  public boolean below(double limit) {
    return mm < limit - TOLERANCE;
  }

  /** True if shorter than so many mm by more than the tolerance for what is finer than cloth. */
  public boolean finerThan(double limit) {
    return mm < limit - FINE_TOLERANCE;
  }

  @Override
  public double base() {
    return mm;
  }

  @Override
  public String text() {
    return Math.abs(mm) >= 1000 && Math.abs(mm) % 100 < 1e-9
        ? Numbers.plain(mm / 1000, 2) + " m"
        : Math.abs(mm) >= 10
            ? Numbers.plain(mm / 10, 1) + " cm"
            : Numbers.plain(mm, Math.abs(mm) < 1 ? 2 : 1) + " mm";
  }

  @Override
  public String text(Measures units) {
    return scale(units).map(s -> s.text(mm)).orElseGet(this::text);
  }

  /**
   * To a hundredth of a millimetre or a thousandth of an inch, never more than it is: for a pitch,
   * whose rounding adds up from copy to copy, and which must still fit as often as it did.
   */
  public String fineText(Measures units) {
    return scale(units)
        .map(s -> s.isPlain(mm) ? s.text(mm) : Numbers.plain(thousandths(mm), 3) + " in")
        .orElseGet(() -> Numbers.plain(Math.floor(mm * 100 + 1e-6) / 1000, 3) + " cm");
  }

  private static double thousandths(double mm) {
    return Math.floor(mm / 25.4 * 1000 + 1e-6) / 1000;
  }

  /** As it is said, but never less than it is: for what must be at least so long. */
  public String roundedUp(Measures units) {
    return up(units).text(units);
  }

  /** As it is said, but never more than it is: for what must be at most so long. */
  public String roundedDown(Measures units) {
    return down(units).text(units);
  }

  /**
   * The number alone, for columns whose head gives the unit: in cm, or in inches.
   *
   * @see #columnUnit
   */
  public String inColumn(Measures units) {
    return units.metric(MeasureKind.LENGTH) ? Numbers.plain(mm / 10, 1) : Scale.inches(mm);
  }

  /** The unit of {@link #inColumn}. */
  public static String columnUnit(Measures units) {
    return units.metric(MeasureKind.LENGTH) ? "cm" : "in";
  }

  /** As threads are told: {@code 64 µm}, where thicknesses are told in metric units. */
  public String thinText(Measures units) {
    return units
        .scale(MeasureKind.THICKNESS)
        .map(s -> s.text(mm))
        .orElseGet(() -> Numbers.plain(mm * 1000, 0) + " µm");
  }

  /** How finely cloth, frames and boards are measured out: to a millimetre, or an eighth inch. */
  public static Length measuredTo(Measures units) {
    return new Length(units.metric(MeasureKind.LENGTH) ? 1 : 25.4 / 8);
  }

  /** The nearest that {@link #writtenText} tells. */
  public Length written(Measures units) {
    double finest = scale(units).isPresent() ? 0.0254 : 0.01;
    return new Length(Math.rint(mm / finest) * finest);
  }

  /**
   * Told as what is enough, where it is worked out in steps of metric units already: never less
   * than it is in other ones.
   */
  public String enough(Measures units) {
    return scale(units).isPresent() ? roundedUp(units) : text();
  }

  /** The same as what is the most. */
  public String most(Measures units) {
    return scale(units).isPresent() ? roundedDown(units) : text();
  }

  /** What {@link #roundedUp} says. */
  public Length up(Measures units) {
    return new Length(
        scale(units)
            .map(s -> s.rounded(mm, Scale.To.UP))
            .orElseGet(() -> Math.ceil(mm / said() - 1e-6) * said()));
  }

  /** What {@link #roundedDown} says. */
  public Length down(Measures units) {
    return new Length(
        scale(units)
            .map(s -> s.rounded(mm, Scale.To.DOWN))
            .orElseGet(() -> Math.floor(mm / said() + 1e-6) * said()));
  }

  /** The last figure of the text, in millimetres. */
  private double said() {
    return Math.abs(mm) >= 10 ? 1 : Math.abs(mm) >= 1 ? 0.1 : 0.01;
  }

  /**
   * As short as goes without losing a hundredth of a millimetre or a thousandth of an inch: for
   * what is copied into a plan.
   */
  public String writtenText(Measures units) {
    boolean whole = scale(units).isEmpty() && Math.abs(mm - Math.rint(mm)) < 1e-6;
    return whole ? text() : fineText(units);
  }

  /** As the length of a piece of cloth, in yards where the plan writes any. */
  public String clothText(Measures units) {
    return units.scale(MeasureKind.CLOTH_LENGTH).map(s -> s.text(mm)).orElseGet(() -> text(units));
  }

  private Optional<Scale> scale(Measures units) {
    return units.scale(MeasureKind.toldFor(mm));
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(mm, other.mm);
  }

  @Override
  public String toString() {
    return text();
  }
}

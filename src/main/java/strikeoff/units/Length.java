package strikeoff.units;

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

  /**
   * To a hundredth of a millimetre, never more than it is: for a pitch, whose rounding adds up from
   * copy to copy, and which must still fit as often as it did.
   */
  public String fineText() {
    return Numbers.plain(Math.floor(mm * 100 + 1e-6) / 1000, 3) + " cm";
  }

  /** As it is said, but never less than it is: for what must be at least so long. */
  public String roundedUp() {
    return new Length(Math.ceil(mm / said() - 1e-6) * said()).text();
  }

  /** As it is said, but never more than it is: for what must be at most so long. */
  public String roundedDown() {
    return new Length(Math.floor(mm / said() + 1e-6) * said()).text();
  }

  /** The last figure of the text, in millimetres. */
  private double said() {
    return Math.abs(mm) >= 10 ? 1 : Math.abs(mm) >= 1 ? 0.1 : 0.01;
  }

  /**
   * As short as goes without losing a hundredth of a millimetre: for what is copied into a plan.
   */
  public String writtenText() {
    return Math.abs(mm - Math.rint(mm)) < 1e-6 ? text() : fineText();
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

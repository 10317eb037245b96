package strikeoff.units;

/** A length in millimetres, so that whole centimetres and inches stay exact. */
public record Length(double mm) implements Quantity, Comparable<Length> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Length {
    Numbers.requireFinite(mm, "Length");
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

package strikeoff.units;

/** A volume in litres. */
public record Volume(double litres) implements Quantity, Comparable<Volume> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Volume {
    Numbers.requireFinite(litres, "Volume");
  }

  public double ml() {
    return litres * 1000;
  }

  public Volume plus(Volume other) {
    return new Volume(litres + other.litres);
  }

  @Override
  public double base() {
    return litres;
  }

  @Override
  public String text() {
    return Math.abs(litres) >= 1
        ? Numbers.plain(litres, 1) + " L"
        : Numbers.plain(litres * 1000, 0) + " ml";
  }

  @Override
  public int compareTo(Volume other) {
    return Double.compare(litres, other.litres);
  }

  @Override
  public String toString() {
    return text();
  }
}

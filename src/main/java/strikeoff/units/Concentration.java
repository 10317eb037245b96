package strikeoff.units;

/** A concentration in g/L. */
public record Concentration(double gramsPerLitre) implements Quantity, Comparable<Concentration> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Concentration {
    Numbers.requireFinite(gramsPerLitre, "Concentration");
  }

  @Override
  public double base() {
    return gramsPerLitre;
  }

  @Override
  public String text() {
    return Numbers.plain(gramsPerLitre, 1) + " g/L";
  }

  @Override
  public String text(Measures units) {
    return units
        .scale(MeasureKind.CONCENTRATION)
        .map(s -> s.text(gramsPerLitre))
        .orElseGet(this::text);
  }

  @Override
  public int compareTo(Concentration other) {
    return Double.compare(gramsPerLitre, other.gramsPerLitre);
  }

  @Override
  public String toString() {
    return text();
  }
}

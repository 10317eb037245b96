package strikeoff.units;

/** A mass per area in g/m²: of cloth, or of paste laid down. */
public record ArealMass(double gramsPerSquareMetre) implements Quantity, Comparable<ArealMass> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public ArealMass {
    Numbers.requireFinite(gramsPerSquareMetre, "ArealMass");
  }

  /** As it is told, to the gram: one that is told as the limit is not beyond it. */
  public ArealMass told() {
    return new ArealMass(Math.rint(gramsPerSquareMetre));
  }

  @Override
  public double base() {
    return gramsPerSquareMetre;
  }

  @Override
  public String text() {
    return Numbers.plain(gramsPerSquareMetre, 0) + " g/m²";
  }

  @Override
  public String text(Measures units) {
    return units
        .scale(MeasureKind.AREAL_MASS)
        .map(s -> s.text(gramsPerSquareMetre))
        .orElseGet(this::text);
  }

  @Override
  public int compareTo(ArealMass other) {
    return Double.compare(gramsPerSquareMetre, other.gramsPerSquareMetre);
  }

  @Override
  public String toString() {
    return text();
  }
}

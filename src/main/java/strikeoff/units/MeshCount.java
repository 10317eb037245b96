package strikeoff.units;

/** Mesh threads per centimetre. */
public record MeshCount(double perCm) implements Quantity, Comparable<MeshCount> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public MeshCount {
    Numbers.requireFinite(perCm, "MeshCount");
  }

  @Override
  public double base() {
    return perCm;
  }

  @Override
  public String text() {
    return Numbers.plain(perCm, 0) + "/cm";
  }

  @Override
  public int compareTo(MeshCount other) {
    return Double.compare(perCm, other.perCm);
  }

  @Override
  public String toString() {
    return text();
  }
}

package strikeoff.units;

/** Mesh threads per centimetre. */
public record MeshCount(double perCm) implements Quantity, Comparable<MeshCount> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public MeshCount {
    Numbers.requireFinite(perCm, "MeshCount");
  }

  /** As it is told, in whole threads: one that is told as the limit is not beyond it. */
  public MeshCount told() {
    return new MeshCount(Math.rint(perCm));
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
  public String text(Measures units) {
    return units.scale(MeasureKind.MESH_COUNT).map(s -> s.text(perCm)).orElseGet(this::text);
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

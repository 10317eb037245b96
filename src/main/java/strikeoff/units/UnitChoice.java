package strikeoff.units;

/** In whose units a user wants to be answered. */
public enum UnitChoice {
  PLAN,
  METRIC,
  US,
  IMPERIAL;

  /** The plan's own units, unless others are chosen. */
  public Measures over(Measures plan) {
    return switch (this) {
      case PLAN -> plan;
      case METRIC -> Measures.METRIC;
      case US -> Measures.US;
      case IMPERIAL -> Measures.IMPERIAL;
    };
  }
}

package strikeoff.units;

/**
 * A measured value with its dimension, held in one base unit. Formatting never depends on the
 * default locale.
 */
public sealed interface Quantity
    permits Length,
        Area,
        Mass,
        Volume,
        Span,
        Temperature,
        Share,
        ArealMass,
        Concentration,
        MeshCount,
        AirSpeed,
        Angle,
        Ratio {

  /** The number in the base unit of the dimension; rules compare limits by it. */
  double base();

  /**
   * In metric units, for example {@code 37.5 cm} or {@code 1 h 20 min}: for figures that are no
   * plan's, as a policy's limits are.
   */
  String text();

  /** As a printer who works in these units would write it: {@code 14 3/4 in}. */
  String text(Measures units);
}

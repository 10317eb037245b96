package strikeoff.units;

/** A volume per area: what a mesh can hold, in cm³/m². */
public record ArealVolume(double cubicCmPerSquareMetre) {

  private static final double SQUARE_METRES_IN_SQUARE_YARD = 0.83612736;
  private static final double US_FLUID_OUNCE = 29.5735295625;
  private static final double IMPERIAL_FLUID_OUNCE = 28.4130625;

  /** The number alone, as precisely as anybody knows it. */
  public String number(Measures units) {
    return switch (units.of(MeasureKind.AREAL_MASS)) {
      case METRIC -> Numbers.plain(cubicCmPerSquareMetre, 0);
      case US -> ounces(US_FLUID_OUNCE);
      case IMPERIAL -> ounces(IMPERIAL_FLUID_OUNCE);
    };
  }

  private String ounces(double millilitres) {
    return Numbers.plain(cubicCmPerSquareMetre * SQUARE_METRES_IN_SQUARE_YARD / millilitres, 2);
  }

  /** What stands behind the number. */
  public static String unit(Measures units) {
    return switch (units.of(MeasureKind.AREAL_MASS)) {
      case METRIC -> "cm³/m²";
      case US -> "fl oz/yd²";
      case IMPERIAL -> "imp fl oz/yd²";
    };
  }
}

package strikeoff.colour;

/**
 * CIE 1931 tristimulus values, Y = 1 for white, under D65.
 *
 * <p>The matrix is that of CSS Color 4, derived from the chromaticities of sRGB and of D65 (0.3127,
 * 0.3290). Its row sums are this tool's one white point, so white and all greys come out without
 * any hue.
 */
public record Xyz(double x, double y, double z) {

  /** D65 from its rounded chromaticities: 0.950456, 1, 1.089058. */
  public static final Xyz WHITE = of(Reflectance.WHITE);

  public static Xyz of(Reflectance bands) {
    double r = bands.red();
    double g = bands.green();
    double b = bands.blue();
    return new Xyz(
        0.41239079926595934 * r + 0.357584339383878 * g + 0.1804807884018343 * b,
        0.21263900587151027 * r + 0.715168678767756 * g + 0.07219231536073371 * b,
        0.01933081871559182 * r + 0.11919477979462598 * g + 0.9505321522496607 * b);
  }
}

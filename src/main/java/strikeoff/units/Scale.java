package strikeoff.units;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a kind of measure is told in customary units: which unit from how much on, and in which steps
 * a person measures it out. What is a plain fraction or decimal of its unit is told as it is, so
 * that what a plan says comes back as it was written; all else goes to the nearest step.
 *
 * <p>Sizes of units are those of {@link Units}. The steps are common practice, no source.
 */
final class Scale {

  /** Where to round to. */
  enum To {
    NEAREST,
    UP,
    DOWN
  }

  private static final double INCH = 25.4;
  private static final double OUNCE = 28.349523125;
  private static final double POUND = 16 * OUNCE;
  private static final double SQUARE_INCH = 6.4516;
  private static final double SQUARE_YARD = 8361.2736;
  private static final double TEASPOON = 0.00492892159375;
  private static final double TABLESPOON = 3 * TEASPOON;
  private static final double CUP = 16 * TABLESPOON;
  private static final double QUART = 4 * CUP;
  private static final double GALLON = 4 * QUART;
  private static final double IMPERIAL_OUNCE = 0.0284130625;
  private static final double IMPERIAL_PINT = 20 * IMPERIAL_OUNCE;
  private static final double IMPERIAL_GALLON = 8 * IMPERIAL_PINT;

  private static final Scale CLOTH_LENGTH =
      new Scale(
          new Rung("yd", 36 * INCH, 72 * INCH).fractions(8).onlyWhole(1 / 8.0),
          new Rung("in", INCH, 12 * INCH).fractions(64).decimals(2).step(1 / 8.0),
          new Rung("in", INCH, 0).fractions(64).decimals(2).step(1 / 16.0));

  private static final Scale LENGTH =
      new Scale(
          new Rung("in", INCH, 12 * INCH).fractions(64).decimals(2).step(1 / 8.0),
          new Rung("in", INCH, 0).fractions(64).decimals(2).step(1 / 16.0));

  private static final Scale INCHES =
      new Scale(
          new Rung("", INCH, 12 * INCH).fractions(64).decimals(2).step(1 / 8.0).closeUp(),
          new Rung("", INCH, 0).fractions(64).decimals(2).step(1 / 16.0).closeUp());

  private static final Scale SMALL_LENGTH =
      new Scale(
          new Rung("in", INCH, INCH / 32)
              .fractions(64)
              .decimals(3)
              .step(1 / 64.0)
              .safeStep(1 / 32.0),
          new Rung("in", INCH, INCH / 64).fractions(64).decimals(3).step(0.001).safeStep(1 / 64.0),
          new Rung("in", INCH, INCH / 100).fractions(64).decimals(3).step(0.001),
          new Rung("in", INCH, 0).decimals(4).step(0.0001));

  private static final Scale THICKNESS =
      new Scale(new Rung("in", INCH, 0).decimals(4).step(0.0001));

  private static final Scale AREA =
      new Scale(
          new Rung("yd²", SQUARE_YARD, SQUARE_YARD).decimals(2).step(0.01),
          new Rung("in²", SQUARE_INCH, 100 * SQUARE_INCH).decimals(2).step(1),
          new Rung("in²", SQUARE_INCH, 0).decimals(2).step(0.1));

  private static final Scale MASS =
      new Scale(
          new Rung("lb", POUND, 2 * POUND).step(0.1 / 16).withRest("oz", OUNCE),
          new Rung("lb", POUND, POUND).fractions(4).onlyWhole(1 / 4.0),
          new Rung("oz", OUNCE, OUNCE).decimals(3).step(0.1),
          new Rung("oz", OUNCE, 0).decimals(3).step(0.01));

  private static final Scale US_VOLUME =
      new Scale(
          new Rung("gal", GALLON, 4 * GALLON).fractions(8).decimals(2).step(1 / 4.0),
          new Rung("gal", GALLON, GALLON).fractions(4).onlyWhole(1 / 4.0),
          new Rung("qt", QUART, QUART).fractions(16).decimals(2).step(1 / 4.0),
          new Rung("cup", CUP, CUP).fractions(24).decimals(2).step(1 / 4.0).plural(),
          new Rung("cup", CUP, CUP / 4).fractions(24).decimals(2).step(1 / 8.0).plural(),
          new Rung("tbsp", TABLESPOON, TABLESPOON).fractions(8).decimals(2).step(1 / 2.0),
          new Rung("tsp", TEASPOON, TEASPOON / 4).fractions(8).decimals(2).step(1 / 8.0),
          new Rung("tsp", TEASPOON, 0).fractions(8).decimals(2).step(0.01));

  private static final Scale IMPERIAL_VOLUME =
      new Scale(
          new Rung("imp gal", IMPERIAL_GALLON, 4 * IMPERIAL_GALLON)
              .fractions(8)
              .decimals(2)
              .step(1 / 4.0),
          new Rung("imp gal", IMPERIAL_GALLON, IMPERIAL_GALLON).fractions(4).onlyWhole(1 / 4.0),
          new Rung("imp pt", IMPERIAL_PINT, IMPERIAL_PINT).fractions(8).decimals(2).step(1 / 8.0),
          new Rung("imp fl oz", IMPERIAL_OUNCE, IMPERIAL_OUNCE)
              .fractions(8)
              .decimals(2)
              .step(1 / 4.0),
          new Rung("imp fl oz", IMPERIAL_OUNCE, 0).fractions(8).decimals(2).step(0.01));

  private static final Scale TEMPERATURE =
      new Scale(new Rung("°F", 5 / 9.0, 0).step(1).safeStep(5).zero(32));

  private static final Scale AREAL_MASS =
      new Scale(
          new Rung("oz/yd²", OUNCE / 0.83612736, OUNCE / 0.83612736).decimals(2).step(0.1),
          new Rung("oz/yd²", OUNCE / 0.83612736, 0).decimals(2).step(0.01));

  private static final Scale US_CONCENTRATION =
      new Scale(new Rung("oz/US gal", OUNCE / GALLON, 0).decimals(2).step(0.1));

  private static final Scale IMPERIAL_CONCENTRATION =
      new Scale(new Rung("oz/imp gal", OUNCE / IMPERIAL_GALLON, 0).decimals(2).step(0.1));

  private static final Scale MESH_COUNT = new Scale(new Rung("/in", 1 / 2.54, 0).step(1).closeUp());

  private static final Scale AIR_SPEED =
      new Scale(
          new Rung("ft/min", 0.3048 / 60, 0.3048 / 3).step(5),
          new Rung("ft/min", 0.3048 / 60, 0).step(1));

  private static final Map<MeasureKind, Scale> BOTH =
      Map.of(
          MeasureKind.LENGTH, LENGTH,
          MeasureKind.CLOTH_LENGTH, CLOTH_LENGTH,
          MeasureKind.SMALL_LENGTH, SMALL_LENGTH,
          MeasureKind.THICKNESS, THICKNESS,
          MeasureKind.AREA, AREA,
          MeasureKind.MASS, MASS,
          MeasureKind.TEMPERATURE, TEMPERATURE,
          MeasureKind.AREAL_MASS, AREAL_MASS,
          MeasureKind.MESH_COUNT, MESH_COUNT,
          MeasureKind.AIR_SPEED, AIR_SPEED);

  private final List<Rung> rungs;

  /**
   * @param rungs from the largest unit down; the last one takes everything
   */
  private Scale(Rung... rungs) {
    this.rungs = List.of(rungs);
  }

  static Optional<Scale> of(MeasureKind kind, UnitSystem system) {
    if (system == UnitSystem.METRIC) {
      return Optional.empty();
    }
    boolean us = system == UnitSystem.US;
    return Optional.of(
        switch (kind) {
          case VOLUME -> us ? US_VOLUME : IMPERIAL_VOLUME;
          case CONCENTRATION -> us ? US_CONCENTRATION : IMPERIAL_CONCENTRATION;
          default -> BOTH.get(kind);
        });
  }

  /** A length in mm as a number of inches. */
  static String inches(double mm) {
    return INCHES.text(mm);
  }

  /** As it is told, the value in the base unit of its dimension. */
  String text(double base) {
    double said = rounded(base, To.NEAREST);
    return rung(said).text(said);
  }

  /** The value in the base unit as it is told, above or below it if that is asked. */
  double rounded(double base, To to) {
    return rung(base).rounded(base, to);
  }

  /** True if a value is a plain fraction or decimal of its unit, told as it is. */
  boolean isPlain(double base) {
    return rung(base).isPlain(base);
  }

  /** How far apart two values are that are told one after the other, in the base unit. */
  double step(double base) {
    return rung(base).stepSize();
  }

  private Rung rung(double base) {
    for (Rung rung : rungs) {
      if (rung.takes(base)) {
        return rung;
      }
    }
    return rungs.get(rungs.size() - 1);
  }
}

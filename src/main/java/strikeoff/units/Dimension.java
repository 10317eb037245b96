package strikeoff.units;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * What a quantity measures, and how people are told of it.
 *
 * <p>The largest value guards computations against nonsense such as 1e308; no print room comes near
 * it, so it is no judgement of a plan.
 */
enum Dimension {
  LENGTH(Length.class, "a length", "40 cm", 1e6, Length::new),
  AREA(Area.class, "an area", "380 cm²", 1e9, Area::new),
  MASS(Mass.class, "a mass", "90 g", 1e6, Mass::new),
  VOLUME(Volume.class, "a volume", "500 ml", 1e5, Volume::new),
  SPAN(Span.class, "a time", "35 min", 366 * 1440.0, Span::new),
  TEMPERATURE(Temperature.class, "a temperature", "20 °C", 1000, Temperature::new),
  SHARE(Share.class, "a share", "50 %", 1000, Share::new),
  AREAL_MASS(ArealMass.class, "a mass per area", "180 g/m²", 1e5, ArealMass::new),
  CONCENTRATION(Concentration.class, "a concentration", "38 g/L", 1e5, Concentration::new),
  MESH_COUNT(MeshCount.class, "a mesh count", "43/cm", 1e4, MeshCount::new),
  AIR_SPEED(AirSpeed.class, "an air speed", "0.3 m/s", 100, AirSpeed::new),
  ANGLE(Angle.class, "an angle", "90°", 3600, Angle::new),
  RATIO(Ratio.class, "a plain number", "20", 1e9, Ratio::new);

  private final Class<? extends Quantity> type;
  private final String noun;
  private final String expected;
  private final double largest;
  private final DoubleFunction<Quantity> make;

  Dimension(
      Class<? extends Quantity> type,
      String noun,
      String example,
      double largest,
      DoubleFunction<Quantity> make) {
    this.type = type;
    this.noun = noun;
    this.expected = noun + " such as " + example;
    this.largest = largest;
    this.make = make;
  }

  private static final Map<Class<? extends Quantity>, Dimension> BY_TYPE = new HashMap<>();

  static {
    for (Dimension dimension : values()) {
      BY_TYPE.put(dimension.type, dimension);
    }
  }

  /**
   * What a type of quantity measures.
   *
   * @throws IllegalArgumentException if it is none that is written
   */
  static Dimension of(Class<? extends Quantity> type) {
    Dimension dimension = BY_TYPE.get(type);
    if (dimension == null) {
      throw new IllegalArgumentException("not a quantity that is written: " + type);
    }
    return dimension;
  }

  Class<? extends Quantity> type() {
    return type;
  }

  String noun() {
    return noun;
  }

  /** As {@code a length such as 40 cm}. */
  String expected() {
    return expected;
  }

  double largest() {
    return largest;
  }

  /** Below zero only where that means something without a sign convention. */
  boolean signed() {
    return this == TEMPERATURE || this == ANGLE;
  }

  /** Whether people add up parts in several units: {@code 1 h 30 min}. */
  boolean adds() {
    return this == LENGTH || this == MASS || this == VOLUME || this == SPAN;
  }

  /** What units are chosen for, of a value in the base unit; empty if there is no choice. */
  Optional<MeasureKind> kind(double base) {
    return switch (this) {
      case LENGTH -> Optional.of(MeasureKind.ofLength(base));
      case AREA -> Optional.of(MeasureKind.AREA);
      case MASS -> Optional.of(MeasureKind.MASS);
      case VOLUME -> Optional.of(MeasureKind.VOLUME);
      case TEMPERATURE -> Optional.of(MeasureKind.TEMPERATURE);
      case AREAL_MASS -> Optional.of(MeasureKind.AREAL_MASS);
      case CONCENTRATION -> Optional.of(MeasureKind.CONCENTRATION);
      case MESH_COUNT -> Optional.of(MeasureKind.MESH_COUNT);
      case AIR_SPEED -> Optional.of(MeasureKind.AIR_SPEED);
      case SPAN, SHARE, ANGLE, RATIO -> Optional.empty();
    };
  }

  Quantity make(double base) {
    return make.apply(base);
  }
}

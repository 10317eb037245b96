package strikeoff.start;

import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * How prints are usually fixed where nobody says otherwise. Common practice, no source, but for the
 * salt; what a paste's sheet or label says comes before it, and whether it does the check tells.
 */
public final class UsualFixing {

  public static final double SODA_GRAMS_PER_LITRE = 40;

  /** For silk and wool. */
  public static final double GENTLE_SODA_GRAMS_PER_LITRE = 19;

  /** What keeps dye on a print that is soaked: rules/fixing/limits.yaml, enough-salt. */
  public static final double SALT_GRAMS_PER_LITRE = 100;

  /** Less is no bath, however small the cloth. */
  public static final double LEAST_LITRES = 5;

  public static final Span STEAMED = new Span(10);
  public static final Temperature HOT_WASH = new Temperature(60);

  /** The heat of cotton. */
  public static final Temperature HOT_IRON = new Temperature(150);

  public static final Span HOT_IRONED = new Span(5);

  /** For fibres that melt or yellow. */
  public static final Temperature COOL_IRON = new Temperature(140);

  public static final Span COOL_IRONED = new Span(6);

  private UsualFixing() {}
}

package strikeoff.drying;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import strikeoff.plan.Basis;
import strikeoff.plan.Cloth;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Fibre;
import strikeoff.policy.Policy;
import strikeoff.units.AirSpeed;
import strikeoff.units.ArealMass;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * Drying on one cloth under one policy: what a film must lose, and how fast it goes in a given air.
 *
 * <p>A film's water is its deposit times the medium's water share. Cloth takes up the medium's
 * share of it at once, but never more than its fibres hold; the rest shines on the surface.
 * Frame-safe is reached when a share of that surface water has gone, of dye partly into fibres that
 * still have room; lift-safe when a share of all water has gone, what lies in the cloth leaving at
 * a reduced rate. Physical parameters are policy limits {@code drying/…}; correlations and their
 * ranges are told at {@link DryingRate}.
 */
public final class Drying {

  /** What drying times rest on. */
  public static final Basis BASIS =
      new Basis(
          "Drying times",
          "Evaporation from saturated vapour pressure, humidity and air speed into air at sea level,"
              + " the film cooled by it and warmed by room and table; the cloth takes up a share of"
              + " the water at once, and goes on soaking up the sheen of dye. The range runs from a film that only air warms to one as warm"
              + " as the air.",
          new Temperature(Air.COLDEST_ROOM).text()
              + " to "
              + new Temperature(Air.HOTTEST_ROOM).text()
              + " and up to "
              + new AirSpeed(Air.FASTEST).text()
              + ", cloth that lies flat and open. Outside, times are those of the nearest air"
              + " inside, and a finding says so.",
          "IAPWS-IF97; ASHRAE 2017 and Carrier; Shah 2014, from memory; Incropera; shares of water"
              + " common practice, no source");

  /** Of a wet stretch in m; the form of plate flow divides by it. */
  private static final double SHORTEST = 1e-3;

  private final Map<Medium, Parameters> parameters = new EnumMap<>(Medium.class);
  private final double sideHeat;
  private final double stretch;
  private final double capacity;
  private final Map<Air, Map<Medium, DryingRate>> rates = new HashMap<>();

  private Drying(Policy policy, double capacity) {
    for (Medium medium : Medium.values()) {
      parameters.put(medium, Parameters.of(policy, medium));
    }
    this.sideHeat = policy.limit("drying/side-heat").amount();
    this.stretch = Math.max(SHORTEST, policy.limit("drying/wet-stretch").amount() / 1000);
    this.capacity = capacity;
  }

  public static Drying of(Cloth cloth, Policy policy) {
    double pickUp = 0;
    for (var fibre : cloth.fibres().entrySet()) {
      Fibre known = policy.fibre(fibre.getKey());
      pickUp += fibre.getValue().fraction() * known.waterPickUp().fraction();
    }
    return new Drying(policy, Math.max(0, pickUp * cloth.mass().gramsPerSquareMetre()));
  }

  /** What a film of that paste must lose. */
  public FilmNeed need(Paste paste, ArealMass deposit) {
    Parameters p = parameters.get(paste.medium());
    double water = Math.max(0, deposit.gramsPerSquareMetre()) * p.water;
    double takenUp = Math.min(water * p.takenUp, capacity);
    double surface = water - takenUp;
    double toTouch = surface * p.touchDry;
    double through = water * p.dryThrough;
    double toLift = through <= surface ? through : surface + (through - surface) / p.rateFromCloth;
    return new FilmNeed(
        toTouch,
        takenUp < capacity ? p.sinksIn : 0,
        Math.max(toTouch, toLift),
        paste.frameSafe(),
        paste.liftSafe(),
        p.cure);
  }

  /** How fast a film of that medium dries in that air. */
  public DryingRate rate(Medium medium, Air air) {
    return rates
        .computeIfAbsent(air, a -> new EnumMap<>(Medium.class))
        .computeIfAbsent(
            medium, m -> DryingRate.in(air, parameters.get(m).activity, sideHeat, stretch));
  }

  private record Parameters(
      double water,
      double takenUp,
      double touchDry,
      double sinksIn,
      double dryThrough,
      double rateFromCloth,
      double activity,
      Span cure) {

    static Parameters of(Policy policy, Medium medium) {
      String of = medium == Medium.DYE ? "-of-dye" : "-of-paint";
      return new Parameters(
          share(policy, "drying/water" + of),
          share(policy, "drying/taken-up" + of),
          share(policy, "drying/touch-dry" + of),
          medium == Medium.DYE ? Math.max(0, policy.limit("drying/sinks-in-of-dye").amount()) : 0,
          share(policy, "drying/dry-through" + of),
          Math.max(0.01, share(policy, "drying/rate-from-cloth")),
          share(policy, "drying/activity" + of),
          new Span(Math.max(0, policy.limit("drying/cure" + of).amount())));
    }

    private static double share(Policy policy, String name) {
      return Math.min(1, Math.max(0, policy.limit(name).amount()));
    }
  }
}

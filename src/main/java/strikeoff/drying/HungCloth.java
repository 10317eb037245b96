package strikeoff.drying;

import strikeoff.plan.Cloth;
import strikeoff.plan.Room;
import strikeoff.policy.Policy;
import strikeoff.units.Span;

/**
 * Cloth that comes out of a bath and hangs open: how long it surely stays wet. The quickest rate
 * that was measured from both faces in standard air is carried over to the room's air by what
 * drives it: the vapour over a film at the wet bulb beyond that in the air.
 */
public final class HungCloth {

  // ISO 139 standard atmosphere for textiles, in which the rate was measured
  private static final double STANDARD_CELSIUS = 20;
  private static final double STANDARD_HUMIDITY = 0.65;
  private static final double STANDARD_DRIVES = drives(STANDARD_CELSIUS, STANDARD_HUMIDITY);

  /** Air that drives less than that share of the standard one dries nothing. */
  private static final double STANDSTILL = 0.01;

  private HungCloth() {}

  /**
   * The least time until it feels dry.
   *
   * @param wrung true if it was wrung by hand, false if a machine spun it
   * @param moved true if anything moves the air over it
   */
  public static Span wetFor(Cloth cloth, Room room, boolean wrung, boolean moved, Policy policy) {
    double holds =
        (wrung ? policy.drying().wrungClothHolds() : policy.drying().spunClothHolds()).fraction();
    double toLose =
        (holds - policy.drying().feelsDry().fraction()) * cloth.mass().gramsPerSquareMetre();
    double drives =
        drives(room.temperature().celsius(), room.humidity().fraction()) / STANDARD_DRIVES;
    double hourly =
        policy.drying().hungClothLoses().gramsPerSquareMetre()
            * Math.max(STANDSTILL, drives)
            * (moved ? policy.drying().movedAirQuickens().value() : 1);
    return new Span(60 * Math.max(0, toLose) / hourly);
  }

  /** Mass of vapour in a volume of air at the film beyond that in the air, kg/m³. */
  private static double drives(double celsius, double humidity) {
    double film = MoistAir.wetBulb(celsius, humidity);
    return MoistAir.vapourDensity(film, MoistAir.saturation(film))
        - MoistAir.vapourDensity(celsius, humidity * MoistAir.saturation(celsius));
  }
}

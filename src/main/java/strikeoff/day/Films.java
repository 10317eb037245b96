package strikeoff.day;

import java.util.IdentityHashMap;
import java.util.Map;
import strikeoff.drying.Drying;
import strikeoff.drying.FilmNeed;
import strikeoff.layout.Footprint;
import strikeoff.plan.Cloth;
import strikeoff.plan.Design;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Room;
import strikeoff.policy.Policy;
import strikeoff.screens.Deposit;
import strikeoff.units.ArealMass;

/**
 * How the films of a plan dry, whatever its run does with them: worked out once, however often the
 * run is simulated.
 */
public final class Films {

  private final Policy policy;
  private final Cloth cloth;
  private final Drying drying;

  /** By identity: films of one separation dry alike, and every impression asks. */
  private final Map<Design.Separation, FilmNeed> needs;

  private Films(Cloth cloth, Drying drying, Policy policy, Map<Design.Separation, FilmNeed> needs) {
    this.policy = policy;
    this.cloth = cloth;
    this.drying = drying;
    this.needs = needs;
  }

  private static Films of(Cloth cloth, Room room, Policy policy) {
    return new Films(cloth, Drying.of(cloth, room, policy), policy, new IdentityHashMap<>());
  }

  static Films of(PrintPlan plan, Policy policy) {
    return of(plan.cloth(), plan.room(), policy);
  }

  /**
   * The same films where every wait lasts as long as in slow drying. They share what was worked out
   * for them, so one thread works with both.
   */
  public Films dryingSlowly() {
    return new Films(cloth, drying.slowly(), policy, needs);
  }

  /** The same films in another room. */
  public Films in(Room room) {
    return of(cloth, room, policy);
  }

  public Drying drying() {
    return drying;
  }

  /** What the film of an impression must lose. */
  public FilmNeed need(Footprint footprint) {
    Design.Separation separation = footprint.separation();
    FilmNeed need = needs.get(separation);
    if (need == null) {
      Deposit deposit = Deposit.of(footprint.screen(), footprint.paste(), cloth, policy);
      need =
          drying.need(
              footprint.paste(),
              new ArealMass(deposit.afterPulls(separation.pulls()).best()),
              deposit.measured());
      needs.put(separation, need);
    }
    return need;
  }

  /**
   * Whether printers lay the next frame on that film at once, whatever an estimate says of it:
   * thickened dye on plant fibres of some mass, through a mesh that is not too coarse, in few
   * pulls.
   */
  public boolean wetOnWet(Footprint footprint) {
    return footprint.paste().medium() == Medium.DYE
        && cloth.fibres().keySet().stream().allMatch(fibre -> policy.fibre(fibre).cellulose())
        && cloth.mass().told().base() >= policy.drying().wetOnWetCloth().gramsPerSquareMetre()
        && footprint.separation().pulls() <= policy.drying().wetOnWetPulls().value()
        && footprint.screen().mesh().told().base() >= policy.drying().wetOnWetMesh().perCm();
  }
}

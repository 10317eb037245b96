package strikeoff.paste;

import java.util.Comparator;
import java.util.Optional;
import strikeoff.chemistry.Arrhenius;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Storage;
import strikeoff.policy.Policy;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Range;
import strikeoff.units.Span;

/** How long the dye pastes of a plan live, whenever they are mixed. */
public record Lives(PrintPlan plan, Policy policy) {

  /** The shortest estimate; empty for paint, and where nobody knows. */
  public Optional<Span> least(Paste paste) {
    HeldAlkali alkali = new Recipe(paste, policy).alkali();
    return isKnown(paste)
        ? shortest(paste, alkali).map(group -> new Span(of(paste, group, alkali).low()))
        : Optional.empty();
  }

  /** Kept cold, a life is as stated; in the room Arrhenius' law carries it over so far only. */
  boolean isKnown(Paste paste) {
    double away = plan.room().temperature().celsius() - policy.paste().roomTemperature().celsius();
    return paste.storage() == Storage.COLD
        || Math.abs(away) <= policy.paste().carriedOver().celsius();
  }

  /** A pot with dyes of several groups lives as long as the first of them to die. */
  Optional<ReactiveGroup> shortest(Paste paste, HeldAlkali alkali) {
    return paste.groups().stream()
        .map(policy::group)
        .min(Comparator.comparingDouble(g -> statedMinutes(paste.storage(), g, alkali)));
  }

  /** In minutes. */
  Range of(Paste paste, ReactiveGroup group, HeldAlkali alkali) {
    double stated = statedMinutes(paste.storage(), group, alkali);
    if (paste.storage() == Storage.COLD) {
      return Range.exactly(stated);
    }
    Range energies =
        new Range(
            policy.paste().activationEnergyLeast().value(),
            policy.paste().activationEnergyUsual().value(),
            policy.paste().activationEnergyMost().value());
    return Arrhenius.minutes(
        stated,
        energies,
        policy.paste().roomTemperature().celsius(),
        plan.room().temperature().celsius());
  }

  /** Baking soda alone is milder than soda, but no paste outlives the one without any alkali. */
  private double statedMinutes(Storage storage, ReactiveGroup group, HeldAlkali alkali) {
    boolean cold = storage == Storage.COLD;
    Span without = cold ? group.lifeWithoutAlkaliCold() : group.lifeWithoutAlkali();
    Span with = cold ? group.lifeWithAlkaliCold() : group.lifeWithAlkali();
    return switch (alkali) {
      case NONE -> without.minutes();
      case SODA -> with.minutes();
      case BICARBONATE ->
          Math.min(without.minutes(), with.minutes() * policy.paste().bicarbonateTimes().value());
    };
  }
}

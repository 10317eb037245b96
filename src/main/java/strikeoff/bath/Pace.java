package strikeoff.bath;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import strikeoff.chemistry.Arrhenius;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.ReactiveGroup;
import strikeoff.policy.ReactiveGroup.Stated;
import strikeoff.units.Range;
import strikeoff.units.Temperature;

/**
 * How long a dye needs until nearly all that can be fixed is fixed, one way of fixing at a time.
 * Sources state it for one temperature, for pale and for deep shades; Arrhenius' law carries it to
 * another.
 */
final class Pace {

  private final Policy policy;

  /** The pH of a bath is solved for again and again otherwise: for each paste, group and remedy. */
  private final Map<Alkali, Map<Double, Range>> paces = new IdentityHashMap<>();

  Pace(Policy policy) {
    this.policy = policy;
  }

  /**
   * What one step gives a dye.
   *
   * @param deep true for a deep shade
   * @param protein true for cloth of silk or wool alone
   * @param alkali the alkali that works in the step
   */
  Range neededMinutes(
      Step.Fix fix, ReactiveGroup group, boolean deep, boolean protein, Alkali alkali) {
    return switch (fix.how()) {
      case STEAM -> steam(group);
      case BATCH -> slowed(batch(group, deep, protein, alkali, fix.temperature()), fix, alkali);
      case SOAK -> slowed(soak(group, deep, alkali, fix.temperature()), fix, alkali);
    };
  }

  /** A bath thinner than the one that the times hold for is slower, as its hydroxide. */
  private Range slowed(Range minutes, Step.Fix fix, Alkali alkali) {
    Range pace =
        paces
            .computeIfAbsent(alkali, a -> new HashMap<>())
            .computeIfAbsent(timed(fix), alkali::pace);
    return new Range(
        minutes.low() / pace.high(), minutes.best() / pace.best(), minutes.high() / pace.low());
  }

  /** The strength of soda that the stated times hold for, g/L. */
  private double timed(Step.Fix fix) {
    return (fix.how() == DyeFixing.SOAK ? policy.fixing().timedSoak() : policy.fixing().usualBath())
        .gramsPerLitre();
  }

  private Range steam(ReactiveGroup group) {
    double least = group.shortestSteam().minutes();
    return new Range(least, least, least * policy.fixing().potSteamerTimes().value());
  }

  /**
   * Warmer than the stated temperature saves no time: no source gives a shorter one. Towards the
   * temperature of a batch the longest estimate becomes that of a batch, since sources ask for a
   * batch's hours there.
   */
  private Range soak(ReactiveGroup group, boolean deep, Alkali alkali, Temperature at) {
    Stated stated = group.soak();
    double celsius = Math.min(at.celsius(), stated.at().celsius());
    Range soak = carried(stated, deep, celsius);
    double cool = group.batch().at().celsius();
    double span = stated.at().celsius() - cool;
    double towards =
        span > 0 ? Math.min(1, Math.max(0, (stated.at().celsius() - celsius) / span)) : 0;
    double longest = batch(group, deep, false, alkali, new Temperature(celsius)).high();
    double high = Math.exp((1 - towards) * Math.log(soak.high()) + towards * Math.log(longest));
    return new Range(soak.low(), soak.best(), Math.max(soak.best(), high));
  }

  private Range batch(
      ReactiveGroup group, boolean deep, boolean protein, Alkali alkali, Temperature at) {
    Stated stated = statedBatch(group, protein, alkali);
    double celsius = Math.max(0, Math.min(at.celsius(), group.warmest().celsius()));
    Range minutes = carried(stated, deep, celsius);
    boolean cold =
        stated.at().celsius() - celsius > policy.fixing().temperatureTolerance().celsius();
    return cold
        ? new Range(
            minutes.low(),
            minutes.best(),
            minutes.high() * policy.fixing().slowerWhenCold().value())
        : minutes;
  }

  /** Silk takes the dye sooner and stands the alkali no longer; silicate is the stronger alkali. */
  Stated statedBatch(ReactiveGroup group, boolean protein, Alkali alkali) {
    boolean coldFixing =
        group.batch().at().celsius() <= policy.fixing().coldestHotFixing().celsius();
    if (coldFixing && alkali.silicate()) {
      return new Stated(
          policy.fixing().silicateBatchPale(),
          policy.fixing().silicateBatchDeep(),
          policy.fixing().silicateBatchAt());
    }
    if (coldFixing && protein) {
      return new Stated(
          policy.fixing().silkBatchPale(), policy.fixing().silkBatchDeep(), group.batch().at());
    }
    return group.batch();
  }

  /**
   * A shade has its own time and its own range about it. Between pale and deep there is no line, so
   * a stated time may be off by as much as lies between the two, as a factor; but nothing takes
   * less than what sources give a pale shade.
   */
  private Range carried(Stated stated, boolean deep, double celsius) {
    double from = stated.at().celsius();
    double pale = stated.pale().minutes();
    double usual = stated.forShade(deep).minutes();
    double off = stated.deep().minutes() / pale;
    return new Range(
        Arrhenius.minutes(Math.max(pale, usual / off), energies(), from, celsius).low(),
        Arrhenius.minutes(usual, energies(), from, celsius).best(),
        Arrhenius.minutes(usual * off, energies(), from, celsius).high());
  }

  private Range energies() {
    return new Range(
        policy.fixing().activationEnergyLeast().value(),
        policy.fixing().activationEnergyUsual().value(),
        policy.fixing().activationEnergyMost().value());
  }
}

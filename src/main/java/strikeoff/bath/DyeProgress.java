package strikeoff.bath;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strikeoff.colour.Lab;
import strikeoff.paste.Recipe;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Range;

/** How long dye needs in each step, and how far all steps of its phase bring it together. */
final class DyeProgress {

  private final FixingRun work;
  private final Pace pace;

  /** By the number of the step: every share and every cure asks. */
  private final Map<Integer, List<Paste>> dyes = new HashMap<>();

  DyeProgress(FixingRun work) {
    this.work = work;
    this.pace = new Pace(work.policy());
  }

  /** How long the dye of one group in a paste needs in a step. */
  record Needed(Paste paste, ReactiveGroup group, Range minutes) {}

  /** The dye on the cloth that needs longest in a step. */
  Needed slowest(Step.Fix fix) {
    return dyes(fix).stream()
        .flatMap(paste -> groups(paste).stream().map(g -> needed(fix, paste, g, work.alkali(fix))))
        .max(Comparator.comparingDouble(n -> n.minutes().best()))
        .orElseThrow();
  }

  /**
   * Pastes that hold their alkali already: more of it in a bath is what fixing/alkali-twice tells.
   */
  boolean holdTheirOwn(Step.Fix last) {
    return !dyes(last).isEmpty()
        && dyes(last).stream().allMatch(p -> new Recipe(p, work.policy()).holdsAlkali());
  }

  /** First order: as much is left unfixed after twice the time as the square of what was left. */
  Range share(Step.Fix last, Paste paste, ReactiveGroup group, boolean withEnoughSoda) {
    double left = 1 - work.policy().fixing().shareAtStatedTime().fraction();
    Range done = done(last, paste, group, withEnoughSoda);
    return new Range(
        1 - Math.pow(left, done.low()),
        1 - Math.pow(left, done.best()),
        1 - Math.pow(left, done.high()));
  }

  /** The parts of the time that it needs, summed over all steps that work on it. */
  Range done(Step.Fix last, Paste paste, ReactiveGroup group, boolean withEnoughSoda) {
    Range sum = Range.exactly(0);
    for (Step.Fix fix : steps(last)) {
      Alkali alkali = work.alkali(fix);
      if (alkali.there() && dyes(fix).stream().anyMatch(p -> p.name().equals(paste.name()))) {
        Range needed = needed(fix, paste, group, withEnoughSoda ? enough(fix) : alkali).minutes();
        double minutes = fix.lasts().minutes();
        sum =
            sum.plus(
                new Range(
                    minutes / needed.high(), minutes / needed.best(), minutes / needed.low()));
      }
    }
    return sum;
  }

  /** The same alkali at the strength that the stated times hold for. */
  Alkali enough(Step.Fix fix) {
    Alkali alkali = work.alkali(fix);
    return alkali.silicate() ? alkali : Alkali.IN_PASTE;
  }

  /** The fix steps of the phase up to the given one that dye lies on the cloth in. */
  List<Step.Fix> steps(Step.Fix last) {
    return work.plan().steps(Step.Fix.class).stream()
        .filter(f -> f.number() <= last.number())
        .filter(f -> work.phase(f.number()) == work.phase(last.number()))
        .filter(f -> !dyes(f).isEmpty())
        .toList();
  }

  /** Pastes of reactive dye that lie on the cloth in a step. */
  List<Paste> dyes(Step.Fix fix) {
    return dyes.computeIfAbsent(
        fix.number(),
        number ->
            FixingRun.pastes(work.before(fix, Medium.DYE)).stream()
                .filter(p -> !p.groups().isEmpty())
                .toList());
  }

  /** How long dye of a group in a paste needs with an alkali. */
  Needed needed(Step.Fix fix, Paste paste, ReactiveGroup group, Alkali alkali) {
    return new Needed(
        paste, group, pace.neededMinutes(fix, group, deep(paste), work.proteinAlone(), alkali));
  }

  List<ReactiveGroup> groups(Paste paste) {
    return paste.groups().stream().map(work.policy()::group).toList();
  }

  /** Whether its colour is so dark that the times for deep shades hold. */
  boolean deep(Paste paste) {
    return Lab.of(paste.colour()).lightness() < work.policy().fixing().deepShade().value();
  }
}

package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.Beforehand;
import strikeoff.day.Choices;
import strikeoff.day.Contact;
import strikeoff.day.DayRun;
import strikeoff.day.Effort;
import strikeoff.day.Moment;
import strikeoff.day.Simulation;
import strikeoff.day.facts.Causes.Cause;
import strikeoff.day.facts.Causes.Pair;
import strikeoff.day.facts.Remedy.How;
import strikeoff.plan.Begins;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;

/**
 * Tries what a printer could write, by simulating the run with it. A budget of impressions bounds
 * the work: past it a remedy is computed from the shortfall alone.
 */
public final class Trials {

  private final PrintPlan plan;
  private final Beforehand known;
  private final DayRun written;
  private Outlasted already;
  private long budget;

  /**
   * @param day the run as it is written
   */
  Trials(PrintPlan plan, Beforehand known, DayRun day) {
    this.plan = plan;
    this.known = known;
    this.written = day;
    this.budget = known.effort().trials();
  }

  /**
   * What came of trying.
   *
   * @param finish when the run then ends; empty if it was not tried
   * @param late the first day that then ends after the room closes; empty if none does
   * @param outlasted what would stand too long for it
   * @param cleared whether the cause is gone; true if it was not tried
   */
  public record Outcome(
      Remedy remedy,
      Optional<Moment> finish,
      Optional<DayEnd> late,
      Outlasted outlasted,
      boolean cleared) {

    /** Nobody knows more of it. */
    static Outcome untried(Remedy remedy, boolean cleared) {
      return new Outcome(remedy, Optional.empty(), Optional.empty(), Outlasted.NOTHING, cleared);
    }

    /** Whether it can be written as it stands. */
    public boolean serves() {
      return cleared && outlasted.isNothing();
    }
  }

  /** The least wait in whole minutes that clears a cause, on an ordinary day or in slow drying. */
  Outcome waitFor(Cause cause, List<Pair> pairs, boolean surely, int impressions) {
    Remedy computed =
        Remedy.in(plan, cause.how(), cause.step(), minutes(plan, cause, pairs, surely));
    // Where several waits lie between two prints, what other films ask for may part them as well.
    List<Pair> waitedOnce = pairs.stream().filter(p -> p.waitsBetween() == 1).toList();
    long least = minutes(plan, cause, waitedOnce, surely);
    Remedy remedy = least > 0 ? Remedy.in(plan, cause.how(), cause.step(), least) : computed;
    if (remedy.minutes() > Remedy.MOST_WORTH_SAYING) {
      return Outcome.untried(remedy, false);
    }
    for (int round = 0; round < Effort.LONGER_WAITS; round++) {
      if (budget < impressions) {
        Remedy longer = computed.minutes() > remedy.minutes() ? computed : remedy;
        return Outcome.untried(longer, true);
      }
      DayRun day = trial(remedy);
      double left = worst(Causes.of(day).getOrDefault(cause, List.of()), surely);
      if (left <= 0) {
        return cleared(remedy, day, impressions);
      }
      remedy = remedy.longer((long) Math.ceil(left / 60));
    }
    return Outcome.untried(remedy, false);
  }

  /**
   * Printing every other placement first, with the least wait before those between them that clears
   * the cause; empty if that does not. People who print side by side make no passes, so one of them
   * then prints alone.
   */
  Optional<Outcome> everyOther(Cause cause, boolean surely, int impressions) {
    Optional<PrintStep> print =
        plan.print(cause.step())
            .filter(
                p -> (!p.everyOther() || !p.also().isEmpty()) && p.begins() != Begins.WHEN_FREE);
    if (cause.how() != How.PAUSE || print.isEmpty()) {
      return Optional.empty();
    }
    Cause between = new Cause(How.DRY_BETWEEN_PASSES, cause.step());
    Remedy remedy = Remedy.everyOther(print.get());
    for (int round = 0; round < Effort.LONGER_WAITS && budget >= impressions; round++) {
      DayRun day = trial(remedy);
      Map<Cause, List<Pair>> causes = Causes.of(day);
      if (worst(causes.getOrDefault(cause, List.of()), surely) > 0) {
        return Optional.empty();
      }
      double left = worst(causes.getOrDefault(between, List.of()), surely);
      if (left <= 0) {
        return Optional.of(cleared(remedy, day, impressions));
      }
      remedy = remedy.longer((long) Math.ceil(left / 60));
    }
    return Optional.empty();
  }

  /**
   * A wait in which paste would dry in screens is made as long as it takes to wash them out and to
   * dry them, since then the clock has that done.
   */
  private Outcome cleared(Remedy remedy, DayRun day, int impressions) {
    Outcome outcome = outcome(remedy, day);
    int screens = outcome.outlasted().screens().size();
    for (int washed : screens > 1 ? List.of(1, screens) : screens > 0 ? List.of(1) : NO_SCREENS) {
      long minutes =
          (long)
              Math.ceil(
                  washed * plan.handling().washScreen().minutes()
                      + plan.handling().dryScreen().minutes());
      if (minutes > remedy.minutes() && budget >= impressions) {
        Remedy longer = remedy.longer(minutes - remedy.minutes());
        Outcome better = outcome(longer, trial(longer));
        if (better.outlasted().screens().isEmpty()) {
          return least(remedy, better, impressions);
        }
      }
    }
    return outcome;
  }

  /** The least wait between one in which paste dries in a screen and one in which it does not. */
  private Outcome least(Remedy tooShort, Outcome enough, int impressions) {
    Outcome least = enough;
    Remedy below = tooShort;
    while (least.remedy().minutes() - below.minutes() > 1 && budget >= impressions) {
      Remedy middle = below.longer((least.remedy().minutes() - below.minutes()) / 2);
      Outcome tried = outcome(middle, trial(middle));
      if (tried.outlasted().screens().isEmpty()) {
        least = tried;
      } else {
        below = middle;
      }
    }
    return least;
  }

  private static final List<Integer> NO_SCREENS = List.of();

  private Outcome outcome(Remedy remedy, DayRun day) {
    return new Outcome(
        remedy, Optional.of(day.finish()), late(remedy, day), outlasted(remedy, day), true);
  }

  private Outlasted outlasted(Remedy remedy, DayRun day) {
    return Outlasted.in(day, remedy.applied(plan), known).without(already());
  }

  /** What the run as written lets stand too long; only what is tried is held against it. */
  private Outlasted already() {
    if (already == null) {
      already = Outlasted.in(written, plan, known);
    }
    return already;
  }

  /**
   * What comes of a remedy for cloth that a step takes up too early. Late is a day that ends more
   * than a few minutes after closing, and later than it does as written.
   */
  Outcome takenUp(Remedy remedy, int impressions) {
    if (budget < impressions) {
      return Outcome.untried(remedy, true);
    }
    DayRun day = trial(remedy);
    double few = known.policy().time().fewMinutesOver().minutes();
    List<DayEnd> asWritten = DayEnds.late(written.tasks(), plan);
    Optional<DayEnd> late =
        DayEnds.late(day.tasks(), remedy.applied(plan)).stream()
            .filter(end -> end.over().minutes() > few)
            .filter(end -> asWritten.stream().noneMatch(end::isNoLaterThan))
            .findFirst();
    return new Outcome(
        remedy,
        Optional.of(day.finish()),
        late,
        outlasted(remedy, day),
        !TakingUp.worst(day).containsKey(remedy.step())
            && (!endsAfterDate(day) || endsAfterDate(written)));
  }

  private boolean endsAfterDate(DayRun day) {
    return DatesHeld.of(day.finish(), plan).stream().anyMatch(dates -> dates.daysLate() > 0);
  }

  /**
   * The run of a plan changed so that somebody helps who did nothing; empty if there is no budget
   * left to try it.
   */
  Optional<Simulation.Run> with(String person, PrintPlan changed, int impressions) {
    if (budget < impressions) {
      return Optional.empty();
    }
    return Optional.of(run(changed, Optional.of(person)));
  }

  /** That run with its contacts. */
  DayRun whole(Simulation.Run run, PrintPlan changed) {
    return DayRun.of(run, changed, known);
  }

  /**
   * Whether to end the day before each of some steps ends it in time, the steps that are late now
   * as well, leaves fewer days too long than now and lets nothing stand too long that did not: else
   * it only moves the work past another closing time, or a paste dies overnight.
   */
  boolean endsInTime(
      int number, List<Integer> steps, List<Integer> late, int daysTooLong, int impressions) {
    List<Step> run = new ArrayList<>();
    for (Step each : plan.run()) {
      if (steps.contains(each.number())) {
        run.add(new Step.EndOfDay(each.number(), each.path()));
      }
      run.add(each);
    }
    boolean first = steps.contains(1);
    if (first || budget < impressions) {
      return !first;
    }
    PrintPlan changed = plan.with(run);
    DayRun night = DayRun.of(run(changed, Optional.empty()), changed, known);
    double few = known.policy().time().fewMinutesOver().minutes();
    List<DayEnd> left =
        DayEnds.late(night.tasks(), changed).stream()
            .filter(d -> d.over().minutes() > few)
            .toList();
    return Outlasted.in(night, changed, known).without(already()).isNothing()
        && left.size() < daysTooLong
        && left.stream().noneMatch(d -> d.day() == number || late.stream().anyMatch(d::is));
  }

  /** The first day on which a remedy would keep people past closing. */
  private Optional<DayEnd> late(Remedy remedy, DayRun day) {
    return DayEnds.late(day.tasks(), remedy.applied(plan)).stream().findFirst();
  }

  private DayRun trial(Remedy remedy) {
    PrintPlan changed = remedy.applied(plan);
    return DayRun.of(run(changed, Optional.empty()), changed, known);
  }

  /** Costs what was simulated for it, choices of people too. */
  private Simulation.Run run(PrintPlan changed, Optional<String> stays) {
    Simulation.Run run = Choices.soonest(changed, known, stays);
    budget -= run.simulated();
    return run;
  }

  /** By arithmetic: what is missing, shared out over the waits between the two impressions. */
  public static long minutes(PrintPlan plan, Cause cause, List<Pair> pairs, boolean surely) {
    Optional<PrintStep> print = plan.print(cause.step());
    double most = 0;
    for (Pair pair : pairs) {
      Contact contact = pair.contact();
      double missing = surely ? contact.shortMost().minutes() : contact.shortBest().minutes();
      if (missing > 0) {
        most = Math.max(most, present(print, cause, pair) + missing / pair.waitsBetween());
      }
    }
    return (long) Math.ceil(most - 1e-9);
  }

  /**
   * The wait that the plan has in that place now.
   *
   * @param step what is printed there
   */
  private static double present(Optional<PrintStep> step, Cause cause, Pair pair) {
    if (cause.how() == How.DRY_STEP || cause.how() == How.PAUSE) {
      return pair.there();
    }
    if (step.isPresent()) {
      PrintStep print = step.get();
      boolean fromTheLift =
          cause.how() == How.DRY_BETWEEN_COLOURS || cause.how() == How.DRY_BETWEEN_PASSES;
      boolean blown = Remedy.written(cause.how(), print).air().isPresent();
      if (fromTheLift && (!blown || print.beside())) {
        return pair.there();
      }
      if (Remedy.written(cause.how(), print).until() instanceof Until.Time time) {
        return Math.max(0, time.span().minutes());
      }
    }
    // a wait until some state: at most all the time that lies between the two
    return pair.contact().later().laid().since(pair.contact().earlier().lifted()).minutes();
  }

  static double worst(List<Pair> pairs, boolean surely) {
    return pairs.stream()
        .mapToDouble(
            p -> surely ? p.contact().shortMost().seconds() : p.contact().shortBest().seconds())
        .max()
        .orElse(0);
  }
}

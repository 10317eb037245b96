package strikeoff.propose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Use;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.Begins;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.units.Span;

/** Says in sentences what a proposed run does otherwise than the plan's own, and what for. */
final class Moved {

  private final PrintPlan now;
  private final PrintPlan then;
  private final List<String> told = new ArrayList<>();

  private Moved(PrintPlan now, PrintPlan then) {
    this.now = now;
    this.then = then;
  }

  /** None if the plan prints nothing yet, or its run stays. */
  static List<String> of(Proposal.Found found) {
    Timeline today = found.before().facts().timeline();
    if (today.impressions().isEmpty() || found.isAsItWas()) {
      return List.of();
    }
    Moved moved = new Moved(found.before().plan(), found.after().plan());
    moved.waiting(today, found.after().facts().timeline());
    moved.order();
    now(found).run().stream()
        .filter(Step.Sew.class::isInstance)
        .forEach(step -> moved.sewing((Step.Sew) step));
    moved.count(
        Moved::together,
        "print step is worked by several people at once",
        "print steps are worked by several people at once",
        atOnce(found.after().facts().timeline())
            ? "they print at the same time, as far apart as the sheets say"
            : "one prints while another fetches the next frame");
    moved.count(
        Moved::beside,
        "step is worked beside those above it",
        "steps are worked beside those above them",
        "each begins as soon as hands are free");
    moved.count(
        Moved::felt,
        "wait ends when films are felt to be dry",
        "waits end when films are felt to be dry",
        "nobody waits for longer than they take");
    String fan = moved.held() ? "a fan or a hair-dryer" : "a fan";
    moved.count(
        Moved::blown, "wait has " + fan, "waits have " + fan, "films dry sooner in moved air");
    moved.count(
        Moved::blownAtPrints,
        "print step has a fan on until its last print",
        "print steps have a fan on until their last prints",
        "films dry sooner in moved air");
    moved.count(
        run -> (int) run.stream().filter(Step.EndOfDay.class::isInstance).count(),
        "day is ended before its hours are over",
        "days are ended before their hours are over",
        "the hours that are left are worked");
    moved.told.addAll(
        Closer.of(
            today.impressions(),
            found.after().facts().timeline().impressions(),
            found.before().facts().policy().time().youngerFilmWorthTelling()));
    moved.told.addAll(NotKept.of(moved.now, moved.then, found.after().facts().layout()));
    return List.copyOf(moved.told);
  }

  private static PrintPlan now(Proposal.Found found) {
    return found.before().plan();
  }

  private void waiting(Timeline today, Timeline proposed) {
    Span before = Use.of(today.tasks(), now.hours()).waiting();
    Span after = Use.of(proposed.tasks(), then.hours()).waiting();
    if (Math.abs(before.minutes() - after.minutes()) >= 1) {
      told.add(
          "Within opening hours the cloth waits while nobody works for "
              + after.text()
              + ", in yours for "
              + before.text()
              + ".");
    }
  }

  private void order() {
    List<String> before = order(now.run());
    List<String> after = order(then.run());
    if (!before.equals(after)) {
      told.add(
          "Printed first are, in this order, "
              + String.join(", ", after)
              + "; in yours "
              + String.join(", ", before)
              + ".");
    }
  }

  private static List<String> order(List<Step> run) {
    Set<String> order = new LinkedHashSet<>();
    for (Step step : run) {
      if (step instanceof PrintStep print) {
        order.addAll(print.arrangements());
      }
    }
    return List.copyOf(order);
  }

  private void sewing(Step.Sew sew) {
    Optional<Integer> before = printsBefore(now.run(), sew);
    Optional<Integer> after = printsBefore(then.run(), sew);
    if (after.isPresent() && !before.equals(after)) {
      told.add(
          "The seam "
              + sew.seam()
              + " is sewn "
              + place(after.get())
              + ", in yours "
              + place(before.orElse(0))
              + (after.get() == 0 ? ": no print has to dry before it." : "."));
    }
  }

  private static String place(int prints) {
    return prints == 0
        ? "before anything is printed"
        : prints == 1 ? "after the first print step" : "after " + prints + " print steps";
  }

  private static Optional<Integer> printsBefore(List<Step> run, Step.Sew sew) {
    int prints = 0;
    for (Step step : run) {
      if (step instanceof Step.Sew other && other.seam().equals(sew.seam())) {
        return Optional.of(prints);
      }
      prints += step instanceof PrintStep ? 1 : 0;
    }
    return Optional.empty();
  }

  /**
   * @param why what more of it is good for; for fewer nothing is said
   */
  private void count(ToIntFunction<List<Step>> how, String one, String many, String why) {
    int before = how.applyAsInt(now.run());
    int after = how.applyAsInt(then.run());
    boolean gains = one.startsWith("day") ? after < before : after > before;
    if (before != after) {
      told.add(
          (after == 0 ? "No " : after + " ")
              + (after == 1 || after == 0 ? one : many)
              + ", in yours "
              + (before == 0 ? "none" : before)
              + (gains ? ": " + why + "." : "."));
    }
  }

  private static int together(List<Step> run) {
    return (int)
        run.stream().filter(s -> s instanceof PrintStep print && !print.also().isEmpty()).count();
  }

  /** True if in some step frames of several people lie on the cloth at the same time. */
  private static boolean atOnce(Timeline run) {
    Map<Integer, Map<String, Moment>> lifts = new HashMap<>();
    for (Impression film : run.impressions()) {
      Map<String, Moment> inStep = lifts.computeIfAbsent(film.step(), s -> new HashMap<>());
      inStep.put(film.person(), film.lifted());
      if (inStep.entrySet().stream()
          .anyMatch(
              other ->
                  !other.getKey().equals(film.person())
                      && other.getValue().compareTo(film.laid()) > 0)) {
        return true;
      }
    }
    return false;
  }

  private static int beside(List<Step> run) {
    return (int) run.stream().filter(s -> s.begins() == Begins.WHEN_FREE).count();
  }

  private static int blownAtPrints(List<Step> run) {
    return (int)
        run.stream().filter(s -> s instanceof PrintStep print && print.air().isPresent()).count();
  }

  /** True if somebody holds a hair-dryer in either run. */
  private boolean held() {
    return Stream.concat(waits(now.run()).stream(), waits(then.run()).stream())
        .anyMatch(wait -> wait.air().filter(a -> a.by() == Draught.By.HAIR_DRYER).isPresent());
  }

  private static List<Wait> waits(List<Step> run) {
    List<Wait> waits = new ArrayList<>();
    for (Step step : run) {
      if (step instanceof PrintStep print) {
        waits.addAll(
            List.of(
                print.dryBetweenColours(),
                print.dryBetweenPasses(),
                Wait.of(print.dryBetweenNeighbours()),
                print.beforeMoving()));
      } else if (step instanceof Step.Dry dry) {
        waits.add(dry.waits());
      }
    }
    return waits.stream().filter(wait -> !wait.isNone()).collect(Collectors.toList());
  }

  private static int felt(List<Step> run) {
    return (int) waits(run).stream().filter(w -> w.until() instanceof Until.State).count();
  }

  private static int blown(List<Step> run) {
    return (int) waits(run).stream().filter(w -> w.air().isPresent()).count();
  }
}

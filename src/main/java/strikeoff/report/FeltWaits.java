package strikeoff.report;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strikeoff.check.Checked;
import strikeoff.day.Doing;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Reached;
import strikeoff.day.Task;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Span;

/**
 * Waits that end when films are felt. The run goes on when they are dry on an ordinary day; whoever
 * works by a sheet feels them, and on a slow day waits on.
 */
final class FeltWaits {

  private static final String EACH_TIME = ", before each frame feel what it lies on: ";

  private final PrintPlan plan;
  private final List<Impression> impressions;

  /** When waits end that are told by rows of their own. */
  private final Set<Moment> told = new HashSet<>();

  FeltWaits(Checked.Judged judged) {
    this.plan = judged.plan();
    this.impressions = judged.facts().timeline().impressions();
    judged.facts().timeline().tasks().stream()
        .filter(task -> state(task).isPresent())
        .forEach(task -> told.add(task.end()));
  }

  /** What the films are felt for; empty if the clock ends the wait, or if it is none. */
  Optional<Dryness> state(Task task) {
    return task.kind() != Task.Kind.WAIT
        ? Optional.empty()
        : plan.step(task.step())
            .flatMap(step -> until(step, task.doing()))
            .filter(Until.State.class::isInstance)
            .map(until -> ((Until.State) until).dryness());
  }

  private static Optional<Until> until(Step step, Doing doing) {
    if (step instanceof Step.Dry dry) {
      return doing instanceof Doing.OfStep ? Optional.of(dry.until()) : Optional.empty();
    }
    if (!(step instanceof PrintStep print) || !(doing instanceof Doing.Wait wait)) {
      return Optional.empty();
    }
    return switch (wait) {
      case BETWEEN_COLOURS -> Optional.of(print.dryBetweenColours().until());
      case BETWEEN_PASSES -> Optional.of(print.dryBetweenPasses().until());
      case BETWEEN_NEIGHBOURS -> Optional.of(print.dryBetweenNeighbours());
      case BEFORE_MOVING -> Optional.of(print.beforeMoving().until());
      case PAUSE -> Optional.empty();
    };
  }

  /**
   * A wait that ends so.
   *
   * @param likely when, as {@code likely dry at 11:20}
   * @param slow when on a slow day, as {@code on a slow day 11:49}; empty if then too
   */
  record Felt(String likely, String slow) {

    String words() {
      return "feel it: " + likely + (slow.isEmpty() ? "" : ", " + slow);
    }
  }

  /** Empty if the clock ends it. */
  Optional<Felt> of(WorkBlock wait, int day) {
    Task last = wait.tasks().get(wait.tasks().size() - 1);
    return state(last)
        .map(
            state ->
                new Felt(
                    "likely dry at " + WorkWords.clock(wait.end(), day),
                    slow(
                        impressions.stream()
                            .map(i -> i.film().in(state))
                            .filter(film -> feltWithin(film, wait)),
                        wait.end(),
                        day)));
  }

  private static boolean feltWithin(Reached film, WorkBlock wait) {
    return film.felt()
        .filter(at -> at.compareTo(wait.start()) > 0 && at.compareTo(wait.end()) <= 0)
        .isPresent();
  }

  /**
   * Where work begins as soon as somebody has felt films that are likely dry, so that no wait is
   * told: {@code , feel the films first: on a slow day 12:11}. Where only later frames wait so:
   * {@code , before each frame feel what it lies on: on a slow day up to 2 min longer}. Else empty.
   */
  String first(WorkBlock work, int day) {
    if (work.kind() == Task.Kind.WAIT) {
      return "";
    }
    Set<Moment> starts =
        work.tasks().stream()
            .map(Task::start)
            .filter(start -> !told.contains(start))
            .collect(Collectors.toSet());
    Set<Moment> first = new HashSet<>(starts);
    if (work.prints()) {
      first.retainAll(Set.of(work.start()));
    }
    String slow = slow(felt(first), work.start(), day);
    return slow.isEmpty() ? eachTime(starts) : ", feel the films first: " + slow;
  }

  private Stream<Reached> felt(Set<Moment> starts) {
    return impressions.stream()
        .flatMap(i -> Stream.of(Dryness.values()).map(i.film()::in))
        .filter(film -> film.felt().filter(starts::contains).isPresent());
  }

  private String eachTime(Set<Moment> starts) {
    List<Reached> films = felt(starts).toList();
    if (films.stream().anyMatch(film -> film.slow().compareTo(Reached.NEVER) >= 0)) {
      return EACH_TIME + "on a slow day perhaps never in this air";
    }
    return films.stream()
        .map(film -> film.slow().since(film.felt().orElseThrow()).wholeMinutesUp())
        .max(Span::compareTo)
        .filter(longer -> longer.minutes() > 0)
        .map(longer -> EACH_TIME + "on a slow day up to " + longer.text() + " longer")
        .orElse("");
  }

  private static String slow(Stream<Reached> films, Moment likely, int day) {
    Moment slow = films.map(Reached::slow).reduce(likely, Moment::later);
    return slow.compareTo(Reached.NEVER) >= 0
        ? "on a slow day perhaps never in this air"
        : slow.upToMinute().isMinutesAfter(likely.upToMinute())
            ? "on a slow day " + WorkWords.clock(slow, day)
            : "";
  }
}

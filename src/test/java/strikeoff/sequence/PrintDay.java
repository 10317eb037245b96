package strikeoff.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import strikeoff.colour.Swatches;
import strikeoff.day.Doing;
import strikeoff.day.Film;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Reached;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.drying.PlainDrying;
import strikeoff.evidence.Evidence;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.HeatSource;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.PrintSteps;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * A run for tests, and the timeline that follows from it by plain rules: prints take a minute each,
 * colour by colour, every other step an hour unless said otherwise, one after the other from nine
 * o'clock.
 */
public final class PrintDay {

  private final Sketch sketch;
  private final List<Step> steps = new ArrayList<>();

  public PrintDay(Sketch sketch) {
    this.sketch = sketch;
  }

  public PrintDay print(String arrangement) {
    return print(List.of(arrangement), List.of(), List.of());
  }

  /** Only those placements, by number. */
  public PrintDay printOnly(String arrangement, Integer... numbers) {
    return print(List.of(arrangement), List.of(numbers), List.of());
  }

  /** Only those separations, in that order. */
  public PrintDay printColours(String arrangement, Integer... separations) {
    return print(List.of(arrangement), List.of(), List.of(separations));
  }

  private PrintDay print(List<String> arrangements, List<Integer> only, List<Integer> separations) {
    steps.add(
        PrintSteps.plain(next(), arrangements, only, separations, PrintOrder.BY_COLOUR, path()));
    return this;
  }

  public PrintDay soak() {
    steps.add(
        new Step.Fix(
            next(),
            DyeFixing.SOAK,
            List.of(),
            new Temperature(30),
            new Span(60),
            Optional.empty(),
            path()));
    return this;
  }

  public PrintDay steam() {
    steps.add(
        new Step.Fix(
            next(),
            DyeFixing.STEAM,
            List.of(),
            new Temperature(101),
            new Span(10),
            Optional.empty(),
            path()));
    return this;
  }

  public PrintDay rinse() {
    steps.add(new Step.Rinse(next(), new Temperature(20), new Span(60), Optional.empty(), path()));
    return this;
  }

  public PrintDay wash() {
    steps.add(new Step.Wash(next(), new Temperature(60), new Span(60), Optional.empty(), path()));
    return this;
  }

  public PrintDay heatSet() {
    steps.add(
        new Step.HeatSet(
            next(),
            HeatSource.IRON,
            new Temperature(150),
            new Span(60),
            1,
            Optional.empty(),
            path()));
    return this;
  }

  public PrintDay dry(double minutes) {
    steps.add(
        new Step.Dry(
            next(), new Until.Time(new Span(minutes)), Optional.empty(), Optional.empty(), path()));
    return this;
  }

  public PrintDay sew(String seam) {
    steps.add(new Step.Sew(next(), seam, Optional.empty(), Optional.empty(), path()));
    return this;
  }

  public Swatches swatches() {
    PrintPlan plan = sketch.plan(steps);
    return Swatches.of(plan, Layout.of(plan, Sketch.POLICY), Sketch.POLICY);
  }

  public List<Evidence> facts() {
    PrintPlan plan = sketch.plan(steps);
    Layout layout = Layout.of(plan, Sketch.POLICY);
    return Sequence.of(plan, layout, timeline(layout), Sketch.POLICY).evidence();
  }

  /** The facts of one kind. */
  public <T extends Evidence> List<T> facts(Class<T> kind) {
    return facts().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** The one fact of a kind. */
  public <T extends Evidence> T fact(Class<T> kind) {
    List<T> all = facts(kind);
    if (all.size() != 1) {
      throw new AssertionError(all.size() + " facts, not one: " + all);
    }
    return all.get(0);
  }

  /** The one fact of a kind that is so. */
  public <T extends Evidence> T fact(Class<T> kind, Predicate<T> so) {
    List<T> all = facts(kind).stream().filter(so).toList();
    if (all.size() != 1) {
      throw new AssertionError(all.size() + " facts, not one: " + all);
    }
    return all.get(0);
  }

  private Timeline timeline(Layout layout) {
    List<Task> tasks = new ArrayList<>();
    List<Impression> impressions = new ArrayList<>();
    Moment start = Moment.of(1, 540);
    Moment now = start;
    for (Step step : steps) {
      if (step instanceof PrintStep print) {
        for (Footprint footprint : order(print, layout)) {
          Moment end = now.plus(new Span(1));
          tasks.add(task(print, Task.Kind.PRINT, now, end, OptionalInt.of(impressions.size())));
          impressions.add(impression(impressions.size(), print, footprint, now, end));
          now = end;
        }
      } else {
        Span lasts = step instanceof Step.Dry dry ? span(dry) : new Span(60);
        Moment end = now.plus(lasts);
        tasks.add(task(step, kind(step), now, end, OptionalInt.empty()));
        now = end;
      }
    }
    return new Timeline(
        tasks, impressions, List.of(), start, now, new Span(0), new Span(0), List.of());
  }

  private static List<Footprint> order(PrintStep print, Layout layout) {
    List<Footprint> order = new ArrayList<>();
    for (String arrangement : print.arrangements()) {
      List<Placement> placements = layout.of(arrangement);
      int colours = placements.isEmpty() ? 0 : layout.footprintsOf(placements.get(0).id()).size();
      List<Integer> numbers = new ArrayList<>(print.separations());
      for (int n = 1; print.separations().isEmpty() && n <= colours; n++) {
        numbers.add(n);
      }
      for (int number : numbers) {
        for (Placement placement : placements) {
          if (print.only().isEmpty() || print.only().contains(placement.number())) {
            order.add(layout.footprint(placement.id(), number));
          }
        }
      }
    }
    return order;
  }

  private static Impression impression(
      int id, PrintStep print, Footprint footprint, Moment laid, Moment lifted) {
    Moment dry = lifted.plus(new Span(3));
    Reached reached = new Reached(PlainDrying.at(dry.seconds()));
    Film film = new Film(reached, reached, reached);
    return new Impression(
        id, print.number(), 1, footprint, "Wren", laid, lifted, film, print.path());
  }

  private static Task task(
      Step step, Task.Kind kind, Moment start, Moment end, OptionalInt impression) {
    return new Task(
        step.number(),
        kind,
        new Doing.OfStep(step),
        start,
        end,
        Optional.of("Wren"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        impression,
        step.path());
  }

  private static Task.Kind kind(Step step) {
    return step instanceof Step.Fix
        ? Task.Kind.FIX
        : step instanceof Step.Rinse
            ? Task.Kind.RINSE
            : step instanceof Step.Wash
                ? Task.Kind.WASH
                : step instanceof Step.HeatSet
                    ? Task.Kind.HEAT_SET
                    : step instanceof Step.Sew ? Task.Kind.SEW : Task.Kind.WAIT;
  }

  private static Span span(Step.Dry dry) {
    return ((Until.Time) dry.until()).span();
  }

  private int next() {
    return steps.size() + 1;
  }

  private PlanPath path() {
    return new PlanPath("run").item(steps.size());
  }
}

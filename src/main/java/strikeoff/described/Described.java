package strikeoff.described;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.layout.Layout;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Protection;
import strikeoff.plan.Screen;
import strikeoff.plan.Step;
import strikeoff.plan.Table;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** Describes a plan. */
public final class Described {

  private final PrintPlan plan;
  private final Layout layout;
  private final Timeline timeline;
  private final StepTimes times;

  private Described(PrintPlan plan, Layout layout, Timeline timeline) {
    this.plan = plan;
    this.layout = layout;
    this.timeline = timeline;
    this.times = StepTimes.of(plan.run(), timeline);
  }

  /** Everything that own rules may speak of, subject by subject. */
  public static List<Evidence> of(PrintPlan plan, Layout layout, Timeline timeline) {
    Described described = new Described(plan, layout, timeline);
    List<Evidence> all = new ArrayList<>();
    plan.screens().values().forEach(s -> all.add(described.screen(s)));
    plan.pastes().values().forEach(p -> all.add(described.paste(p)));
    plan.designs().values().forEach(d -> all.add(described.design(d)));
    plan.arrangements().values().forEach(a -> all.add(described.arrangement(a)));
    all.add(described.cloth());
    all.add(described.place());
    all.add(described.equipment());
    for (Step step : plan.run()) {
      all.add(described.taken(step));
      step.draughts()
          .forEach(
              (path, air) ->
                  all.add(new AirMoved(step.number(), air.by().text(), air.speed(), path)));
      described.bath(step, all);
    }
    List<DayWorked> days = described.days();
    all.addAll(days);
    all.addAll(described.inUse());
    all.add(described.whole(days.size()));
    return all;
  }

  private ScreenUsed screen(Screen s) {
    List<String> designs =
        plan.designs().values().stream()
            .filter(d -> d.separations().stream().anyMatch(x -> x.screen().equals(s.name())))
            .map(Design::name)
            .toList();
    return new ScreenUsed(
        s.name(),
        s.frameLength(),
        s.frameWidth(),
        s.imageLength(),
        s.imageWidth(),
        s.mesh(),
        s.thread(),
        s.squeegee().isPresent(),
        designs,
        s.path());
  }

  private PasteMixed paste(Paste p) {
    return new PasteMixed(
        p.name(),
        p.medium() == Medium.PAINT ? "paint" : "dye",
        p.medium() == Medium.PAINT,
        String.join(" and ", p.groups()),
        p.groups(),
        p.alkaliInPaste(),
        p.amount().isPresent(),
        !p.recipe().isEmpty(),
        p.deposit().isPresent(),
        p.recipe().stream().map(Ingredient::substance).toList(),
        p.path());
  }

  private DesignPrinted design(Design d) {
    List<Separation> colours = d.separations();
    return new DesignPrinted(
        d.name(),
        d.length(),
        d.width(),
        colours.size(),
        colours.stream().anyMatch(Separation::key),
        colours.stream().map(Separation::paste).distinct().toList(),
        colours.stream().map(Separation::screen).distinct().toList(),
        d.path());
  }

  private ArrangementPlaced arrangement(Arrangement a) {
    String kind =
        a instanceof Arrangement.Series
            ? "series"
            : a instanceof Arrangement.Border
                ? "border"
                : a instanceof Arrangement.Fill
                    ? "fill"
                    : a instanceof Arrangement.Anchored ? "anchored" : "placed";
    return new ArrangementPlaced(
        a.name(),
        kind,
        a.design(),
        (int) layout.placements().stream().filter(p -> p.arrangement().equals(a.name())).count(),
        plan.designs().get(a.design()).separations().size(),
        a.turn().base() != 0,
        a.mirrored(),
        a.path());
  }

  private ClothPrinted cloth() {
    var c = plan.cloth();
    return new ClothPrinted(
        List.copyOf(c.fibres().keySet()),
        c.length(),
        c.width(),
        c.mass(),
        c.closed(),
        c.washed(),
        plan.seams().size(),
        c.path());
  }

  private PlaceOfWork place() {
    return new PlaceOfWork(
        plan.table().length(),
        plan.table().width(),
        plan.table().railed(),
        plan.table().stations().map(Table.Stations::count).orElse(0),
        plan.room().temperature(),
        plan.room().humidity(),
        plan.room().air().speed(),
        plan.crew().names().size(),
        plan.protection().stream().map(Protection::text).toList(),
        plan.table().path());
  }

  private EquipmentThere equipment() {
    var e = plan.equipment();
    return new EquipmentThere(e.sinks(), e.fans(), e.hairDryers(), e.dryingPlaces(), e.path());
  }

  private List<InUse> inUse() {
    return timeline.evidence().stream()
        .filter(RunFigures.class::isInstance)
        .map(RunFigures.class::cast)
        .flatMap(
            figures ->
                figures.busy().stream()
                    .map(
                        b ->
                            new InUse(
                                b.resource().kind().text(),
                                b.resource().name(),
                                b.busy(),
                                b.share(),
                                figures.path())))
        .toList();
  }

  private StepTaken taken(Step step) {
    List<String> arrangements = List.of();
    List<Separation> colours = List.of();
    if (step instanceof PrintStep print) {
      arrangements = print.arrangements();
      colours =
          arrangements.stream()
              .flatMap(
                  a ->
                      plan
                          .designs()
                          .get(plan.arrangements().get(a).design())
                          .separations()
                          .stream())
              .filter(
                  c -> print.separations().isEmpty() || print.separations().contains(c.number()))
              .toList();
    }
    List<String> pastes =
        step instanceof Step.Mix mix
            ? mix.pastes()
            : colours.stream().map(Separation::paste).distinct().toList();
    List<String> screens =
        step instanceof Step.WashScreen wash
            ? wash.screens()
            : colours.stream().map(Separation::screen).distinct().toList();
    return new StepTaken(
        step.number(),
        StepKinds.of(step),
        step,
        times.begins(step),
        times.ends(step),
        pastes,
        screens,
        arrangements.stream().map(a -> plan.arrangements().get(a).design()).distinct().toList(),
        arrangements,
        step.path());
  }

  private void bath(Step step, List<Evidence> into) {
    if (step instanceof Step.Fix fix) {
      into.add(bath(fix, fix.temperature(), fix.lasts()));
    } else if (step instanceof Step.Rinse r) {
      into.add(bath(r, r.temperature(), r.lasts()));
    } else if (step instanceof Step.Wash w) {
      into.add(bath(w, w.temperature(), w.lasts()));
    } else if (step instanceof Step.HeatSet h) {
      into.add(bath(h, h.temperature(), h.lasts()));
    }
  }

  private BathTaken bath(Step step, Temperature temperature, Span lasts) {
    return new BathTaken(
        step.number(),
        StepKinds.of(step),
        temperature,
        lasts,
        times.begins(step),
        times.ends(step),
        step.path());
  }

  /** Days on which somebody works, by when the work begins. */
  private List<DayWorked> days() {
    Map<Integer, List<Task>> byDay = new LinkedHashMap<>();
    for (Task task : timeline.tasks()) {
      if (task.worked()) {
        byDay.computeIfAbsent(task.start().day(), d -> new ArrayList<>()).add(task);
      }
    }
    List<DayWorked> days = new ArrayList<>();
    byDay.forEach(
        (day, tasks) -> {
          Task last = tasks.get(0);
          for (Task task : tasks) {
            last = task.end().compareTo(last.end()) > 0 ? task : last;
          }
          int lays = (int) tasks.stream().filter(t -> t.kind() == Task.Kind.PRINT).count();
          days.add(new DayWorked(day, tasks.get(0).start(), last.end(), lays, last.path()));
        });
    return days;
  }

  private WholePlan whole(int days) {
    Moment finish = timeline.finish();
    return new WholePlan(
        plan.title(),
        plan.screens().size(),
        plan.pastes().size(),
        plan.designs().size(),
        layout.placements().size(),
        days,
        timeline.impressions().size(),
        finish,
        timeline.handsOn(),
        timeline.waiting(),
        !plan.notes().isEmpty(),
        new PlanPath("plan"));
  }
}

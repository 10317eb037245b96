package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Task;
import strikeoff.timeline.Timeline;

/** Which stretch of the cloth lies on the table, and from when to when. */
final class TablePlaces {

  private static final Set<Task.Kind> TAKEN_UP =
      EnumSet.of(Task.Kind.SEW, Task.Kind.FIX, Task.Kind.RINSE, Task.Kind.WASH, Task.Kind.HEAT_SET);

  private TablePlaces() {}

  /**
   * One place of the table.
   *
   * @param x where on the cloth the table's start lies, in millimetres
   */
  record Place(double x, Moment from, Moment to) {}

  static List<Place> of(PrintPlan plan, Layout layout, Timeline run) {
    List<Place> places = new ArrayList<>();
    Moment end = new Moment(run.finish().seconds() + 1);
    double x = Double.NaN;
    Moment from = run.start();
    for (int i = 0; i < run.tasks().size(); i++) {
      Task task = run.tasks().get(i);
      boolean shown = task.kind() == Task.Kind.LOAD || task.kind() == Task.Kind.MOVE;
      if (!shown && !TAKEN_UP.contains(task.kind())) {
        continue;
      }
      if (!Double.isNaN(x)) {
        places.add(new Place(x, from, task.start()));
      }
      from = task.end();
      x = shown ? at(task, i, plan, layout, run) : Double.NaN;
    }
    if (!Double.isNaN(x)) {
      places.add(new Place(x, from, end));
    }
    return places;
  }

  private static double at(Task task, int index, PrintPlan plan, Layout layout, Timeline run) {
    for (Step step : plan.run()) {
      if (step.number() == task.step() && step instanceof Step.Move move) {
        return move.to().mm();
      }
    }
    if (task.step() == 0) {
      return layout.footprints().stream().mapToDouble(TablePlaces::frameFrom).reduce(0, Math::min);
    }
    return run.tasks().subList(index, run.tasks().size()).stream()
        .filter(t -> t.impression().isPresent())
        .findFirst()
        .map(t -> run.impressions().get(t.impression().getAsInt()))
        .map(print -> setFrom(print, run))
        .orElse(0.0);
  }

  /** The table begins where the frames of the set begin. */
  private static double setFrom(Impression first, Timeline run) {
    return run.impressions().stream()
        .filter(i -> i.step() == first.step() && i.set() == first.set())
        .filter(i -> arrangement(i).equals(arrangement(first)))
        .mapToDouble(i -> frameFrom(i.footprint()))
        .min()
        .orElse(0);
  }

  private static String arrangement(Impression impression) {
    return impression.footprint().placement().arrangement();
  }

  private static double frameFrom(Footprint footprint) {
    return footprint.frame().getEnvelopeInternal().getMinX();
  }
}

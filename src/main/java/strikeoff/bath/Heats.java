package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.timeline.Impression;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** Whether paint is set by heat, hot and long enough. */
final class Heats {

  private final Work work;

  Heats(Work work) {
    this.work = work;
  }

  List<Evidence> all() {
    List<Evidence> facts = new ArrayList<>();
    int last = 0;
    for (Step step : work.plan().run()) {
      if (step instanceof Step.HeatSet heatSet) {
        last = heatSet.number();
        facts.addAll(heat(heatSet));
      }
    }
    unset(last).ifPresent(facts::add);
    return facts;
  }

  private List<Evidence> heat(Step.HeatSet step) {
    List<Paste> paints = Work.pastes(work.impressions(Medium.PAINT, i -> i.step() < step.number()));
    if (paints.isEmpty()) {
      return List.of();
    }
    Binder binder = new Binder(paints, work.policy());
    Binder.Ask<Temperature> coolest = binder.coolest();
    HeatSetting heat =
        new HeatSetting(
            step.number(),
            step.with(),
            Work.names(paints),
            step.temperature(),
            step.lasts(),
            coolest.value(),
            coolest.paint(),
            coolest.basis(),
            step.path().key("temperature"));
    Binder.Ask<Span> shortest = binder.shortest(step.temperature());
    Span lacks = new Span(Math.max(0, shortest.value().minutes() - step.lasts().minutes()));
    return List.of(
        heat,
        new HeatTime(
            heat,
            shortest.value(),
            shortest.paint(),
            shortest.basis(),
            lacks,
            lacks.wholeMinutesUp(),
            step.path().key("for")));
  }

  private Optional<UnsetPaint> unset(int lastHeat) {
    List<Impression> loose = work.impressions(Medium.PAINT, i -> i.step() > lastHeat);
    return loose.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new UnsetPaint(
                Work.names(Work.pastes(loose)),
                loose.size(),
                Work.placements(loose),
                loose.get(loose.size() - 1).path()));
  }
}

package strikeoff.bath;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.timeline.Impression;
import strikeoff.units.Area;
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
        facts.addAll(heat(heatSet));
        iron(heatSet, last).ifPresent(facts::add);
        last = heatSet.number();
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

  /** What the iron has to go over, spot by spot: all paint since the last heat-set. */
  private Optional<IronTime> iron(Step.HeatSet step, int lastHeat) {
    List<Impression> printed =
        work.impressions(Medium.PAINT, i -> i.step() > lastHeat && i.step() < step.number());
    if (step.with() != Step.Heat.IRON || printed.isEmpty()) {
      return Optional.empty();
    }
    Map<Integer, Double> byPlacement = new LinkedHashMap<>();
    for (Impression print : printed) {
      byPlacement.merge(
          print.footprint().placement().id(),
          print.footprint().separation().printed().squareCm(),
          Math::max);
    }
    double squareCm = byPlacement.values().stream().mapToDouble(a -> a).sum();
    double sole = work.policy().limit("fixing/iron-sole").amount();
    int spots = (int) Math.min(Integer.MAX_VALUE, Math.ceil(squareCm / sole));
    Span needed =
        new Binder(Work.pastes(printed), work.policy()).shortest(step.temperature()).value();
    return Optional.of(
        new IronTime(
            new Area(squareCm),
            new Area(sole),
            spots,
            needed,
            new Span(spots * needed.minutes()).wholeMinutesUp(),
            step.lasts(),
            Work.placements(printed),
            step.path().key("for")));
  }

  private Optional<UnsetPaint> unset(int lastHeat) {
    List<Impression> loose =
        work.impressions(Medium.PAINT, i -> i.step() > lastHeat && !work.getsWetAfter(i.step()));
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

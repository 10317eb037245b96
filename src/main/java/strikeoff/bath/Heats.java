package strikeoff.bath;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.Impression;
import strikeoff.day.Ironing;
import strikeoff.evidence.Evidence;
import strikeoff.plan.HeatSource;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.policy.Fibre;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** Whether paint is set by heat, hot and long enough. */
final class Heats {

  private final FixingRun work;

  Heats(FixingRun work) {
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
    facts.addAll(printed(last));
    return facts;
  }

  private List<Evidence> heat(Step.HeatSet step) {
    List<Paste> paints =
        FixingRun.pastes(work.impressions(Medium.PAINT, i -> i.step() < step.number()));
    if (paints.isEmpty()) {
      return List.of();
    }
    Binder binder = new Binder(paints, work.policy());
    Binder.Ask<Temperature> coolest = binder.coolest();
    Delicacy delicacy = new Delicacy(work.plan().cloth(), work.policy());
    Fibre harmed = delicacy.harmedBy(step.with());
    Fibre spoilt = delicacy.spoiltBy(step.with());
    Temperature harms = delicacy.harmsAbove(harmed, step.with());
    boolean labelled = coolest.label() && coolest.value().compareTo(harms) <= 0;
    Temperature gentle = labelled ? coolest.value() : onDial(harms, coolest.value());
    HeatSetting heat =
        new HeatSetting(
            step.number(),
            step.with(),
            FixingRun.names(paints),
            step.temperature(),
            step.lasts(),
            coolest.value(),
            coolest.paint(),
            coolest.label(),
            binder.shortest(coolest.value(), step.with()).value().halfMinutesUp(),
            harmed.name(),
            harms,
            spoilt.name(),
            delicacy.spoilsAbove(spoilt, step.with()),
            gentle,
            binder.shortest(gentle, step.with()).value().halfMinutesUp(),
            step.path().key("for"),
            step.path().key("temperature"));
    Binder.Ask<Span> shortest = binder.shortest(step.temperature(), step.with());
    Span lacks = new Span(Math.max(0, shortest.value().minutes() - step.lasts().minutes()));
    return List.of(
        heat,
        new HeatTime(
            heat,
            shortest.value(),
            shortest.paint(),
            shortest.label(),
            lacks,
            lacks.wholeMinutesUp(),
            new Share(step.lasts().minutes() / shortest.value().minutes()),
            step.path().key("for")));
  }

  /** Down to the next five degrees, unless that is too cool for the paint. */
  private static Temperature onDial(Temperature most, Temperature least) {
    double five = Math.floor(most.celsius() / 5) * 5;
    return five >= least.celsius() ? new Temperature(five) : most;
  }

  /** What an iron or a press has to go over, spot by spot: all paint since the last heat-set. */
  private Optional<IronTime> iron(Step.HeatSet step, int lastHeat) {
    List<Impression> printed =
        work.impressions(Medium.PAINT, i -> i.step() > lastHeat && i.step() < step.number());
    if (printed.isEmpty()) {
      return Optional.empty();
    }
    return Ironing.of(
            printed.stream().map(Impression::footprint).toList(), step.with(), work.policy())
        .map(ironing -> ironTime(step, printed, ironing));
  }

  private IronTime ironTime(Step.HeatSet step, List<Impression> printed, Ironing ironing) {
    return new IronTime(
        step.number(),
        step.with(),
        ironing.motifs(),
        ironing.images(),
        ironing.sole(),
        ironing.spots(),
        step.sides(),
        step.lasts(),
        ironing.total(step),
        new Binder(FixingRun.pastes(printed), work.policy())
            .shortest(step.temperature(), step.with())
            .value()
            .halfMinutesUp(),
        FixingRun.placements(printed),
        step.path().key("for"));
  }

  /** What is heat-set afterwards, what a bath reaches without it, and what neither does. */
  private List<PaintPrinted> printed(int lastHeat) {
    Map<List<Boolean>, List<Impression>> alike = new LinkedHashMap<>();
    for (Impression print : work.impressions(Medium.PAINT, i -> true)) {
      alike
          .computeIfAbsent(
              List.of(print.step() < lastHeat, work.getsWetAfter(print.step())),
              key -> new ArrayList<>())
          .add(print);
    }
    return alike.values().stream().map(this::printed).toList();
  }

  private PaintPrinted printed(List<Impression> prints) {
    Impression last = prints.get(prints.size() - 1);
    List<Step> after = work.plan().run().subList(last.step(), work.plan().run().size());
    return new PaintPrinted(
        FixingRun.names(FixingRun.pastes(prints)),
        prints.size(),
        (int) after.stream().filter(Step.HeatSet.class::isInstance).count(),
        (int) after.stream().filter(FixingRun::wets).count(),
        setting(FixingRun.pastes(prints)),
        FixingRun.placements(prints),
        last.path());
  }

  /** What sets paints on this cloth: as they ask, and no hotter than its weakest fibre stands. */
  private PaintPrinted.Setting setting(List<Paste> paints) {
    Binder binder = new Binder(paints, work.policy());
    Binder.Ask<Temperature> coolest = binder.coolest();
    Fibre weakest = new Delicacy(work.plan().cloth(), work.policy()).harmedBy(HeatSource.OVEN);
    double usual = work.policy().fixing().usualHeatSet().celsius();
    Temperature at =
        coolest.label() || coolest.value().compareTo(weakest.heatHarms()) > 0
            ? coolest.value()
            : new Temperature(Math.min(usual, weakest.heatHarms().celsius()));
    return new PaintPrinted.Setting(
        coolest.paint(),
        at,
        binder.shortest(at, HeatSource.OVEN).value(),
        weakest.name(),
        weakest.heatHarms());
  }
}

package strikeoff.bath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import strikeoff.chemistry.Arrhenius;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Range;
import strikeoff.units.Span;

/** Time and temperature of every soak, batch and steam against the reactive groups on the cloth. */
final class Warmths {

  private final Work work;

  Warmths(Work work) {
    this.work = work;
  }

  List<Evidence> all() {
    List<Evidence> facts = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix) {
        List<Paste> dyes = Work.pastes(work.before(fix, Medium.DYE));
        List<ReactiveGroup> groups = work.groups(dyes);
        if (groups.isEmpty()) {
          continue;
        }
        if (fix.how() == Step.Fixing.STEAM) {
          facts.add(steaming(fix, dyes, groups));
        } else {
          Warmth warmth = warmth(fix, dyes, groups);
          facts.add(new FixTemperature(warmth, fix.path().key("temperature")));
          if (isTheLast(fix)) {
            facts.add(new FixTime(warmth, fix.path().key("for")));
          }
        }
      }
    }
    return facts;
  }

  /** A soak before a batch or before steam only brings the alkali; the dye has its time there. */
  private boolean isTheLast(Step.Fix fix) {
    return !work.followedBy(fix, s -> s instanceof Step.Fix);
  }

  private Warmth warmth(Step.Fix fix, List<Paste> dyes, List<ReactiveGroup> groups) {
    double celsius = fix.temperature().celsius();
    ReactiveGroup cool =
        groups.stream().max(Comparator.comparing(ReactiveGroup::coolest)).orElseThrow();
    ReactiveGroup warm =
        groups.stream().min(Comparator.comparing(ReactiveGroup::warmest)).orElseThrow();
    ReactiveGroup slow =
        groups.stream().max(Comparator.comparingDouble(g -> needed(fix, g).best())).orElseThrow();
    return new Warmth(
        fix.number(),
        fix.how().text(),
        Work.names(dyes),
        fix.temperature(),
        cool.coolest(),
        cool.name(),
        warm.warmest(),
        warm.name(),
        cool.coolest().celsius() - celsius,
        celsius - warm.warmest().celsius(),
        fix.lasts(),
        needed(fix, slow),
        slow.name(),
        cool.coolest().celsius() - celsius <= work.policy().limit("fixing/carried-over").amount());
  }

  /** A warmer bath than the coolest saves time, but no more than up to the group's warmest. */
  private Range needed(Step.Fix fix, ReactiveGroup group) {
    Span stated = fix.how() == Step.Fixing.SOAK ? group.shortestSoak() : group.shortestBatch();
    double celsius = Math.min(fix.temperature().celsius(), group.warmest().celsius());
    return Arrhenius.minutes(
        stated.minutes(), energies(), group.coolest().celsius(), Math.max(0, celsius));
  }

  private Range energies() {
    return new Range(
        work.policy().limit("fixing/activation-energy-least").amount(),
        work.policy().limit("fixing/activation-energy-usual").amount(),
        work.policy().limit("fixing/activation-energy-most").amount());
  }

  private Steaming steaming(Step.Fix fix, List<Paste> dyes, List<ReactiveGroup> groups) {
    ReactiveGroup slow =
        groups.stream().max(Comparator.comparing(ReactiveGroup::shortestSteam)).orElseThrow();
    ReactiveGroup delicate =
        groups.stream().min(Comparator.comparing(ReactiveGroup::longestSteam)).orElseThrow();
    double missing = slow.shortestSteam().minutes() - fix.lasts().minutes();
    return new Steaming(
        fix.number(),
        Work.names(dyes),
        fix.temperature(),
        fix.lasts(),
        slow.shortestSteam(),
        slow.name(),
        delicate.longestSteam(),
        delicate.name(),
        new Span(Math.max(0, missing)).wholeMinutesUp(),
        fix.path().key("for"));
  }
}

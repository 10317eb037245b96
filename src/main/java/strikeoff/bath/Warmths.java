package strikeoff.bath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import strikeoff.evidence.Evidence;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.policy.Fibre;
import strikeoff.policy.ReactiveGroup;
import strikeoff.policy.ReactiveGroup.Stated;
import strikeoff.units.Temperature;

/** Temperature of every soak, batch and steam against the reactive groups on the cloth. */
final class Warmths {

  private final FixingRun work;
  private final Pace pace;
  private final DyeProgress progress;
  private final FixedShares shares;

  Warmths(FixingRun work) {
    this.work = work;
    this.pace = new Pace(work.policy());
    this.progress = new DyeProgress(work);
    this.shares = new FixedShares(work, progress);
  }

  List<Evidence> all() {
    List<Evidence> facts = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix) {
        List<Paste> dyes = FixingRun.pastes(work.before(fix, Medium.DYE));
        List<ReactiveGroup> groups = work.groups(dyes);
        if (groups.isEmpty()) {
          continue;
        }
        Warmth warmth = warmth(fix, dyes, groups);
        if (fix.how() == DyeFixing.STEAM) {
          facts.add(steaming(fix, dyes, groups));
        } else {
          Fibre weakest = new Delicacy(work.plan().cloth(), work.policy()).inWater();
          boolean batch = fix.how() == DyeFixing.BATCH;
          double keepable = work.policy().fixing().coldestHotFixing().celsius();
          facts.add(
              new FixTemperature(
                  warmth,
                  shares.change(fix),
                  batch,
                  batch && warmth.coolest().celsius() > keepable,
                  weakest.name(),
                  weakest.warmestWash(),
                  ToSteam.lasts(work, dyes),
                  ToSteam.edits(work, fix),
                  fix.path().key("temperature")));
        }
        if (work.isTheLast(fix)) {
          facts.add(shares.time(fix, warmth));
        }
      }
    }
    return facts;
  }

  private Warmth warmth(Step.Fix fix, List<Paste> dyes, List<ReactiveGroup> groups) {
    double celsius = fix.temperature().celsius();
    boolean steam = fix.how() == DyeFixing.STEAM;
    Alkali alkali = work.alkali(fix);
    ReactiveGroup cool =
        groups.stream().max(Comparator.comparing(g -> coolest(fix, g, alkali))).orElseThrow();
    ReactiveGroup warm =
        groups.stream().min(Comparator.comparing(g -> warmest(fix, g))).orElseThrow();
    Temperature bears =
        groups.stream().map(g -> bears(g, alkali)).max(Comparator.naturalOrder()).orElseThrow();
    DyeProgress.Needed slow = progress.slowest(fix);
    double cold = steam ? -celsius : bears.celsius() - celsius;
    return new Warmth(
        fix.number(),
        fix.how().text(),
        FixingRun.names(dyes),
        fix.temperature(),
        coolest(fix, cool, alkali),
        cool.name(),
        warmest(fix, warm),
        warm.name(),
        cold,
        bears,
        celsius - warmest(fix, warm).celsius(),
        fix.lasts(),
        slow.minutes(),
        slow.group().name(),
        cold <= work.policy().fixing().hopelessBelow().celsius(),
        work.isTheLast(fix),
        groups.stream()
            .map(g -> new Warmth.Window(g.name(), coolest(fix, g, alkali), warmest(fix, g)))
            .toList());
  }

  /** From where on the group is fixed this way within the time that sources state. */
  private Temperature coolest(Step.Fix fix, ReactiveGroup group, Alkali alkali) {
    return switch (fix.how()) {
      case STEAM -> work.policy().fixing().coolestSteam();
      case SOAK -> group.coolest();
      case BATCH -> bears(group, alkali);
    };
  }

  private Temperature warmest(Step.Fix fix, ReactiveGroup group) {
    return fix.how() == DyeFixing.STEAM
        ? new Temperature(
            Math.max(fix.temperature().celsius(), work.policy().fixing().coolestSteam().celsius()))
        : group.warmest();
  }

  /** Colder than a batch's stated temperature, dye reacts badly however long it lies. */
  private Temperature bears(ReactiveGroup group, Alkali alkali) {
    Stated batch = pace.statedBatch(group, false, alkali);
    return batch.at();
  }

  private Steaming steaming(Step.Fix fix, List<Paste> dyes, List<ReactiveGroup> groups) {
    ReactiveGroup delicate =
        groups.stream().min(Comparator.comparing(ReactiveGroup::longestSteam)).orElseThrow();
    return new Steaming(
        fix.number(),
        FixingRun.names(dyes),
        fix.temperature(),
        fix.lasts(),
        delicate.longestSteam(),
        delicate.name(),
        fix.path().key("for"),
        fix.path().key("temperature"));
  }
}

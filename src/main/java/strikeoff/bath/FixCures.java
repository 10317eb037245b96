package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strikeoff.document.Edit;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Step;
import strikeoff.policy.Limits;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Mass;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** What brings the dye of a step to its full share: more soda, more time, more warmth, or steam. */
final class FixCures {

  private final FixingRun work;
  private final DyeProgress progress;
  private final Pace pace;

  FixCures(FixingRun work, DyeProgress progress) {
    this.work = work;
    this.progress = progress;
    this.pace = new Pace(work.policy());
  }

  /** What brings it to the full share, and how that is written. */
  record Cure(List<Treatment> treatments, List<Edit> edits) {}

  /** Ways to write one treatment stand one after the other and share it, however they begin. */
  static List<List<Treatment>> treatments(List<Cure> cures) {
    List<List<Treatment>> all = new ArrayList<>();
    Treatment before = null;
    for (Cure cure : cures) {
      Treatment last = cure.treatments().get(cure.treatments().size() - 1);
      if (last != before) {
        all.add(cure.treatments());
      }
      before = last;
    }
    return all;
  }

  /**
   * Each way alone is enough.
   *
   * @param slow the dye that needs longest
   * @param weak whether its soda bath is weaker than any that dyers give
   * @param enoughButForSoda whether it would be done with enough soda
   */
  List<Cure> of(Step.Fix fix, DyeProgress.Needed slow, boolean weak, boolean enoughButForSoda) {
    if (weak && progress.holdTheirOwn(fix)) {
      return steamed(fix);
    }
    if (!weak) {
      return inTime(fix, slow, 1 - progress.done(fix, slow.paste(), slow.group(), false).best());
    }
    Step.Fix soak = (Step.Fix) work.plan().run().get(work.alkalineSoak(fix) - 1);
    Mass more = work.sodaToAdd(soak);
    Mass then = new Mass(Liquor.of(soak.bath(), work.policy()).sodaGrams().best() + more.grams());
    Cure add =
        new Cure(
            List.of(new Treatment.AddSoda(more)),
            new BathEdits(soak, work.policy(), work.units()).soda(then).stream().toList());
    if (enoughButForSoda) {
      return List.of(add);
    }
    DyeProgress.Needed needed =
        progress.needed(fix, slow.paste(), slow.group(), progress.enough(fix));
    double left = 1 - progress.done(fix, slow.paste(), slow.group(), true).best();
    return inTime(fix, needed, left).stream()
        .map(
            cure ->
                new Cure(
                    Stream.concat(add.treatments().stream(), cure.treatments().stream()).toList(),
                    add.edits().isEmpty()
                        ? add.edits()
                        : Stream.concat(add.edits().stream(), cure.edits().stream()).toList()))
        .toList();
  }

  /**
   * @param left of the time that it needs at this temperature, as a share
   */
  private List<Cure> inTime(Step.Fix fix, DyeProgress.Needed slow, double left) {
    Span more = roundly(slow.minutes().best() * Math.max(0, left));
    if (fix.how() == DyeFixing.STEAM) {
      return List.of(new Cure(List.of(new Treatment.SteamLonger(more)), longer(fix, more)));
    }
    ReactiveGroup group = slow.group();
    ReactiveGroup.Stated stated =
        fix.how() == DyeFixing.SOAK
            ? group.soak()
            : pace.statedBatch(group, work.proteinAlone(), work.alkali(fix));
    List<Cure> cures = new ArrayList<>();
    boolean warm = fix.temperature().celsius() >= stated.at().celsius();
    if (!spoilsProtein(fix, more) && (warm || isTrusted(fix) && isPatient(fix, more))) {
      cures.add(new Cure(List.of(new Treatment.LeaveLonger(more)), longer(fix, more)));
    }
    if (!warm && isStoodByCloth(stated.at())) {
      double slowed =
          slow.minutes().best()
              / progress.needed(fix, slow.paste(), group, Alkali.IN_PASTE).minutes().best();
      Span there = roundly(stated.forShade(progress.deep(slow.paste())).minutes() * slowed);
      cures.add(
          new Cure(
              List.of(new Treatment.KeepAt(stated.at(), there)),
              List.of(
                  new Edit.Write(fix.path().key("temperature"), stated.at().enough(work.units())),
                  new Edit.Write(fix.path().key("for"), there.toTheMinute()))));
    }
    cures.removeIf(cure -> spoilsProtein(fix, new Span(0)));
    if (cures.isEmpty()) {
      cures.addAll(steamed(fix));
    }
    return cures;
  }

  private List<Cure> steamed(Step.Fix fix) {
    List<Treatment> steam = List.of(new Treatment.Steam(ToSteam.lasts(work, progress.dyes(fix))));
    List<List<Edit>> edits = ToSteam.edits(work, fix);
    return edits.isEmpty()
        ? List.of(new Cure(steam, List.of()))
        : edits.stream().map(written -> new Cure(steam, written)).toList();
  }

  private boolean isStoodByCloth(Temperature water) {
    Delicacy delicacy = new Delicacy(work.plan().cloth(), work.policy());
    return water.compareTo(delicacy.inWater().warmestWash()) <= 0;
  }

  /** Whether silk or wool would then have lain in soda for longer than it stands. */
  private boolean spoilsProtein(Step.Fix last, Span more) {
    double lain = progress.steps(last).stream().mapToDouble(f -> f.lasts().minutes()).sum();
    return work.alkali(last).kind() != Alkali.Kind.PASTE
        && work.standsSoda().filter(s -> s.minutes() < lain + more.minutes()).isPresent();
  }

  private static List<Edit> longer(Step.Fix fix, Span more) {
    return List.of(new Edit.Write(fix.path().key("for"), fix.lasts().plus(more).toTheMinute()));
  }

  /**
   * Colder than dyers trust a group, no time makes up for it. A soak as cool as a batch takes a
   * batch's hours, which nobody gives it.
   */
  private boolean isTrusted(Step.Fix fix) {
    double tolerance = work.policy().fixing().temperatureTolerance().celsius();
    boolean soak = fix.how() == DyeFixing.SOAK;
    double trusted =
        work.groups(progress.dyes(fix)).stream()
            .mapToDouble(g -> pace.statedBatch(g, false, work.alkali(fix)).at().celsius())
            .max()
            .orElse(0);
    return fix.temperature().celsius() >= trusted + (soak ? tolerance : -tolerance);
  }

  /** Nobody keeps a print damp for longer, and nobody stands by a bath for half a day. */
  private boolean isPatient(Step.Fix fix, Span more) {
    Limits.Fixing fixing = work.policy().fixing();
    Span longest = fix.how() == DyeFixing.SOAK ? fixing.longestSoak() : fixing.longestBatch();
    return fix.lasts().plus(more).minutes() <= longest.minutes();
  }

  /** Nobody plans 37 minutes: up to five minutes, and to a quarter of an hour from two hours on. */
  private static Span roundly(double minutes) {
    double step = minutes > 120 ? 15 : minutes > 15 ? 5 : 1;
    return new Span(Math.ceil(minutes / step - 1e-9) * step);
  }
}

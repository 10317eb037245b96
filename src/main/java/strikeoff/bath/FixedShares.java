package strikeoff.bath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.colour.Lab;
import strikeoff.colour.Paler;
import strikeoff.document.Edit;
import strikeoff.paste.PasteAge;
import strikeoff.paste.Recipe;
import strikeoff.plan.Colour;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.policy.Limits;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Concentration;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** How much of each dye is fixed by all steps of its phase together. */
final class FixedShares {

  private static final Range ALL = Range.exactly(1);

  private final FixingRun work;
  private final Pace pace;
  private final double seen;

  /** By the number of the step: every share and every cure asks. */
  private final Map<Integer, List<Paste>> dyes = new HashMap<>();

  FixedShares(FixingRun work) {
    this.work = work;
    this.pace = new Pace(work.policy());
    this.seen = work.policy().fixing().changeSeen().value();
  }

  /** How long the dye of one group in a paste needs in a step. */
  record Needed(Paste paste, ReactiveGroup group, Range minutes) {}

  /** The dye on the cloth that needs longest in a step. */
  Needed slowest(Step.Fix fix) {
    return dyes(fix).stream()
        .flatMap(paste -> groups(paste).stream().map(g -> needed(fix, paste, g, work.alkali(fix))))
        .max(Comparator.comparingDouble(n -> n.minutes().best()))
        .orElseThrow();
  }

  /** How far the colour is off that is most off, once the step is over. */
  double change(Step.Fix fix) {
    return shares(fix, false).get(0).change();
  }

  FixTime time(Step.Fix last, Warmth warmth) {
    Needed slow = slowest(last);
    boolean alone =
        last.how() == DyeFixing.SOAK && !work.alkali(last).silicate() && steps(last).size() == 1;
    double wetting = work.policy().fixing().onlyWetting().minutes();
    boolean weak = isWeak(last);
    boolean enoughButForSoda = shares(last, true).get(0).change() < seen;
    List<Cure> cures = cures(last, slow, weak, enoughButForSoda);
    return new FixTime(
        warmth,
        shares(last, false),
        seen,
        work.alkali(last).there(),
        alone && last.lasts().minutes() < wetting,
        slow.group().soak().pale(),
        work.alkalineSoak(last),
        weak && enoughButForSoda && !holdTheirOwn(last)
            ? Optional.of(thin(last))
            : Optional.empty(),
        once(cures),
        cures.stream().map(Cure::edits).filter(edits -> !edits.isEmpty()).toList(),
        last.path().key("for"));
  }

  /** Of all pastes, those whose colour is most off first. */
  private List<FixedShare> shares(Step.Fix last, boolean withEnoughSoda) {
    List<FixedShare> shares = new ArrayList<>();
    Colour ground = work.plan().cloth().ground();
    for (Paste paste : dyes(last)) {
      Range alive =
          work.ages().stream()
              .filter(a -> a.paste().equals(paste.name()) && a.pastItsLife())
              .map(PasteAge::alive)
              .findFirst()
              .orElse(ALL);
      groups(paste).stream()
          .map(
              group -> {
                Range share = share(last, paste, group, withEnoughSoda);
                return new FixedShare(
                    paste.name(),
                    group,
                    deep(paste),
                    share,
                    alive,
                    Paler.of(paste.colour(), 1, ground),
                    Paler.of(paste.colour(), share.best(), ground),
                    Paler.of(paste.colour(), share.best() * alive.best(), ground));
              })
          .min(Comparator.comparingDouble(s -> s.share().best()))
          .ifPresent(shares::add);
    }
    shares.sort(
        Comparator.comparingDouble(FixedShare::change)
            .reversed()
            .thenComparingDouble(s -> s.share().best()));
    return shares;
  }

  /** Whether a soda bath is surely weaker than any that dyers give. */
  private boolean isWeak(Step.Fix last) {
    Alkali alkali = work.alkali(last);
    return alkali.there()
        && alkali.kind() == Alkali.Kind.SODA
        && alkali.soda().high() < work.policy().fixing().weakestBath().amount();
  }

  /**
   * Pastes that hold their alkali already: more of it in a bath is what fixing/alkali-twice tells.
   */
  private boolean holdTheirOwn(Step.Fix last) {
    return !dyes(last).isEmpty()
        && dyes(last).stream().allMatch(p -> new Recipe(p, work.policy()).holdsAlkali());
  }

  private FixTime.Thin thin(Step.Fix last) {
    return new FixTime.Thin(
        new Concentration(work.alkali(last).soda().best()),
        new Concentration(work.policy().fixing().weakestBath().amount()));
  }

  /** What brings it to the full share, and how that is written. */
  private record Cure(List<Treatment> treatments, List<Edit> edits) {}

  /** Ways to write one treatment stand one after the other and share it, however they begin. */
  private static List<List<Treatment>> once(List<Cure> cures) {
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

  private List<Cure> cures(Step.Fix fix, Needed slow, boolean weak, boolean enoughButForSoda) {
    if (weak && holdTheirOwn(fix)) {
      return steamed(fix);
    }
    if (!weak) {
      return inTime(fix, slow, 1 - done(fix, slow.paste(), slow.group(), false).best());
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
    Needed needed = needed(fix, slow.paste(), slow.group(), enough(fix));
    double left = 1 - done(fix, slow.paste(), slow.group(), true).best();
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
  private List<Cure> inTime(Step.Fix fix, Needed slow, double left) {
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
              / needed(fix, slow.paste(), group, Alkali.IN_PASTE).minutes().best();
      Span there = roundly(stated.forShade(deep(slow.paste())).minutes() * slowed);
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
    List<Treatment> steam = List.of(new Treatment.Steam(ToSteam.lasts(work, dyes(fix))));
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
    double lain = steps(last).stream().mapToDouble(f -> f.lasts().minutes()).sum();
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
        work.groups(dyes(fix)).stream()
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

  /** First order: as much is left unfixed after twice the time as the square of what was left. */
  private Range share(Step.Fix last, Paste paste, ReactiveGroup group, boolean withEnoughSoda) {
    double left = 1 - work.policy().fixing().shareAtStatedTime().fraction();
    Range done = done(last, paste, group, withEnoughSoda);
    return new Range(
        1 - Math.pow(left, done.low()),
        1 - Math.pow(left, done.best()),
        1 - Math.pow(left, done.high()));
  }

  /** The parts of the time that it needs, summed over all steps that work on it. */
  private Range done(Step.Fix last, Paste paste, ReactiveGroup group, boolean withEnoughSoda) {
    Range sum = Range.exactly(0);
    for (Step.Fix fix : steps(last)) {
      Alkali alkali = work.alkali(fix);
      if (alkali.there() && dyes(fix).stream().anyMatch(p -> p.name().equals(paste.name()))) {
        Range needed = needed(fix, paste, group, withEnoughSoda ? enough(fix) : alkali).minutes();
        double minutes = fix.lasts().minutes();
        sum =
            sum.plus(
                new Range(
                    minutes / needed.high(), minutes / needed.best(), minutes / needed.low()));
      }
    }
    return sum;
  }

  /** The same alkali at the strength that the stated times hold for. */
  private Alkali enough(Step.Fix fix) {
    Alkali alkali = work.alkali(fix);
    return alkali.silicate() ? alkali : Alkali.IN_PASTE;
  }

  /** The fix steps of the phase up to the given one that dye lies on the cloth in. */
  private List<Step.Fix> steps(Step.Fix last) {
    return work.plan().run().stream()
        .filter(Step.Fix.class::isInstance)
        .map(Step.Fix.class::cast)
        .filter(f -> f.number() <= last.number())
        .filter(f -> work.phase(f.number()) == work.phase(last.number()))
        .filter(f -> !dyes(f).isEmpty())
        .toList();
  }

  private List<Paste> dyes(Step.Fix fix) {
    return dyes.computeIfAbsent(
        fix.number(),
        number ->
            FixingRun.pastes(work.before(fix, Medium.DYE)).stream()
                .filter(p -> !p.groups().isEmpty())
                .toList());
  }

  private Needed needed(Step.Fix fix, Paste paste, ReactiveGroup group, Alkali alkali) {
    return new Needed(
        paste, group, pace.neededMinutes(fix, group, deep(paste), work.proteinAlone(), alkali));
  }

  private List<ReactiveGroup> groups(Paste paste) {
    return paste.groups().stream().map(work.policy()::group).toList();
  }

  private boolean deep(Paste paste) {
    return Lab.of(paste.colour()).lightness() < work.policy().fixing().deepShade().value();
  }
}

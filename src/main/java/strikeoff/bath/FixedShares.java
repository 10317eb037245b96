package strikeoff.bath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.colour.Paler;
import strikeoff.paste.PasteAge;
import strikeoff.plan.Colour;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.units.Concentration;
import strikeoff.units.Range;

/** How much of each dye is fixed by all steps of its phase together. */
final class FixedShares {

  private static final Range ALL = Range.exactly(1);

  private final FixingRun work;
  private final DyeProgress progress;
  private final FixCures cures;
  private final double seen;

  FixedShares(FixingRun work, DyeProgress progress) {
    this.work = work;
    this.progress = progress;
    this.cures = new FixCures(work, progress);
    this.seen = work.policy().fixing().changeSeen().value();
  }

  /** How far the colour is off that is most off, once the step is over. */
  double change(Step.Fix fix) {
    return shares(fix, false).get(0).change();
  }

  FixTime time(Step.Fix last, Warmth warmth) {
    DyeProgress.Needed slow = progress.slowest(last);
    boolean alone =
        last.how() == DyeFixing.SOAK
            && !work.alkali(last).silicate()
            && progress.steps(last).size() == 1;
    double wetting = work.policy().fixing().onlyWetting().minutes();
    boolean weak = isWeak(last);
    boolean enoughButForSoda = shares(last, true).get(0).change() < seen;
    List<FixCures.Cure> ways = cures.of(last, slow, weak, enoughButForSoda);
    return new FixTime(
        warmth,
        shares(last, false),
        seen,
        work.alkali(last).there(),
        alone && last.lasts().minutes() < wetting,
        slow.group().soak().pale(),
        work.alkalineSoak(last),
        weak && enoughButForSoda && !progress.holdTheirOwn(last)
            ? Optional.of(thin(last))
            : Optional.empty(),
        FixCures.treatments(ways),
        ways.stream().map(FixCures.Cure::edits).filter(edits -> !edits.isEmpty()).toList(),
        last.path().key("for"));
  }

  /** Of all pastes, those whose colour is most off first. */
  private List<FixedShare> shares(Step.Fix last, boolean withEnoughSoda) {
    List<FixedShare> shares = new ArrayList<>();
    Colour ground = work.plan().cloth().ground();
    for (Paste paste : progress.dyes(last)) {
      Range alive =
          work.ages().stream()
              .filter(a -> a.paste().equals(paste.name()) && a.pastItsLife())
              .map(PasteAge::alive)
              .findFirst()
              .orElse(ALL);
      progress.groups(paste).stream()
          .map(
              group -> {
                Range share = progress.share(last, paste, group, withEnoughSoda);
                return new FixedShare(
                    paste.name(),
                    group,
                    progress.deep(paste),
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

  private FixTime.Thin thin(Step.Fix last) {
    return new FixTime.Thin(
        new Concentration(work.alkali(last).soda().best()),
        new Concentration(work.policy().fixing().weakestBath().amount()));
  }

  /** Whether a soda bath is surely weaker than any that dyers give. */
  private boolean isWeak(Step.Fix last) {
    Alkali alkali = work.alkali(last);
    return alkali.there()
        && alkali.kind() == Alkali.Kind.SODA
        && alkali.soda().high() < work.policy().fixing().weakestBath().amount();
  }
}

package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.paste.Recipe;
import strikeoff.paste.SodaLife;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.timeline.Impression;
import strikeoff.units.Temperature;

/** Whether dye finds its alkali, is fixed at all, and is washed off after it. */
final class Dyes {

  private final Work work;

  Dyes(Work work) {
    this.work = work;
  }

  List<Evidence> all() {
    List<Evidence> facts = new ArrayList<>();
    List<Step.Fix> fixes =
        work.plan().run().stream()
            .filter(Step.Fix.class::isInstance)
            .map(Step.Fix.class::cast)
            .toList();
    fixes.forEach(fix -> missingAlkali(fix).ifPresent(facts::add));
    unfixed(fixes).ifPresent(facts::add);
    if (!fixes.isEmpty()) {
      washOff(fixes.get(fixes.size() - 1)).ifPresent(facts::add);
    }
    return facts;
  }

  private Optional<MissingAlkali> missingAlkali(Step.Fix fix) {
    if (fix.how() == Step.Fixing.SOAK || work.soakedBefore(fix)) {
      return Optional.empty();
    }
    List<Paste> bare =
        Work.pastes(work.before(fix, Medium.DYE)).stream()
            .filter(paste -> !new Recipe(paste, work.policy()).holdsAlkali())
            .toList();
    return bare.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new MissingAlkali(
                fix.number(),
                fix.how().text(),
                Work.names(bare),
                bare.stream()
                    .flatMap(
                        p -> SodaLife.of(p, work.plan(), work.timeline(), work.policy()).stream())
                    .filter(SodaLife::tooShort)
                    .toList(),
                bare.stream()
                    .map(p -> new Evidence.Related("paste without alkali", p.path()))
                    .toList(),
                fix.path()));
  }

  /** Dye of a phase that holds no fix step after it; a rinse before any fixing washes it away. */
  private Optional<UnfixedDye> unfixed(List<Step.Fix> fixes) {
    List<Impression> loose =
        work.impressions(
            Medium.DYE,
            i ->
                fixes.stream()
                    .noneMatch(
                        fix ->
                            fix.number() > i.step()
                                && work.phase(fix.number()) == work.phase(i.step())));
    return loose.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new UnfixedDye(
                Work.names(Work.pastes(loose)),
                loose.size(),
                Work.placements(loose),
                loose.get(loose.size() - 1).path()));
  }

  private Optional<WashOff> washOff(Step.Fix last) {
    List<Paste> dyes = Work.pastes(work.impressions(Medium.DYE, i -> i.step() < last.number()));
    if (dyes.isEmpty()) {
      return Optional.empty();
    }
    boolean rinsed = false;
    boolean washed = false;
    Optional<Temperature> firstRinse = Optional.empty();
    Optional<Temperature> hottest = Optional.empty();
    for (Step step : work.plan().run()) {
      if (step.number() < last.number()) {
        continue;
      }
      if (step instanceof Step.Rinse rinse && !washed) {
        rinsed = true;
        firstRinse = firstRinse.isPresent() ? firstRinse : Optional.of(rinse.temperature());
      } else if (step instanceof Step.Wash wash) {
        washed = true;
        Temperature so = hottest.orElse(wash.temperature());
        hottest = Optional.of(so.compareTo(wash.temperature()) > 0 ? so : wash.temperature());
      }
    }
    return Optional.of(
        new WashOff(Work.names(dyes), rinsed, washed, firstRinse, hottest, last.path()));
  }
}

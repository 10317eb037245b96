package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.paste.Recipe;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;

/**
 * Dye pastes that are said to bring their own alkali, and of which no recipe tells how much, where
 * a batch or steam fixes them.
 *
 * @param how batch or steam
 * @param soaked true if a soak before has left alkali in the cloth as well
 * @param pastes in the order of their first print
 * @param path of the first one's alkali
 */
public record UnweighedAlkali(
    int step, String how, boolean soaked, List<String> pastes, List<Related> related, PlanPath path)
    implements Evidence {

  public UnweighedAlkali {
    pastes = List.copyOf(pastes);
    related = List.copyOf(related);
  }

  static List<UnweighedAlkali> all(FixingRun work) {
    List<UnweighedAlkali> all = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix && !fix.wets() && work.isTheLast(fix)) {
        List<Paste> unweighed =
            FixingRun.pastes(work.before(fix, Medium.DYE)).stream()
                .filter(paste -> paste.recipe().isEmpty())
                .filter(paste -> new Recipe(paste, work.policy()).holdsAlkali())
                .toList();
        if (!unweighed.isEmpty()) {
          all.add(of(fix, work.soakedBefore(fix), unweighed));
        }
      }
    }
    return all;
  }

  private static UnweighedAlkali of(Step.Fix fix, boolean soaked, List<Paste> pastes) {
    List<Related> related = new ArrayList<>();
    related.add(new Related(Tie.FIXED_HERE, fix.path()));
    pastes.stream().skip(1).forEach(p -> related.add(new Related(p.name(), path(p))));
    return new UnweighedAlkali(
        fix.number(),
        fix.how().text(),
        soaked,
        FixingRun.names(pastes),
        related,
        path(pastes.get(0)));
  }

  private static PlanPath path(Paste paste) {
    return paste.path().key("alkali");
  }
}

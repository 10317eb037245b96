package strikeoff.bath;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.paste.ForRecipe;
import strikeoff.paste.PasteDose;
import strikeoff.paste.Recipe;
import strikeoff.paste.UsualUrea;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;

/**
 * Dye pastes whose recipe holds no urea to speak of, and which are steamed or batched.
 *
 * @param how batch or steam
 * @param pastes with little urea or none
 * @param mostHeld g of it in a kilogram of the one that holds most
 * @param wrapped how dry their prints are when the step starts
 * @param here how much each of these recipes takes, by the paste; none that holds nothing else
 * @param usual how much recipes take in general
 * @param edits what writes it into them
 * @param proteinAlone true for silk or wool alone
 * @param soaked true if a soak wets the print before the step
 * @param related the pastes
 * @param path of the step
 */
public record UreaNeed(
    int step,
    DyeFixing how,
    List<String> pastes,
    double mostHeld,
    Wrapped wrapped,
    Map<String, ForRecipe> here,
    UsualUrea usual,
    List<List<Edit>> edits,
    boolean proteinAlone,
    boolean soaked,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public UreaNeed {
    pastes = List.copyOf(pastes);
    edits = List.copyOf(edits);
    related = List.copyOf(related);
  }

  static List<UreaNeed> all(FixingRun work) {
    List<UreaNeed> all = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix && !fix.wets() && work.isTheLast(fix)) {
        of(work, fix).ifPresent(all::add);
      }
    }
    return all;
  }

  /** True if a paste's recipe says that it holds next to no urea. */
  static boolean hardlyAny(Paste paste, FixingRun work) {
    double some = work.policy().fixing().someUrea().value();
    return dose(paste, work).map(dose -> dose.ureaGrams().high() < some).orElse(false);
  }

  static Optional<PasteDose> dose(Paste paste, FixingRun work) {
    return PasteDose.of(paste, work.plan().cloth(), work.policy());
  }

  private static Optional<UreaNeed> of(FixingRun work, Step.Fix fix) {
    List<Paste> without =
        FixingRun.pastes(work.before(fix, Medium.DYE)).stream()
            .filter(p -> hardlyAny(p, work))
            .toList();
    UsualUrea usual = UsualUrea.of(work.plan().cloth(), work.policy());
    return Wrapped.of(work, fix, without)
        .map(
            wrapped ->
                new UreaNeed(
                    fix.number(),
                    fix.how(),
                    FixingRun.names(without),
                    held(without, work),
                    wrapped,
                    take(without, usual, work),
                    usual,
                    edits(without, work),
                    work.proteinAlone(),
                    work.isSoakedOnPrintBefore(fix),
                    without.stream()
                        .map(p -> new Evidence.Related(Tie.PASTE_WITHOUT_UREA, p.path()))
                        .toList(),
                    fix.path()));
  }

  private static double held(List<Paste> pastes, FixingRun work) {
    return pastes.stream()
        .flatMap(p -> dose(p, work).stream())
        .mapToDouble(dose -> dose.ureaGrams().best())
        .max()
        .orElse(0);
  }

  private static Map<String, ForRecipe> take(List<Paste> pastes, UsualUrea usual, FixingRun work) {
    Map<String, ForRecipe> here = new LinkedHashMap<>();
    for (Paste paste : pastes) {
      usual.in(new Recipe(paste, work.policy())).ifPresent(urea -> here.put(paste.name(), urea));
    }
    return here;
  }

  /** One alternative: all recipes together. */
  private static List<List<Edit>> edits(List<Paste> pastes, FixingRun work) {
    UsualUrea usual = UsualUrea.of(work.plan().cloth(), work.policy());
    List<Edit> all = new ArrayList<>();
    for (Paste paste : pastes) {
      usual
          .in(new Recipe(paste, work.policy()))
          .flatMap(urea -> urea.edits(work.units()).stream().findFirst())
          .ifPresent(all::addAll);
    }
    return all.isEmpty() ? List.of() : List.of(all);
  }

  public boolean steam() {
    return how == DyeFixing.STEAM;
  }
}

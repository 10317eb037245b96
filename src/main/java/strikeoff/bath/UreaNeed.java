package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.paste.PasteDose;
import strikeoff.paste.Recipe;
import strikeoff.paste.UsualUrea;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.units.PerKilogram;

/**
 * Dye pastes whose recipe holds no urea to speak of, and which are steamed or batched.
 *
 * @param how batch or steam
 * @param pastes with little urea or none
 * @param held how much they hold, in words: no urea, or as much as that in a kilogram
 * @param wrapped how dry their prints are when the step starts
 * @param take how much these recipes take, and recipes in general, in words
 * @param edits what writes it into them
 * @param proteinAlone true for silk or wool alone
 * @param soaked true if a soak wets the print before the step
 * @param related the pastes
 * @param path of the step
 */
public record UreaNeed(
    int step,
    Step.Fixing how,
    List<String> pastes,
    String held,
    Wrapped wrapped,
    String take,
    List<List<Edit>> edits,
    boolean proteinAlone,
    boolean soaked,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  /** More pastes than that are left out of the words, not of the edits. */
  private static final int LISTED = 6;

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
    return Wrapped.of(work, fix, without)
        .map(
            wrapped ->
                new UreaNeed(
                    fix.number(),
                    fix.how(),
                    FixingRun.names(without),
                    held(without, work),
                    wrapped,
                    take(without, work),
                    edits(without, work),
                    work.proteinAlone(),
                    work.isSoakedOnPrintBefore(fix),
                    without.stream()
                        .map(p -> new Evidence.Related("paste without urea", p.path()))
                        .toList(),
                    fix.path()));
  }

  private static String held(List<Paste> pastes, FixingRun work) {
    double most =
        pastes.stream()
            .flatMap(p -> dose(p, work).stream())
            .mapToDouble(dose -> dose.ureaGrams().best())
            .max()
            .orElse(0);
    return most > 0
        ? "only "
            + PerKilogram.text(most, work.units())
            + " of urea in "
            + PerKilogram.whole(work.units())
        : "no urea";
  }

  private static String take(List<Paste> pastes, FixingRun work) {
    UsualUrea usual = UsualUrea.of(work.plan().cloth(), work.policy());
    List<String> here = new ArrayList<>();
    for (Paste paste : pastes) {
      usual
          .in(new Recipe(paste, work.policy()))
          .ifPresent(
              urea ->
                  here.add(
                      urea.text(work.units())
                          + (here.isEmpty() ? " of urea" : "")
                          + " into the recipe of "
                          + paste.name()));
    }
    return here.stream().limit(LISTED).collect(Collectors.joining(", "))
        + ": "
        + usual.text(work.units());
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
    return how == Step.Fixing.STEAM;
  }
}

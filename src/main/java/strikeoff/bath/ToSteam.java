package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Edit;
import strikeoff.paste.ForRecipe;
import strikeoff.paste.Recipe;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/** Edits that turn a soak or a batch into steam, with baking soda in every paste that has none. */
final class ToSteam {

  private ToSteam() {}

  /**
   * With the step's temperature taken out, and, for a step that gives none, without that.
   *
   * @return nothing for a step that is steam already, nor where no recipe tells how much alkali a
   *     paste would take
   */
  static List<List<Edit>> edits(FixingRun work, Step.Fix fix) {
    List<Paste> dyes = FixingRun.pastes(work.before(fix, Medium.DYE));
    if (fix.how() == DyeFixing.STEAM || dyes.isEmpty()) {
      return List.of();
    }
    List<Edit> edits = new ArrayList<>();
    for (Paste paste : dyes) {
      if (!new Recipe(paste, work.policy()).holdsAlkali()) {
        List<Edit> weighedIn = alkali(paste, "baking soda", work.policy(), work.units());
        if (weighedIn.isEmpty()) {
          return List.of();
        }
        edits.addAll(weighedIn);
      }
    }
    // A batch takes prints up damp, and steam doesn't.
    if (fix.how() == DyeFixing.BATCH && work.dryingBefore(fix).isEmpty()) {
      edits.add(new Edit.Insert(fix.path(), "dry: until fix-safe"));
    }
    edits.add(new Edit.Write(fix.path().key("fix"), DyeFixing.STEAM.text()));
    edits.add(new Edit.Write(fix.path().key("for"), lasts(work, dyes).toTheMinute()));
    if (!fix.bath().isEmpty()) {
      edits.add(new Edit.Remove(fix.path().key("bath")));
    }
    List<Edit> withTemperature = new ArrayList<>(edits);
    withTemperature.add(new Edit.Remove(fix.path().key("temperature")));
    return List.of(withTemperature, edits);
  }

  /**
   * Alkali for a paste that has none, weighed into its recipe; nothing where no recipe tells how
   * much: a word that it is there fixes no dye.
   */
  static List<Edit> alkali(Paste paste, String substance, Policy policy, Measures units) {
    Recipe recipe = new Recipe(paste, policy);
    return ForRecipe.of(
            recipe,
            s -> s.role() == Substance.Role.ALKALI,
            substance,
            policy.fixing().alkaliRecipeLeast().value(),
            policy.fixing().alkaliRecipeMost().value())
        .flatMap(weighed -> weighed.edits(units).stream().findFirst())
        .orElseGet(List::of);
  }

  /** What a pot steamer may take for the slowest group. */
  static Span lasts(FixingRun work, List<Paste> dyes) {
    double pot = work.policy().fixing().potSteamerTimes().value();
    return new Span(
        work.groups(dyes).stream()
            .mapToDouble(g -> g.shortestSteam().minutes() * pot)
            .max()
            .orElse(0));
  }
}

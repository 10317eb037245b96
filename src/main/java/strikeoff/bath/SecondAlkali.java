package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.paste.Recipe;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;

/**
 * Alkali that a soak or a brush brings to pastes that hold their own.
 *
 * @param step number of the fix step
 * @param pastes those that hold alkali
 * @param brings the bath that adds alkali
 * @param instead what can be done without that bath
 * @param withoutOwn how the pastes are mixed without alkali: one way, or none
 * @param path of the bath
 */
public record SecondAlkali(
    int step,
    List<String> pastes,
    Liquor brings,
    Instead instead,
    List<List<Edit>> withoutOwn,
    PlanPath path)
    implements Evidence {

  /** What can be done without the bath. */
  public enum Instead {
    LEAVE_STEP,
    LEAVE_SILICATE,
    STEAM
  }

  public SecondAlkali {
    pastes = List.copyOf(pastes);
    withoutOwn = List.copyOf(withoutOwn);
  }

  static List<Evidence> all(FixingRun work) {
    List<Evidence> facts = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix && fix.wets()) {
        Liquor liquor = Liquor.of(fix.bath(), work.policy());
        int phase = work.phase(fix.number());
        List<Paste> dyes =
            FixingRun.pastes(work.impressions(Medium.DYE, i -> work.phase(i.step()) == phase));
        List<Paste> own =
            dyes.stream().filter(p -> new Recipe(p, work.policy()).holdsAlkali()).toList();
        if (liquor.hasAlkali() && !own.isEmpty()) {
          facts.add(
              new SecondAlkali(
                  fix.number(),
                  FixingRun.names(own),
                  liquor,
                  instead(work, fix),
                  withoutOwn(work, own),
                  fix.path().key("bath")));
        }
      }
    }
    return facts;
  }

  private static List<List<Edit>> withoutOwn(FixingRun work, List<Paste> pastes) {
    List<Edit> edits = new ArrayList<>();
    for (Paste paste : pastes) {
      List<Edit> own = new Recipe(paste, work.policy()).withoutAlkali(work.units());
      if (own.isEmpty()) {
        return List.of();
      }
      edits.addAll(own);
    }
    return List.of(edits);
  }

  /** Without the bath something still has to fix the print. */
  private static Instead instead(FixingRun work, Step.Fix fix) {
    return work.followedBy(fix, s -> s instanceof Step.Fix)
        ? Instead.LEAVE_STEP
        : fix.brushed() ? Instead.LEAVE_SILICATE : Instead.STEAM;
  }
}

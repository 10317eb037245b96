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
import strikeoff.units.Concentration;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Range;
import strikeoff.units.Volume;

/**
 * Alkali that a soak or a brush brings to pastes that hold their own.
 *
 * @param step number of the fix step
 * @param pastes those that hold alkali
 * @param brings the other alkali, in words
 * @param mending what leaves one of the two, as an instruction without a full stop
 * @param withoutOwn how the pastes are mixed without alkali: one way, or none
 * @param path of the bath
 */
public record SecondAlkali(
    int step,
    List<String> pastes,
    String brings,
    String mending,
    List<List<Edit>> withoutOwn,
    PlanPath path)
    implements Evidence {

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
                  brings(liquor, work.units()),
                  mending(work, fix),
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
  private static String mending(FixingRun work, Step.Fix fix) {
    boolean fixedLater = work.followedBy(fix, s -> s instanceof Step.Fix);
    return (fixedLater
            ? "Leave step " + fix.number() + " out"
            : fix.brushed()
                ? "Leave the silicate out"
                : "Put a step `fix: steam` in the place of step " + fix.number())
        + ", or mix the paste without alkali";
  }

  private static String brings(Liquor liquor, Measures units) {
    if (liquor.silicateLitres().high() > 0) {
      return new Volume(liquor.silicateLitres().best()).text(units) + " of sodium silicate";
    }
    Range soda = liquor.sodaGramsPerLitre();
    return soda.high() > 0
        ? new Concentration(soda.best()).text(units) + " of soda ash"
        : new Mass(liquor.bicarbonateGrams().best()).text(units) + " of baking soda";
  }
}

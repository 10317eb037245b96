package strikeoff.care;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import strikeoff.bath.Fixing;
import strikeoff.bath.Soak;
import strikeoff.paste.Recipe;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Protection;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;

/**
 * What can hurt in the run.
 *
 * @param cautions in the order of the run
 * @param evidence the same by hazard, for rules
 */
public record Care(List<Caution> cautions, List<Evidence> evidence) {

  public Care {
    cautions = List.copyOf(cautions);
    evidence = List.copyOf(evidence);
  }

  public static Care of(PrintPlan plan, Fixing fixing, Policy policy) {
    List<Caution> cautions = new ArrayList<>();
    for (Step step : plan.run()) {
      cautions.addAll(cautions(step, plan, fixing, policy));
    }
    return new Care(cautions, exposures(cautions));
  }

  private static List<Caution> cautions(Step step, PrintPlan plan, Fixing fixing, Policy policy) {
    List<Caution> cautions = new ArrayList<>();
    if (step instanceof Step.Mix mix) {
      List<Paste> pastes = mix.pastes().stream().map(plan.pastes()::get).toList();
      if (pastes.stream().anyMatch(p -> weighsDye(p, policy))) {
        cautions.add(caution(Hazard.DYE_POWDER, step, step.path(), plan, ""));
        cautions.add(caution(Hazard.VESSELS, step, step.path(), plan, ""));
      }
      if (pastes.stream().anyMatch(p -> new Recipe(p, policy).holdsAlkali())) {
        cautions.add(caution(Hazard.ALKALI, step, step.path(), plan, ""));
      }
    } else if (step instanceof Step.Fix fix) {
      fixing.soaks().stream()
          .filter(soak -> soak.step() == fix.number() && soak.hasAlkali())
          .findFirst()
          .ifPresent(
              soak -> {
                cautions.add(caution(Hazard.ALKALI, step, soak.path(), plan, amounts(soak)));
                cautions.add(caution(Hazard.DRAIN, step, soak.path(), plan, drained(soak)));
              });
      if (fix.how() == Step.Fixing.STEAM) {
        cautions.add(
            caution(Hazard.STEAM, step, step.path(), plan, "steam at " + fix.temperature().text()));
      }
    } else if (step instanceof Step.HeatSet heat) {
      cautions.add(
          caution(
              Hazard.HOT_IRON,
              step,
              step.path(),
              plan,
              heat.with().text() + " at " + heat.temperature().text()));
    }
    return cautions;
  }

  /** A dye paste is weighed from powder unless its recipe says that it holds no dye. */
  private static boolean weighsDye(Paste paste, Policy policy) {
    return paste.medium() == Medium.DYE
        && (paste.recipe().isEmpty()
            || paste.recipe().stream()
                .anyMatch(part -> policy.substance(part.substance()).role() == Substance.Role.DYE));
  }

  private static String amounts(Soak soak) {
    return soak.sodaGrams().high() > 0
        ? new Mass(soak.sodaGrams().best()).text() + " of soda ash"
        : "";
  }

  private static String drained(Soak soak) {
    return "pH " + soak.acidity() + " at " + soak.temperature().text();
  }

  private static Caution caution(
      Hazard hazard, Step step, PlanPath path, PrintPlan plan, String figures) {
    List<Protection> missing =
        hazard.needed().stream().filter(p -> !plan.protection().contains(p)).toList();
    return new Caution(
        hazard, step.number(), step.title(), hazard.needed(), missing, figures, path);
  }

  /** One for each hazard, since one missing mask is one fault however many steps need it. */
  private static List<Evidence> exposures(List<Caution> cautions) {
    Map<Hazard, List<Caution>> byHazard = new EnumMap<>(Hazard.class);
    cautions.forEach(c -> byHazard.computeIfAbsent(c.hazard(), h -> new ArrayList<>()).add(c));
    List<Evidence> exposures = new ArrayList<>();
    byHazard.forEach(
        (hazard, all) ->
            exposures.add(
                new Exposure(
                    hazard,
                    all.stream().map(Caution::where).distinct().toList(),
                    all.get(0).missing(),
                    all.stream()
                        .skip(1)
                        .map(c -> new Evidence.Related("here too", c.path()))
                        .toList(),
                    all.get(0).path())));
    return exposures;
  }
}

package strikeoff.facts;

import java.util.ArrayList;
import java.util.List;
import strikeoff.bath.FixTemperature;
import strikeoff.evidence.Basis;
import strikeoff.layout.Shrinkage;
import strikeoff.plan.PrintPlan;

/** Which models a plan's figures rest on: only those that gave a figure of it. */
public final class Bases {

  private Bases() {}

  public static List<Basis> of(PrintPlan plan, Facts facts) {
    List<Basis> bases = new ArrayList<>();
    if (!facts.timeline().impressions().isEmpty()) {
      bases.add(Basis.DRYING);
    }
    if (facts.pastes().uses().stream().anyMatch(use -> !use.measured())) {
      bases.add(Basis.DEPOSIT);
    }
    if (!facts.pastes().ages().isEmpty()) {
      bases.add(Basis.PASTE_LIFE);
    }
    if (facts.fixing().soaks().stream().anyMatch(soak -> soak.hasAlkali())) {
      bases.add(Basis.PH);
      bases.add(Basis.DISSOLVING);
    }
    if (facts.fixing().evidence().stream().anyMatch(FixTemperature.class::isInstance)) {
      bases.add(Basis.FIXING_TIME);
    }
    if (facts.fibres().take().isPresent() && plan.cloth().fibres().size() > 1) {
      bases.add(Basis.BLEND);
    }
    if (facts.evidence().stream().anyMatch(Shrinkage.class::isInstance)) {
      bases.add(Basis.FINISHED_SIZE);
    }
    if (!plan.pastes().isEmpty()) {
      bases.add(Basis.COLOURS);
    }
    return List.copyOf(bases);
  }
}

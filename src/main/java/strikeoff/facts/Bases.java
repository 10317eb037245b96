package strikeoff.facts;

import java.util.ArrayList;
import java.util.List;
import strikeoff.bath.FixTemperature;
import strikeoff.bath.Fixing;
import strikeoff.cloth.Fibres;
import strikeoff.colour.Swatches;
import strikeoff.drying.Drying;
import strikeoff.evidence.Basis;
import strikeoff.layout.Shrinkage;
import strikeoff.paste.Pastes;
import strikeoff.plan.PrintPlan;
import strikeoff.screens.Mesh;

/** Which models a plan's figures rest on: only those that gave a figure of it. */
public final class Bases {

  private Bases() {}

  public static List<Basis> of(PrintPlan plan, Facts facts) {
    List<Basis> bases = new ArrayList<>();
    if (!facts.timeline().impressions().isEmpty()) {
      bases.add(Drying.basis(facts.policy()));
    }
    if (facts.pastes().uses().stream().anyMatch(use -> !use.measured())) {
      bases.add(Mesh.basis(facts.policy()));
    }
    if (!facts.pastes().ages().isEmpty()) {
      bases.add(Pastes.lifeBasis(facts.policy()));
    }
    if (facts.fixing().soaks().stream().anyMatch(soak -> soak.hasAlkali())) {
      bases.add(Fixing.PH);
      bases.add(Fixing.DISSOLVING);
    }
    if (facts.fixing().evidence().stream().anyMatch(FixTemperature.class::isInstance)) {
      bases.add(Fixing.timeBasis(facts.policy()));
    }
    if (facts.fibres().take().isPresent() && plan.cloth().fibres().size() > 1) {
      bases.add(Fibres.BASIS);
    }
    if (facts.evidence().stream().anyMatch(Shrinkage.class::isInstance)) {
      bases.add(Shrinkage.BASIS);
    }
    if (!plan.pastes().isEmpty()) {
      bases.add(Swatches.BASIS);
    }
    return List.copyOf(bases);
  }
}

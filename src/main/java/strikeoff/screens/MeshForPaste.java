package strikeoff.screens;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Cloth;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;

/**
 * What goes through a screen.
 *
 * @param finestHolds the finest detail that the finest mesh for such paste holds
 * @param pastes that go through it, with that medium
 * @param deposit what a pull of the first of them lays down
 */
public record MeshForPaste(
    String screen,
    MeshCount count,
    Medium medium,
    Length finestHolds,
    List<String> pastes,
    Deposit deposit,
    PlanPath path)
    implements Evidence {

  public MeshForPaste {
    pastes = List.copyOf(pastes);
  }

  static MeshForPaste of(Screen screen, List<Paste> pastes, Cloth cloth, Policy policy) {
    Paste first = pastes.get(0);
    return new MeshForPaste(
        screen.name(),
        screen.mesh().told(),
        first.medium(),
        DetailOnMesh.finestHolds(policy),
        pastes.stream().map(Paste::name).distinct().toList(),
        Deposit.of(screen, first, cloth, policy),
        screen.path().key("mesh"));
  }
}

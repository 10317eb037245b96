package strikeoff.screens;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Design;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;

/**
 * What the screens of a plan can print.
 *
 * @param evidence facts for rules, screens first, then separations, then blades, threads and
 *     screens with several images, each in the plan's order
 */
public record Screens(List<Evidence> evidence) {

  public Screens {
    evidence = List.copyOf(evidence);
  }

  public static Screens of(PrintPlan plan, Policy policy) {
    List<Evidence> facts = new ArrayList<>();
    Map<String, Map<Medium, List<Paste>>> pastes = pastesByScreen(plan);
    for (Screen screen : plan.screens().values()) {
      facts.add(FrameMargin.of(screen, policy));
      SqueegeeFit.of(screen, policy).ifPresent(facts::add);
      facts.add(MeshRead.of(screen, policy));
      facts.add(MeshWeave.of(screen, policy));
      pastes
          .getOrDefault(screen.name(), Map.of())
          .values()
          .forEach(own -> facts.add(MeshForPaste.of(screen, own, plan.cloth(), policy)));
    }
    UsualMeshes usual = new UsualMeshes(policy);
    for (Design design : plan.designs().values()) {
      for (Design.Separation separation : design.separations()) {
        Screen screen = plan.screens().get(separation.screen());
        facts.add(SeparationOnScreen.of(design, separation, screen));
        facts.add(PullsRead.of(design, separation, policy));
        DetailOnMesh.of(design, separation, screen, usual, policy).ifPresent(facts::add);
        FineOnMesh.of(design, separation, screen, policy).ifPresent(facts::add);
        HalftoneOnMesh.of(design, separation, screen, policy).ifPresent(facts::add);
      }
    }
    facts.addAll(BladeReach.all(plan, policy));
    facts.addAll(ThreadLeftOut.of(plan, policy));
    facts.addAll(StencilImages.of(plan));
    return new Screens(facts);
  }

  private static Map<String, Map<Medium, List<Paste>>> pastesByScreen(PrintPlan plan) {
    Map<String, Map<Medium, List<Paste>>> pastes = new LinkedHashMap<>();
    for (Design design : plan.designs().values()) {
      for (Design.Separation separation : design.separations()) {
        Paste paste = plan.pastes().get(separation.paste());
        pastes
            .computeIfAbsent(separation.screen(), s -> new LinkedHashMap<>())
            .computeIfAbsent(paste.medium(), m -> new ArrayList<>())
            .add(paste);
      }
    }
    return pastes;
  }
}

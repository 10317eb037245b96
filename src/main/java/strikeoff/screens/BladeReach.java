package strikeoff.screens;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * A blade of one length and the screens whose image it covers, though with its ends close to it or
 * so that it may run off, in frames that have room for a longer one.
 *
 * @param fits those screens, in the plan's order
 * @param overlap how far it reaches beyond the image on each side, where that is least
 * @param off beyond the image on each side, up to which it may run off it
 * @param related the screens after the first
 * @param path of the first one's squeegee
 */
public record BladeReach(
    Length squeegee,
    List<SqueegeeFit> fits,
    Length overlap,
    Limit off,
    List<Evidence.Related> related,
    PlanPath path)
    implements Evidence {

  public BladeReach {
    fits = List.copyOf(fits);
    related = List.copyOf(related);
  }

  static List<BladeReach> all(PrintPlan plan, Policy policy) {
    double ends = policy.screens().squeegeeEnds().mm();
    Limit off = policy.screens().squeegeeRunsOff();
    double advised = policy.screens().squeegeeOverlap().mm();
    Map<String, List<SqueegeeFit>> byBlade = new LinkedHashMap<>();
    for (Screen screen : plan.screens().values()) {
      Optional<SqueegeeFit> fit = SqueegeeFit.of(screen, policy);
      boolean roomy = !FrameMargin.of(screen, policy).side().below(advised);
      if (roomy && fit.map(f -> !f.overlap().below(0) && f.overlap().below(ends)).orElse(false)) {
        String blade =
            fit.get().squeegee().text(Measures.METRIC) + fit.get().overlap().below(off.amount());
        byBlade.computeIfAbsent(blade, n -> new ArrayList<>()).add(fit.get());
      }
    }
    return byBlade.values().stream().map(fits -> of(fits, off)).toList();
  }

  private static BladeReach of(List<SqueegeeFit> fits, Limit off) {
    SqueegeeFit first = fits.get(0);
    return new BladeReach(
        first.squeegee(),
        fits,
        fits.stream().map(SqueegeeFit::overlap).min(Length::compareTo).orElseThrow(),
        off,
        fits.stream().skip(1).map(f -> new Evidence.Related(f.screen(), f.path())).toList(),
        first.path());
  }

  public List<String> screens() {
    return fits.stream().map(SqueegeeFit::screen).toList();
  }
}

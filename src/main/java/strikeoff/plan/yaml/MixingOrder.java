package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/**
 * In which order {@code mix: all} mixes: first what is printed with first, so that nobody waits for
 * a paste behind one that is needed later, and none stands longer than it need. The order in which
 * a plan lists its pastes says nothing.
 */
final class MixingOrder {

  private final Map<String, Design> designs;
  private final Map<String, Arrangement> placements;

  MixingOrder(Map<String, Design> designs, Map<String, Arrangement> placements) {
    this.designs = designs;
    this.placements = placements;
  }

  /**
   * @param all numbers of the steps that mix all
   */
  List<Step> of(List<Step> run, Set<Integer> all) {
    List<Step> ordered = new ArrayList<>(run);
    ordered.replaceAll(
        step ->
            step instanceof Step.Mix mix && all.contains(mix.number()) ? ordered(mix, run) : step);
    return ordered;
  }

  /** Those that are not printed with afterwards come last, as the plan lists them. */
  private Step ordered(Step.Mix mix, List<Step> run) {
    Map<String, Integer> firstUse = new HashMap<>();
    for (Step step : run) {
      if (step instanceof PrintStep print && print.number() > mix.number()) {
        pastes(print).forEach(paste -> firstUse.putIfAbsent(paste, firstUse.size()));
      }
    }
    List<String> pastes = new ArrayList<>(mix.pastes());
    pastes.sort(Comparator.comparingInt(paste -> firstUse.getOrDefault(paste, Integer.MAX_VALUE)));
    return new Step.Mix(mix.number(), pastes, mix.takes(), mix.by(), mix.begins(), mix.path());
  }

  /** In the order in which a step prints them. */
  private List<String> pastes(PrintStep print) {
    List<String> pastes = new ArrayList<>();
    for (String name : print.arrangements()) {
      Arrangement arrangement = placements.get(name);
      Design design = arrangement == null ? null : designs.get(arrangement.design());
      if (design != null) {
        List<Design.Separation> own = design.separations();
        if (print.separations().isEmpty()) {
          own.forEach(separation -> pastes.add(separation.paste()));
        } else {
          print.separations().stream()
              .filter(number -> number >= 1 && number <= own.size())
              .forEach(number -> pastes.add(own.get(number - 1).paste()));
        }
      }
    }
    return pastes;
  }
}

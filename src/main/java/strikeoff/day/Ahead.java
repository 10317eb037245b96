package strikeoff.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Passes.Pass;
import strikeoff.day.Sets.PrintSet;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/** The sets that are printed next, up to where the plan itself takes the cloth up or moves it. */
final class Ahead {

  private final List<Step> run;
  private final PrintRun sets;
  private final Map<Integer, List<PrintSet>> known = new HashMap<>();
  private final Map<Integer, Map<List<Integer>, Integer>> places = new HashMap<>();

  Ahead(PrintPlan plan, PrintRun sets) {
    this.run = plan.run();
    this.sets = sets;
  }

  /** From a set of a step on. */
  List<PrintSet> from(PrintStep step, PrintSet set) {
    List<PrintSet> own = of(step);
    int at =
        places.computeIfAbsent(step.number(), n -> places(own)).getOrDefault(key(set), own.size());
    List<PrintSet> next = new ArrayList<>(List.of(set));
    next.addAll(
        own.subList(Math.min(at + 1, own.size()), Math.min(at + Effort.SETS_AHEAD, own.size())));
    addAfter(step, next);
    return next;
  }

  /** After a step that prints nothing. */
  List<PrintSet> after(Step step) {
    List<PrintSet> next = new ArrayList<>();
    addAfter(step, next);
    return next;
  }

  private void addAfter(Step step, List<PrintSet> next) {
    for (int i = step.number(); i < run.size() && next.size() < Effort.SETS_AHEAD; i++) {
      if (run.get(i) instanceof PrintStep print) {
        next.addAll(of(print));
      } else if (!staysOn(run.get(i))) {
        return;
      }
    }
  }

  /** True of steps beside which the cloth goes on lying where it does. */
  private static boolean staysOn(Step step) {
    return step instanceof Step.Mix
        || step instanceof Step.Dry
        || step instanceof Step.WashScreen
        || step instanceof Step.EndOfDay;
  }

  private List<PrintSet> of(PrintStep step) {
    return known.computeIfAbsent(
        step.number(), n -> sets.passes(step).stream().map(Pass::set).toList());
  }

  /** Where each set first stands, so that a step of many is not gone through for each. */
  private static Map<List<Integer>, Integer> places(List<PrintSet> own) {
    Map<List<Integer>, Integer> places = new HashMap<>();
    for (int i = 0; i < own.size(); i++) {
      places.putIfAbsent(key(own.get(i)), i);
    }
    return places;
  }

  private static List<Integer> key(PrintSet set) {
    return List.of(set.number(), set.motifs().get(0).placement().id());
  }
}

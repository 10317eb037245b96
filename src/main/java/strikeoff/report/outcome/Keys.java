package strikeoff.report.outcome;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.document.PlanPath;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Measures;

/**
 * Names the places of one plan so that the name stays when lines move: a step of the run goes by
 * what it does, a separation by its screen. Counts how often a name comes, so that each is told
 * apart from its like.
 */
final class Keys {

  private static final Pattern IN_RUN = Pattern.compile("run\\[\\d+]");
  private static final Pattern IN_DESIGN = Pattern.compile("(designs\\..*\\.separations)\\[\\d+]");

  private final Map<String, String> names = new HashMap<>();
  private final Map<String, Integer> taken = new HashMap<>();

  Keys(PrintPlan plan) {
    Map<String, Integer> steps = new HashMap<>();
    for (Step step : plan.run()) {
      String title = lasting(step);
      int nth = steps.merge(title, 1, Integer::sum);
      name(step.path(), "run[" + title + (nth == 1 ? "" : " " + nth) + "]");
    }
    for (Design design : plan.designs().values()) {
      Map<String, Integer> screens = new HashMap<>();
      for (Design.Separation separation : design.separations()) {
        int nth = screens.merge(separation.screen(), 1, Integer::sum);
        String list = design.path().text() + ".separations";
        name(
            separation.path(),
            list + "[" + separation.screen() + (nth == 1 ? "]" : " " + nth + "]"));
      }
    }
  }

  /** What a step does, without the figures that a printer changes to mend it. */
  private static String lasting(Step step) {
    if (step instanceof Step.Mix
        || step instanceof PrintStep
        || step instanceof Step.Sew
        || step instanceof Step.WashScreen) {
      // Those of these steps have no figures.
      return StepSpeech.title(step, Measures.METRIC);
    }
    if (step instanceof Step.Dry) {
      return "dry";
    }
    if (step instanceof Step.Move) {
      return "move on";
    }
    if (step instanceof Step.Fix) {
      return "fix";
    }
    if (step instanceof Step.Rinse) {
      return "rinse";
    }
    if (step instanceof Step.Wash) {
      return "wash";
    }
    return step instanceof Step.HeatSet ? "heat-set" : "end of day";
  }

  /** Steps may be made from one place several times; the first one names it. */
  private void name(PlanPath path, String name) {
    names.putIfAbsent(path.text(), name);
  }

  /** A key that no finding of the plan has yet. */
  String next(String rule, PlanPath path) {
    String key = rule + " at " + lasting(path.text());
    int nth = taken.merge(key, 1, Integer::sum);
    return nth == 1 ? key : key + " (" + nth + ")";
  }

  private String lasting(String path) {
    for (Pattern list : java.util.List.of(IN_RUN, IN_DESIGN)) {
      Matcher matcher = list.matcher(path);
      if (matcher.lookingAt() && names.containsKey(matcher.group())) {
        return names.get(matcher.group()) + path.substring(matcher.end());
      }
    }
    return path.isEmpty() ? "the plan" : path;
  }
}

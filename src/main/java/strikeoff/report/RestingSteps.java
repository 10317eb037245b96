package strikeoff.report;

import java.util.List;
import java.util.Map;
import strikeoff.check.Checked;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.report.page.DaySheet.Job;
import strikeoff.report.page.DaySheet.Where;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;

/**
 * Steps that take no time, such as a wait that is over by then. They stand on the day sheets like
 * all others: whoever counts along would look for what happened to them.
 */
final class RestingSteps {

  private final List<Step> run;
  private final Map<Integer, List<Job>> days;
  private final Measures units;

  private RestingSteps(PrintPlan plan, Map<Integer, List<Job>> days) {
    this.run = plan.run();
    this.units = plan.measures();
    this.days = days;
  }

  /**
   * @param days the jobs of each day, numbered; they are added to
   */
  static void addTo(Map<Integer, List<Job>> days, Checked.Judged judged) {
    RestingSteps steps = new RestingSteps(judged.plan(), days);
    for (Step step : steps.run) {
      if (!steps.isDone(step.number())) {
        steps.add(step);
      }
    }
  }

  /** Behind what was done before it or, where a day has ended since, before what comes after it. */
  private void add(Step step) {
    Job job =
        new Job(
            Integer.toString(step.number()),
            Phrase.capital(StepSpeech.title(step, units)),
            Where.NOWHERE,
            List.of(),
            why(step));
    boolean sameDay = step instanceof Step.EndOfDay || !dayEndedBefore(step);
    List<Job> of = null;
    int at = 0;
    for (List<Job> jobs : days.values()) {
      for (int i = 0; i < jobs.size(); i++) {
        int number = jobs.get(i).step();
        if (jobs.get(i).isAhead()) {
          continue;
        }
        if (sameDay && number < step.number()) {
          of = jobs;
          at = i + 1;
        } else if (!sameDay && number > step.number() && of == null) {
          of = jobs;
          at = i;
        }
      }
    }
    if (of != null) {
      of.add(at, job);
    }
  }

  private boolean isDone(int number) {
    return days.values().stream()
        .flatMap(List::stream)
        .anyMatch(job -> !job.isAhead() && job.step() == number);
  }

  private boolean dayEndedBefore(Step step) {
    for (int n = step.number() - 1; n > 0; n--) {
      if (run.get(n - 1) instanceof Step.EndOfDay) {
        return true;
      }
      if (isDone(n)) {
        return false;
      }
    }
    return false;
  }

  private static String why(Step step) {
    return step instanceof Step.EndOfDay
        ? ""
        : step instanceof Step.Dry ? "No wait: by then this is over." : "Nothing is left to do.";
  }
}

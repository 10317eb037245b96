package strikeoff.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strikeoff.check.Checked;
import strikeoff.report.page.DaySheet.Job;

/**
 * Numbers the jobs of all days as findings count: by the plan's steps. Where a step makes several
 * jobs they are 3.1, 3.2, 3.3, through all days.
 */
final class StepNumbers {

  private StepNumbers() {}

  /** The jobs of each day. */
  static Map<Integer, List<Job>> of(Checked.Judged judged, Map<Integer, List<WorkBlock>> byDay) {
    Map<Integer, List<Job>> days = new TreeMap<>();
    Map<String, Integer> ofStep = new HashMap<>();
    byDay.forEach((day, blocks) -> days.put(day, DayJobs.of(judged, day, blocks)));
    days.values().stream()
        .flatMap(List::stream)
        .filter(job -> !job.isAhead())
        .forEach(job -> ofStep.merge(job.number(), 1, Integer::sum));
    Map<String, Integer> used = new HashMap<>();
    Map<Integer, List<Job>> numbered = new TreeMap<>();
    days.forEach(
        (day, jobs) -> {
          List<Job> own = new ArrayList<>();
          for (Job job : jobs) {
            boolean several =
                !job.number().isEmpty() && !job.isAhead() && ofStep.get(job.number()) > 1;
            own.add(
                several
                    ? job.numbered(job.number() + "." + used.merge(job.number(), 1, Integer::sum))
                    : job);
          }
          numbered.put(day, own);
        });
    return numbered;
  }
}

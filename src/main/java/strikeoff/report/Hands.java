package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strikeoff.day.Impression;
import strikeoff.day.Task;
import strikeoff.report.drawing.FittedWords;

/**
 * Says who does a block of work.
 *
 * @param alone true if there is one person only, of whom nothing is said
 */
record Hands(boolean alone) {

  /** Who does it, where there are several to choose from; two at one frame with "and" between. */
  String of(WorkBlock work) {
    return alone
        ? ""
        : String.join(", ", work.tasks().stream().map(Hands::each).distinct().toList());
  }

  private static String each(Task task) {
    return task.people().stream().map(DayJobs::name).collect(Collectors.joining(" and "));
  }

  /** Who prints; of several each with the numbers of what she prints, in the order of printing. */
  String printing(WorkBlock work) {
    Map<String, List<Impression>> all = new LinkedHashMap<>();
    for (int i = 0; i < work.tasks().size(); i++) {
      all.computeIfAbsent(each(work.tasks().get(i)), who -> new ArrayList<>())
          .add(work.impressions().get(i));
    }
    return alone || all.size() == 1
        ? of(work)
        : all.entrySet().stream()
            .map(
                one ->
                    one.getKey()
                        + " "
                        + FittedWords.shortened(WorkWords.numbers(one.getValue()), 150))
            .collect(Collectors.joining("; "));
  }
}

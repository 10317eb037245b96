package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.speech.DaySpeech;
import strikeoff.units.Measures;

/** Joins tasks that belong together and follow each other within a minute into one bar. */
final class Bars {

  private static final double GAP = 1;

  private Bars() {}

  record Bar(Moment from, Moment to, Task.Kind kind, int step, String words) {}

  static List<Bar> merged(List<Task> tasks, Measures units) {
    List<Bar> bars = new ArrayList<>();
    for (Task task : tasks) {
      Bar last = bars.isEmpty() ? null : bars.get(bars.size() - 1);
      if (last != null
          && last.kind() == task.kind()
          && last.step() == task.step()
          && task.start().since(last.to()).minutes() <= GAP) {
        String words =
            task.kind() == Task.Kind.PRINT
                ? last.words()
                : join(last.words(), DaySpeech.text(task.doing(), units));
        bars.set(
            bars.size() - 1,
            new Bar(last.from(), last.to().later(task.end()), last.kind(), last.step(), words));
      } else {
        bars.add(
            new Bar(
                task.start(),
                task.end(),
                task.kind(),
                task.step(),
                task.kind() == Task.Kind.PRINT ? "print" : DaySpeech.text(task.doing(), units)));
      }
    }
    return bars;
  }

  private static String join(String before, String next) {
    return before.contains(next) || before.length() > 60 ? before : before + ", " + next;
  }
}

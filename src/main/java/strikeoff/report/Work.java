package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Task;
import strikeoff.timeline.Timeline;

/**
 * A block of work that people think of as one: all impressions of one colour over a set, or the
 * tasks of one kind of a step that follow each other.
 *
 * @param impressions in order of laying; empty for work that prints nothing
 */
record Work(List<Task> tasks, List<Impression> impressions) {

  Work {
    tasks = List.copyOf(tasks);
    impressions = List.copyOf(impressions);
  }

  Task first() {
    return tasks.get(0);
  }

  Task.Kind kind() {
    return first().kind();
  }

  Moment start() {
    return first().start();
  }

  Moment end() {
    return tasks.stream().map(Task::end).max(Moment::compareTo).orElseThrow();
  }

  /** The run's blocks in order, closed hours left out. */
  static List<Work> of(Timeline run) {
    List<Work> blocks = new ArrayList<>();
    List<Task> open = new ArrayList<>();
    for (Task task : run.tasks()) {
      if (task.kind() == Task.Kind.CLOSED) {
        continue;
      }
      if (!open.isEmpty() && !belongsWith(open.get(0), task, run)) {
        blocks.add(block(open, run));
        open.clear();
      }
      open.add(task);
    }
    if (!open.isEmpty()) {
      blocks.add(block(open, run));
    }
    return blocks;
  }

  private static Work block(List<Task> tasks, Timeline run) {
    return new Work(
        tasks,
        tasks.stream()
            .filter(t -> t.impression().isPresent())
            .map(t -> run.impressions().get(t.impression().getAsInt()))
            .toList());
  }

  private static boolean belongsWith(Task first, Task next, Timeline run) {
    if (first.kind() != next.kind()
        || first.step() != next.step()
        || first.start().day() != next.start().day()
        || !first.set().equals(next.set())) {
      return false;
    }
    if (first.kind() != Task.Kind.PRINT) {
      return true;
    }
    return Objects.equals(colour(first, run), colour(next, run));
  }

  private static Object colour(Task task, Timeline run) {
    if (task.impression().isEmpty()) {
      return task.screen();
    }
    Impression impression = run.impressions().get(task.impression().getAsInt());
    return List.of(
        impression.footprint().placement().arrangement(),
        impression.footprint().separation().number());
  }
}

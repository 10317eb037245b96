package strikeoff.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import strikeoff.day.Doing;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.speech.DaySpeech;
import strikeoff.units.Measures;

/**
 * A block of work that people think of as one: all impressions of one colour over a set, or tasks
 * of one kind and words that follow each other.
 *
 * @param impressions in order of laying; empty for work that prints nothing
 */
record WorkBlock(List<Task> tasks, List<Impression> impressions) {

  /** What a day sheet tells by the times of the work around it. */
  private static final Set<Task.Kind> APART = EnumSet.of(Task.Kind.CLOSED, Task.Kind.QUEUE);

  WorkBlock {
    tasks = List.copyOf(tasks);
    impressions = List.copyOf(impressions);
  }

  Task first() {
    return tasks.get(0);
  }

  Task.Kind kind() {
    return first().kind();
  }

  boolean prints() {
    return !impressions.isEmpty();
  }

  Moment start() {
    return first().start();
  }

  Moment end() {
    return tasks.stream().map(Task::end).max(Moment::compareTo).orElseThrow();
  }

  /** The pause after each print, which the print's own line tells. */
  boolean isPause() {
    return kind() == Task.Kind.WAIT && first().doing() == Doing.Wait.PAUSE;
  }

  boolean sameSet(WorkBlock other) {
    return first().step() == other.first().step() && first().set().equals(other.first().set());
  }

  /** Those of its tasks that are so; nothing if none is. */
  Optional<WorkBlock> of(Predicate<Task> wanted, Timeline run) {
    List<Task> own = tasks.stream().filter(wanted).toList();
    return own.isEmpty() ? Optional.empty() : Optional.of(block(own, run));
  }

  /** The run's blocks in order of start; closed hours and queues are left out. */
  static List<WorkBlock> of(Timeline run) {
    List<List<Task>> blocks = new ArrayList<>();
    for (Task task : run.tasks()) {
      if (APART.contains(task.kind()) || task.end().compareTo(task.start()) == 0) {
        continue;
      }
      Optional<List<Task>> open = open(blocks, task, run);
      if (open.isPresent()) {
        open.get().add(task);
      } else {
        blocks.add(new ArrayList<>(List.of(task)));
      }
    }
    return blocks.stream().map(tasks -> block(tasks, run)).toList();
  }

  /**
   * The block that the task carries on: for prints the latest print, unless everybody has stood and
   * waited since, else the latest of all.
   */
  private static Optional<List<Task>> open(List<List<Task>> blocks, Task next, Timeline run) {
    for (int i = blocks.size() - 1; i >= 0; i--) {
      Task first = blocks.get(i).get(0);
      if (next.kind() == Task.Kind.PRINT && parts(first, next)) {
        return Optional.empty();
      }
      // Others may print beside, in a step of their own, or another colour in the same one.
      boolean beside =
          first.kind() != Task.Kind.PRINT
              || first.step() != next.step()
              || !first.person().equals(next.person()) && !belongsWith(first, next, run);
      if (next.kind() == Task.Kind.PRINT && beside) {
        continue;
      }
      return belongsWith(first, next, run) ? Optional.of(blocks.get(i)) : Optional.empty();
    }
    return Optional.empty();
  }

  /**
   * A wait parts what is printed before it from what is printed after; a pause is of every print.
   */
  private static boolean parts(Task earlier, Task next) {
    return earlier.kind() == Task.Kind.WAIT
        && earlier.step() == next.step()
        && earlier.doing() != Doing.Wait.PAUSE;
  }

  private static boolean belongsWith(Task first, Task next, Timeline run) {
    return first.kind() == next.kind()
        && first.step() == next.step()
        && first.set().equals(next.set())
        && first.start().day() == next.start().day()
        && (first.kind() == Task.Kind.PRINT
            ? colour(first, run).equals(colour(next, run))
            : DaySpeech.text(first.doing(), Measures.METRIC)
                .equals(DaySpeech.text(next.doing(), Measures.METRIC)));
  }

  private static WorkBlock block(List<Task> tasks, Timeline run) {
    return new WorkBlock(
        tasks,
        tasks.stream()
            .filter(t -> t.impression().isPresent())
            .map(t -> run.impressions().get(t.impression().getAsInt()))
            .toList());
  }

  private static List<Object> colour(Task task, Timeline run) {
    if (task.impression().isEmpty()) {
      return List.of(task.screen());
    }
    Impression impression = run.impressions().get(task.impression().getAsInt());
    return List.of(
        impression.footprint().placement().arrangement(),
        impression.footprint().separation().number());
  }
}

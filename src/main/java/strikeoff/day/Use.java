package strikeoff.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.document.GivenUp;
import strikeoff.plan.Hours;
import strikeoff.units.Span;

/**
 * What the time of a run goes into.
 *
 * @param handsOn time that people work, added up over people
 * @param waiting time inside opening hours in which the cloth waits and nobody works
 * @param waitedFor the same by what is waited for, in the order of first waiting; what somebody
 *     waits for standing in a queue counts though others work
 */
public record Use(Span handsOn, Span waiting, List<WaitedFor> waitedFor) {

  public Use {
    waitedFor = List.copyOf(waitedFor);
  }

  /** One cause of waiting, with all the time that it takes. */
  public record WaitedFor(Doing doing, Span span) {

    private WaitedFor and(WaitedFor other) {
      return new WaitedFor(doing, span.plus(other.span));
    }
  }

  /**
   * @param tasks in order of start
   */
  public static Use of(List<Task> tasks, Hours hours) {
    double handsOn = 0;
    List<long[]> busy = new ArrayList<>();
    for (Task task : tasks) {
      if (task.worked()) {
        handsOn += task.people().size() * task.end().since(task.start()).minutes();
        merge(busy, task.start().seconds(), task.end().seconds());
      }
    }
    Map<String, WaitedFor> byCause = new LinkedHashMap<>();
    double waiting = 0;
    int from = 0;
    long waited = Long.MIN_VALUE;
    for (Task task : tasks) {
      boolean queues = task.kind() == Task.Kind.QUEUE && task.person().isPresent();
      if (task.waits() || queues) {
        long start = task.start().seconds();
        long end = task.end().seconds();
        while (from < busy.size() && busy.get(from)[1] <= start) {
          from++;
        }
        double cause =
            (queues ? open(start, end, hours) : idle(start, end, busy, from, hours)) / 60.0;
        if (cause > 0) {
          byCause.merge(
              task.doing().key(), new WaitedFor(task.doing(), new Span(cause)), WaitedFor::and);
        }
        // Who queues while the cloth waits for something else is the same waiting, not more of it.
        waiting += idle(Math.max(start, waited), end, busy, from, hours) / 60.0;
        waited = Math.max(waited, end);
      }
    }
    return new Use(new Span(handsOn), new Span(waiting), List.copyOf(byCause.values()));
  }

  private static void merge(List<long[]> busy, long start, long end) {
    if (!busy.isEmpty() && start <= busy.get(busy.size() - 1)[1]) {
      long[] last = busy.get(busy.size() - 1);
      last[1] = Math.max(last[1], end);
    } else {
      busy.add(new long[] {start, end});
    }
  }

  /** Seconds of a wait inside opening hours in which nobody works. */
  private static long idle(long start, long end, List<long[]> busy, int from, Hours hours) {
    long at = start;
    long idle = 0;
    for (int i = from; i < busy.size() && busy.get(i)[0] < end; i++) {
      idle += open(at, Math.max(at, busy.get(i)[0]), hours);
      at = Math.max(at, busy.get(i)[1]);
    }
    return idle + open(at, Math.max(at, end), hours);
  }

  /** Seconds of a stretch that lie inside opening hours. */
  public static long open(long start, long end, Hours hours) {
    long inside = -new Breaks(hours).within(start, end);
    int first = new Moment(start).day();
    int last = new Moment(end).day();
    for (int day = first; day <= last; day++) {
      GivenUp.ifAsked();
      long opens = Moment.opens(day, hours).seconds();
      long closes = Moment.closes(day, hours).seconds();
      inside += Math.max(0, Math.min(end, closes) - Math.max(start, opens));
    }
    return inside;
  }
}

package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.day.Breaks;
import strikeoff.day.Doing;
import strikeoff.day.HeldUp;
import strikeoff.day.Moment;
import strikeoff.day.Reached;
import strikeoff.day.Resource;
import strikeoff.day.Task;
import strikeoff.units.Span;

/**
 * The chain of work and waits that decides when the run ends: each link begins when the one before
 * it lets go. Whatever is not in it can take longer without a later finish.
 *
 * @param links in the order of time, alike ones of a step taken together
 */
public record CriticalChain(List<Link> links) {

  private static final Set<Task.Kind> ENDS_NOTHING =
      EnumSet.of(Task.Kind.DRY_SCREEN, Task.Kind.QUEUE, Task.Kind.CLOSED);

  public CriticalChain {
    links = List.copyOf(links);
  }

  /**
   * Part of the chain.
   *
   * @param step its number; 0 for laying the cloth
   * @param doing what is done, or waited for
   * @param kind of work or wait
   * @param span how long altogether
   * @param times how often
   * @param after the piece of equipment that it waited for
   */
  public record Link(
      int step, Doing doing, Task.Kind kind, Span span, int times, Optional<Resource> after) {

    private Link and(Link other) {
      return new Link(step, doing, kind, span.plus(other.span), times + other.times, after);
    }
  }

  /**
   * Goes back from the last thing that people do or that the cloth waits for; a screen that dries
   * while everybody goes home holds nobody up.
   *
   * @param tasks in the order of booking
   */
  static CriticalChain of(List<Task> tasks, HeldUp heldUp, Breaks breaks) {
    int at = last(tasks);
    List<Link> chain = new ArrayList<>();
    boolean counts = true;
    Moment next = Reached.NEVER;
    while (at != HeldUp.NOBODY) {
      Task task = tasks.get(at);
      if (counts) {
        // A frame may be fetched while another is still being lifted.
        Moment until = task.end().compareTo(next) < 0 ? task.end() : next;
        chain.add(
            new Link(
                task.step(),
                doing(task),
                task.kind(),
                until.since(task.start()),
                1,
                heldUp.piece(at)));
      }
      int before = heldUp.by(at);
      counts = heldUp.tillTheEnd(at);
      if (before != HeldUp.NOBODY) {
        Moment from = counts ? tasks.get(before).end() : tasks.get(before).start();
        Span rest = Span.ofSeconds(breaks.within(from.seconds(), task.start().seconds()));
        chain.add(new Link(0, new Doing.Break(), Task.Kind.CLOSED, rest, 1, Optional.empty()));
        // Between the two lies what nobody stands idle for: others work on meanwhile.
        Span gap = new Span(task.start().since(from).minutes() - rest.minutes());
        chain.add(
            new Link(
                task.step(), Doing.Others.OTHER_WORK, Task.Kind.WAIT, gap, 1, Optional.empty()));
      }
      next = task.start();
      at = before;
    }
    Collections.reverse(chain);
    Map<List<Object>, Link> links = new LinkedHashMap<>();
    for (Link link : chain) {
      if (link.span().minutes() > 0) {
        links.merge(
            List.of(link.step(), link.kind(), link.doing().key(), link.after()), link, Link::and);
      }
    }
    return new CriticalChain(List.copyOf(links.values()));
  }

  /** What decides the finish most: the longest link that is no night. */
  public Optional<Link> longest() {
    return longest(EnumSet.of(Task.Kind.CLOSED));
  }

  /** What to shorten first: the chemistry of a bath or a batch takes as long as it takes. */
  public Optional<Link> toShorten() {
    return longest(EnumSet.of(Task.Kind.CLOSED, Task.Kind.FIX));
  }

  private Optional<Link> longest(Set<Task.Kind> but) {
    return links.stream()
        .filter(l -> !but.contains(l.kind()))
        .max(Comparator.comparing(Link::span));
  }

  private static int last(List<Task> tasks) {
    int last = HeldUp.NOBODY;
    for (int i = 0; i < tasks.size(); i++) {
      boolean counts = !ENDS_NOTHING.contains(tasks.get(i).kind());
      if (counts
          && (last == HeldUp.NOBODY || tasks.get(i).end().compareTo(tasks.get(last).end()) > 0)) {
        last = i;
      }
    }
    return last;
  }

  private static Doing doing(Task task) {
    return task.kind() == Task.Kind.PRINT
        ? new Doing.PrintingWith(task.screen().orElseThrow())
        : task.doing();
  }
}

package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.layout.Layout;
import strikeoff.plan.Handling;
import strikeoff.plan.Step;
import strikeoff.timeline.Sets.PrintSet;
import strikeoff.units.Length;
import strikeoff.units.Span;

/** Which stretch of cloth lies on the table, and when it was moved or taken up. */
final class OnTable {

  private static final String LOAD = "lay the cloth on the table";

  private final Workshop shop;
  private final Handling takes;
  private final double table;
  private final double begin;
  private final List<Taken> taken = new ArrayList<>();
  private Optional<Stretch> stretch = Optional.empty();
  private boolean loaded;

  OnTable(Workshop shop, Handling takes, Length table, Layout layout) {
    this.shop = shop;
    this.takes = takes;
    this.table = table.mm();
    this.begin = layout.begin();
  }

  List<Taken> taken() {
    return taken;
  }

  /** The cloth is laid before anything else is done. */
  void load() {
    shop.onCloth(null, Task.Kind.LOAD, LOAD, takes.load(), shop.person(Optional.empty()));
    loaded = true;
  }

  /** Takes the cloth off the table; without a person nobody stands by. */
  void takeUp(Step step, Task.Kind kind, Span lasts, Optional<String> person, int films) {
    long idleFrom = shop.clothFree();
    Task task =
        person.isPresent()
            ? shop.onCloth(step, kind, step.title(), lasts, person.get())
            : shop.clothAlone(step, kind, step.title(), Workshop.seconds(lasts));
    taken.add(new Taken(step, kind, task.start().seconds(), idleFrom, films));
    stretch = Optional.empty();
    loaded = false;
  }

  boolean empty() {
    return stretch.isEmpty();
  }

  boolean shows(PrintSet set) {
    return stretch.isPresent() && stretch.get().shows(set);
  }

  /** Brings the set on to the table: the first time the whole start of the cloth if that does. */
  void show(Step.Print step, PrintSet set, int films) {
    double from = set.from();
    if (stretch.isEmpty()) {
      Stretch first = new Stretch(begin, table);
      from = first.shows(set) ? begin : from;
    }
    show(step, from, takes.move(), shop.person(step.by()), films);
  }

  void show(Step step, double from, Span moving, String person, int films) {
    if (stretch.isEmpty()) {
      if (!loaded) {
        shop.onCloth(step, Task.Kind.LOAD, LOAD, takes.load(), person);
      }
      loaded = true;
    } else {
      long idleFrom = shop.clothFree();
      Task task = shop.onCloth(step, Task.Kind.MOVE, moveTo(from), moving, person);
      taken.add(new Taken(step, Task.Kind.MOVE, task.start().seconds(), idleFrom, films));
    }
    stretch = Optional.of(new Stretch(from, table));
  }

  /** A frame over the first motif may need table before the cloth's start; no cloth lies there. */
  private static String moveTo(double from) {
    return from < 0
        ? "move back, the start " + new Length(-from).text() + " in from the table's"
        : "move on to " + new Length(from).text();
  }

  /** The stretch of cloth that lies on the table. */
  private record Stretch(double from, double length) {
    boolean shows(PrintSet set) {
      return Math.abs(set.from() - from) <= Sets.ROUNDING
          || (set.from() >= from - Sets.ROUNDING && set.to() <= from + length + Sets.ROUNDING);
    }
  }

  /**
   * The cloth moved or left the table.
   *
   * @param idleFrom second from which it lay there with nothing done to it: a wait put in before
   *     begins then, and not when whoever takes the cloth up is free
   * @param filmsBefore how many impressions had been made
   */
  record Taken(Step step, Task.Kind kind, long second, long idleFrom, int filmsBefore) {}
}

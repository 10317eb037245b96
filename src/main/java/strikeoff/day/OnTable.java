package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Sets.PrintSet;
import strikeoff.layout.Layout;
import strikeoff.plan.Handling;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.units.Length;
import strikeoff.units.Span;

/** Which stretch of cloth lies on the table, and when it was moved or taken up. */
public final class OnTable {

  private static final Doing LOAD = new Doing.LayCloth();

  private final Workshop shop;
  private final Handling takes;
  private final Boards boards;
  private final Ahead ahead;
  private final double begin;
  private final List<Taken> taken = new ArrayList<>();
  private final List<ClothLies> places = new ArrayList<>();
  private Optional<Lay> lay = Optional.empty();
  private Optional<Task> loaded = Optional.empty();

  public OnTable(Workshop shop, Handling takes, Boards boards, Ahead ahead, Layout layout) {
    this.shop = shop;
    this.takes = takes;
    this.boards = boards;
    this.ahead = ahead;
    this.begin = layout.begin();
  }

  /** Where it lay, in order. */
  List<ClothLies> places() {
    return places;
  }

  List<Taken> taken() {
    return taken;
  }

  /** The cloth is laid before anything else is done. */
  void load() {
    loaded =
        Optional.of(
            shop.onCloth(null, Task.Kind.LOAD, LOAD, takes.load(), shop.person(Optional.empty())));
  }

  /** Takes the cloth off the table; without a person nobody stands by. */
  void takeUp(Step step, Task.Kind kind, Span lasts, Optional<String> person, int films) {
    long idleFrom = shop.clothFree();
    Task task =
        person.isPresent()
            ? shop.onCloth(step, kind, new Doing.OfStep(step), lasts, person.get())
            : shop.clothAlone(step, kind, new Doing.OfStep(step), Workshop.seconds(lasts));
    taken.add(new Taken(step, kind, task.start().seconds(), idleFrom, films));
    lay = Optional.empty();
    loaded = Optional.empty();
  }

  boolean empty() {
    return lay.isEmpty();
  }

  boolean shows(PrintSet set) {
    return lay.isPresent() && lay.get().shows(set);
  }

  /**
   * Brings the set on to the table, with the most of what comes next; at first with the start of
   * the cloth at the table's start if that serves as well.
   */
  void show(PrintStep step, PrintSet set, int films) {
    Lay next = Lay.forNext(boards, ahead.from(step, set), lay.isEmpty() ? begin : Double.NaN);
    show(step, next, takes.move(), shop.person(step.by()), films);
  }

  /** Brings the cloth to where the plan says. */
  void show(Step step, double from, Span moving, String person, int films) {
    show(step, Lay.at(boards, ahead.after(step), from), moving, person, films);
  }

  private void show(Step step, Lay next, Span moving, String person, int films) {
    Task task;
    if (lay.isEmpty()) {
      if (loaded.isEmpty()) {
        loaded = Optional.of(shop.onCloth(step, Task.Kind.LOAD, LOAD, takes.load(), person));
      }
      task = loaded.get();
    } else {
      long idleFrom = shop.clothFree();
      task = shop.onCloth(step, Task.Kind.MOVE, moveTo(next.from()), moving, person);
      taken.add(new Taken(step, Task.Kind.MOVE, task.start().seconds(), idleFrom, films));
    }
    lay = Optional.of(next);
    places.add(
        new ClothLies(
            new Length(next.from()), task.start(), task.end(), next.joined(), step.path()));
  }

  private Doing moveTo(double from) {
    boolean on = places.get(places.size() - 1).at().mm() < from;
    return new Doing.MoveCloth(new Length(from), !on);
  }

  /**
   * The cloth moved or left the table.
   *
   * @param idleFrom second from which it lay there with nothing done to it: a wait put in before
   *     begins then, and not when whoever takes the cloth up is free
   * @param filmsBefore how many impressions had been made
   */
  public record Taken(Step step, Task.Kind kind, long second, long idleFrom, int filmsBefore) {}
}

package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Doing;
import strikeoff.day.Moment;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Span;

/**
 * How a day's work ends, against the hours of the room.
 *
 * @param day from 1; work before the opening belongs to the day before
 * @param opens when it opened
 * @param closes when the room closes
 * @param ends when the last work ends
 * @param over by how much that is after closing; zero if it is not by a minute of the clock
 * @param step the step whose work is the first that ends after closing time; the day's last if none
 *     does
 * @param work that step, or what is done where it is none of the plan
 * @param remedy what makes the day shorter; empty if nothing has to
 * @param moved the steps that it is about, before each of which the day may end
 * @param atRest the longest time after closing in which nobody works though work is still to come;
 *     empty if people work without a break until the end
 */
public record DayEnd(
    int day,
    Moment opens,
    Moment closes,
    Moment ends,
    Span over,
    int step,
    Doing work,
    Optional<Remedy> remedy,
    List<Integer> moved,
    Optional<Rest> atRest,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  /** What makes a day shorter. */
  public enum Remedy {
    /** The day ends before the step, or before each of two, which then fit into others. */
    NEXT_DAY,
    /** A print step is parted. */
    SPLIT,
    /** No step can be moved or parted. */
    SHORTEN
  }

  /**
   * Says whether a day that ends before each of some steps, by their numbers, ends in time, what is
   * late now is in time on any day, and fewer days are too long than now.
   */
  interface Trial {

    /** Nothing is tried. */
    Trial NONE = (day, before, late, daysTooLong) -> false;

    boolean helps(int day, List<Integer> before, List<Integer> late, int daysTooLong);
  }

  /**
   * Nobody works.
   *
   * @param from when the last work before it ends, or the room closes
   * @param until when work goes on
   * @param what what the cloth lies in meanwhile
   * @param step the step that goes on then
   * @param begins true if that step begins then
   * @param finishing true if nothing is mixed or printed after it that day
   * @param works true if what the cloth lies in works on it further: a bath, steam, or a batch of
   *     wool or silk
   * @param opens when the room opens next after that
   */
  public record Rest(
      Moment from,
      Moment until,
      Optional<Doing> what,
      int step,
      Doing work,
      boolean begins,
      boolean finishing,
      boolean works,
      Moment opens) {}

  public DayEnd {
    moved = List.copyOf(moved);
    related = List.copyOf(related);
  }

  /** True if people still work when the room has closed, by the minutes of the clock. */
  public boolean afterClosing() {
    return ends.isMinutesAfter(closes);
  }

  /** True if that is the same day and does not end sooner. */
  boolean isNoLaterThan(DayEnd other) {
    return day == other.day && ends.compareTo(other.ends) <= 0;
  }

  /** How long people stay after closing time until hands rest longest. */
  public Span stays() {
    return atRest.map(rest -> rest.from().since(closes)).orElse(over);
  }

  /** How long hands rest then; zero if people work without a break until the end. */
  public Span rests() {
    return atRest.map(rest -> rest.until().since(rest.from())).orElse(new Span(0));
  }

  /** True if what comes after the rest can as well begin in the morning: rinsing, or washing. */
  public boolean parts() {
    return atRest.filter(rest -> rest.begins() && rest.finishing()).isPresent();
  }

  /** True if it can, and nothing works on the cloth until then. */
  public boolean harmless() {
    return parts() && !atRest.get().works();
  }

  /**
   * How long people are needed after closing time: until hands rest longest, or until the cloth is
   * out of what works on it.
   */
  public Span needed() {
    return atRest
        .filter(Rest::works)
        .map(rest -> rest.until().since(closes))
        .orElseGet(this::stays);
  }

  /** True if that step, by its number, is at work too late. */
  boolean is(int number) {
    return step == number || atRest.filter(rest -> rest.step() == number).isPresent();
  }

  /** The day's end as edits of the plan: before the steps that it is about. */
  public List<List<Edit>> edits() {
    List<Edit> ends = new ArrayList<>();
    for (int number : moved) {
      ends.add(new Edit.Insert(new PlanPath("run").item(number - 1), "end of day"));
    }
    return List.of(ends);
  }
}

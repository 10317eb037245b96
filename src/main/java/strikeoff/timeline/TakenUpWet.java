package strikeoff.timeline;

import java.util.List;
import java.util.Optional;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Span;

/**
 * The cloth moves on, or leaves the table, while films on it are not safe for that.
 *
 * @param kind what is done with it: moved on, sewn, put in a bath …
 * @param done the same in words
 * @param certain true if the whole range of drying is too long, false if a part of it would do
 * @param films how many films are surely not safe, or not surely safe if none is certain, at the
 *     worst time if the step does it several times
 * @param occasions how often the step does it too early
 * @param state lift-safe or fix-safe
 * @param shortLeast how much too early even by the fastest credible drying; not above zero if that
 *     would do
 * @param shortBest the same by the most likely drying time
 * @param shortMost the same by the slowest credible drying
 * @param example the film that dries last, {@code herons 3, ink through heron key}
 * @param at when the cloth is taken up
 * @param safeAt earliest minute at which it could be
 * @param surelySafeAt the same by the slowest credible drying
 * @param remedy the least wait in whole minutes that clears it by the most likely drying time;
 *     where that would do already, the one that clears slow drying
 * @param surely the least wait that clears slow drying too
 * @param finish when the run then ends; empty if that was not tried
 * @param orUntil the wait that needs no figures, and where
 */
public record TakenUpWet(
    Task.Kind kind,
    String done,
    int step,
    String title,
    boolean certain,
    int films,
    int occasions,
    String state,
    Span shortLeast,
    Span shortBest,
    Span shortMost,
    String example,
    boolean paint,
    Moment at,
    Moment safeAt,
    Moment surelySafeAt,
    Remedy remedy,
    Remedy surely,
    Optional<Moment> finish,
    String orUntil,
    PlanPath path,
    List<Related> related,
    List<String> marks)
    implements Evidence {

  public TakenUpWet {
    related = List.copyOf(related);
    marks = List.copyOf(marks);
  }

  /** What to write, and where, with the finish it leads to. */
  public String write() {
    return remedy.text()
        + finish.map(f -> " (the run then ends " + f.text() + ")").orElse("")
        + remedy.andFor(surely);
  }

  Remedy remedy(boolean slowToo) {
    return slowToo ? surely : remedy;
  }

  /** True if the most likely drying time is too long. */
  public boolean likely() {
    return shortBest.seconds() > 0;
  }

  /** How much too early, where a part of the range would do. */
  public String inDoubt() {
    return Remedy.inDoubt(shortBest, shortMost);
  }

  /** {@code 5 films are}, or {@code 1 film is}. */
  public String filmsAre() {
    return films == 1 ? "1 film is" : films + " films are";
  }

  /** True if the cloth only moves along the table. */
  public boolean moved() {
    return kind == Task.Kind.MOVE;
  }

  /** True if it leaves the table to be sewn. */
  public boolean sewn() {
    return kind == Task.Kind.SEW;
  }

  /** True if it is put to fixing by bath, batch or steam. */
  public boolean fixed() {
    return kind == Task.Kind.FIX;
  }
}

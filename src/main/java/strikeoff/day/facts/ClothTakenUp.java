package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.day.AboutStep;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Uncertain;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.units.Chance;
import strikeoff.units.Measures;

/**
 * The cloth moves on, or leaves the table, while films on it are not safe for that.
 *
 * @param kind what is done with it
 * @param chance on how many days the film that dries last is not safe by then
 * @param films how many films are not surely safe, at the worst time if the step does it several
 *     times
 * @param doing the step itself
 * @param occasions how often the step does it too early
 * @param state lift-safe or fix-safe
 * @param early how much too early the last film is
 * @param example the film that dries last, {@code herons 3, ink through heron key}
 * @param at when the cloth is taken up
 * @param safeAt earliest minute at which it could be, on an ordinary day
 * @param surelySafeAt the same in slow drying
 * @param ordinary the least wait in whole minutes that clears it on an ordinary day
 * @param tried what came of the least wait that clears slow drying too; of that of an ordinary day
 *     where none does
 * @param ordinaryLate whether one does for the wait of an ordinary day too
 * @param night what came of ending the day before the step, where a wait is late and that clears it
 */
public record ClothTakenUp(
    Task.Kind kind,
    int step,
    Step doing,
    Chance chance,
    int films,
    int occasions,
    String state,
    BeforeSafe early,
    String example,
    boolean paint,
    Moment at,
    Moment safeAt,
    Moment surelySafeAt,
    Remedy ordinary,
    Trials.Outcome tried,
    boolean ordinaryLate,
    Optional<Trials.Outcome> night,
    PlanPath path,
    List<Related> related,
    List<String> marks)
    implements AboutStep, Uncertain {

  public ClothTakenUp {
    related = List.copyOf(related);
    marks = List.copyOf(marks);
  }

  /** What to write as edits of the plan; no wait that passes closing where a night will do. */
  public List<List<Edit>> edits(Measures units) {
    if (night.isEmpty()) {
      return remedy().edits(units);
    }
    List<List<Edit>> edits = new ArrayList<>(night.get().remedy().edits(units));
    if (!ordinaryLate) {
      edits.add(remedy().untilFelt(units));
    }
    return edits;
  }

  /** The wait that was tried. */
  public Remedy remedy() {
    return tried.remedy();
  }

  Remedy remedy(boolean slowToo) {
    return slowToo ? remedy() : ordinary;
  }

  /** True if it is more likely too wet than not. */
  public boolean likely() {
    return early.ordinary().seconds() > 0;
  }

  /** True if the cloth only moves along the table. */
  public boolean moved() {
    return kind == Task.Kind.MOVE;
  }

  /** True if it leaves the table to be sewn. */
  public boolean sewn() {
    return kind == Task.Kind.SEW;
  }

  /** True if it is put to fixing by bath or steam, for which it has to be dry. */
  public boolean fixed() {
    return kind == Task.Kind.FIX && !wrapped();
  }

  /** True if it is wrapped up damp for a batch. */
  public boolean wrapped() {
    return kind == Task.Kind.FIX && state.equals(Until.Dryness.LIFT_SAFE.text());
  }

  /** True if paint is set by heat. */
  public boolean heated() {
    return kind == Task.Kind.HEAT_SET;
  }
}

package strikeoff.day.facts;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Moment;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Dates;
import strikeoff.plan.PrintPlan;

/**
 * A run that is to be done by a date.
 *
 * @param days that it takes, from the first to the last
 * @param latestStart the last date on which it may begin
 * @param startOn on which it begins, as the plan has it
 * @param finish the date of its last day
 * @param daysLate by how many days that is too late; zero or less if it is in time
 */
public record DatesHeld(
    int days,
    LocalDate finishBy,
    LocalDate latestStart,
    LocalDate startOn,
    LocalDate finish,
    int daysLate,
    PlanPath path)
    implements Evidence {

  /** None without both dates. */
  static List<DatesHeld> of(Moment finish, PrintPlan plan) {
    Dates dates = plan.hours().dates();
    Optional<LocalDate> last = dates.of(finish.day());
    if (last.isEmpty() || dates.finishBy().isEmpty()) {
      return List.of();
    }
    LocalDate finishBy = dates.finishBy().get();
    return List.of(
        new DatesHeld(
            finish.day(),
            finishBy,
            dates.latestStart(finish.day()).orElseThrow(),
            dates.startOn().orElseThrow(),
            last.get(),
            (int) (last.get().toEpochDay() - finishBy.toEpochDay()),
            new PlanPath("start on")));
  }

  /** The start that is just in time. */
  public List<List<Edit>> edits() {
    return List.of(List.of(new Edit.Write(path, latestStart.toString())));
  }
}

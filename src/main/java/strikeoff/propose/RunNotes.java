package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import strikeoff.check.Checked;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Shortfall;
import strikeoff.day.facts.Surety;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.plan.Acceptance;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/** What the printer is told beside a run that was found for her. */
final class RunNotes {

  private static final Span ONE_MINUTE = new Span(1);

  private final Checked.Judged before;
  private final Leeway leeway;
  private final RunWanted asked;

  RunNotes(Checked.Judged before, Leeway leeway, RunWanted asked) {
    this.before = before;
    this.leeway = leeway;
    this.asked = asked;
  }

  /**
   * A sentence or two each; none where there is nothing to say.
   *
   * @param onOrdinaryDays asked what an ordinary day would save, unless the run is later for that
   */
  List<String> of(
      Search.Found found,
      Rehearsal rehearsal,
      RunText text,
      Supplier<Optional<String>> onOrdinaryDays) {
    List<String> notes = new ArrayList<>();
    List<Step> run = found.candidate().run();
    List<Task> slow = rehearsal.slowly(run);
    SlowDays days = new SlowDays(before.plan().hours());
    later(found, rehearsal, days).or(onOrdinaryDays).ifPresent(notes::add);
    if (leeway.later().isEmpty()) {
      notes.addAll(days.longer(found.judged().checked().facts().timeline().tasks(), slow));
      notes.addAll(warmBaths(found.judged().checked()));
    }
    for (Acceptance gone : text.dropped(run)) {
      notes.add(
          "What is accepted of "
              + gone.rule()
              + " at "
              + new PlanPath(gone.at().orElseThrow()).spoken()
              + " has no place in this run, so that line goes: “"
              + gone.because()
              + "”.");
    }
    if (Airs.assumesFans(before.plan()) && !Airs.namesFan(before.plan())) {
      notes.add(
          "It counts on no fan, since the plan names none: if there is one, write `equipment:"
              + " {fans: 1}` and ask again.");
    }
    return notes;
  }

  /** Baths that are to be warm when a day begins: nothing in the run warms them. */
  private static List<String> warmBaths(Checked.Judged judged) {
    PrintPlan plan = judged.plan();
    Timeline timeline = judged.facts().timeline();
    List<String> notes = new ArrayList<>();
    for (Step.Fix fix : plan.steps(Step.Fix.class)) {
      if (!fix.bath().isEmpty() && fix.temperature().compareTo(plan.room().temperature()) > 0) {
        timeline.tasks().stream()
            .filter(task -> task.step() == fix.number() && task.onCloth())
            .map(Task::start)
            .findFirst()
            .filter(
                start ->
                    Moment.opens(start.day(), plan.hours()).plus(ONE_MINUTE).compareTo(start) > 0)
            .ifPresent(
                start ->
                    notes.add(
                        "It ends then only if the bath has its "
                            + fix.temperature().text(plan.measures())
                            + " at "
                            + start.clock()
                            + " on day "
                            + start.day()
                            + ", when the room opens: the run has no minutes for warming it."));
      }
    }
    return notes;
  }

  /** Why it ends no sooner than a run that was printable as written: that does for some days. */
  private Optional<String> later(Search.Found found, Rehearsal rehearsal, SlowDays days) {
    Moment now = before.facts().timeline().finish();
    int compared = found.judged().checked().facts().timeline().finish().compareTo(now);
    boolean later =
        compared >= 0
            && Arranging.prints(before.plan())
            && before.findings().stream().noneMatch(Judge::stands);
    if (!later || asked.surety() != Surety.SURE) {
      return Optional.empty();
    }
    List<Step> own = Order.numbered(leeway.written());
    Shortfall lacks = rehearsal.surely(own, rehearsal.of(own)).shortfall();
    if (compared == 0 && lacks.isNothing()) {
      return Optional.empty();
    }
    return Optional.of(
        "Your run ends "
            + (compared == 0 ? "as soon" : "sooner")
            + " on an ordinary day, but where films dry slowly "
            + days.pastClosing(rehearsal.slowly(own))
                .filter(past -> lacks.afterClosing() > 0)
                .orElse(
                    lacks.inMesh() > 0
                        ? "paste dries in a screen"
                        : "some are touched before they are dry")
            + "; this one does for both. `--likely` plans for ordinary days.");
  }
}

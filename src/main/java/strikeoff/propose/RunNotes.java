package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import strikeoff.check.Checked;
import strikeoff.day.Moment;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Surety;
import strikeoff.document.PlanPath;
import strikeoff.plan.Acceptance;
import strikeoff.plan.Step;

/** What the printer is told beside a run that was found for her. */
final class RunNotes {

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
    later(found, rehearsal).or(onOrdinaryDays).ifPresent(notes::add);
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

  /**
   * Why it ends later than a run that was printable as written: that one does for some days only.
   */
  private Optional<String> later(Search.Found found, Rehearsal rehearsal) {
    Moment now = before.facts().timeline().finish();
    boolean later =
        found.judged().checked().facts().timeline().finish().compareTo(now) > 0
            && Arranging.prints(before.plan())
            && before.findings().stream().noneMatch(Judge::stands);
    if (!later || asked.surety() != Surety.SURE) {
      return Optional.empty();
    }
    List<Step> own = Order.numbered(leeway.written());
    boolean late = rehearsal.surely(own, rehearsal.of(own)).shortfall().afterClosing() > 0;
    return Optional.of(
        "Your run ends sooner on an ordinary day, but where films dry slowly "
            + (late
                ? "it goes on until "
                    + rehearsal.slowFinish(own).text()
                    + ", for which the hours leave no time"
                : "some are touched before they are dry")
            + "; this one does for both. `--likely` plans for ordinary days.");
  }
}

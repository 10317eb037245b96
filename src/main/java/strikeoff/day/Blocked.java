package strikeoff.day;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;

/** What a run waits for in vain, and whether the rest of it is given up. */
final class Blocked {

  private final PrintPlan plan;
  private final List<EndlessWait> facts = new ArrayList<>();
  private final Set<String> told = new LinkedHashSet<>();
  private boolean givenUp;

  Blocked(PrintPlan plan) {
    this.plan = plan;
  }

  List<EndlessWait> facts() {
    return facts;
  }

  boolean givenUp() {
    return givenUp;
  }

  /** A paste that nobody has mixed; the run goes on as if it were there. */
  void paste(PrintStep step, String paste) {
    if (!told.add(paste)) {
      return;
    }
    PlanPath where = plan.pastes().get(paste).path();
    Optional<Step> later =
        plan.run().stream()
            .filter(s -> s instanceof Step.Mix mix && mix.pastes().contains(paste))
            .findFirst();
    facts.add(
        new EndlessWait(
            step.number(),
            step,
            new EndlessWait.PasteMixed(paste, later.map(Step::number)),
            step.path(),
            List.of(
                later
                    .map(s -> new Related(Tie.MIXED_HERE, s.path()))
                    .orElse(new Related(Tie.PASTE, where)))));
  }

  /** Films that never get into a state; the rest of the run is given up. */
  void dryness(Step step, Until.Dryness state) {
    givenUp = true;
    facts.add(
        new EndlessWait(
            step.number(),
            step,
            new EndlessWait.FilmsDry(state, plan.room().humidity(), plan.room().temperature()),
            step.path(),
            List.of(new Related(Tie.AIR, plan.room().path()))));
  }

  /** More work than is followed; the rest of the run is given up. */
  void work(Step step, int tasks) {
    givenUp = true;
    facts.add(
        new EndlessWait(
            step.number(), step, new EndlessWait.WorkDone(tasks), step.path(), List.of()));
  }

  /** A screen that two people need at once, each with a paste of their own in it. */
  void screen(PrintStep step, String screen, String one, String paste, String other, String next) {
    if (!told.add(step.number() + screen)) {
      return;
    }
    facts.add(
        new EndlessWait(
            step.number(),
            step,
            new EndlessWait.ScreenFree(screen, paste, one, other, next),
            step.path(),
            List.of(new Related(Tie.SCREEN, plan.screens().get(screen).path()))));
  }
}

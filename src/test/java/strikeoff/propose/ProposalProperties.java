package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import strikeoff.check.Checked;
import strikeoff.checks.Draws;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Rehearsed;
import strikeoff.day.facts.Surety;
import strikeoff.findings.Severity;
import strikeoff.paste.Lives;
import strikeoff.plan.Begins;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/** What holds of everything that is proposed, and of every run that a search tries. */
class ProposalProperties {

  private static final String NAME = "rows.yaml";
  private static final int MOVES = 150;

  private static RunWanted wanted(boolean shortest, long effort) {
    return new RunWanted(Surety.SURE, shortest, true, false, OptionalLong.of(effort), () -> 0);
  }

  /** Where paint dries in the mesh while neighbours dry, some more runs have to be tried. */
  private static Proposal.Found found(String text, boolean shortest) {
    for (long effort : new long[] {400, 3_000}) {
      if (Proposer.proposed(SmallPlan.CHECKER, NAME, text, wanted(shortest, effort), 2)
          instanceof Proposal.Found found) {
        return found;
      }
    }
    throw new AssertionError("none was found");
  }

  @Property(tries = 10, seed = Draws.ALIKE)
  void theCheckAcceptsItAndNoneEndsBeforeItsBound(
      @ForAll(supplier = TwoRows.Any.class) TwoRows rows, @ForAll boolean shortest) {
    Proposal.Found found = found(rows.text(), shortest);
    assertThat(found.finish()).isGreaterThanOrEqualTo(found.bound().finish());
    Checked.Judged again = (Checked.Judged) SmallPlan.CHECKER.check(NAME, found.text());
    assertThat(again.findings()).allMatch(f -> f.severity() == Severity.ADVICE);
    assertThat(again.facts().timeline().finish()).isEqualTo(found.finish());
  }

  @Property(tries = 3, seed = Draws.ALIKE)
  void theSameEffortFindsTheSameBytes(@ForAll(supplier = TwoRows.Any.class) TwoRows rows) {
    assertThat(found(rows.text(), true).text()).isEqualTo(found(rows.text(), true).text());
  }

  /** Written into the plan and read again: what the search tried is what the printer is told. */
  @Property(tries = 12, seed = Draws.ALIKE)
  void whatIsTriedCanBeWrittenAndReadsAsItWasTried(
      @ForAll(supplier = TwoRows.Any.class) TwoRows rows) {
    Walk walk = new Walk(rows);
    RunText text = new RunText(rows.text(), walk.leeway);
    for (int i = 0; i < MOVES && walk.goesOn(); i++) {
      if (i % 5 == 0) {
        String written = text.with(walk.run).orElseThrow();
        Checked read = SmallPlan.CHECKER.withoutTrials().check(NAME, written);
        assertThat(read).as(written).isInstanceOf(Checked.Judged.class);
        List<Step> said = ((Checked.Judged) read).plan().run();
        assertThat(worked(walk.rehearsal.of(said)))
            .as(written)
            .isEqualTo(worked(walk.rehearsal.of(walk.run)));
      }
    }
  }

  @Example
  void runsAreTriedInEveryWayThatTheLanguageHas() {
    Walk walk = new Walk(new TwoRows(3, 4, 30, 240, 2, false, true, "09:00-17:00"));
    Set<String> ways = new TreeSet<>();
    for (int i = 0; i < 10 * MOVES && walk.goesOn(); i++) {
      for (Step step : walk.run) {
        if (step.begins() == Begins.WHEN_FREE) {
          ways.add(step.getClass().getSimpleName() + " beside");
        }
        if (step instanceof PrintStep print) {
          ways.add(print.mindsNeighbours() ? "films felt one by one" : "");
          ways.add(print.air().isPresent() ? "a fan while printing" : "");
          ways.add(print.numbers().isEmpty() ? "" : "copies of each");
          ways.add(print.also().isEmpty() ? "" : "several");
        }
      }
    }
    assertThat(ways)
        .contains(
            "PrintStep beside",
            "Mix beside",
            "films felt one by one",
            "a fan while printing",
            "several")
        .contains("copies of each");
  }

  /** From one run to the next, as a search goes that takes whatever comes. */
  private static final class Walk {

    private final Leeway leeway;
    private final Rehearsal rehearsal;
    private final Order order;
    private final Moves moves;
    private List<Step> run;

    Walk(TwoRows rows) {
      Checked.Judged judged =
          (Checked.Judged) SmallPlan.CHECKER.withoutTrials().check(NAME, rows.text());
      leeway =
          Leeway.of(
              judged.plan(), judged.facts().layout(), SmallPlan.CHECKER.policy(), wanted(true, 1));
      order = new Order(leeway);
      rehearsal =
          Rehearsal.of(
              judged.plan(),
              judged.facts().layout(),
              SmallPlan.CHECKER.policy(),
              new Lives(judged.plan(), SmallPlan.CHECKER.policy())::least,
              Surety.SURE);
      moves = new Moves(leeway, order, new SplittableRandom(rows.hashCode()));
      PasteLeft stock = new PasteLeft(judged.plan(), SmallPlan.CHECKER.policy());
      run = new Beginnings(leeway, order, rehearsal, stock).all(() -> false).get(0).run();
    }

    boolean goesOn() {
      Optional<List<Step>> next = moves.next(run, rehearsal.of(run));
      run = next.orElse(run);
      assertThat(order.keeps(run)).isTrue();
      return next.isPresent();
    }
  }

  /** Who does what and when. */
  private static List<String> worked(Rehearsed run) {
    return run.tasks().stream()
        .map(
            task ->
                String.join(
                    " ",
                    task.step() + "",
                    task.kind().name(),
                    task.people().toString(),
                    task.screen().orElse(""),
                    task.start().seconds() + "",
                    task.end().seconds() + ""))
        .toList();
  }
}

package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Surety;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;

/** What a printer wrote on purpose, and a proposal that need not do otherwise. */
class AsWrittenTest {

  private static final String ROW =
      new SmallPlan(2, 2, 90, 240, 2, false).text().replace("    every other: yes\n", "");

  private static Proposal.Found proposed(String text) {
    return proposed(text, 0);
  }

  private static Proposal.Found proposed(String text, double timeUsed) {
    RunWanted asked =
        new RunWanted(Surety.SURE, false, false, false, OptionalLong.of(400), () -> timeUsed);
    return (Proposal.Found) Proposer.proposed(SmallPlan.CHECKER, "row.yaml", text, asked, 1);
  }

  private static String run(Proposal.Found found) {
    return found.text().substring(found.text().indexOf("\nrun:"));
  }

  @Test
  void peopleStayWhoTheyAre() {
    String tam =
        ROW.replace("mix: all\n", "mix: all\n    by: Tam\n")
            .replace("    pause: 30 min\n", "    by: Tam\n    washes: Wren\n");
    Proposal.Found found = proposed(tam);
    assertThat(found.isAsItWas()).isFalse();
    assertThat(run(found))
        .contains("  - mix: all\n    by: Tam\n")
        .containsOnlyOnce("    by: Tam\n    washes: Wren\n")
        .doesNotContain("by: [");
    assertThat(found.moved()).noneMatch(line -> line.startsWith("Not kept"));
    // Both prints by Tam cost less than a twentieth of the time that the soonest run takes.
    Proposal.Found others = proposed(ROW.replace("    pause: 30 min\n", ""));
    assertThat(found.finish().seconds() - 9 * 3600)
        .isLessThanOrEqualTo((long) (1.05 * (others.finish().seconds() - 9 * 3600)));
  }

  @Test
  void aPauseThatCostsNothingStaysWithoutWordsOfOurs() {
    assertThat(run(proposed(ROW.replace("pause: 30 min", "pause: 1 min"))))
        .contains("\n    pause: 1 min\n");
  }

  @Test
  void whereRunsAreCountedTheClockSaysNothing() {
    String text = ROW.replace("pause: 30 min", "pause: 1 min");
    assertThat(proposed(text, 1_000).text()).isEqualTo(proposed(text).text());
  }

  @Test
  void whatCostsTimeIsNamed() {
    // Wren lays the cloth, so that nobody mixes until she is done.
    Proposal.Found found = proposed(ROW.replace("mix: all\n", "mix: all\n    by: Wren\n"));
    assertThat(run(found)).doesNotContain("pause:").contains("  - mix: all\n    by: Tam\n");
    assertThat(found.moved())
        .contains(
            "Not kept of what you wrote: `pause: 30 min` of row; `by: Wren` of mixing. Put"
                + " back what has its reasons, and check again.");
  }

  @Test
  void aWaitThatIsLeftOutIsNamed() {
    Proposal.Found found = proposed(ROW);
    PrintPlan proposed = found.after().plan();
    PrintPlan undried =
        proposed.with(proposed.run().stream().filter(step -> !(step instanceof Step.Dry)).toList());
    Layout layout = found.after().facts().layout();
    assertThat(NotKept.of(proposed, proposed, layout)).isEmpty();
    assertThat(NotKept.of(proposed, undried, layout))
        .singleElement()
        .asString()
        .contains("`dry: until fix-safe` (step ");
  }

  /** Motifs 90 cm apart under frames of 44 cm: whoever prints every other one walks twice. */
  @Test
  void everyOtherOfPrintsThatLieApartIsNeitherWrittenNorMissed() {
    Proposal.Found found = proposed(ROW.replace("    pause: 30 min\n", "    every other: yes\n"));
    assertThat(run(found)).doesNotContain("every other");
    assertThat(found.moved()).noneMatch(line -> line.contains("every other"));
  }
}

package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A file that takes for ever to read ends in a sentence. */
class BoundedCompilationTest {

  private static final String RULE =
      """
      rule "large plan"
      when
        there is a plan
      then
        say risk: m.
        because: b.
        mend: r.
      end
      """;

  private static RuleFile file(String name, String text) {
    return new RuleFile("rules/bench/" + name, "bench", text);
  }

  @Test
  void theFileThatDoesNotComeToAnEndIsNamed() {
    // Each further bracket makes the parser of conditions try twice as much.
    String brackets = "(".repeat(60) + "plan" + ")".repeat(60);
    String slow =
        "package rules.bench\nrule \"bench/slow\"\n@severity(\"risk\") @summary(\"s\") @because(\"b\")"
            + " @message(\"m\") @remedy(\"r\") @source(\"s\")\nwhen\n  strikeoff.described.WholePlan("
            + brackets
            + " == 1)\nthen\nend\n";
    long before = System.nanoTime();
    RuleMistakes wrong =
        catchThrowableOfType(
            RuleMistakes.class,
            () ->
                BoundedCompilation.of(
                    List.of(file("quick.dslr", RULE), file("slow.drl", slow)),
                    Duration.ofSeconds(9)));
    assertThat(wrong.all())
        .extracting(RuleMistake::text)
        .containsExactly(
            "rules/bench/slow.drl: reading these rules had not ended after 9 s and was given up;"
                + " write shorter conditions, with fewer brackets and calls in one another");
    assertThat((System.nanoTime() - before) / 1e9).isLessThan(60);
  }

  @Test
  void tenThousandLinesThatAreNoSentencesAreToldUpToABound() {
    StringBuilder lines = new StringBuilder("rule \"many\"\nwhen\n");
    for (int i = 0; i < 10_000; i++) {
      lines.append("  the moon is full ").append(i).append('\n');
    }
    RuleMistakes wrong =
        catchThrowableOfType(
            RuleMistakes.class,
            () -> BoundedCompilation.of(List.of(file("many.dslr", lines.toString()))));
    assertThat(wrong.all()).hasSize(101);
    assertThat(wrong.all().get(100).text())
        .isEqualTo(
            "rules/bench/many.dslr:103: so much is wrong up to here that the rest isn't read");
  }
}

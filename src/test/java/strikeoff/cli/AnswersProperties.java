package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.checks.Draws;
import strikeoff.cli.Scenario.Outcome;
import strikeoff.findings.Severity;

/** Whatever start takes for an answer makes a plan without a stop. */
class AnswersProperties {

  @Provide
  Arbitrary<List<String>> answers() {
    Arbitrary<List<String>> cloth =
        Combinators.combine(
                Arbitraries.of(
                    List.of("cotton", "paint"),
                    List.of("linen", "paint"),
                    List.of("polyester", "paint"),
                    List.of("cotton", "dye"),
                    List.of("viscose", "dye"),
                    List.of("silk", "dye")),
                Arbitraries.of("60 cm", "90 cm", "1.4 m", "36 in", "1 1/2 yd"),
                Arbitraries.of("80 cm", "2 m", "4.5 m", "72 in", "10 ft"),
                Arbitraries.of("", "90 g/m²", "300 g/m²", "8 oz/yd²"),
                Arbitraries.of("", "gold, navy", "black, #d9b77e, teal"))
            .as(
                (fibre, width, length, mass, colours) ->
                    List.of("A", fibre.get(0), width, length, mass, fibre.get(1), colours));
    Arbitrary<List<String>> printed =
        Arbitraries.of(
            List.of("motifs"),
            List.of("border", "near"),
            List.of("border", "far"),
            List.of("border", "both"),
            List.of("repeats"));
    Arbitrary<String> motif = Arbitraries.of("", "12 x 10 cm", "8 x 6 in", "5 x 5 cm");
    return Combinators.combine(cloth, printed, motif)
        .as(
            (first, what, size) -> {
              List<String> all = new ArrayList<>(first);
              all.addAll(what);
              all.add(size);
              return all;
            });
  }

  @Property(tries = 60, seed = Draws.ALIKE, shrinking = ShrinkingMode.OFF)
  void anyAnswersMakeAPlanWithoutAStop(@ForAll("answers") List<String> answers) {
    // What is left takes what is offered, and so does what is refused.
    String input = String.join("\n", answers) + "\n".repeat(12);
    List<String> args = List.of("start", "--ask", "-o", "-");
    Outcome outcome = Scenario.run(Path.of(""), Map.of("LANG", "C.UTF-8"), args, input);
    assertThat(outcome.exit()).as("%s: %s", answers, outcome.err()).isZero();
    assertThat(outcome.err()).as("%s", answers).doesNotContain("once more");
    Checked checked = Checker.builtIn().check("the plan", outcome.out());
    assertThat(((Checked.Judged) checked).of(Severity.STOP)).isEmpty();
  }
}

package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExampleTest {

  private static final Example EXAMPLE =
      Example.of(
          """
          # Reeds are printed before yesterday's paint is set.
          # A second comment.
          run:
            - print: reeds        #> finds drying/frame-on-wet-film #> finds time/day-too-long
              pause: 2 min        #> instead pause: 50 min
              colour: "#6f7f45"   #> instead colour: "#000000"
            - print: shells       #> instead
          #+   - dry: 1 h
              #+ by: Tam
          """);

  @Test
  void saysItsSituation() {
    assertThat(EXAMPLE.situation()).isEqualTo("Reeds are printed before yesterday's paint is set.");
  }

  @Test
  void takesTheMarksOffTheFiringPlan() {
    assertThat(EXAMPLE.firingText())
        .isEqualTo(
            """
            # Reeds are printed before yesterday's paint is set.
            # A second comment.
            run:
              - print: reeds
                pause: 2 min
                colour: "#6f7f45"
              - print: shells


            """);
    assertThat(EXAMPLE.marks())
        .containsExactlyInAnyOrder(
            new Example.Mark("drying/frame-on-wet-film", 4),
            new Example.Mark("time/day-too-long", 4));
  }

  @Test
  void makesTheTwinOnTheSameLines() {
    assertThat(EXAMPLE.twinText())
        .isEqualTo(
            """
            # Reeds are printed before yesterday's paint is set.
            # A second comment.
            run:
              - print: reeds
                pause: 50 min
                colour: "#000000"

              - dry: 1 h
                by: Tam
            """);
  }

  @ParameterizedTest
  @ValueSource(strings = {"run: #> find a/b", "run: #>", "run: #> finds a/b #> twin x"})
  void refusesAMisspeltMark(String line) {
    assertThatThrownBy(() -> Example.of("plan: x\n" + line))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("line 2");
  }
}

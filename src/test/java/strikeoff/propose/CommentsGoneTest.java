package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CommentsGoneTest {

  @Test
  void whatSoundsLikeTheProgramsOwnIsThePrintersAllTheSame() {
    String before =
        """
        run:
          - mix: all # all prints hang by the window
          - dry: until fix-safe # about 5 min: all prints are dry before side is sewn
          - end of day # the rest goes on in the morning
        """;
    assertThat(CommentsGone.noted(before, "run:\n  - mix: all\n"))
        .singleElement()
        .asString()
        .contains("“all prints hang by the window”: write them")
        .doesNotContain("sewn")
        .doesNotContain("morning");
  }

  @Test
  void whatStaysIsNotTold() {
    assertThat(CommentsGone.noted("a: 1 # mine\n", "# mine\na: 2\n")).isEmpty();
    assertThat(CommentsGone.noted("a: '# 1'\n", "a: 2\n")).isEmpty();
  }

  @Test
  void manyAreCounted() {
    String many =
        IntStream.range(0, 9).mapToObj(i -> "# no. " + i + "\n").collect(Collectors.joining());
    assertThat(CommentsGone.noted(many + "a: 1\n", "a: 1\n"))
        .singleElement()
        .asString()
        .contains("“no. 4” and 4 more")
        .doesNotContain("no. 5");
  }
}

package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The distance of Levenshtein (1966), worked by hand beside each pair. */
class LettersTest {

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          mesh,   mesh,   0
          mesh,   meshes, 2
          mesh,   esh,    1
          screen, scren,  1
          mesh,   mush,   1
          # k to s, e to i, g at the end: the pair that textbooks work
          kitten, sitting, 3
          # u and n stand where a, t, u, r stood: a and t dropped, r to n
          Saturday, Sunday, 3
          # two letters changed; swapping neighbours is two changes here
          paste,  paset,  2
          # r to b, l and u put in, e kept, d dropped
          red,    blue,   4
          '',     paste,  5
          '',     '',     0
          """)
  void countsLettersInsertedDroppedOrChanged(String a, String b, int apart) {
    assertThat(Letters.apart(a, b)).isEqualTo(apart);
    assertThat(Letters.apart(b, a)).as("both ways").isEqualTo(apart);
  }

  @Test
  void noDetourIsShorter() {
    List<String> words = List.of("", "mesh", "meshes", "wash", "washes", "shem", "frame");
    for (String a : words) {
      for (String b : words) {
        for (String by : words) {
          assertThat(Letters.apart(a, b))
              .isLessThanOrEqualTo(Letters.apart(a, by) + Letters.apart(by, b));
        }
      }
    }
  }
}

package strikeoff.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VisibleTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "plain words, \u00B5m and m\u00B2|plain words, \u00B5m and m\u00B2",
        "\u001B]0;gone|[U+001B]]0;gone",
        "\u0085\u009B1m\u007F|[U+0085][U+009B]1m[U+007F]",
        "one\u202Eowt|one[U+202E]owt",
        "soft\u00ADly|soft[U+00AD]ly",
        "own\uE000|own[U+E000]",
        "none\uFFFE\uFDD0|none[U+FFFE][U+FDD0]",
        "half\uDC00|half[U+DC00]",
      })
  void showsWhatAReaderCouldNotSee(String text, String shown) {
    assertThat(Visible.of(text)).isEqualTo(shown);
  }

  @Test
  void linesStayLinesUnlessOneIsWanted() {
    assertThat(Visible.of("a\tb\r\nc")).isEqualTo("a b \nc");
    assertThat(Visible.line("a\tb\r\nc")).isEqualTo("a b  c");
    assertThat(Visible.of("")).isEmpty();
  }

  /** Persian has a non-joiner within words, and pictures of people are joined of several. */
  @Test
  void joinersStayWhereTheyJoinSomething() {
    String persian = "\u0645\u06CC\u200C\u062E\u0648\u0627\u0647\u0645";
    String printer = "\uD83D\uDC69\u200D\uD83C\uDFA8";
    assertThat(Visible.of(persian + " " + printer)).isEqualTo(persian + " " + printer);
    assertThat(Visible.of("plan\u200C.yaml")).isEqualTo("plan[U+200C].yaml");
    assertThat(Visible.of("\u200D")).isEqualTo("[U+200D]");
    assertThat(Visible.of(persian + "\u200C")).isEqualTo(persian + "[U+200C]");
    assertThat(Visible.of("\u00E9\u200D\u200D\u00E9")).doesNotContain("\u200D");
  }

  /** An animal of Unicode 15, which JDK 17 has not heard of, and one of Unicode 13. */
  @Test
  void isTheSameOnEveryJdk() {
    assertThat(Visible.of("\uD83E\uDEBF\uD83E\uDDAB")).isEqualTo("\uD83E\uDEBF\uD83E\uDDAB");
  }
}

package strikeoff.cli.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.checks.Draws;

class PlainTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "plain words, µm and m²|plain words, µm and m²",
        "\u001B[2Jgone|[U+001B][2Jgone",
        "one\u202Eowt|one[U+202E]owt",
        "a\u2066b\u2069|a[U+2066]b[U+2069]",
        "zero\u200Bwidth\uFEFF|zero[U+200B]width[U+FEFF]",
        "next\u2028line|next[U+2028]line",
        "bell\u0007|bell[U+0007]",
        "tag\uDB40\uDC41|tag[U+E0041]",
        "lone\uD800|lone[U+D800]",
      })
  void showsWhatATerminalWouldObey(String text, String shown) {
    assertThat(Plain.line(text)).isEqualTo(shown);
  }

  @Test
  void aLineStaysALine() {
    assertThat(Plain.line("a\nPRINTABLE b\r\tc")).isEqualTo("a PRINTABLE b  c");
  }

  @Test
  void countsColumnsAsATerminalDoes() {
    assertThat(Plain.columns("saltmarsh")).isEqualTo(9);
    assertThat(Plain.columns("ha\u0308nde")).isEqualTo(5);
    assertThat(Plain.columns("\u5893\u77F3")).isEqualTo(4);
  }

  @Test
  void breaksAtSpacesAndHangs() {
    assertThat(Plain.wrap("  Mend: ", "        ", "wait 38 min more, or print every other one", 30))
        .containsExactly("  Mend: wait 38 min more, or", "        print every other one");
  }

  @Test
  void cutsAWordThatNoLineHolds() {
    assertThat(Plain.wrap("> ", "  ", "herons " + "x".repeat(25), 12))
        .containsExactly("> herons", "  xxxxxxxxxx", "  xxxxxxxxxx", "  xxxxx");
  }

  /** 4 MB took a quarter of an hour while each line measured all that was left. */
  @Test
  void cutsAVeryLongWordInOneGo() {
    String word = "x".repeat(4_000_000);
    assertTimeoutPreemptively(
        Duration.ofSeconds(20), () -> assertThat(Plain.wrap("", "", word, 80)).hasSize(50_000));
  }

  @Test
  void keepsASpaceThatIsNotABlank() {
    assertThat(Plain.wrap("  ", "  ", "herons\u3000", 30)).containsExactly("  herons\u3000");
  }

  @Property(tries = 300, seed = Draws.ALIKE)
  void neverWiderThanTheColumns(
      @ForAll String text, @ForAll @IntRange(min = 12, max = 90) int width) {
    List<String> lines = Plain.wrap("    ", "      ", text, width);
    assertThat(lines).allMatch(line -> Plain.columns(line) <= width);
    assertThat(String.join("", lines).replace(" ", ""))
        .isEqualTo(Plain.line(text).replace(" ", ""));
  }
}

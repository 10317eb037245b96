package strikeoff.mend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;

/** Against the form that POSIX and GNU diffutils document for patches. */
class DiffTest {

  private static List<String> of(String before, String after) {
    Checked left = new Checked.Failed("plan.yaml", "nothing was checked", "");
    return Diff.of("plan.yaml", before, new Mender.Mended(after, List.of(), left, Map.of()));
  }

  @Test
  void aFileThatEndsWithoutALineEndSaysSo() {
    assertThat(String.join("\n", of("a\nb\nc", "a\nb\nd")))
        .endsWith("-c\n\\ No newline at end of file\n+d\n\\ No newline at end of file");
    assertThat(String.join("\n", of("a\nb\nc", "A\nb\nc")))
        .endsWith("-a\n+A\n b\n c\n\\ No newline at end of file");
    assertThat(String.join("\n", of("a\nb\n", "a\nB\n"))).endsWith("-b\n+B");
  }

  @Test
  void aCarriageReturnStaysWithItsLineOrEndsIt() {
    assertThat(of("a\r\nb\r\n", "a\r\nB\r\n")).contains(" a\r", "-b\r", "+B\r");
    assertThat(of("a\rb\rc\r", "a\rB\rc\r")).contains(" a", "-b", "+B", " c");
  }
}

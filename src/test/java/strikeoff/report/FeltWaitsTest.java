package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;

/** Frames that wait for the print beside them, told on a sheet. */
class FeltWaitsTest {

  /** Before the first print of a day there is no film to feel, but the second frame lies on one. */
  @Test
  void theFirstPrintOfADayLiesOnNoFilm() throws IOException {
    String text =
        Files.readString(Path.of("plans/first-border.yaml"))
            .replace("pause: 3 min", "dry between neighbours: until frame-safe");
    assertThat(text).contains("dry between neighbours");
    Checked.Judged judged = (Checked.Judged) Checker.builtIn().check("border.yaml", text);
    WorkBlock first =
        WorkBlock.of(judged.facts().timeline()).stream()
            .filter(WorkBlock::prints)
            .findFirst()
            .orElseThrow();
    assertThat(new FeltWaits(judged).first(first, 1))
        .matches(", before each frame feel what it lies on: on a slow day up to \\d+ min longer");
  }
}

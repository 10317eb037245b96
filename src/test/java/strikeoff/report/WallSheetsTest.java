package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import strikeoff.artwork.DemoFilms;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.Impression;
import strikeoff.day.Task;
import strikeoff.report.page.DaySheet;
import strikeoff.report.page.WallPage;

class WallSheetsTest {

  private static final Checked.Judged ALONE = curtains("- print: shells");

  private static Checked.Judged curtains(String shells) {
    try {
      String text = Files.readString(Path.of("plans/estuary-curtains.yaml"));
      return (Checked.Judged)
          Checker.builtIn()
              .with(DemoFilms.beside())
              .check("curtains.yaml", text.replace("- print: shells", shells));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<DaySheet.Line> lines(List<WallPage.Sheet> sheets) {
    return sheets.stream()
        .flatMap(sheet -> sheet.work().stream())
        .flatMap(work -> work.job().lines().stream())
        .toList();
  }

  @Test
  void everythingThatOneDoesStandsOnHerSheets() {
    List<DaySheet.Line> lines = lines(WallSheets.of(ALONE).sheets());
    for (Impression impression : ALONE.facts().timeline().impressions()) {
      String screen = "screen " + impression.footprint().screen().name();
      assertThat(lines)
          .anyMatch(
              line ->
                  line.with().contains(screen) && line.begins().compareTo(impression.laid()) <= 0);
    }
    // The same lines as the report's day sheets, in other pages.
    List<DaySheet.Line> reported =
        DaySheets.of(ALONE).stream()
            .flatMap(sheet -> sheet.jobs().stream())
            .flatMap(job -> job.lines().stream())
            .toList();
    assertThat(lines).containsExactlyInAnyOrderElementsOf(reported);
  }

  @Test
  void whereTwoWorkEachHasTheirOwn() {
    Checked.Judged two = curtains("- print: shells\n    by: [Wren, Tam]");
    List<Task> shared =
        two.facts().timeline().tasks().stream()
            .filter(task -> task.kind() == Task.Kind.PRINT && task.people().contains("Tam"))
            .toList();
    assertThat(shared).isNotEmpty();
    Set<Integer> days =
        shared.stream().map(t -> t.start().day()).collect(Collectors.toCollection(TreeSet::new));
    List<WallPage.Sheet> tams =
        WallSheets.of(two).sheets().stream().filter(s -> s.who().equals("Tam")).toList();
    assertThat(tams).isNotEmpty();
    for (Task task : shared) {
      assertThat(lines(tams))
          .anyMatch(
              line ->
                  line.with().contains("screen " + task.screen().orElseThrow())
                      && line.begins().compareTo(task.start()) <= 0);
    }
    // What Wren prints meanwhile is no business of hers.
    assertThat(lines(tams)).noneMatch(line -> line.who().equals("Wren"));
    assertThat(days).hasSize(1);
  }

  @Test
  void aSheetBeginsWithWhatIsDoneFirst() {
    WallPage.Sheet first = WallSheets.of(ALONE).sheets().get(0);
    assertThat(first.first()).isEqualTo("First, at 09:00: Lay the cloth on the table.");
  }

  @Test
  void aSetHasAMapAndItsThreeLimits() {
    WallPage.Work herons =
        WallSheets.of(ALONE).sheets().stream()
            .flatMap(sheet -> sheet.work().stream())
            .filter(work -> work.job().what().startsWith("Print herons"))
            .findFirst()
            .orElseThrow();
    assertThat(herons.map()).isNotNull();
    assertThat(herons.map().toString()).contains(">1</text>").contains("class=\"own\"");
    assertThat(herons.job().prints().dries())
        .matches("All of it: next frame on it from .*; lifted or moved from .*; fixed from .*\\.");
  }

  @Test
  void thePageIsTheSameEachTime() {
    assertThat(HtmlReport.sheets(ALONE)).isEqualTo(HtmlReport.sheets(curtains("- print: shells")));
    assertThat(new String(HtmlReport.sheets(ALONE), StandardCharsets.UTF_8))
        .contains("The safety data sheets come first.")
        .contains("<meta name=\"generator\" content=\"strikeoff check --sheets\">");
  }
}

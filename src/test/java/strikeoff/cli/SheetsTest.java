package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;

/** {@code check --sheets}: what hangs on the wall, and nothing else. */
class SheetsTest {

  @TempDir private Path folder;

  @BeforeEach
  void plan() throws IOException {
    Files.copy(Path.of("plans/first-border.yaml"), folder.resolve("border.yaml"));
  }

  private Outcome check(String... more) {
    List<String> command = new ArrayList<>(List.of("check"));
    command.addAll(List.of(more));
    return Scenario.run(folder, Map.of("COLUMNS", "200"), command);
  }

  private Path sheet(String name) {
    return folder.resolve("wall").resolve(name);
  }

  @Test
  void eachPlanHasAPageThere() {
    Outcome outcome = check("border.yaml", "--sheets", "wall");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.out()).contains("sheets: wall\n");
    assertThat(sheet("border.html")).content().contains("First, at 09:00: Lay the cloth");
    assertThat(folder.resolve("wall")).isDirectoryContaining("glob:**/border.html");
  }

  @Test
  void plansOfOneTitleAreToldApartOnPaper() throws IOException {
    for (String of : List.of("monday", "tuesday")) {
      Files.createDirectory(folder.resolve(of));
      Files.copy(folder.resolve("border.yaml"), folder.resolve(of + "/border.yaml"));
    }
    check("monday", "tuesday", "--sheets", "wall");
    assertThat(sheet("border.html")).content().contains(" · monday/border.yaml</bdi>");
    assertThat(sheet("border-2.html")).content().contains(" · tuesday/border.yaml</bdi>");
  }

  @Test
  void aPlanThatCantBeReadLeavesNoOldSheets() throws IOException {
    check("border.yaml", "--sheets", "wall");
    Files.writeString(folder.resolve("border.yaml"), "plan: [");
    Outcome outcome = check("border.yaml", "--sheets", "wall");
    assertThat(outcome.exit()).isNotZero();
    assertThat(sheet("border.html")).doesNotExist();
  }

  @Test
  void whatIsNoSheetStays() throws IOException {
    Files.createDirectory(folder.resolve("wall"));
    Files.writeString(sheet("border.html"), "my own page");
    Files.writeString(sheet("notes.html"), "my own notes");
    Outcome outcome = check("border.yaml", "--sheets", "wall");
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err()).contains("border.html: these sheets can't be written");
    assertThat(sheet("border.html")).hasContent("my own page");
    assertThat(sheet("notes.html")).hasContent("my own notes");
  }

  @Test
  void reportsLieElsewhere() {
    Outcome outcome = check("border.yaml", "--sheets", "wall", "--reports", "./wall");
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.err()).contains("--sheets and --reports need a folder each");
    assertThat(folder.resolve("wall")).doesNotExist();
  }

  @Test
  void keptResultsAreNoReasonToGoWithout() {
    check("border.yaml", "--cache", "kept");
    check("border.yaml", "--cache", "kept", "--sheets", "wall");
    assertThat(sheet("border.html")).exists();
  }
}

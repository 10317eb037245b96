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
    assertThat(outcome.out()).contains("sheets: wall/index.html\n");
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
    assertThat(outcome.err().replaceAll("\\s+", " "))
        .contains("border.yaml: its sheets (wall/border.html) can't be written: what stands here");
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
  void anIndexLeadsToTheSheetsOfEachPlan() throws IOException {
    Files.copy(Path.of("plans/mistakes/hot-bath.yaml"), folder.resolve("hot.yaml"));
    Files.writeString(folder.resolve("torn.yaml"), "plan: [");
    check(".", "--sheets", "wall");
    assertThat(sheet("index.html"))
        .content()
        .contains("Sheets of 2 plans, 1 of them not printable as planned.")
        .contains("<a href=\"border.html\">")
        .contains("<a href=\"hot.html\">")
        .contains(">Not printable<")
        .contains("No sheets. <bdi>Line 1: ")
        .doesNotContain("href=\"torn.html\"");
    assertThat(sheet("torn.html")).doesNotExist();
  }

  @Test
  void anIndexOfSomebodysOwnStaysAndIsTold() throws IOException {
    Files.createDirectory(folder.resolve("wall"));
    Files.writeString(sheet("index.html"), "my own page");
    Outcome outcome = check("border.yaml", "--sheets", "wall");
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err()).contains("index.html: this page can't be written");
    assertThat(outcome.out()).doesNotContain("sheets: wall");
    assertThat(sheet("index.html")).hasContent("my own page");
  }

  @Test
  void noSheetIsWrittenOverWhatIsRead() throws IOException {
    Files.createDirectories(folder.resolve("wall"));
    Files.copy(folder.resolve("border.yaml"), sheet("index.html"));
    Outcome outcome = check("wall/index.html", "--sheets", "wall");
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.err()).contains("this is read, and no report is written over it");
    assertThat(sheet("index.html")).hasSameTextualContentAs(folder.resolve("border.yaml"));
    Files.delete(sheet("index.html"));
    assertThat(check("border.yaml", "--sheets", "wall", "-f", "json=wall/index.html").exit())
        .as("two to one file")
        .isEqualTo(2);
  }

  /** What is kept holds the sheets too; without them it is another result. */
  @Test
  void keptSheetsAreTheSameToTheByte() throws IOException {
    check("border.yaml", "--cache", "kept");
    Outcome cold = check("border.yaml", "--cache", "kept", "--sheets", "wall");
    byte[] sheets = Files.readAllBytes(sheet("border.html"));
    byte[] index = Files.readAllBytes(sheet("index.html"));
    try (var kept = Files.list(folder.resolve("kept"))) {
      assertThat(kept).hasSize(2);
    }
    assertThat(check("border.yaml", "--cache", "kept", "--sheets", "wall")).isEqualTo(cold);
    assertThat(sheet("border.html")).hasBinaryContent(sheets);
    assertThat(sheet("index.html")).hasBinaryContent(index);
    try (var kept = Files.list(folder.resolve("kept"))) {
      assertThat(kept).as("taken, not made again").hasSize(2);
    }
  }

  /** The parts hang their sheets into one folder, on machines of their own or on one. */
  @Test
  void theIndexOfJoinedPartsIsThatOfOneRun() throws IOException {
    Files.createDirectory(folder.resolve("other"));
    Files.copy(folder.resolve("border.yaml"), folder.resolve("other/border.yaml"));
    Files.copy(Path.of("plans/mistakes/hot-bath.yaml"), folder.resolve("hot.yaml"));
    Files.writeString(folder.resolve("torn.yaml"), "plan: [");
    Outcome whole = check(".", "--sheets", "wall");
    byte[] index = Files.readAllBytes(sheet("index.html"));
    Files.delete(sheet("index.html"));
    for (String part : List.of("1", "2")) {
      check(".", "--part", part + "/2", "--sheets", "parts", "-f", "json=" + part + ".json");
    }
    Files.delete(folder.resolve("parts/index.html"));
    Outcome joined = join("2.json", "1.json", "--sheets", "parts");
    assertThat(joined.exit()).isEqualTo(whole.exit());
    assertThat(joined.out()).endsWith("sheets: parts/index.html\n");
    assertThat(folder.resolve("parts/index.html")).hasBinaryContent(index);
    assertThat(folder.resolve("parts/border-2.html")).exists();
    Files.delete(folder.resolve("parts/border-2.html"));
    join("1.json", "2.json", "--sheets", "parts");
    assertThat(folder.resolve("parts/index.html"))
        .content()
        .contains("Sheets of 2 plans", "href=\"border.html\"")
        .doesNotContain("href=\"border-2.html\"");
    assertThat(join("1.json", "2.json", "--sheets", "x", "--reports", "./x").exit()).isEqualTo(2);
  }

  private Outcome join(String... more) {
    List<String> command = new ArrayList<>(List.of("join"));
    command.addAll(List.of(more));
    return Scenario.run(folder, Map.of("COLUMNS", "200"), command);
  }
}

package strikeoff.cli.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.report.HtmlReport;
import strikeoff.report.compare.Comparison;
import strikeoff.report.outcome.Results;

class ReportFolderTest {

  /** A page as a run writes it. */
  private static final String PAGE = HtmlReport.index("plans", List.of());

  @TempDir private Path folder;

  @Test
  void namesNeverCollideNorLeadOut() {
    assertThat(
            names(
                "plans/Curtains.yaml",
                "other/curtains.yml",
                "curtains-2.yaml",
                "index.yaml",
                "../..yaml",
                "NUL.yaml",
                "\u202E../<b>.yaml",
                "\u00DCber.yaml",
                "x".repeat(300) + ".yaml"))
        .containsExactly(
            "curtains.html",
            "curtains-2.html",
            "curtains-2-2.html",
            "index-2.html",
            "plan.html",
            "nul-2.html",
            "b.html",
            "ber.html",
            "x".repeat(80) + ".html");
  }

  @Test
  void writesWholeAndLeavesNothingElse() throws IOException {
    ReportFolder reports = new ReportFolder(folder.resolve("deep/down"));
    reports.make();
    reports.make();
    reports.write("a.html", PAGE);
    reports.write("a.html", PAGE + "second \u00B5");
    assertThat(folder.resolve("deep/down/a.html")).hasContent(PAGE + "second \u00B5");
    assertThat(files(folder.resolve("deep/down"))).containsExactly("a.html");
  }

  @Test
  void aFolderInAPagesPlaceIsAnErrorAndStays() throws IOException {
    ReportFolder reports = new ReportFolder(folder);
    Files.createDirectories(folder.resolve("a.html/inside"));
    reports.open();
    assertThatThrownBy(() -> reports.write("a.html", "text")).isInstanceOf(IOException.class);
    assertThat(files(folder)).containsExactly("a.html");
  }

  /** Also one that says that it is a page of ours, anywhere but where ours say it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!doctype html>\n<title>Our village</title>\n",
        "<!doctype html>\n<html lang=\"en\">\n<head>\n<title>x</title>\n"
            + "<meta name=\"generator\" content=\"strikeoff check\">\n",
        "\n"
      })
  void somebodyElsesPageIsAnErrorAndStays(String page) throws IOException {
    ReportFolder reports = new ReportFolder(folder);
    Path file = Files.writeString(folder.resolve("a.html"), page);
    reports.open();
    reports.open(List.of("a.html"));
    reports.gone("a.html");
    assertThatThrownBy(() -> reports.write("a.html", "text"))
        .hasMessage("what stands here is no page of strikeoff, and stays");
    assertThat(file).hasContent(page);
    assertThat(files(folder)).containsExactly("a.html");
  }

  @Test
  void anEmptyFileIsWrittenOver() throws IOException {
    Files.createFile(folder.resolve("a.html"));
    new ReportFolder(folder).open();
    new ReportFolder(folder).write("a.html", PAGE);
    assertThat(folder.resolve("a.html")).hasContent(PAGE);
  }

  @Test
  void aPageThatCannotBeWrittenLeavesNoneOfAnEarlierRun() throws IOException {
    ReportFolder reports = new ReportFolder(folder);
    reports.write("a.html", PAGE);
    long process = ProcessHandle.current().pid();
    Files.createDirectories(folder.resolve(".a.html." + process + ".part/in the way"));
    assertThatThrownBy(() -> reports.write("a.html", "text")).isInstanceOf(IOException.class);
    assertThat(folder.resolve("a.html")).doesNotExist();
  }

  @Test
  void aRunBeginsWithoutThePagesOfEarlierOnesAndKeepsWhatIsNotItsOwn() throws IOException {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve("a.html"), PAGE);
    Files.writeString(folder.resolve("compared.html"), HtmlReport.comparison(nothing()));
    Files.createSymbolicLink(folder.resolve("link.html"), elsewhere.resolve("a.html"));
    for (String name :
        List.of(
            "a.html",
            "index.html",
            "rules.html",
            "Kept by somebody.html",
            "notes.txt",
            "old.html")) {
      Files.writeString(folder.resolve(name), PAGE);
    }
    Files.writeString(folder.resolve("old.html"), unmarked(PAGE));
    Files.writeString(
        folder.resolve("old-compared.html"), unmarked(HtmlReport.comparison(nothing())));
    new ReportFolder(folder).open();
    assertThat(files(folder))
        .containsExactlyInAnyOrder(
            "Kept by somebody.html",
            "compared.html",
            "elsewhere",
            "link.html",
            "notes.txt",
            "old-compared.html");
    assertThat(elsewhere.resolve("a.html")).exists();
  }

  @Test
  void whoSharesAFolderTakesAwayNoPagesOfOthers() throws IOException {
    for (String name : List.of("a.html", "index.html", "other.html")) {
      Files.writeString(folder.resolve(name), PAGE);
    }
    new ReportFolder(folder).open(List.of("index.html", "a.html", "b.html"));
    assertThat(files(folder)).containsExactly("other.html");
  }

  @Test
  void halvesOfKilledRunsGoAndThoseOfOthersInWorkStay() throws IOException {
    long living = ProcessHandle.current().parent().orElseThrow().pid();
    String killed = ".a.html.999999999999.part";
    String own = ".b.html." + ProcessHandle.current().pid() + ".part";
    String other = ".c.html." + living + ".part";
    for (String name : List.of(killed, own, other, ".a.txt.999999999999.part", ".d.html.part")) {
      Files.writeString(folder.resolve(name), "half");
    }
    new ReportFolder(folder).open();
    assertThat(files(folder))
        .containsExactlyInAnyOrder(other, ".a.txt.999999999999.part", ".d.html.part");
    // A process with that number that began only now never wrote an old half.
    Files.setLastModifiedTime(
        folder.resolve(other), java.nio.file.attribute.FileTime.fromMillis(0));
    new ReportFolder(folder).open(List.of());
    assertThat(files(folder)).doesNotContain(other);
  }

  @Test
  void aFileInTheFoldersPlaceIsAnError() throws IOException {
    Path file = Files.writeString(folder.resolve("reports"), "");
    assertThatThrownBy(() -> new ReportFolder(file).make()).isInstanceOf(IOException.class);
  }

  @Test
  void aLinkInTheWayIsAnErrorAndStays() throws IOException {
    Path precious = Files.writeString(folder.resolve("precious.html"), PAGE);
    Path reports = Files.createDirectories(folder.resolve("reports"));
    Files.createSymbolicLink(reports.resolve("a.html"), precious);
    Files.createSymbolicLink(reports.resolve("b.html"), folder.resolve("nowhere"));
    ReportFolder written = new ReportFolder(reports);
    written.open();
    for (String name : List.of("a.html", "b.html")) {
      assertThatThrownBy(() -> written.write(name, PAGE + "new")).isInstanceOf(IOException.class);
    }
    assertThat(precious).hasContent(PAGE);
    assertThat(files(reports)).containsExactly("a.html", "b.html");
  }

  /** As pages were before they had a mark. */
  private static String unmarked(String page) {
    assertThat(page).contains(" name=\"generator\" ");
    return page.replaceFirst("<meta name=\"generator\"[^>]*>\n", "");
  }

  private static Comparison nothing() {
    Results none = new Results("0", "plans", Optional.empty(), 0, List.of(), List.of());
    return Comparison.of(none, none);
  }

  private static List<String> names(String... plans) {
    List<PlanFile> files = Stream.of(plans).map(p -> new PlanFile(Path.of(""), p)).toList();
    return List.copyOf(ReportFolder.names(files).values());
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }
}

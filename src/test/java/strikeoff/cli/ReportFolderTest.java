package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.PlanFiles.PlanFile;

class ReportFolderTest {

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
    reports.write("a.html", "first \u00B5");
    reports.write("a.html", "second");
    assertThat(folder.resolve("deep/down/a.html")).hasContent("second");
    assertThat(files(folder.resolve("deep/down"))).containsExactly("a.html");
  }

  @Test
  void aFailedWriteLeavesTheEarlierFileAlone() throws IOException {
    ReportFolder reports = new ReportFolder(folder);
    Files.createDirectories(folder.resolve("a.html/inside"));
    assertThatThrownBy(() -> reports.write("a.html", "text")).isInstanceOf(IOException.class);
    assertThat(files(folder)).containsExactly("a.html");
  }

  @Test
  void aFileInTheFoldersPlaceIsAnError() throws IOException {
    Path file = Files.writeString(folder.resolve("reports"), "");
    assertThatThrownBy(() -> new ReportFolder(file).make()).isInstanceOf(IOException.class);
  }

  @Test
  void aLinkInTheWayIsReplacedNotFollowed() throws IOException {
    Path precious = Files.writeString(folder.resolve("precious.txt"), "keep");
    Path reports = Files.createDirectories(folder.resolve("reports"));
    Files.createSymbolicLink(reports.resolve("a.html"), precious);
    new ReportFolder(reports).write("a.html", "new");
    assertThat(precious).hasContent("keep");
    assertThat(reports.resolve("a.html")).hasContent("new");
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

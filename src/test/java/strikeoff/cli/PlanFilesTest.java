package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.PlanFiles.Found;
import strikeoff.cli.PlanFiles.PlanFile;

class PlanFilesTest {

  @TempDir private Path folder;

  @BeforeEach
  void plans() throws IOException {
    for (String name :
        List.of(
            "curtains.yaml",
            "class/b.yml",
            "class/a.yaml",
            "class/term two/Z.YAML",
            "class/notes.txt",
            ".hidden/x.yaml",
            "class/.draft.yaml",
            "odd.yaml/inner.yaml",
            "empty/readme.md")) {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, "plan: x\n");
    }
  }

  @Test
  void searchesAFolderInOrderAndLeavesHiddenOnesOut() {
    assertThat(names("."))
        .containsExactly(
            "class/a.yaml",
            "class/b.yml",
            "class/term two/Z.YAML",
            "curtains.yaml",
            "odd.yaml/inner.yaml");
  }

  @Test
  void keepsTheOrderOfTheArgumentsAndTakesAFileOnce() {
    assertThat(names("curtains.yaml", "class/", "./curtains.yaml", "class/a.yaml"))
        .containsExactly("curtains.yaml", "class/a.yaml", "class/b.yml", "class/term two/Z.YAML");
  }

  @Test
  void aNamedFileNeedsNoEndingAndMayBeHidden() {
    assertThat(names("class/notes.txt", "class/.draft.yaml"))
        .containsExactly("class/notes.txt", "class/.draft.yaml");
  }

  @Test
  void matchesPatterns() {
    assertThat(names("class/*.yaml")).containsExactly("class/a.yaml");
    assertThat(names("class/**/*.{yaml,yml}")).containsExactly("class/a.yaml", "class/b.yml");
    assertThat(names("./cl?ss/[ab].*")).containsExactly("./class/a.yaml", "./class/b.yml");
    assertThat(names(folder + "/c*.yaml")).containsExactly(folder + "/curtains.yaml");
  }

  @Test
  void aFileWhoseNameLooksLikeAPatternIsThatFile() throws IOException {
    Files.writeString(folder.resolve("reeds [2].yaml"), "plan: x\n");
    assertThat(names("reeds [2].yaml")).containsExactly("reeds [2].yaml");
  }

  @Test
  void saysWhichArgumentsLeadNowhere() {
    Found found = found("missing.yaml", "none*.yaml", "empty", "[", "curtains.yaml");
    assertThat(found.plans()).hasSize(1);
    assertThat(found.wrong())
        .containsExactly(
            "missing.yaml: no such file or folder",
            "none*.yaml: matches no file",
            "empty: no .yaml or .yml file in this folder",
            "[: not a pattern: Missing ']");
  }

  @Test
  void anEmptyArgumentIsNotThisFolder() {
    assertThat(found("").wrong()).containsExactly("an empty argument names no plan");
    assertThat(found("").plans()).isEmpty();
  }

  @Test
  void aLinkThatLeadsBackIsFollowedOnce() throws IOException {
    Files.createSymbolicLink(folder.resolve("class/up"), folder);
    Files.createSymbolicLink(folder.resolve("class/twin.yaml"), folder.resolve("class/a.yaml"));
    assertThat(names("class")).filteredOn(name -> name.endsWith("a.yaml")).hasSize(1);
    assertThat(found(".").wrong()).isEmpty();
  }

  @Test
  void aDanglingLinkIsNoPlan() throws IOException {
    Files.createSymbolicLink(folder.resolve("class/gone.yaml"), folder.resolve("nowhere"));
    assertThat(names("class")).doesNotContain("class/gone.yaml");
    assertThat(found("class/gone.yaml").wrong()).hasSize(1);
  }

  @Test
  void aClosedFolderIsReportedAndTheRestFound() throws IOException {
    Path closed = folder.resolve("class/term two");
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
    try {
      assumeTrue(!Files.isReadable(closed), "this user may read everything");
      Found found = found("class");
      assertThat(found.plans()).hasSize(2);
      assertThat(found.closed()).containsExactly("class/term two: this folder can't be read");
    } finally {
      Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  @Test
  void moreThanTheMostIsWrongUsage() {
    Found found = PlanFiles.of(List.of("."), here(), 3, "-");
    assertThat(found.plans()).hasSize(3);
    assertThat(found.wrong()).containsExactly("more than 3 plans; --max-plans takes more at once");
  }

  private List<String> names(String... arguments) {
    Found found = found(arguments);
    assertThat(found.wrong()).isEmpty();
    return found.plans().stream().map(PlanFile::name).toList();
  }

  private Found found(String... arguments) {
    return PlanFiles.of(List.of(arguments), here(), 1000, "-");
  }

  private Surroundings here() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return new Surroundings(
        nowhere, nowhere, java.io.InputStream.nullInputStream(), Map.of(), false, folder, 1);
  }
}

package strikeoff.cli.files;

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
import strikeoff.cli.files.PlanFiles.Found;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.text.Surroundings;

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

  /** Else a link that comes first by its name would hide whose plan it leads to. */
  @Test
  void aPlanIsToldByItsOwnNameAndNotByThatOfALinkToIt() throws IOException {
    Files.createSymbolicLink(folder.resolve("class/Link.yaml"), Path.of("b.yml"));
    Files.createSymbolicLink(folder.resolve("aaa"), Path.of("class"));
    assertThat(names("class"))
        .containsExactly("class/a.yaml", "class/b.yml", "class/term two/Z.YAML");
    assertThat(names("class/Link.yaml")).containsExactly("class/Link.yaml");
    assertThat(names("."))
        .startsWith("class/a.yaml", "class/b.yml")
        .noneMatch(n -> n.contains("aaa"));
  }

  @Test
  void aFolderThatIsCalledLikeAPlanAndHoldsNoneLeavesTheOthersChecked() throws IOException {
    Files.createDirectory(folder.resolve("none.yaml"));
    Found found = found("curtains.yaml", "none.yaml");
    assertThat(found.plans()).hasSize(1);
    assertThat(found.wrong()).isEmpty();
    assertThat(found.closed()).containsExactly("none.yaml: no .yaml or .yml file in this folder");
    assertThat(found("empty").wrong()).hasSize(1);
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
  void whatLooksLikeAPlanAndCannotBeReadIsNamed() throws Exception {
    Files.createSymbolicLink(folder.resolve("class/gone.yaml"), folder.resolve("nowhere"));
    Files.createSymbolicLink(folder.resolve("class/term three"), folder.resolve("nowhere"));
    Files.createSymbolicLink(folder.resolve("class/picture.png"), folder.resolve("nowhere"));
    assertThat(new ProcessBuilder("mkfifo", folder + "/class/pipe.yml").start().waitFor()).isZero();
    assertThat(found("class").plans()).hasSize(3);
    assertThat(found("class").closed())
        .containsExactly(
            "class/gone.yaml: it is a link that leads nowhere",
            "class/pipe.yml: it is a pipe or a device",
            "class/term three: it is a link that leads nowhere");
    assertThat(found("class/*.yaml").closed())
        .containsExactly("class/gone.yaml: it is a link that leads nowhere");
    // As a shell hands it in that has * in its place.
    Found named = found("class/gone.yaml", "class/pipe.yml", "/dev/null", "curtains.yaml");
    assertThat(named.closed())
        .containsExactly(
            "class/gone.yaml: it is a link that leads nowhere",
            "class/pipe.yml: it is a pipe or a device",
            "/dev/null: it is a pipe or a device");
    assertThat(named.plans()).hasSize(1);
    assertThat(named.wrong()).isEmpty();
  }

  /** Whoever hands a folder in must not have files quoted that lie elsewhere. */
  @Test
  void aLinkOutOfTheFolderIsNotFollowedUnlessItIsNamed() throws IOException {
    Files.createSymbolicLink(folder.resolve("class/q.yaml"), folder.resolve("curtains.yaml"));
    Files.createSymbolicLink(folder.resolve("class/up"), folder.resolve("odd.yaml"));
    Files.createSymbolicLink(folder.resolve("class/picture.png"), folder.resolve("curtains.yaml"));
    Files.createSymbolicLink(folder.resolve("term"), folder.resolve("class/term two"));
    Found found = found("class");
    assertThat(found.plans()).hasSize(3);
    assertThat(found.closed())
        .containsExactly(
            "class/q.yaml: it is a link out of its folder, and is not followed; name it itself to"
                + " have it read",
            "class/up: it is a link out of its folder, and is not followed");
    assertThat(found("class/*.yaml").closed())
        .singleElement()
        .asString()
        .startsWith("class/q.yaml: it is a link out of its folder");
    assertThat(found("class/**/*.yaml").closed()).hasSize(2);
    assertThat(names("class/q.yaml")).containsExactly("class/q.yaml");
    assertThat(names("term")).containsExactly("term/Z.YAML");
    assertThat(found(".").closed()).isEmpty();
  }

  @Test
  void aFolderTooDeepIsNamed() throws IOException {
    Path deep = Files.createDirectories(folder.resolve("deep/" + "d/".repeat(41)));
    Files.writeString(deep.resolve("x.yaml"), "plan: x\n");
    assertThat(found("deep").plans()).isEmpty();
    assertThat(found("deep").closed())
        .containsExactly(
            "deep" + "/d".repeat(41) + ": more than 40 folders deep, and not searched");
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
    Found found = PlanFiles.of(List.of("."), here(), 3, PlanFiles.MAX_PLANS, "-");
    assertThat(found.plans()).hasSize(3);
    assertThat(found.wrong()).containsExactly("more than 3 plans; --max-plans takes more at once");
  }

  private List<String> names(String... arguments) {
    Found found = found(arguments);
    assertThat(found.wrong()).isEmpty();
    return found.plans().stream().map(PlanFile::name).toList();
  }

  private Found found(String... arguments) {
    return PlanFiles.of(List.of(arguments), here(), 1000, PlanFiles.MAX_PLANS, "-");
  }

  private Surroundings here() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return new Surroundings(
        nowhere, nowhere, java.io.InputStream.nullInputStream(), Map.of(), false, folder, 1);
  }
}

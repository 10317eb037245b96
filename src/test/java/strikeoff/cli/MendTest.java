package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.artwork.DemoFilms;
import strikeoff.cli.Scenario.Outcome;

class MendTest {

  @TempDir private Path folder;
  private Path plan;

  @BeforeEach
  void plan() throws IOException {
    plan = folder.resolve("moved.yaml");
    Files.copy(Path.of("plans/mistakes/moved-wet.yaml"), plan);
  }

  private Outcome run(String... command) {
    return Scenario.run(folder, Map.of("COLUMNS", "200"), List.of(command));
  }

  private String text() throws IOException {
    return Files.readString(plan);
  }

  @Test
  void whatIsPrintedIsAPatch() throws Exception {
    String before = text();
    Outcome outcome = run("mend", "moved.yaml");
    assertThat(outcome.exit()).isZero();
    assertThat(text()).isEqualTo(before);
    assertThat(outcome.out())
        .startsWith("--- moved.yaml\n+++ moved.yaml\n@@ -")
        .contains("@@ drying/moved-before-lift-safe\n")
        .contains("-    before moving: 2 min\n+    before moving: ");
    assertThat(outcome.err()).startsWith("moved.yaml: 3 edits. Printable");
    Path patch = folder.resolve("mend.patch");
    Files.writeString(patch, outcome.out());
    Process process;
    try {
      process =
          new ProcessBuilder("patch", "-p0", "-i", patch.toString())
              .directory(folder.toFile())
              .start();
    } catch (IOException e) {
      assumeThat(false).as("no patch here").isTrue();
      return;
    }
    assertThat(process.waitFor()).isZero();
    String patched = text();
    Files.writeString(plan, before);
    run("mend", "moved.yaml", "--write");
    assertThat(text()).isEqualTo(patched).isNotEqualTo(before);
  }

  @Test
  void allElseOfTheFileStaysAndTheSecondTimeNothingChanges() throws IOException {
    String before = "\ufeff" + text().replace("\n", "\r\n");
    Files.writeString(plan, before);
    Files.setPosixFilePermissions(plan, PosixFilePermissions.fromString("rw-r-----"));
    assertThat(run("mend", "moved.yaml", "--write").exit()).isZero();
    String after = text();
    assertThat(after.replaceAll("before moving: \\d[^\r\n]*", "before moving: 2 min"))
        .isEqualTo(before);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(plan)))
        .isEqualTo("rw-r-----");
    Outcome again = run("mend", "moved.yaml", "--write");
    assertThat(again.exit()).isZero();
    assertThat(again.err()).startsWith("moved.yaml: 0 edits. Printable");
    assertThat(text()).isEqualTo(after);
    assertThat(run("check", "moved.yaml").exit()).isZero();
  }

  @Test
  void linesMayEndWithACarriageReturnAlone() throws IOException {
    String before = text().replace("\n", "\r");
    Files.writeString(plan, before);
    assertThat(run("mend", "moved.yaml").err()).startsWith("moved.yaml: 3 edits. Printable");
    assertThat(run("mend", "moved.yaml", "--write").exit()).isZero();
    assertThat(text().replaceAll("before moving: \\d[^\r]*", "before moving: 2 min"))
        .isEqualTo(before);
  }

  @Test
  void aSoundPlanStaysAsItIs() throws IOException {
    String text = Files.readString(Path.of("plans/estuary-curtains.yaml"));
    Files.writeString(plan, text);
    DemoFilms.layInto(folder);
    Outcome outcome = run("mend", "moved.yaml", "--risks", "--order", "--layout", "--write");
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).isEmpty();
    assertThat(text()).isEqualTo(text);
  }

  @Test
  void itIsWrittenElsewhereOnlyWhereNothingStands() throws IOException {
    String before = text();
    assertThat(run("mend", "moved.yaml", "-o", "new.yaml").exit()).isZero();
    assertThat(text()).isEqualTo(before);
    assertThat(Files.readString(folder.resolve("new.yaml"))).isNotEqualTo(before);
    Outcome again = run("mend", "moved.yaml", "-o", "new.yaml");
    assertThat(again.exit()).isEqualTo(4);
    assertThat(again.err()).contains("new.yaml already");
    Files.createSymbolicLink(folder.resolve("link.yaml"), folder.resolve("nowhere"));
    assertThat(run("mend", "moved.yaml", "-o", "link.yaml").exit()).isEqualTo(4);
    assertThat(folder.resolve("link.yaml")).isSymbolicLink();
    assertThat(run("mend", "moved.yaml", "-o", "no/such/x.yaml").err().replaceAll("\\s+", " "))
        .contains("can't be written: the folder ")
        .contains("no/such isn't there");
    assertThat(run("mend", "moved.yaml", "-o", "a", "--write").exit()).isEqualTo(2);
  }

  /** Films lie beside the plan, and nowhere else. */
  @Test
  void itIsNotWrittenWhereItsFilmsAreMissing() throws IOException {
    String curtains = Files.readString(Path.of("plans/estuary-curtains.yaml"));
    String broken = curtains.replaceFirst("soda ash: [^,}]+", "soda ash: 1 g");
    assertThat(broken).isNotEqualTo(curtains);
    Files.writeString(plan, broken);
    DemoFilms.layInto(folder);
    Files.createDirectory(folder.resolve("away"));
    Outcome outcome = run("mend", "moved.yaml", "-o", "away/new.yaml");
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err().replaceAll("\\s+", " "))
        .contains("moved.yaml: the mended plan can't be written: at ")
        .contains(
            "away/new.yaml it would not find what it takes from beside it, films or a studio.yaml:"
                + " write it into the plan's own folder, or copy them there first");
    assertThat(folder.resolve("away/new.yaml")).doesNotExist();
    assertThat(run("mend", "moved.yaml", "-o", "new.yaml").exit()).isZero();
  }

  @Test
  void aLinkStaysALink() throws IOException {
    Path link = folder.resolve("link.yaml");
    Files.createSymbolicLink(link, plan);
    assertThat(run("mend", "link.yaml", "--write").exit()).isZero();
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(run("check", "moved.yaml").exit()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"mend", "propose"})
  void aPlanThatItsOwnerLockedStays(String command) throws IOException {
    String before = text();
    Files.setPosixFilePermissions(plan, PosixFilePermissions.fromString("r--r--r--"));
    Outcome outcome = run(command, "moved.yaml", "--write");
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err()).contains("can't be written: the file is write-protected");
    assertThat(text()).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"mend", "propose"})
  void aPlanOfTwoNamesStaysOneFile(String command) throws IOException {
    String before = text();
    Files.createLink(folder.resolve("twin.yaml"), plan);
    Outcome outcome = run(command, "moved.yaml", "--write");
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err()).contains("can't be written: the file has another name too");
    assertThat(text()).isEqualTo(before);
  }

  @Test
  void orderAndLayoutChangeOnlyWhereTheyMay() throws IOException {
    Files.copy(Path.of("plans/mistakes/four-stations.yaml"), folder.resolve("four.yaml"));
    Outcome kept = run("mend", "four.yaml");
    assertThat(kept.exit()).isEqualTo(1);
    assertThat(kept.out()).isEmpty();
    assertThat(kept.err().replaceAll("\\s+", " "))
        .contains("left table/too-many-stations")
        .contains(" Mended with --layout.");
    assertThat(run("mend", "four.yaml", "--layout").exit()).isZero();
  }

  /** Under its old number it would let pass what nobody accepted. */
  @Test
  void whatIsAcceptedAtAStepStaysWithIt() throws IOException {
    String border = Files.readString(Path.of("plans/first-border.yaml"));
    String hurried = border.replace("  - dry: until fix-safe\n", "");
    assertThat(hurried).isNotEqualTo(border);
    int rinse =
        (int)
                hurried
                    .substring(hurried.indexOf("run:"))
                    .lines()
                    .takeWhile(line -> !line.startsWith("  - rinse"))
                    .filter(line -> line.startsWith("  - "))
                    .count()
            + 1;
    String accept =
        "accept:\n  - {rule: fixing/rinsed-hot, at: step %d, because: It is only cool.}\n";
    Files.writeString(plan, hurried + String.format(accept, rinse));
    Outcome outcome = run("mend", "moved.yaml", "--order", "--write");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(text()).contains("  - dry: ").endsWith(String.format(accept, rinse + 1));
  }

  @Test
  void aPlanThatCannotBeReadIsToldAsCheckTellsIt() throws IOException {
    Files.writeString(plan, "plan: x\ncloth: 3\n");
    Outcome outcome = run("mend", "moved.yaml", "--write");
    assertThat(outcome.exit()).isEqualTo(3);
    assertThat(outcome.err()).contains("moved.yaml:2:").doesNotContain("\tat ");
    assertThat(text()).isEqualTo("plan: x\ncloth: 3\n");
    assertThat(run("mend", "nowhere.yaml").exit()).isEqualTo(2);
    assertThat(run("mend", "-", "--write").exit()).isEqualTo(2);
  }

  @Test
  void bytesThatAreNoTextAreNotWrittenAnew() throws IOException {
    byte[] plain = text().getBytes(StandardCharsets.UTF_8);
    byte[] bytes = Arrays.copyOf(plain, plain.length + 4);
    System.arraycopy(new byte[] {'#', ' ', (byte) 0xe9, '\n'}, 0, bytes, plain.length, 4);
    Files.write(plan, bytes);
    Outcome outcome = run("mend", "moved.yaml", "--write");
    assertThat(outcome.exit()).isEqualTo(3);
    assertThat(outcome.err()).contains("0xE9");
    assertThat(Files.readAllBytes(plan)).isEqualTo(bytes);
  }

  /** Every demo mistake that edits can mend comes out without a stop, in at most three hunks. */
  @ParameterizedTest
  @ValueSource(
      strings = {"hot-bath", "moved-wet", "short-blue", "no-mask", "four-stations", "thin-bath"})
  void demoMistakesAreMended(String name) throws IOException {
    Files.copy(Path.of("plans/mistakes/" + name + ".yaml"), folder.resolve("m.yaml"));
    Outcome outcome = run("mend", "m.yaml", "--layout", "--risks");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.out().lines().filter(line -> line.startsWith("@@")).count())
        .isBetween(1L, 3L);
    Files.write(folder.resolve("again.yaml"), mended(name).getBytes(StandardCharsets.UTF_8));
    assertThat(run("mend", "again.yaml", "--layout", "--risks").out()).isEmpty();
  }

  private String mended(String name) throws IOException {
    run("mend", "m.yaml", "--layout", "--risks", "--write");
    return Files.readString(folder.resolve("m.yaml"));
  }
}

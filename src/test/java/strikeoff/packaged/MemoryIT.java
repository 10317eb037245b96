package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MemoryIT {

  @TempDir private Path folder;

  /** Ten thousand motifs in five colours need far more than 48 MB; the others need little. */
  @Test
  void aHeavyPlanTakesNothingFromItsNeighbours() throws Exception {
    StringBuilder heavy = new StringBuilder("plan: Heavy\n");
    heavy.append("cloth: {fibre: cotton, length: 10 m, width: 150 cm, washed: yes}\n");
    heavy.append("table: {length: 11 m, width: 1.8 m}\nscreens:\n");
    for (int i = 0; i < 5; i++) {
      heavy.append("  s" + i + ": {frame: 10 x 10 cm, image: 5 x 5 cm, mesh: 43/cm}\n");
    }
    heavy.append("pastes:\n");
    for (int i = 0; i < 5; i++) {
      heavy.append("  p" + i + ": {medium: paint, colour: \"#6f7f4" + i + "\", amount: 9 kg}\n");
    }
    heavy.append("designs:\n  d:\n    size: 4 x 4 cm\n    separations:\n");
    for (int i = 0; i < 5; i++) {
      heavy.append("      - {screen: s" + i + ", paste: p" + i + ", covers: 20 %}\n");
    }
    heavy.append("placements:\n  b: {design: d, fill: grid, pitch: 4 x 4 cm}\n");
    heavy.append("run:\n  - mix: all\n  - print: b\n    order: over all\n  - dry: 2 h\n");
    Files.writeString(folder.resolve("b.yaml"), heavy);
    for (String name : new String[] {"a.yaml", "c.yaml", "d.yaml"}) {
      Files.copy(Path.of("plans/first-border.yaml"), folder.resolve(name));
    }
    Program.Told told =
        Program.in(Program.Way.LAUNCHER, folder)
            .options("-Xmx48m")
            .run("check", ".", "--verdicts", "--reports", "out");
    assertThat(told.out().lines().map(line -> line.replaceFirst(":.*", "")))
        .containsExactly(
            "PRINTABLE      a.yaml",
            "NOT CHECKED    b.yaml",
            "PRINTABLE      c.yaml",
            "PRINTABLE      d.yaml");
    assertThat(told.out()).contains("b.yaml: it needs more memory than there is");
    assertThat(told.exit()).isEqualTo(4);
  }

  @ParameterizedTest
  @EnumSource
  void tooLittleForAnythingIsSaidInASentence(Program.Way way) throws Exception {
    Files.copy(Path.of("plans/first-border.yaml"), folder.resolve("border.yaml"));
    List<Integer> exits = new ArrayList<>();
    for (String heap : List.of("-Xmx5m", "-Xmx7m")) {
      // The collector that a JDK takes by itself differs with the machine; the launcher names its
      // own.
      String[] options =
          way == Program.Way.JAR ? new String[] {heap, "-XX:+UseG1GC"} : new String[] {heap};
      Program.Told told =
          Program.in(way, folder).options(options).run("check", "border.yaml", "--verdicts");
      assertThat(told.out() + told.err()).doesNotContain("\tat ", "Exception", "Error");
      if (told.exit() != 0) {
        assertThat(told.out() + told.err()).as(heap).contains("memory");
      }
      exits.add(told.exit());
    }
    // With an archive of classes the launcher needs very little.
    assertThat(exits).isSubsetOf(0, 4);
    if (way == Program.Way.JAR) {
      assertThat(exits).contains(4);
    }
  }
}

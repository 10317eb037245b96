package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.commands.Strikeoff;
import strikeoff.cli.text.Surroundings;

/** A workshop's folder is watched while its policy, its rules and its folders change. */
@Timeout(120)
class WatchJudgingTest {

  private static final Path DEMO = Path.of("plans/workshop");

  @TempDir private Path desk;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void copyTheDemo() throws IOException {
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path file : files.toList()) {
        Path copy = desk.resolve("workshop").resolve(DEMO.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
    }
  }

  private CompletableFuture<Integer> watching(int rounds, String... more) {
    Surroundings here =
        new Surroundings(
            new PrintWriter(out),
            new PrintWriter(err),
            InputStream.nullInputStream(),
            Map.of("COLUMNS", "200"),
            false,
            desk,
            2);
    String[] command =
        Stream.concat(
                Stream.of("watch", "workshop", "--rounds", "" + rounds, "--reports", "pages"),
                Stream.of(more))
            .toArray(String[]::new);
    return CompletableFuture.supplyAsync(() -> Strikeoff.run(here, command));
  }

  private Path file(String name) {
    return desk.resolve("workshop").resolve(name);
  }

  /** As many editors save: a new file is written and takes the old one's name. */
  private void edit(String name, String from, String to) throws IOException {
    String text = Files.readString(file(name));
    assertThat(text).contains(from);
    Path fresh = file(name + "~");
    Files.writeString(fresh, text.replace(from, to));
    Files.move(fresh, file(name), StandardCopyOption.REPLACE_EXISTING);
  }

  private void until(StringWriter said, String text, int times) throws InterruptedException {
    while (count(said, text) < times) {
      Thread.sleep(10);
    }
  }

  /** How many lines of the output begin like a verdict and hold it, or of the errors hold it. */
  private int count(StringWriter said, String text) {
    return (int)
        said.toString()
            .lines()
            .filter(
                line ->
                    said == err
                        || line.matches("((NOT )?PRINTABLE|UNREADABLE|NOT CHECKED|watching) .*"))
            .filter(line -> line.contains(text))
            .count();
  }

  @Test
  void aSavedPolicyIsTakenUpByThePlansBelowItAlone() throws Exception {
    Files.createDirectory(file("sunday"));
    Files.copy(file("saturday/agnes.yaml"), file("sunday/agnes.yaml"));
    CompletableFuture<Integer> watch = watching(5);
    until(out, "watching workshop", 1);
    assertThat(count(out, "sunday/agnes.yaml")).isEqualTo(1);

    edit("saturday/studio.yaml", "hours: 10:00-16:00", "hours: 10:00-11:00");
    until(out, "saturday/agnes.yaml", 2);
    until(out, "saturday/gerda.yaml", 2);
    assertThat(count(out, "sunday/agnes.yaml")).as("not below it").isEqualTo(1);

    Files.delete(file("saturday/studio.yaml"));
    until(out, "saturday/gerda.yaml", 3);
    assertThat(count(out, "sunday/agnes.yaml")).isEqualTo(1);

    Files.writeString(file("sunday/studio.yaml"), "studio: Sunday\nlimits: {cloth/shrinks: 1 %}\n");
    until(err, "no limit is called “cloth/shrinks”", 1);
    until(out, "sunday/agnes.yaml", 2);
    assertThat(out.toString().replaceAll("\\s+", " "))
        .contains("NOT CHECKED workshop/sunday/agnes.yaml: the policy that holds for it");
    edit("sunday/studio.yaml", "limits: {cloth/shrinks: 1 %}", "hours: 10-14");
    until(out, "sunday/agnes.yaml", 3);
    assertThat(watch.get(60, TimeUnit.SECONDS)).isZero();
    assertThat(count(err, "strikeoff: ")).as("one note, one mistake: " + err).isEqualTo(2);
  }

  @Test
  void aSavedRuleIsTakenUpAndABrokenOneIsToldUntilItIsMended() throws Exception {
    CompletableFuture<Integer> watch = watching(3, "--rules", "workshop/rules");
    until(out, "watching workshop", 1);
    assertThat(out.toString()).contains("and screens must be washed").contains("house/no-notes");
    assertThat(err.toString()).isEmpty();

    edit("rules/house/day.dslr", "the day ends later than 16:30", "the day finishes late");
    until(err, "“the day finishes late” is no sentence that is known here", 1);
    int before = count(out, "saturday/agnes.yaml");
    edit("saturday/agnes.yaml", "plan: Agnes's reed runner", "plan: Another runner");
    until(err, "“the day finishes late” is no sentence that is known here", 2);
    assertThat(count(out, "saturday/agnes.yaml")).as("not judged by half").isEqualTo(before);

    edit("rules/house/day.dslr", "the day finishes late", "the day ends later than 10:00");
    until(out, "saturday/agnes.yaml", before + 1);
    until(out, "saturday/gerda.yaml", 2);
    Files.delete(file("rules/house/day.dslr"));
    assertThat(watch.get(60, TimeUnit.SECONDS)).isZero();
    String last = out.toString().substring(out.toString().lastIndexOf("saturday/agnes.yaml"));
    assertThat(last).doesNotContain("STOP  house/late-finish");
  }

  @Test
  void aFolderThatGoesAndComesBackIsWatchedOn() throws Exception {
    CompletableFuture<Integer> watch = watching(4);
    until(out, "watching workshop", 1);
    Files.move(desk.resolve("workshop"), desk.resolve("away"));
    // The index of none is written in a round of its own.
    Path index = desk.resolve("pages/index.html");
    while (!Files.readString(index).contains("0 of 0 plans are printable.")) {
      Thread.sleep(10);
    }
    Files.move(desk.resolve("away"), desk.resolve("workshop"));
    until(out, "saturday/agnes.yaml", 2);
    edit("saturday/agnes.yaml", "plan: Agnes's reed runner", "plan: Another runner");
    assertThat(watch.get(60, TimeUnit.SECONDS)).isZero();
    assertThat(count(out, "saturday/agnes.yaml")).isEqualTo(3);
  }

  @Test
  void aPlanThatIsBrokenForAWhileIsToldAndCheckedAgain() throws Exception {
    try (Stream<Path> plans = Files.list(file("saturday"))) {
      List<Path> others =
          plans.filter(p -> !p.endsWith("agnes.yaml")).sorted(Comparator.reverseOrder()).toList();
      for (Path other : others) {
        Files.delete(other);
      }
    }
    CompletableFuture<Integer> watch = watching(4);
    until(out, "watching workshop", 1);
    String whole = Files.readString(file("saturday/agnes.yaml"));
    Files.writeString(file("saturday/agnes.yaml"), "plan: [half\n");
    until(out, "UNREADABLE", 1);
    Files.write(file("saturday/agnes.yaml"), new byte[] {(byte) 0xFF, 0, 1});
    until(out, "UNREADABLE", 2);
    Files.writeString(file("saturday/agnes.yaml"), whole);
    assertThat(watch.get(60, TimeUnit.SECONDS)).isZero();
    assertThat(out.toString().lastIndexOf("PRINTABLE "))
        .isGreaterThan(out.toString().lastIndexOf("UNREADABLE"));
  }
}

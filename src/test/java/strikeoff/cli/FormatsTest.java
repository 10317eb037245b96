package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;
import strikeoff.report.json.JsonReading;

/** What is written where. */
class FormatsTest {

  private static final String BORDER = "plans/first-border.yaml";

  @TempDir private Path folder;

  private Outcome run(String... args) {
    return Scenario.run(Path.of("").toAbsolutePath(), Map.of(), List.of(args));
  }

  private static Outcome fed(String input, String... args) {
    return Scenario.run(Path.of("").toAbsolutePath(), Map.of(), List.of(args), input);
  }

  private String in(String file) {
    return folder.resolve(file).toString();
  }

  @Test
  void aFormatOnStandardOutputTakesTheTextsPlace() {
    Outcome outcome = run("check", BORDER, "--format", "json");
    assertThat(outcome.err()).isEmpty();
    assertThat(JsonReading.of(outcome.out()))
        .isInstanceOfSatisfying(
            JsonReading.Read.Good.class,
            good -> assertThat(good.results().plans().get(0).file()).isEqualTo(BORDER));
  }

  @Test
  void severalFormatsGoToFilesAndTheTextStays() throws IOException {
    String text = run("check", BORDER).out();
    Outcome outcome =
        run(
            "check",
            BORDER,
            "-f=json=" + in("a/r.json"),
            "--format",
            "sarif=" + in("r.sarif"),
            "--format=junit=" + in("r.xml"));
    assertThat(outcome).isEqualTo(new Outcome(text, "", outcome.exit()));
    assertThat(Files.readString(folder.resolve("a/r.json")))
        .isEqualTo(run("check", BORDER, "--format", "json").out());
    assertThat(Files.readString(folder.resolve("r.sarif")))
        .isEqualTo(run("check", BORDER, "--format", "sarif").out());
    assertThat(Files.readString(folder.resolve("r.xml")))
        .isEqualTo(run("check", BORDER, "--format", "junit").out());
  }

  @Test
  void textToAFileIsTheSameTextWithoutColour() throws IOException {
    String text = run("check", BORDER).out();
    Outcome outcome = run("check", BORDER, "-f", "text=" + in("log.txt"), "-f", "junit");
    assertThat(outcome.out()).startsWith("<?xml");
    assertThat(Files.readString(folder.resolve("log.txt"))).isEqualTo(text);
  }

  @Test
  void whatCannotBeWrittenTogetherIsWrongUsage() {
    assertThat(run("check", BORDER, "-f", "json", "-f", "sarif").exit()).isEqualTo(2);
    assertThat(run("check", BORDER, "-f", "json=" + in("a"), "-f", "sarif=" + in("./a")).err())
        .contains("two formats can't go to one file");
    assertThat(run("check", BORDER, "-f", "sariff").err()).contains("did you mean “sarif”?");
    assertThat(run("check", BORDER, "-f", "json=").exit()).isEqualTo(2);
  }

  @Test
  void aFileThatCannotBeWrittenIsAFaultAndTheRestIsWritten() throws IOException {
    Files.writeString(folder.resolve("taken"), "x");
    Outcome outcome =
        run("check", BORDER, "-f", "json=" + in("taken/r.json"), "-f", "sarif=" + in("r.sarif"));
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err().replaceAll("\\s+", " ")).contains("this file can't be written");
    assertThat(folder.resolve("r.sarif")).exists();
  }

  @Test
  void aPlanMayComeFromStandardInput() throws IOException {
    String plan = Files.readString(Path.of(BORDER));
    Outcome outcome = fed(plan, "check", "-", "--stdin-name", BORDER);
    assertThat(outcome).isEqualTo(run("check", BORDER));
    Outcome bad = fed("plan: A\nclothh: {}\n", "check", "-");
    assertThat(bad.exit()).isEqualTo(3);
    assertThat(bad.out().replaceAll("\\s+", " ")).contains("-:2:1 clothh");
  }

  /** Issue 6: 1, 2 and 7 parts, joined, give the same bytes as one run. */
  @Test
  void partsJoinedAreTheSameBytesAsOneRun() throws IOException {
    Outcome whole =
        run("check", "plans", "--reports", in("whole"), "-q", "-f", "json=" + in("whole.json"));
    for (int parts : List.of(1, 2, 7)) {
      List<String> join = new ArrayList<>(List.of("join"));
      for (int part = parts; part >= 1; part--) {
        String file = in(parts + "-" + part + ".json");
        String shard = part + "/" + parts;
        run(
            "check",
            "plans",
            "--reports",
            in("pages" + parts),
            "--shard",
            shard,
            "-q",
            "-f",
            "json=" + file);
        join.add(file);
      }
      String joined = in("joined" + parts + ".json");
      join.addAll(List.of("--reports", in("pages" + parts), "-f", "json=" + joined));
      assertThat(run(join.toArray(String[]::new)).exit()).isEqualTo(whole.exit());
      assertThat(Path.of(joined)).hasSameTextualContentAs(folder.resolve("whole.json"));
      try (var pages = Files.list(folder.resolve("whole"))) {
        for (Path page : pages.toList()) {
          assertThat(folder.resolve("pages" + parts).resolve(page.getFileName()))
              .hasSameBinaryContentAs(page);
        }
      }
    }
  }

  @Test
  void partsThatAreNotAllOfOneBatchAreRefused() throws IOException {
    run("check", BORDER, "plans/class", "-q", "--shard", "1/2", "-f", "json=" + in("1.json"));
    run("check", BORDER, "-q", "-f", "json=" + in("other.json"));
    assertThat(run("join", in("1.json")).err().replaceAll("\\s+", " "))
        .contains("part 2 of 2 is missing");
    assertThat(run("join", in("1.json"), in("1.json")).err()).contains("part 1 is there twice");
    assertThat(run("join", in("1.json"), in("other.json")).err()).contains("two batches");
    assertThat(run("join", in("1.json")).exit()).isEqualTo(2);
    Files.writeString(folder.resolve("no.json"), "{}");
    assertThat(run("join", in("no.json")).exit()).isEqualTo(3);
    assertThat(run("join", in("gone.json")).exit()).isEqualTo(2);
    assertThat(run("check", BORDER, "--shard", "3/2").exit()).isEqualTo(2);
  }

  @Test
  void morePartsThanPlansLeaveSomeEmpty() {
    Outcome outcome = run("check", BORDER, "--shard", "2/2");
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).contains("0 plans");
  }
}

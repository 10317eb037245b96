package strikeoff.cli.commands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.cli.Scenario;
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
  void textToAFileAloneIsWritten() throws IOException {
    Outcome shown = run("check", BORDER);
    assertThat(run("check", BORDER, "-f", "text=" + in("log.txt")))
        .isEqualTo(new Outcome("", "", shown.exit()));
    assertThat(folder.resolve("log.txt")).hasContent(shown.out());
    run("check", BORDER, "-q", "-f", "json=" + in("r.json"));
    run("join", in("r.json"), "-f", "text=" + in("joined.txt"));
    assertThat(folder.resolve("joined.txt")).hasContent(run("join", in("r.json")).out());
    run("compare", BORDER, BORDER, "-f", "text=" + in("compared.txt"));
    assertThat(folder.resolve("compared.txt")).hasContent(run("compare", BORDER, BORDER).out());
    Files.writeString(folder.resolve("taken"), "");
    Outcome lost = run("check", BORDER, "-f", "text=" + in("taken/log.txt"));
    assertThat(lost.exit()).isEqualTo(4);
    assertThat(lost.err().replaceAll("\\s+", " ")).contains("log.txt: this file can't be written");
  }

  @Test
  void whatCannotBeWrittenTogetherIsWrongUsage() {
    assertThat(run("check", BORDER, "-f", "json", "-f", "sarif").exit()).isEqualTo(2);
    assertThat(run("check", BORDER, "-f", "json=" + in("a"), "-f", "sarif=" + in("./a")).err())
        .contains("two results can't go to one file");
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

  /** To open one waits until another program reads it, which may be never. */
  @Test
  void aPipeWithANameIsRefusedAndADeviceTakesAFormat() throws Exception {
    Path pipe = folder.resolve("pipe");
    assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    Outcome refused =
        assertTimeoutPreemptively(
            Duration.ofSeconds(60), () -> run("check", BORDER, "-q", "-f", "json=" + pipe));
    assertThat(refused.err().replaceAll("\\s+", " ")).contains("pipe: it is a pipe; name a file");
    assertThat(refused.exit()).isEqualTo(2);
    assertThat(run("check", BORDER, "-q", "-f", "json=/dev/null").err()).isEmpty();
    assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
  }

  @Test
  void aLinkGoesOnLeadingToItsFile() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("kept.json"), run("check", BORDER, "-f", "json", "--part", "2/2").out());
    Path link = folder.resolve("link.json");
    try {
      Files.createSymbolicLink(link, file);
    } catch (IOException | UnsupportedOperationException e) {
      assumeTrue(false, "no links here");
    }
    run("check", BORDER, "-q", "-f", "json=" + link);
    assertThat(link).isSymbolicLink();
    assertThat(file).hasContent(run("check", BORDER, "-f", "json").out());
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

  /**
   * 1, 2 and 7 parts, joined, give the same bytes as one run: with policies found beside plans, and
   * with one that has own rules run.
   */
  @ParameterizedTest
  @ValueSource(strings = {"plans", "plans/workshop --rules plans/workshop/rules"})
  void partsJoinedAreTheSameBytesAsOneRun(String plans) throws IOException {
    String check = "check " + plans + " -q";
    Outcome whole = run(writing("whole", check.split(" ")));
    assertThat(folder.resolve("whole/index.html")).exists();
    assertThat(Files.readString(folder.resolve("whole.json")))
        .contains("plans/workshop/saturday/studio.yaml");
    assertThat(Files.readString(folder.resolve("whole.sarif")).contains("house/late-finish"))
        .as("own rules are run")
        .isEqualTo(plans.contains("--rules"));
    for (int parts : List.of(1, 2, 7)) {
      List<String> join = new ArrayList<>(List.of("join"));
      for (int part = parts; part >= 1; part--) {
        String file = in(parts + "-" + part + ".json");
        String pages = in("joined" + parts);
        String which = part + "/" + parts;
        run((check + " --part " + which + " --reports " + pages + " -f json=" + file).split(" "));
        join.add(file);
      }
      Outcome joined = run(writing("joined" + parts, join.toArray(String[]::new)));
      assertThat(joined.exit()).isEqualTo(whole.exit());
      for (String ending : List.of(".json", ".xml")) {
        assertThat(folder.resolve("joined" + parts + ending))
            .hasSameBinaryContentAs(folder.resolve("whole" + ending));
      }
      // A log leads to the page of rules in its own run's folder.
      assertThat(
              Files.readString(folder.resolve("joined" + parts + ".sarif"))
                  .replace("/joined" + parts + "/rules.html", "/whole/rules.html"))
          .isEqualTo(Files.readString(folder.resolve("whole.sarif")));
      assertThat(names("joined" + parts)).isEqualTo(names("whole"));
      for (String page : names("whole")) {
        assertThat(folder.resolve("joined" + parts).resolve(page))
            .hasSameBinaryContentAs(folder.resolve("whole").resolve(page));
      }
    }
  }

  /** The command with every format and the pages besides. */
  private String[] writing(String name, String... command) {
    List<String> all = new ArrayList<>(List.of(command));
    all.addAll(List.of("--reports", in(name), "-f", "json=" + in(name + ".json")));
    all.addAll(List.of("-f", "sarif=" + in(name + ".sarif"), "-f", "junit=" + in(name + ".xml")));
    return all.toArray(String[]::new);
  }

  private List<String> names(String pages) throws IOException {
    try (var files = Files.list(folder.resolve(pages))) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void partsThatAreNotAllOfOneBatchAreRefused() throws IOException {
    run("check", BORDER, "plans/class", "-q", "--part", "1/2", "-f", "json=" + in("1.json"));
    run("check", BORDER, "-q", "-f", "json=" + in("other.json"));
    assertThat(run("join", in("1.json")).err().replaceAll("\\s+", " "))
        .contains("part 2 of 2 is missing");
    assertThat(run("join", in("1.json"), in("1.json")).err()).contains("part 1 is there twice");
    assertThat(run("join", in("1.json"), in("other.json")).err()).contains("two batches");
    assertThat(run("join", in("1.json")).exit()).isEqualTo(2);
    Files.writeString(folder.resolve("no.json"), "{}");
    assertThat(run("join", in("no.json")).exit()).isEqualTo(3);
    assertThat(run("join", in("gone.json")).exit()).isEqualTo(2);
    assertThat(run("check", BORDER, "--part", "3/2").exit()).isEqualTo(2);
  }

  @Test
  void joiningClearsPagesOfEarlierRunsAndLeavesWhatIsSomebodysOwn() throws IOException {
    run("check", "plans/class", "-q", "--reports", in("pages"));
    assertThat(names("pages")).hasSizeGreaterThan(3);
    Files.writeString(folder.resolve("pages/ours.html"), "<!doctype html>\n<title>Hall</title>\n");
    Files.move(folder.resolve("pages/index.html"), folder.resolve("pages/Kept.html"));
    run(
        "check",
        BORDER,
        "-q",
        "--part",
        "1/1",
        "--reports",
        in("pages"),
        "-f=json=" + in("1.json"));
    assertThat(names("pages")).hasSizeGreaterThan(6);
    assertThat(run("join", in("1.json"), "--reports", in("pages")).err()).isEmpty();
    assertThat(names("pages"))
        .containsExactly("Kept.html", "first-border.html", "index.html", "ours.html", "rules.html");
    assertThat(folder.resolve("pages/ours.html")).content().contains("Hall");
  }

  @Test
  void aPartMayBeginWithAByteOrderMark() throws IOException {
    run("check", BORDER, "-q", "-f", "json=" + in("part.json"));
    Files.writeString(
        folder.resolve("marked.json"), "\uFEFF" + Files.readString(folder.resolve("part.json")));
    assertThat(run("join", in("marked.json"), "-f", "json"))
        .isEqualTo(run("join", in("part.json"), "-f", "json"));
  }

  @Test
  void anIndexThatCouldNotBeWrittenIsNotTold() throws IOException {
    run("check", BORDER, "-q", "-f", "json=" + in("part.json"));
    Files.writeString(folder.resolve("file"), "");
    Outcome outcome = run("join", in("part.json"), "--reports", in("file"));
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.out()).doesNotContain("reports:");
    assertThat(outcome.err()).contains("no index can be written here");
  }

  @Test
  void morePartsThanPlansLeaveSomeEmpty() {
    Outcome outcome = run("check", BORDER, "--part", "2/2");
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).contains("0 plans");
  }
}

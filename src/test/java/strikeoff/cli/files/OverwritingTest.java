package strikeoff.cli.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.cli.Scenario;
import strikeoff.cli.Scenario.Outcome;
import strikeoff.report.HtmlReport;

class OverwritingTest {

  /** As a result of an earlier run begins. */
  private static final String OLD =
      """
      {"format": "strikeoff.report/2", "tool": {"name": "strikeoff"}, "title": "plain", "size": 1,
       "summary": {"stop": 0}, "rules": [{"id": "a"}], "plans": []}
      """;

  /** Results of another program. */
  private static final String THEIRS =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <testsuites>
        <testsuite name="a" tests="1"><testcase name="b"/></testsuite>
      </testsuites>
      """;

  @TempDir private Path folder;

  private Outcome run(String command) {
    return Scenario.run(folder, Map.of("COLUMNS", "200"), List.of(command.split(" ")));
  }

  @BeforeEach
  void files() throws IOException {
    Files.createDirectories(folder.resolve("plans"));
    Files.copy(Path.of("plans/first-border.yaml"), folder.resolve("plans/border.yaml"));
    Files.copy(Path.of("plans/first-border.yaml"), folder.resolve("plain"));
    Files.writeString(folder.resolve("plans/studio.yaml"), "studio: S\nhours: 9-17\n");
    Files.writeString(folder.resolve("notes.txt"), "what the class said\n");
    Files.writeString(folder.resolve("page.html"), "<!doctype html>\n");
    // Of the right kind, and somebody else's.
    Files.writeString(folder.resolve("data.json"), "{\"name\": \"site\"}\n");
    Files.writeString(folder.resolve("pom.xml"), "<project/>\n");
    Files.writeString(folder.resolve("Makefile"), "all:\n\tcc x.c\n");
    Files.writeString(folder.resolve("todo"), "Which plans does strikeoff call printable?\n");
    Files.writeString(folder.resolve("their.xml"), THEIRS);
    Files.writeString(folder.resolve("batch.html"), HtmlReport.index("batch", List.of()));
    Files.createDirectory(folder.resolve("own"));
    Files.writeString(folder.resolve("own/rule.dslr"), "");
    Files.writeString(folder.resolve("old.json"), OLD);
    // As they begin, and somebody's own.
    Files.writeString(
        folder.resolve("mine.json"), "{\"format\": \"strikeoff.report/2\", \"mine\": 1}\n");
    Files.writeString(folder.resolve("short.json"), OLD.replace("\"size\": 1,", ""));
    Files.writeString(folder.resolve("mine.txt"), "PRINTABLE      p.yaml: my notes\n");
    Files.writeString(folder.resolve("count.txt"), "1 plan: mine\n");
    Files.writeString(
        folder.resolve("more.txt"),
        "PRINTABLE      p.yaml: 1 risk\n\n1 plan: 1 printable\n\nmine\n");
    Files.writeString(folder.resolve("blanks"), " ".repeat(9000) + "mine\n");
    likeOurs();
    Files.createSymbolicLink(folder.resolve("gone.json"), folder.resolve("nowhere"));
    Files.createSymbolicLink(folder.resolve("link.json"), folder.resolve("plans/border.yaml"));
    Files.createSymbolicLink(folder.resolve("twin.json"), folder.resolve("old.json"));
    Files.createLink(folder.resolve("hard"), folder.resolve("plain"));
  }

  /** Results of other programs that look like ours where they begin. */
  private void likeOurs() throws IOException {
    String properties = "<properties><property name=\"plan\" value=\"x\"/></properties>";
    Files.writeString(
        folder.resolve("marked.xml"), THEIRS.replace("tests=\"1\">", "tests=\"1\">" + properties));
    run("check plain --verdicts -f sarif=own.sarif -f junit=own.xml");
    String junit = Files.readString(folder.resolve("own.xml"));
    String sarif = Files.readString(folder.resolve("own.sarif"));
    // Put together from several tools' results.
    Files.writeString(
        folder.resolve("outer.xml"),
        junit.replace("</testsuites>", "<testsuite name=\"a\"/></testsuites>"));
    Files.writeString(
        folder.resolve("other.xml"), junit.replaceFirst("value=\"Printable", "value=\"Passed: "));
    Files.writeString(
        folder.resolve("merged.sarif"),
        sarif.replaceFirst(
            "\\]\\s*\\}\\s*$",
            ", {\"tool\": {\"driver\": {\"name\": \"other\"}}, \"results\": []}]}"));
    Files.writeString(
        folder.resolve("named.sarif"),
        "{\"version\": \"2.1.0\", \"runs\": [{\"tool\": {\"driver\": {\"name\": \"strikeoff\"}}}]}");
    Files.writeString(
        folder.resolve("noted.sarif"),
        sarif.replaceFirst("\"columnKind\"", "\"properties\": {\"mine\": 1}, \"columnKind\""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          check plans -f json=plans/border.yaml | is read, and no result
          check plans -f text=plans/border.yaml | is read, and no result
          check plans -f json=link.json         | is read, and no result
          check plain -f json=hard              | is read, and no result
          check plans -f junit=plans/studio.yaml | is read, and no result
          check plain -f json=plans/border.yaml | a plan, a policy or rules stand here already
          check plain -f json=own/rule.dslr     | a plan, a policy or rules stand here already
          check plain -f json=notes.txt         | a file that holds no json of an earlier run stands
          check plain -f text=page.html         | a file that holds no text of an earlier run stands
          check plain -f junit=old.json         | a file that holds no junit of an earlier run stands
          check plain -f json=data.json         | a file that holds no json of an earlier run
          check plain -f junit=pom.xml          | a file that holds no junit of an earlier run
          check plain -f text=Makefile          | a file that holds no text of an earlier run
          check plain -f text=todo              | a file that holds no text of an earlier run
          check plain -f json=mine.json         | a file that holds no json of an earlier run
          check plain -f json=short.json        | a file that holds no json of an earlier run
          compare plain plain -f json=mine.json | a file that holds no json of an earlier run
          check plain -f text=mine.txt          | a file that holds no text of an earlier run
          check plain -f text=count.txt         | a file that holds no text of an earlier run
          check plain -f text=more.txt          | a file that holds no text of an earlier run
          check plain -f json=gone.json         | gone.json: it is a link that leads nowhere
          compare plain plain -f html=gone.json | gone.json: it is a link that leads nowhere
          check plain -f sarif=todo             | a file that holds no sarif of an earlier run
          check plain -f junit=their.xml        | a file that holds no junit of an earlier run
          check plain -f junit=marked.xml       | a file that holds no junit of an earlier run
          check plain -f junit=outer.xml        | a file that holds no junit of an earlier run
          check plain -f junit=other.xml        | a file that holds no junit of an earlier run
          check plain -f junit=blanks           | a file that holds no junit of an earlier run
          check plain -f text=blanks            | a file that holds no text of an earlier run
          check plain -f sarif=named.sarif      | a file that holds no sarif of an earlier run
          check plain -f sarif=merged.sarif     | a file that holds no sarif of an earlier run
          check plain -f sarif=noted.sarif      | a file that holds no sarif of an earlier run
          compare plain plain -f html=page.html | a file that holds no html of an earlier run
          compare plain plain -f html=batch.html | a file that holds no html of an earlier run
          check plain -f json=new -f sarif=new  | two results can't go to one file
          check plain -f json=old.json -f json=twin.json | two results can't go to one file
          check plain --reports r -f json=r/index.html  | two results can't go to one file
          check plain --reports r -f json=r/plain.html  | two results can't go to one file
          check page.html index.html --reports . | is read, and no report
          compare plans plain -f json=plans/border.yaml | is read, and no result
          compare old.json old.json -f json=old.json    | is read, and no result
          join old.json -f json=old.json        | is read, and no result
          """)
  void isRefusedBeforeAnythingIsWritten(String command, String why) throws IOException {
    Files.writeString(folder.resolve("index.html"), "plan: x");
    Outcome outcome = run(command);
    assertThat(outcome.err()).contains(why);
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(folder.resolve("plans/border.yaml"))
        .hasSameBinaryContentAs(Path.of("plans/first-border.yaml"));
    assertThat(folder.resolve("old.json")).hasContent(OLD);
    assertThat(folder.resolve("index.html")).hasContent("plan: x");
    assertThat(folder.resolve("mine.txt")).hasContent("PRINTABLE      p.yaml: my notes");
    assertThat(folder.resolve("gone.json")).isSymbolicLink();
    assertThat(folder.resolve("nowhere")).doesNotExist();
  }

  @Test
  void resultsOfAnEarlierRunAreWrittenAnew() throws IOException {
    String command =
        "check plain --verdicts -f json=old.json -f sarif=s -f junit=j -f text=t --reports r";
    Files.writeString(folder.resolve("s"), "");
    assertThat(run(command).err()).isEmpty();
    assertThat(run(command).err()).isEmpty();
    assertThat(Files.readString(folder.resolve("old.json"))).contains("strikeoff.report/2");
    for (String other : List.of("-f html=c.html -f text=d", "-f html=c.html -f text=d -v")) {
      assertThat(run("compare plain plain " + other).err()).isEmpty();
    }
    for (String other : List.of("", "-q ", "-v --color=always ")) {
      assertThat(run("check plain " + other + "-f text=e -f junit=f --part 1/1").err()).isEmpty();
    }
    for (String of : List.of("bad.yaml", "plans --reports r", "plans")) {
      Files.writeString(folder.resolve("bad.yaml"), "plan: x\nclothh: {}\n");
      assertThat(run("check " + of + " --verdicts -f sarif=s -f junit=j").err()).isEmpty();
    }
    for (String part : List.of("2/2", "1/2", "2/2")) {
      assertThat(run("check plain -f text=g -f junit=h -f json=i -f sarif=k --part " + part).err())
          .isEmpty();
    }
    assertThat(folder.resolve("g")).hasContent("0 plans");
    Files.writeString(folder.resolve("bad.yaml"), "plan: x\nclothh: {}\n");
    for (String told : List.of("-q ", "", "-v ", "-q --color=always ")) {
      for (int again = 0; again < 2; again++) {
        assertThat(run("check bad.yaml plans " + told + "-f text=" + told.length()).err())
            .isEmpty();
      }
    }
    for (int again = 0; again < 2; again++) {
      assertThat(run("join old.json -f json=joined.json -f text=joined").err()).isEmpty();
      assertThat(run("compare plain plain -f json=compared.json").err()).isEmpty();
    }
  }

  @Test
  void aFileThatIsCalledLikeAnOptionIsNotOne() throws IOException {
    Files.writeString(folder.resolve("--fail-on=none.yaml"), "");
    Files.writeString(folder.resolve("--policy=mine.yaml"), "");
    assertThat(run("check --policy=mine.yaml plain").err())
        .contains("a file is called “--policy=mine.yaml” and may have been taken for an option");
    assertThat(run("check --policy=mine.yaml plain").exit()).isEqualTo(2);
    assertThat(run("check --verdicts -- --policy=mine.yaml plain").out())
        .contains("--policy=mine.yaml: ");
  }
}

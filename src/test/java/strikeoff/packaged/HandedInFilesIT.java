package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a pupil may hand in between the plans of a class. */
class HandedInFilesIT {

  private static final Path MISTAKE = Path.of("plans/mistakes/short-blue.yaml");

  @TempDir private Path folder;

  private Path plans;

  @BeforeEach
  void plans() throws Exception {
    plans = Files.createDirectory(folder.resolve("plans"));
    Files.copy(MISTAKE, plans.resolve("bad.yaml"));
  }

  @ParameterizedTest
  @EnumSource
  void aFileOfArgumentsIsAFileToCheck(Program.Way way) throws Exception {
    Files.writeString(plans.resolve("victim.txt"), "kept");
    Files.writeString(
        plans.resolve("evil.yaml"), "--fail-on none --format json=victim.txt --rules r\n");
    Files.writeString(plans.resolve("@evil.yaml"), "plan: x\n");
    Program.Told told = Program.in(way, plans).bash("strikeoff check *.yaml --verdicts");
    assertThat(told.err()).isEmpty();
    assertThat(told.out().lines()).hasSize(3).anyMatch(line -> line.contains("@evil.yaml: "));
    assertThat(told.exit()).isEqualTo(3);
    assertThat(plans.resolve("victim.txt")).hasContent("kept");
  }

  @Test
  void aFileThatIsCalledLikeAnOptionIsNotOne() throws Exception {
    Files.writeString(plans.resolve("--fail-on=none"), "");
    Program.Told told = Program.in(Program.Way.LAUNCHER, plans).bash("strikeoff check *");
    assertThat(told.errWords()).contains("a file is called “--fail-on=none”");
    assertThat(told.exit()).isEqualTo(2);
  }

  @Test
  void noResultIsWrittenOverAPlan() throws Exception {
    Program.Told told =
        Program.in(Program.Way.LAUNCHER, plans)
            .run("check", "bad.yaml", "--format", "json=bad.yaml");
    assertThat(told.errWords())
        .contains("bad.yaml: this is read, and no result is written over it");
    assertThat(told.exit()).isEqualTo(2);
    assertThat(plans.resolve("bad.yaml")).hasSameBinaryContentAs(MISTAKE);
  }

  /** It begins as ours do, and was put together from several tools' results. */
  @Test
  void noResultIsWrittenOverOneOfAnothersMaking() throws Exception {
    Program.Told told =
        Program.in(Program.Way.LAUNCHER, plans)
            .bash(
                """
                strikeoff check bad.yaml --verdicts -f junit=ours.xml -f sarif=ours.sarif
                sed 's|</testsuites>|<testsuite name="other"/>&|' ours.xml > theirs.xml
                sed '$s|}|,"properties":{}}|' ours.sarif > theirs.sarif
                cp theirs.xml kept.xml; cp theirs.sarif kept.sarif
                for other in junit=theirs.xml sarif=theirs.sarif; do
                  strikeoff check bad.yaml --verdicts -f $other; echo $?
                done
                cmp theirs.xml kept.xml && cmp theirs.sarif kept.sarif
                strikeoff check bad.yaml --verdicts -f junit=ours.xml -f sarif=ours.sarif
                """);
    assertThat(told.out().lines().filter(line -> line.matches("\\d"))).containsExactly("2", "2");
    assertThat(told.errWords())
        .contains("theirs.xml: a file that holds no junit of an earlier run stands here already")
        .contains("theirs.sarif: a file that holds no sarif of an earlier run stands here already");
    assertThat(told.exit()).isEqualTo(1);
  }

  @ParameterizedTest
  @EnumSource
  void aPolicyThatWasHandedInShowsInTheVerdictAlone(Program.Way way) throws Exception {
    Files.writeString(
        plans.resolve("studio.yaml"), "studio: Mine\noff:\n  paste/short: A pot stands ready.\n");
    Program.Told told = Program.in(way, folder).run("check", "plans", "-q");
    assertThat(told.out())
        .startsWith("PRINTABLE      plans/bad.yaml: ")
        .endsWith("; a policy lets 1 stop pass\n");
  }

  @Test
  void textIsWrittenIntoItsFileAlsoAlone() throws Exception {
    Program strikeoff = Program.in(Program.Way.LAUNCHER, plans);
    String shown = strikeoff.run("check", "bad.yaml").out();
    assertThat(strikeoff.run("check", "bad.yaml", "--format", "text=log.txt"))
        .isEqualTo(new Program.Told(1, "", ""));
    assertThat(plans.resolve("log.txt")).hasContent(shown);
    Program.Told lost = strikeoff.run("check", "bad.yaml", "--format", "text=bad.yaml/log.txt");
    assertThat(lost.errWords()).contains("bad.yaml/log.txt: this file can't be written: ");
    assertThat(lost.exit()).isEqualTo(4);
  }

  /** Everything but the one good plan is named, and the good one is checked. */
  @Test
  void whatCannotBeReadAmongPlansIsNamed() throws Exception {
    Path deep = Files.createDirectories(plans.resolve("d/".repeat(41)));
    Files.writeString(deep.resolve("x.yaml"), "plan: x\n");
    Program.Told told =
        Program.in(Program.Way.LAUNCHER, folder)
            .bash(
                """
                ln -s nowhere plans/gone.yaml && mkfifo plans/pipe.yaml
                strikeoff check plans --verdicts
                """);
    assertThat(told.exit()).isEqualTo(4);
    assertThat(told.out()).startsWith("NOT PRINTABLE  plans/bad.yaml: ");
    assertThat(told.errWords())
        .contains("plans/gone.yaml: it is a link that leads nowhere")
        .contains("plans/pipe.yaml: it is a pipe or a device")
        .contains("more than 40 folders deep");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ln -s nowhere plans/studio.yaml",
        "mkfifo plans/studio.yaml",
        "mkdir plans/studio.yaml"
      })
  void aPolicyThatCannotBeReadIsNamed(String made) throws Exception {
    Program.Told told =
        Program.in(Program.Way.LAUNCHER, folder).bash(made + "; strikeoff check plans --verdicts");
    assertThat(told.exit()).isEqualTo(4);
    assertThat(told.errWords()).contains("plans/studio.yaml: this policy can't be read: it is a ");
    assertThat(told.out()).startsWith("NOT CHECKED    plans/bad.yaml: ");
  }

  @Test
  void aPageIsOfThisRunOrGone() throws Exception {
    Files.copy(Path.of("plans/first-border.yaml"), plans.resolve("border.yaml"));
    Program strikeoff = Program.in(Program.Way.LAUNCHER, folder);
    String check = "strikeoff check plans/border.yaml --verdicts --reports out";
    assertThat(strikeoff.bash(check).exit()).isZero();
    assertThat(pages()).containsExactly("border.html", "index.html", "rules.html");

    Program.Told full =
        strikeoff.bash("touch out/.border.html.999999999.part; ulimit -f 4; " + check);
    assertThat(full.exit()).isEqualTo(4);
    assertThat(full.errWords())
        .contains("plans/border.yaml: its report (out/border.html) can't be written: ");
    assertThat(pages()).doesNotContain("border.html", ".border.html.999999999.part");

    String handedOver = "strikeoff check /dev/fd/7 --verdicts --reports out";
    assertThat(strikeoff.bash(handedOver + " 7< plans/border.yaml").exit()).isZero();
    assertThat(pages()).containsExactly("7.html", "index.html", "rules.html");
    Program.Told givenUp = strikeoff.bash(handedOver + " --max-seconds 1 7< <(exec sleep 5)");
    assertThat(givenUp.exit()).isEqualTo(4);
    assertThat(givenUp.out()).contains("it took more than 1 s and was given up");
    assertThat(Files.readString(folder.resolve("out/7.html")))
        .contains("it took more than 1 s and was given up");
  }

  @Test
  void pagesOfPlansThatAreNoLongerInTheBatchGo() throws Exception {
    Files.copy(Path.of("plans/first-border.yaml"), plans.resolve("border.yaml"));
    Program strikeoff = Program.in(Program.Way.LAUNCHER, folder);
    strikeoff.bash("strikeoff check plans --verdicts --reports out; echo mine > out/notes.html");
    strikeoff.bash("strikeoff compare plans plans -f html=out/compared.html");
    String alone = "strikeoff check plans/border.yaml --verdicts --reports out";
    assertThat(strikeoff.bash(alone + " --part 1/1").exit()).isZero();
    assertThat(pages()).contains("bad.html");
    Program.Told told = strikeoff.bash(alone);
    assertThat(told.err()).isEmpty();
    assertThat(told.exit()).isZero();
    assertThat(pages())
        .containsExactly("border.html", "compared.html", "index.html", "notes.html", "rules.html");
  }

  @Test
  void somebodyElsesPageIsNamedAndStays() throws Exception {
    Files.copy(Path.of("plans/first-border.yaml"), plans.resolve("border.yaml"));
    Path out = Files.createDirectory(folder.resolve("out"));
    String theirs = "<!doctype html>\n<title>What the class printed</title>\n";
    Files.writeString(out.resolve("border.html"), theirs);
    Files.writeString(out.resolve("rules.html"), theirs);
    Program strikeoff = Program.in(Program.Way.LAUNCHER, folder);
    Program.Told told = strikeoff.bash("strikeoff check plans --reports out");
    assertThat(told.errWords())
        .contains("its report (out/border.html) can't be written: what stands here is no page of")
        .contains("rules.html: this page can't be written: what stands here is no page of");
    assertThat(told.out()).contains("NOT PRINTABLE  plans/bad.yaml: ").endsWith("out/index.html\n");
    assertThat(told.exit()).isEqualTo(4);
    assertThat(out.resolve("border.html")).hasContent(theirs);
    assertThat(out.resolve("rules.html")).hasContent(theirs);
    assertThat(Files.readString(out.resolve("index.html")))
        .contains("href=\"bad.html\"")
        .doesNotContain("href=\"border.html\"");

    Files.writeString(out.resolve("index.html"), theirs);
    Program.Told unindexed = strikeoff.bash("strikeoff check plans/bad.yaml --reports out");
    assertThat(unindexed.errWords()).contains("index.html: this page can't be written: ");
    assertThat(unindexed.out()).doesNotContain("index.html");
    assertThat(unindexed.exit()).isEqualTo(4);

    Program.Told compared = strikeoff.bash("strikeoff compare plans plans -f html=out/border.html");
    assertThat(compared.errWords()).contains("out/border.html: a file that holds no html of an");
    assertThat(compared.exit()).isEqualTo(2);
    assertThat(out.resolve("border.html")).hasContent(theirs);
  }

  /** A file's name may hold what turns a terminal's or a browser's words around. */
  @Test
  void noPageHoldsControlCharactersOfNames() throws Exception {
    Program.Told told =
        Program.in(Program.Way.LAUNCHER, folder)
            .bash(
                """
                name=$'\\e]0;x\\a\\n\\xe2\\x80\\xae\\xc2\\x85'
                mkdir "plans/$name" && cp plans/bad.yaml "plans/$name/$name.yaml"
                echo 'plan: "a\\e[2J\\u202e\\x85b"' > "plans/$name/plan.yaml"
                strikeoff check "plans/$name" plans --verdicts --reports "out"
                strikeoff compare "plans/$name" plans -f html=out/c.html > out/c.txt
                """);
    assertThat(told.err()).isEmpty();
    assertThat(told.out()).contains("[U+001B]]0;x[U+0007] [U+202E][U+0085]");
    List<String> pages = pages().filter(page -> page.endsWith(".html")).toList();
    assertThat(pages).hasSize(6);
    for (String page : pages) {
      assertThat(Files.readString(folder.resolve("out").resolve(page)))
          .as(page)
          .doesNotContainPattern("[\\p{Cc}\\p{Cf}&&[^\\n]]");
    }
  }

  private Stream<String> pages() throws Exception {
    try (Stream<Path> files = Files.list(folder.resolve("out"))) {
      return files.map(f -> f.getFileName().toString()).sorted().toList().stream();
    }
  }
}

package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every example of the document on pipelines, run by a plain shell in a repository of its own. */
class PipelineIT {

  private static final Pattern BLOCK = Pattern.compile("(?ms)^```sh\\n(.*?)^```$");

  @TempDir private Path folder;
  private Program strikeoff;

  @BeforeEach
  void repository() throws Exception {
    strikeoff =
        Program.in(Program.Way.LAUNCHER, folder)
            .with("HOME", folder.resolve("home").toString())
            .with("GIT_CONFIG_NOSYSTEM", "1");
    Files.createDirectories(folder.resolve("home"));
    Files.createDirectories(folder.resolve("plans/class"));
    Files.copy(Path.of("plans/first-border.yaml"), folder.resolve("plans/border.yaml"));
    Files.copy(Path.of("plans/mistakes/hot-bath.yaml"), folder.resolve("plans/class/hot.yaml"));
    Files.writeString(folder.resolve(".gitignore"), "home\nbin\n");
    // The examples call the program by its name.
    Path bin = Files.createDirectories(folder.resolve("bin"));
    Files.writeString(
        bin.resolve("strikeoff"), "#!/bin/sh\nexec " + strikeoff.command().get(0) + " \"$@\"\n");
    Files.setPosixFilePermissions(
        bin.resolve("strikeoff"), PosixFilePermissions.fromString("rwxr-xr-x"));
    assertThat(
            bash("""
                    git init -q -b main . && git config user.name Printer && git config user.email p@example.org
                    git add . && git commit -q -m first && git branch base
                    """)
                .exit())
        .isZero();
  }

  private Program.Told bash(String lines) throws Exception {
    // Without the function of that name, which scripts that are started don't see.
    return strikeoff.bash("unset -f strikeoff; export PATH=\"$PWD/bin:$PATH\" BASE=base\n" + lines);
  }

  private static List<String> examples() throws Exception {
    Matcher block = BLOCK.matcher(Files.readString(Path.of("src/docs/pipeline.md")));
    List<String> examples = new ArrayList<>();
    while (block.find()) {
      examples.add(block.group(1));
    }
    return examples;
  }

  private static String example(String with) throws Exception {
    return examples().stream()
        .filter(e -> e.startsWith("#!/bin/sh\n") && e.contains(with))
        .findFirst()
        .orElseThrow();
  }

  private Program.Told script(String example) throws Exception {
    Files.writeString(folder.resolve("bin/example"), example);
    return bash("sh bin/example");
  }

  @Test
  void everyExampleRuns() throws Exception {
    List<String> examples = examples();
    assertThat(examples).hasSizeGreaterThanOrEqualTo(7);
    for (String example : examples) {
      Program.Told told = script(example);
      assertThat(told.exit()).as(example + told.out() + told.err()).isIn(0, 1);
      assertThat(told.err()).as(example).doesNotContain("not found", "usage");
    }
  }

  @Test
  void aHookLetsSoundPlansThroughAndOthersNot() throws Exception {
    Path hook = folder.resolve(".git/hooks/pre-commit");
    Files.createDirectories(hook.getParent());
    Files.writeString(hook, example("--cached"));
    Files.setPosixFilePermissions(hook, PosixFilePermissions.fromString("rwxr-xr-x"));
    Path border = folder.resolve("plans/border.yaml");
    String sound = Files.readString(border);
    Files.writeString(border, "# again\n" + sound);
    Files.writeString(folder.resolve("notes.txt"), "no plan");
    // What isn't added isn't judged: an old stop of another plan, and a plan that is half written.
    Files.writeString(folder.resolve("plans/half.yaml"), "plan: [\n");
    Program.Told through = bash("git add plans/border.yaml notes.txt && git commit -q -m sound");
    assertThat(through.exit()).as(through.err()).isZero();
    assertThat(through.out() + through.err()).isEmpty();
    Files.writeString(border, sound.replace("plan:", "plann:"));
    Program.Told held = bash("git add plans/border.yaml && git commit -q -m broken");
    assertThat(held.exit()).isEqualTo(1);
    assertThat(held.out() + held.err()).contains("UNREADABLE     plans/border.yaml: ");
    // Judged as it was added, whatever lies in the working folder by now.
    Files.writeString(border, sound);
    assertThat(bash("git commit -q -m broken").exit()).isEqualTo(1);
    assertThat(
            bash("git rm -q -f plans/class/hot.yaml && git add . && git commit -q -m gone").exit())
        .as("half.yaml")
        .isEqualTo(1);
    Program.Told gone = bash("rm plans/half.yaml && git add . && git commit -q -m gone");
    assertThat(gone.exit()).as(gone.err()).isZero();
  }

  @Test
  void aJobFailsOnWhatAChangeBringsIn() throws Exception {
    String job = example("git archive");
    Program.Told same = script(job);
    assertThat(same.exit()).as(same.out() + same.err()).isZero();
    Path hot = folder.resolve("plans/class/hot.yaml");
    Files.copy(hot, folder.resolve("plans/class/warm.yaml"));
    Program.Told changed = script(job);
    assertThat(changed.exit()).isEqualTo(1);
    assertThat(changed.out()).contains("NOT PRINTABLE  plans/class/warm.yaml: ");
    assertThat(changed.out().lines().filter(line -> line.startsWith("NOT PRINTABLE")))
        .as("the old one was told by the first check alone")
        .hasSize(2);
    assertThat(Files.readString(folder.resolve("results.sarif")))
        .contains("\"baselineState\": \"new\"", "\"baselineState\": \"unchanged\"");
    assertThat(script(example("junit=results.xml")).exit()).isEqualTo(1);
    assertThat(folder.resolve("results.xml")).content().contains("<failure");
  }

  @Test
  void aPipeListsPathsAndClosedInputIsSaid() throws Exception {
    Program.Told piped =
        bash(
            """
            git ls-files -z | strikeoff check --verdicts --files-from -
            printf 'plans/border.yaml\\n' | strikeoff check --verdicts --files-from - | cat
            printf '' | strikeoff check --files-from -; echo $?
            strikeoff check --files-from - <&-; echo $?
            """);
    assertThat(piped.out().lines())
        .satisfiesExactly(
            line -> assertThat(line).startsWith("PRINTABLE      plans/border.yaml: "),
            line -> assertThat(line).startsWith("NOT PRINTABLE  plans/class/hot.yaml: "),
            line -> assertThat(line).startsWith("PRINTABLE      plans/border.yaml: "),
            line -> assertThat(line).isEqualTo("0 plans"),
            line -> assertThat(line).isEqualTo("0"),
            line -> assertThat(line).isEqualTo("4"));
    assertThat(piped.err()).contains("standard input: this list can't be read: ");
  }

  /** Two at once, into one folder that is new: each tells what a run without it tells. */
  @Test
  void runsShareACache() throws Exception {
    Program.Told told =
        bash(
            """
            strikeoff check plans >bin/plain.txt
            for i in 1 2 3; do strikeoff check plans --cache kept >bin/$i.txt 2>&1 & done; wait
            for i in 1 2 3; do cmp bin/plain.txt bin/$i.txt && echo same; done
            strikeoff check plans --cache kept >bin/warm.txt; echo $?
            cmp bin/plain.txt bin/warm.txt && echo same; ls kept | wc -l
            """);
    assertThat(told.out().lines().map(String::strip))
        .containsExactly("same", "same", "same", "1", "same", "2");
    assertThat(told.err()).isEmpty();
  }

  /** A jar that was built anew is another program, though it calls itself the same. */
  @Test
  void anotherJarTakesNothingOfTheFirst() throws Exception {
    Path jar = Path.of(strikeoff.command().get(0)).resolveSibling("strikeoff.jar");
    Path other = folder.resolve("bin/strikeoff.jar");
    Program.Told told =
        bash(
            "strikeoff check plans --cache kept >bin/a.txt; cp "
                + jar
                + " "
                + other
                + "; java -jar bin/strikeoff.jar check plans --cache kept >bin/b.txt; ls kept | wc -l\n"
                + "echo x >bin/x && (cd bin && jar uf strikeoff.jar x) && java -jar bin/strikeoff.jar"
                + " check plans --cache kept >bin/c.txt; ls kept | wc -l; cmp bin/a.txt bin/c.txt");
    assertThat(told.out().lines().map(String::strip)).containsExactly("2", "4");
  }
}

package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that a real bash sources and completes with. */
class CompletionTest {

  @TempDir private Path folder;

  /** Outside a prompt, bash's compopt has nothing to set and says so on the error output. */
  private List<String> completed(String... words) throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no bash here");
    Path script = folder.resolve("strikeoff.bash");
    Files.writeString(script, Scenario.run(folder, Map.of(), List.of("completion", "bash")).out());
    StringBuilder line = new StringBuilder();
    for (String word : words) {
      line.append(" '").append(word).append('\'');
    }
    Process bash =
        new ProcessBuilder(
                "/bin/bash",
                "--norc",
                "-c",
                "set -e; source '"
                    + script
                    + "'; COMP_WORDS=(strikeoff"
                    + line
                    + "); COMP_CWORD="
                    + words.length
                    + "; COMP_LINE=\"${COMP_WORDS[*]}\"; COMP_POINT=${#COMP_LINE}; set +e;"
                    + " complete -p strikeoff >/dev/null || exit 9; _complete_strikeoff 2>/dev/null;"
                    + " printf '%s\\n' \"${COMPREPLY[@]}\"")
            .redirectErrorStream(true)
            .start();
    String out = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(bash.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(bash.exitValue()).as(out).isZero();
    return out.lines().map(String::strip).toList();
  }

  @Test
  void commandsAreCompleted() throws Exception {
    assertThat(completed("com")).containsExactlyInAnyOrder("compare", "completion");
    assertThat(completed("")).contains("check", "join", "rules", "explain", "start", "watch");
  }

  @Test
  void optionsOfACommandAreCompleted() throws Exception {
    assertThat(completed("check", "--max-f")).containsExactly("--max-findings");
    assertThat(completed("compare", "--sh")).containsOnly("");
  }

  @Test
  void wordsBehindAnOptionAreCompletedAsTheyAreTyped() throws Exception {
    assertThat(completed("check", "--fail-on", ""))
        .containsExactly("stop", "risk", "advice", "none");
    assertThat(completed("check", "--by", "")).containsExactly("folder", "pupil");
    assertThat(completed("check", "--color", "a")).containsExactly("auto", "always");
  }

  @Test
  void anotherShellIsWrongUsage() {
    assertThat(Scenario.run(folder, Map.of(), List.of("completion", "fish")).exit()).isEqualTo(2);
  }
}

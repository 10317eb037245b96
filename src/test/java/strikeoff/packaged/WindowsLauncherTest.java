package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What can be told of the launcher for Windows without a Windows. How cmd reads quotes, blocks and
 * {@code %~dp0}, and whose exit code a script's is: the texts of {@code set /?}, {@code call /?}
 * and {@code exit /?}, from memory, not checked against a source.
 */
class WindowsLauncherTest {

  private static final Path FOLDER = Path.of("src/main/launcher");

  /** What the shell finds out and cmd can't: whether somebody watches the terminal. */
  private static final String WATCHED = "-Dstrikeoff.watched=";

  private static String script(String name) throws Exception {
    return Files.readString(FOLDER.resolve(name), StandardCharsets.UTF_8);
  }

  private static List<String> lines() throws Exception {
    return script("strikeoff.cmd").lines().filter(line -> !line.isBlank()).toList();
  }

  private static List<String> commands() throws Exception {
    return lines().stream().filter(line -> !line.startsWith("rem ")).toList();
  }

  private static Stream<String> options(String command) {
    return Arrays.stream(command.split("\\s+"))
        .filter(word -> word.startsWith("-"))
        .filter(word -> !word.startsWith(WATCHED));
  }

  @Test
  void itsLinesEndAsCmdWantsThemAndAreAscii() throws Exception {
    String script = script("strikeoff.cmd");
    assertThat(script.replace("\r\n", "")).doesNotContain("\r", "\n");
    assertThat(script).endsWith("\r\n");
    assertThat(script.chars().allMatch(c -> c < 128)).isTrue();
    assertThat(lines().get(0)).isEqualTo("@echo off");
    // The longest line that cmd takes has 8191 characters; names of folders come on top.
    assertThat(lines()).allMatch(line -> line.length() < 1000);
  }

  @Test
  void itHasNoWordOfAnotherShell() throws Exception {
    for (String command : commands()) {
      assertThat(command).doesNotContainPattern("[$`';#]|\\[ | then\\b|\\bfi\\b|\\bexec\\b|/dev/");
    }
  }

  /** Folders have blanks, brackets and ampersands in their names. */
  @Test
  void whateverHoldsAFolderStandsInQuotes() throws Exception {
    for (String command : commands()) {
      // With what a quote around JAVA_HOME itself is taken away by, out of the way.
      String[] parts = command.replace(":\"=%", "%").split("\"", -1);
      assertThat(parts.length % 2).as("quotes are closed: %s", command).isOne();
      for (int outside = 0; outside < parts.length; outside += 2) {
        assertThat(parts[outside])
            .as(command)
            .doesNotContainPattern("%(~dp0|LIB|JAVA|JAVA_HOME|ARCHIVE)");
      }
    }
    assertThat(commands()).noneMatch(command -> command.contains("\\\""));
  }

  @Test
  void itEndsWithJavaAndSoWithItsExitCode() throws Exception {
    List<String> commands = commands();
    assertThat(commands.get(commands.size() - 1))
        .startsWith("\"%JAVA%\" ")
        .endsWith(" -cp \"%LIB%\\strikeoff.jar\" strikeoff.cli.Main %*");
    assertThat(commands).noneMatch(command -> command.contains("ERRORLEVEL"));
  }

  @Test
  void javaGetsTheOptionsThatTheOtherLauncherGivesIt() throws Exception {
    String shell = script("strikeoff");
    String exec = shell.substring(shell.indexOf("exec \"$java\"")).replace("\\\n", " ");
    String cmd = commands().get(commands().size() - 1);
    assertThat(options(cmd)).containsExactlyElementsOf(options(exec).toList());
    for (String archive : List.of("-XX:SharedArchiveFile=", "-XX:AOTCache=")) {
      assertThat(shell).contains("archive=" + archive);
      assertThat(script("strikeoff.cmd")).contains("\"ARCHIVE=" + archive);
    }
  }

  @Test
  void itSaysThatNobodyHasTriedIt() throws Exception {
    assertThat(script("strikeoff.cmd")).contains("not tried yet on any Windows");
    assertThat(Files.readString(Path.of("README.md"))).contains("for Windows, was never tried");
  }
}

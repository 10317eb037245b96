package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import strikeoff.cli.commands.Strikeoff;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;

/**
 * The manual pages say what the commands say; {@code mvn -q -f src/pom.xml -pl manual -am
 * process-classes} writes them anew.
 */
class ManualTest {

  private static final Path PAGES = Path.of("src/main/man/man1");

  static Stream<CommandSpec> commands() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    CommandLine all =
        Strikeoff.commands(
            new Surroundings(
                nowhere, nowhere, InputStream.nullInputStream(), Map.of(), false, Path.of(""), 1));
    return Stream.concat(
        Stream.of(all.getCommandSpec()),
        all.getSubcommands().values().stream().map(CommandLine::getCommandSpec));
  }

  private static Path page(CommandSpec command) {
    return PAGES.resolve(command.qualifiedName("-") + ".1");
  }

  /** The words of a page without what sets them. */
  private static String plain(String page) {
    return words(
        page.replaceAll("(?m)^\\.\\\\\".*$", "")
            .replaceAll("(?m)^\\.(RS|RE|sp)\\b.*$", "")
            .replaceAll("(?m)^\\.SH ", "")
            .replaceAll("\\\\f[BIPR]", "")
            .replace("\\(cq", "'")
            .replace("\\*(Aq", "'")
            .replace("\\(aq", "'")
            .replace("\\|", "")
            .replace("\\&", "")
            .replace("\\", ""));
  }

  private static String words(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  private static String said(String... lines) {
    return words(Help.Ansi.OFF.string(String.join(" ", lines)));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void aPageTellsEverythingThatTheCommandTells(CommandSpec command) throws IOException {
    String page = plain(Files.readString(page(command)));
    List<String> missing = new ArrayList<>();
    List<String> told = new ArrayList<>();
    told.add(said(command.usageMessage().description()));
    told.add(said(command.usageMessage().footer()));
    for (OptionSpec option : command.options()) {
      String one = option.paramLabel();
      String label = "=" + (option.splitRegex().isEmpty() ? one : one + "[," + one + "...]");
      told.add(
          String.join(", ", option.names())
              + (option.arity().max() == 0 ? "" : label)
              + " "
              + said(described(option)));
    }
    for (PositionalParamSpec argument : command.positionalParameters()) {
      told.add(argument.paramLabel());
      told.add(said(argument.description()));
    }
    assertThat(command.usageMessage().exitCodeList()).isNotEmpty();
    command.usageMessage().exitCodeList().forEach((code, why) -> told.add(code + " " + said(why)));
    told.stream().filter(t -> !page.contains(t)).forEach(missing::add);
    assertThat(missing).as(page).isEmpty();
  }

  private static String[] described(OptionSpec option) {
    return Stream.of(option.description())
        .map(d -> d.replace("${DEFAULT-VALUE}", String.valueOf(option.defaultValue())))
        .toArray(String[]::new);
  }

  @ParameterizedTest
  @MethodSource("commands")
  void noPageTellsOfAnOptionThatTheCommandHasNot(CommandSpec command) throws IOException {
    TreeSet<String> known = new TreeSet<>();
    command.options().forEach(o -> known.addAll(List.of(o.names())));
    TreeSet<String> told = new TreeSet<>();
    Files.readString(page(command))
        .lines()
        .filter(line -> line.startsWith("\\fB\\-"))
        .forEach(
            line -> {
              for (String name : plain(line).split(", ")) {
                told.add(name.replaceFirst("=.*", ""));
              }
            });
    assertThat(told).isEqualTo(known);
  }

  @Test
  void everyCommandHasAPageAndNoPageIsLeftOver() throws IOException {
    try (Stream<Path> pages = Files.list(PAGES)) {
      assertThat(pages)
          .containsExactlyInAnyOrderElementsOf(commands().map(ManualTest::page)::iterator);
    }
  }

  /** The numbers that help and manual tell are those that the program ends with. */
  @Test
  void exitCodesAreThoseOfTheProgram() {
    assertThat(Exit.ALL_PRINTABLE).startsWith(Exit.PRINTABLE.code() + ":");
    assertThat(Exit.PRINTED).startsWith(Exit.PRINTABLE.code() + ":");
    assertThat(Exit.SOME_NOT_PRINTABLE).startsWith(Exit.NOT_PRINTABLE.code() + ":");
    assertThat(Exit.WRONG_USAGE).startsWith(Exit.USAGE.code() + ":");
    assertThat(Exit.SOME_UNREADABLE).startsWith(Exit.UNREADABLE.code() + ":");
    assertThat(Exit.TOOL_FAILED).startsWith(Exit.FAULT.code() + ":");
  }

  /** As {@code man} renders it where there is one: no warning, no mark of another notation left. */
  @ParameterizedTest
  @MethodSource("commands")
  void aPageRendersWithoutWarnings(CommandSpec command) throws Exception {
    assumeTrue(runs("groff", "--version"), "no groff here");
    Path errors = Files.createTempFile("manual", ".txt");
    Process groff =
        new ProcessBuilder(
                "groff", "-man", "-Tutf8", "-Kutf8", "-ww", "-P-c", page(command).toString())
            .redirectError(errors.toFile())
            .start();
    String text = new String(groff.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(groff.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(Files.readString(errors)).isEmpty();
    Files.delete(errors);
    assertThat(groff.exitValue()).isZero();
    String shown = text.replaceAll(".\b", "");
    assertThat(shown).contains("NAME", "SYNOPSIS", "EXIT STATUS");
    assertThat(shown).doesNotContain("*-", "]_", "{", "::", "_ [", "] _");
    String synopsis = shown.substring(shown.indexOf("SYNOPSIS"), shown.indexOf("DESCRIPTION"));
    for (OptionSpec option : command.options()) {
      boolean letter = option.shortestName().length() == 2 && option.arity().max() == 0;
      assertThat(words(synopsis))
          .containsPattern(
              letter
                  ? "\\[-[a-zA-Z]*" + option.shortestName().charAt(1)
                  : Pattern.quote(option.shortestName()));
    }
  }

  private static boolean runs(String... command) {
    try {
      return new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}

package strikeoff.cli;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.asciidoctor.Asciidoctor;
import org.asciidoctor.Attributes;
import org.asciidoctor.Options;
import org.asciidoctor.SafeMode;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;
import strikeoff.cli.commands.Strikeoff;
import strikeoff.cli.text.Surroundings;

/** Writes a manual page for each command: by picocli as AsciiDoc, and by Asciidoctor for man. */
final class ManualPages {

  private ManualPages() {}

  /**
   * @param args the folder for the pages
   */
  public static void main(String... args) throws IOException {
    StringWriter nowhere = new StringWriter();
    Surroundings here =
        new Surroundings(
            new PrintWriter(nowhere),
            new PrintWriter(nowhere),
            InputStream.nullInputStream(),
            Map.of(),
            false,
            Path.of(""),
            1);
    List<CommandSpec> commands = new ArrayList<>();
    CommandLine all = Strikeoff.commands(here);
    commands.add(all.getCommandSpec());
    all.getSubcommands().values().forEach(c -> commands.add(c.getCommandSpec()));
    Path folder = Files.createDirectories(Path.of(args[0]));
    // A version and a date would change every page with every build.
    Attributes still =
        Attributes.builder()
            .attribute("docdate", "")
            .attribute("revnumber", "")
            .attribute("mansource", "")
            .attribute("manmanual", "strikeoff")
            .build();
    try (Asciidoctor asciidoctor = Asciidoctor.Factory.create()) {
      for (CommandSpec command : commands) {
        StringWriter text = new StringWriter();
        ManPageGenerator.writeSingleManPage(new PrintWriter(text, true), command);
        File page = folder.resolve(command.qualifiedName("-") + ".1").toFile();
        asciidoctor.convert(
            plain(text.toString()),
            Options.builder()
                .backend("manpage")
                .safe(SafeMode.UNSAFE)
                .standalone(true)
                .toFile(page)
                .attributes(still)
                .build());
      }
    }
  }

  /** What picocli takes over from the commands' own words has no marks of AsciiDoc in it. */
  private static String plain(String page) {
    // Brackets in a parameter's name are no marks either, and a synopsis may break there.
    return page.replaceAll("FORMAT(?:_\\s+_\\s*)?\\[=FILE]", "FORMAT{startsb}=FILE{endsb}")
        .lines()
        .map(ManualPages::line)
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static String line(String line) {
    boolean said = line.matches(" +[^\\[_\\s].*|[A-Z].*");
    String text = said ? line.replace("*", "{asterisk}") : line;
    // Lines of a description are sentences of their own, one of them a comment of YAML.
    return text.replaceFirst("^(?=[A-Z])", "\n")
        .replaceFirst("^#", "\n{empty}#")
        .replaceFirst("^xref:(.*)\\.adoc\\[.*]::$", "*$1*(1)::")
        .replaceFirst("^== +Exit codes:$", "== Exit status")
        .replaceFirst("^== +Note:$", "== Notes");
  }
}

package strikeoff.cli.commands;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;
import strikeoff.report.json.BillOfMaterials;
import strikeoff.report.json.BillOfMaterials.Component;

/** Lists what the program is made of, and on demand the licences' texts. */
final class LicencesCommand implements Command {

  /** Texts by their SPDX names. Where there is a choice of licences, it is the one of these. */
  private static final Map<String, String> TEXTS =
      new TreeMap<>(
          Map.of(
              "Apache-2.0", "/META-INF/LICENSE",
              "BSD-3-Clause", "/META-INF/licences/BSD-3-Clause.txt",
              "MIT", "/META-INF/licences/MIT.txt"));

  private final Surroundings here;

  private final OptionSpec texts =
      Options.flag("Prints the text of each licence below the list.", "--texts");

  private final CommandSpec spec =
      Options.command(
          this,
          "licences",
          "Lists what the program is made of: each component with its version and licence.");

  LicencesCommand(Surroundings here) {
    this.here = here;
    spec.addOption(texts);
    new Usual().addTo(spec);
    Options.exits(spec, Exit.PRINTED, Exit.WRONG_USAGE);
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() throws IOException {
    PrintWriter out = here.out();
    List<Component> components = BillOfMaterials.components();
    int widest = components.stream().mapToInt(c -> titled(c).length()).max().orElse(0);
    out.print(
        "strikeoff is licensed under Apache-2.0. "
            + (components.isEmpty()
                ? "What else it holds was not listed: it was built without a network.\n"
                : "It holds:\n"));
    components.forEach(c -> out.printf("  %-" + (widest + 1) + "s %s\n", titled(c), licence(c)));
    if (texts.getValue()) {
      for (Map.Entry<String, String> text : TEXTS.entrySet()) {
        out.print("\n== " + text.getKey() + "\n\n" + resource(text.getValue()));
      }
    }
    return Exit.PRINTABLE.code();
  }

  private static String titled(Component component) {
    return component.name() + " " + component.version();
  }

  /** Where there is a choice, one whose text is here. */
  static String licence(Component component) {
    return component.licences().stream()
        .filter(TEXTS::containsKey)
        .findFirst()
        .orElseGet(() -> String.join(" or ", component.licences()));
  }

  private static String resource(String name) {
    try (InputStream in = LicencesCommand.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

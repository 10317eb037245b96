package strikeoff.cli.commands;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.InvalidPathException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.Checked;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.WholeFile;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Detail;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.PlanText;
import strikeoff.cli.text.Surroundings;
import strikeoff.start.Wishes;
import strikeoff.units.Measures;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;

/** Writes a first plan. */
final class StartCommand implements Command {

  private static final int MOST_COLOURS = 8;
  private static final int MOST_MOTIFS = 100;

  private final Surroundings here;

  private final OptionSpec title =
      Options.word(
          "--title", "TEXT", "My first plan", "What the plan is called (${DEFAULT-VALUE}).");

  private final OptionSpec medium =
      Options.word(
          "--medium",
          "dye|paint",
          "paint",
          "Thickened reactive dye, or water-based paint (${DEFAULT-VALUE}).");

  private final OptionSpec fibre =
      Options.word("--fibre", "FIBRE", "cotton", "What the cloth is made of (${DEFAULT-VALUE}).");

  private final OptionSpec colours =
      Options.words(
              "In the order of printing, light before dark, with commas between"
                  + " (${DEFAULT-VALUE}).",
              "COLOUR",
              "--colours")
          .type(List.class)
          .auxiliaryTypes(String.class)
          .splitRegex(",")
          .defaultValue("teal")
          .build();

  private final OptionSpec motif =
      Options.word(
          "--motif",
          "SIZE",
          "20 x 20 cm",
          "Size of the motif, along the cloth x across it (${DEFAULT-VALUE}).");

  private final OptionSpec count =
      Options.number(
          new WholeNumber(1, MOST_MOTIFS), "--count", "3", "How many motifs (${DEFAULT-VALUE}).");

  private final OptionSpec output =
      Options.words(
              "Write it into this file, which must not be there yet, rather than print it.",
              "FILE",
              "-o",
              "--output")
          .build();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this,
          "start",
          "Writes a small plan with comments, to edit: a row of motifs in a few colours.");

  StartCommand(Surroundings here) {
    this.here = here;
    spec.addOption(title)
        .addOption(medium)
        .addOption(fibre)
        .addOption(colours)
        .addOption(motif)
        .addOption(count)
        .addOption(output);
    usual.addTo(spec);
    Options.exits(
        spec,
        "0:the plan is printable",
        "1:it is not printable yet",
        Exit.WRONG_USAGE,
        "3:what was wished can't be read as a plan",
        "4:the file could not be written");
    Options.note(
        spec, "The plan is checked before it is written, and the stops and risks it has are told.");
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    Optional<String> output = Optional.ofNullable(this.output.getValue());
    FirstPlan plan = FirstPlan.of(wishes(), output.orElse("the plan"));
    String text = plan.text();
    Checked checked = plan.checked();
    Exit exit = Exit.of(checked.verdict());
    if (output.isPresent()) {
      Optional<String> trouble = write(output.get(), text);
      if (trouble.isPresent()) {
        Complaint.say(here, trouble.get());
        return Exit.FAULT.code();
      }
    } else {
      here.out().print(text);
      here.out().flush();
    }
    if (plan.reordered()) {
      here.err()
          .print(
              "Light before dark: printed as "
                  + String.join(", ", plan.wishes().colours())
                  + ".\n");
    }
    if (!plan.isSound()) {
      PlanText told = new PlanText(new Ink(false), here.width(), Detail.USUAL, 50);
      told.of(checked).forEach(line -> here.err().print(line + "\n"));
    }
    return exit.code();
  }

  private Wishes wishes() {
    String medium = this.medium.getValue();
    int count = this.count.getValue();
    List<String> colours = this.colours.getValue();
    String motif = this.motif.getValue();
    if (!medium.equals("dye") && !medium.equals("paint")) {
      throw wrong("--medium is dye or paint; “" + medium + "” is neither");
    }
    if (colours.size() > MOST_COLOURS) {
      throw wrong("a first plan has at most " + MOST_COLOURS + " colours");
    }
    Parsed<Pair> size = Pair.size(motif);
    if (size instanceof Parsed.Refused<Pair> refused) {
      throw wrong("--motif: " + refused.message());
    }
    Parsed.Value<Pair> given = (Parsed.Value<Pair>) size;
    Pair pair = given.value();
    if (pair.along().mm() < 1 || pair.across().mm() < 1) {
      throw wrong("--motif: a motif measures at least 1 mm each way");
    }
    List<String> trimmed = colours.stream().map(String::strip).toList();
    return new Wishes(
        title.getValue(),
        medium.equals("dye"),
        fibre.getValue(),
        trimmed,
        pair.along(),
        pair.across(),
        count,
        Measures.of(given.written()));
  }

  private Optional<String> write(String file, String text) {
    try {
      WholeFile.writeNew(here.resolve(file), text.getBytes(StandardCharsets.UTF_8));
      return Optional.empty();
    } catch (FileAlreadyExistsException e) {
      return Optional.of(file + ": this file is there already, and stays as it is");
    } catch (InvalidPathException e) {
      return Optional.of(file + ": not a path");
    } catch (IOException e) {
      return Optional.of(file + ": this file can't be written: " + FileTrouble.of(e));
    }
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }
}

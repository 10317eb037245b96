package strikeoff.cli.commands;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.Checked;
import strikeoff.cli.text.ClothMap;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Detail;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.PlanText;
import strikeoff.cli.text.Surroundings;
import strikeoff.start.FirstDesigns;
import strikeoff.start.PlanAnswers;
import strikeoff.start.Wishes;
import strikeoff.units.Measures;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;

/** Writes a first plan. */
final class StartCommand implements Command {

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
                  + " (${DEFAULT-VALUE}). With films they are as these are called, or as you say:"
                  + " rust=#b5653a.",
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
          "Size of the motif, along the cloth x across it (${DEFAULT-VALUE}); with films, of those"
              + " that don't say theirs.");

  private final OptionSpec count =
      Options.number(
          new WholeNumber(1, MOST_MOTIFS),
          "--count",
          "3",
          "How many motifs of a design (${DEFAULT-VALUE}).");

  private final OptionSpec films =
      Options.word(
          "--artwork",
          "FOLDER",
          "A folder of films, beside the plan or below it, one for each separation: heron-rust.png"
              + " is rust of the design heron, heron-key.png its outline. The motif is as large as"
              + " its films say.");

  private final OptionSpec output =
      Options.words(
              "Write it into this file, which must not be there yet, rather than print it.",
              "FILE",
              "-o",
              "--output")
          .build();

  private final OptionSpec ask =
      Options.flag(
          "Ask question by question, as is done on a terminal where no options are given. Other"
              + " options say what is offered.",
          "--ask");

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
        .addOption(films)
        .addOption(output)
        .addOption(ask);
    usual.addTo(spec);
    Options.exits(
        spec,
        "0:the plan is printable",
        "1:it is not printable yet",
        Exit.WRONG_USAGE,
        "3:what was wished can't be read as a plan, or a film can't be taken in",
        "4:the file could not be written");
    Options.note(
        spec,
        "The plan is checked before it is written, and the stops and risks it has are told. Where"
            + " start asks, it writes only what is printable, shows the cloth, and asks for the"
            + " file; where the answers end early, with Ctrl-C or Ctrl-D, it writes nothing."
            + " Films are PNG, TIFF, PBM and SVG files, of one design or several. Their colours are"
            + " printed light before dark, the outline (key) last. Where a name is no colour, a grey"
            + " stands in, which is told. Which tone of a film prints and whether it has a margin no"
            + " file says: dark prints, and nothing is cut off. Where a film can't be taken in,"
            + " nothing is written.");
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    boolean given = spec.commandLine().getParseResult().hasMatchedOption(ask);
    boolean alone = spec.commandLine().getParseResult().matchedOptions().isEmpty();
    if (given || alone && here.terminal() && here.watched()) {
      return asked();
    }
    Optional<String> output = Optional.ofNullable(this.output.getValue());
    FirstPlan plan;
    try {
      plan = plan(output);
    } catch (FilmDesigns.Refused refused) {
      if (refused.isUsage()) {
        throw wrong(refused.whys().get(0));
      }
      refused.whys().forEach(why -> Complaint.say(here, why));
      return Exit.UNREADABLE.code();
    }
    if (films.getValue() != null && plan.checked() instanceof Checked.Unreadable) {
      tell(plan);
      return Exit.UNREADABLE.code();
    }
    Exit exit = Exit.of(plan.checked().verdict());
    if (output.isPresent()) {
      Optional<String> trouble = file().write(output.get(), plan.text());
      if (trouble.isPresent()) {
        Complaint.say(here, trouble.get());
        return Exit.FAULT.code();
      }
    } else {
      print(plan.text());
    }
    tell(plan);
    return exit.code();
  }

  private FirstPlan plan(Optional<String> output) throws FilmDesigns.Refused {
    Wishes wishes = wishes();
    String file = output.orElse("the plan");
    String folder = films.getValue();
    if (folder == null) {
      return FirstPlan.of(wishes, file);
    }
    FilmDesigns designs = designs(folder);
    FirstDesigns motifs =
        designs.motifs(
            isGiven(colours) ? wishes.colours() : List.of(),
            Optional.of(new Pair(wishes.along(), wishes.across()))
                .filter(size -> isGiven(motif))
                .map(size -> FirstDesigns.size(size, wishes.units())),
            wishes.units());
    motifs
        .standIns()
        .ifPresent(
            told ->
                here.err().print(String.join("\n", Plain.wrap("", "", told, here.width())) + "\n"));
    return FirstPlan.of(wishes, motifs, designs.checker(), file);
  }

  private boolean isGiven(OptionSpec option) {
    return spec.commandLine().getParseResult().hasMatchedOption(option);
  }

  private FilmDesigns designs(String folder) throws FilmDesigns.Refused {
    try {
      return FilmDesigns.in(home(), folder, here.resolve(folder));
    } catch (InvalidPathException e) {
      throw FilmDesigns.Refused.usage(folder + ": not a path");
    }
  }

  /** The folder that the plan is to lie in. */
  private Path home() {
    try {
      return file().folder();
    } catch (InvalidPathException e) {
      throw wrong(output.getValue() + ": not a path");
    }
  }

  private FirstPlanFile file() {
    return new FirstPlanFile(here, Optional.ofNullable(output.getValue()));
  }

  private int asked() {
    Wishes usual = wishes();
    Asking asking = new Asking(here);
    FilmQuestions asked =
        new FilmQuestions(asking, home(), Optional.ofNullable(films.getValue()), this::designs);
    StartQuestions questions = new StartQuestions(asking, asked);
    asking.say("", "A first plan, question by question. Return takes what stands in brackets.");
    try {
      FirstPlan plan;
      Optional<String> stop;
      do {
        PlanAnswers answers = questions.answers(usual);
        plan =
            questions.films().isEmpty()
                ? FirstPlan.of(answers, "the plan")
                : FirstPlan.of(
                    answers, questions.films().get().motifs(), asked.checker(), "the plan");
        stop = AnswerReading.stop(plan.checked());
        stop.ifPresent(why -> asking.say("", "That can't be printed: " + why + " So once more:"));
      } while (stop.isPresent());
      Checked.Judged judged = (Checked.Judged) plan.checked();
      asking.draw(ClothMap.lines(judged, here.width(), asking.isDrawn()));
      tell(plan);
      String text = plan.text();
      Optional<String> output = Optional.ofNullable(this.output.getValue());
      asking.ask(
          "Into which file, - to print it?",
          output.orElse("my-plan.yaml"),
          name ->
              name.equals("-")
                  ? print(text)
                  : questions.films().isPresent() && !file().isBeside(name)
                      ? Parsed.refused(
                          "The plan names its films from this folder, so it lies here: say a name"
                              + " alone.")
                      : written(name, text));
      return Exit.of(judged.verdict()).code();
    } catch (Asking.Ended e) {
      Complaint.say(here, "the answers ended before there was a plan; nothing was written");
      return CommandLine.ExitCode.USAGE;
    }
  }

  private Parsed<String> written(String name, String text) {
    return file().write(name, text).<Parsed<String>>map(Parsed::refused).orElse(Parsed.value(name));
  }

  private Parsed<String> print(String text) {
    here.out().print(text);
    here.out().flush();
    return Parsed.value("-");
  }

  private void tell(FirstPlan plan) {
    if (plan.reordered()) {
      here.err()
          .print("Light before dark: printed as " + String.join(", ", plan.colours()) + ".\n");
    }
    if (!plan.isSound()) {
      PlanText told = new PlanText(new Ink(false), here.width(), Detail.USUAL, 50);
      told.of(plan.checked()).forEach(line -> here.err().print(line + "\n"));
    }
  }

  private Wishes wishes() {
    String medium = this.medium.getValue();
    int count = this.count.getValue();
    List<String> colours = this.colours.getValue();
    String motif = this.motif.getValue();
    if (!medium.equals("dye") && !medium.equals("paint")) {
      throw wrong("--medium is dye or paint; “" + medium + "” is neither");
    }
    if (films.getValue() == null && colours.size() > AnswerReading.MOST_COLOURS) {
      throw wrong("a first plan has at most " + AnswerReading.MOST_COLOURS + " colours");
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

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }
}

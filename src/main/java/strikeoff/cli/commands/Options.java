package strikeoff.cli.commands;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.IFactory;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import strikeoff.cli.files.Output;
import strikeoff.cli.text.Exit;

/** What commands' lines are built from, and the options that more than one command has. */
final class Options {

  /**
   * Makes lists and maps of values, all that is not given. The usual one looks for Groovy first.
   */
  static final IFactory FACTORY =
      new IFactory() {
        @Override
        public <K> K create(Class<K> type) {
          return type.cast(type == Map.class ? new LinkedHashMap<>() : new ArrayList<>());
        }
      };

  /** Why nothing can be handed back. */
  static final String NOWHERE_TO_HAND_BACK =
      "--hand-back writes among the pages of --reports DIR, which isn't there";

  private Options() {}

  /** A command whose help keeps the order in which options are added. */
  static CommandSpec command(Command command, String name, String... description) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(command, FACTORY).name(name);
    spec.usageMessage().description(description).sortOptions(false);
    return spec;
  }

  /** The exit codes that help tells, each as {@code 0:what it means}. */
  static void exits(CommandSpec spec, String... codes) {
    spec.usageMessage()
        .exitCodeListHeading(Exit.HEADING)
        .exitCodeList(UsageMessageSpec.keyValuesMap(codes));
  }

  /** A sentence at the end of the help. */
  static void note(CommandSpec spec, String note) {
    spec.usageMessage().footerHeading(Exit.NOTE).footer(note);
  }

  /** Is there or not. */
  static OptionSpec flag(String description, String... names) {
    return OptionSpec.builder(names)
        .type(boolean.class)
        .converters(new YesOrNo())
        .initialValue(false)
        .description(description)
        .build();
  }

  /** Takes a word, or is not there: null. */
  static OptionSpec word(String name, String label, String description) {
    return words(description, label, name).build();
  }

  /** Takes a word, or has this one. */
  static OptionSpec word(String name, String label, String usual, String description) {
    return words(description, label, name).defaultValue(usual).build();
  }

  /** Takes one of the words that an enum stands for. */
  static <E extends Enum<E>> OptionSpec oneOf(
      Class<E> type, String name, String label, String usual, String description) {
    OneOf<E> one = new OneOf<>(type);
    return words(description, label, name)
        .type(type)
        .converters(one)
        .completionCandidates(one)
        .defaultValue(usual)
        .build();
  }

  /** May be changed further; takes a word so far. */
  static OptionSpec.Builder words(String description, String label, String... names) {
    return OptionSpec.builder(names)
        .type(String.class)
        .arity("1")
        .paramLabel(label)
        .description(description);
  }

  /** One word at this place, which has to be there. */
  static PositionalParamSpec parameter(String index, String label, String... description) {
    return PositionalParamSpec.builder()
        .index(index)
        .arity("1")
        .required(true)
        .type(String.class)
        .paramLabel(label)
        .description(description)
        .build();
  }

  /** One word that may be left away. */
  static PositionalParamSpec optional(String label, String usual, String... description) {
    return PositionalParamSpec.builder()
        .index("0")
        .arity("0..1")
        .type(String.class)
        .paramLabel(label)
        .defaultValue(usual)
        .description(description)
        .build();
  }

  /**
   * All words from the first one on.
   *
   * @param required whether there has to be one
   */
  static PositionalParamSpec parameters(boolean required, String label, String description) {
    return PositionalParamSpec.builder()
        .index("0..*")
        .arity(required ? "1..*" : "0..*")
        .required(required)
        .type(List.class)
        .auxiliaryTypes(String.class)
        .paramLabel(label)
        .description(description)
        .build();
  }

  /** The words of a list that may be empty. */
  static List<String> listed(PositionalParamSpec parameters) {
    List<String> words = parameters.getValue();
    return words == null ? List.of() : words;
  }

  /** Formats and where they go. */
  static OptionSpec formats(String description) {
    return words(description, "FORMAT[=FILE]", "-f", "--format")
        .type(List.class)
        .auxiliaryTypes(Output.class)
        .converters(new Output.Converter())
        .build();
  }

  /** What {@link #formats} was given. */
  static List<Output> outputs(OptionSpec formats) {
    List<Output> outputs = formats.getValue();
    return outputs == null ? List.of() : outputs;
  }

  /** How plans of an index are grouped. */
  static OptionSpec groups() {
    return oneOf(
        Groups.class,
        "--by",
        "GROUP",
        "folder",
        "Group the plans of the index by folder (${DEFAULT-VALUE}) or by pupil: by who made the plan, as"
            + " its key “by” says, else by the folder it lies in.");
  }

  static OptionSpec handBack() {
    return flag(
        "With --reports, write a page for each pupil too, to print and hand back: verdict, points,"
            + " findings with the plan's lines, and room for the teacher's words. Pupils are those of"
            + " --by pupil, which this implies.",
        "--hand-back");
  }

  static OptionSpec noArtwork() {
    return flag(
        "Draw no film on pages, as for commissioned work: stripes stand in place of motifs, and"
            + " figures stay. Other results never hold a picture.",
        "--no-artwork");
  }

  static OptionSpec failOn() {
    return oneOf(
        FailOn.class,
        "--fail-on",
        "WHAT",
        "stop",
        "Exit with 1 from which findings on: stop, risk or advice (${DEFAULT-VALUE}); accepted ones"
            + " don't count. With none, exit with 0 also if a plan can't be read: to look, not to"
            + " gate. Codes 2 and 4 stay as they are.");
  }

  /** Takes a whole number, or has this one. */
  static OptionSpec number(WholeNumber range, String name, String usual, String description) {
    return words(description, "N", name)
        .type(int.class)
        .converters(range)
        .defaultValue(usual)
        .build();
  }

  static OptionSpec maxSeconds() {
    return number(
        WholeNumber.FROM_ONE,
        "--max-seconds",
        "120",
        "Give a plan up that takes longer than this (${DEFAULT-VALUE}).");
  }

  static OptionSpec verbose(String description) {
    return flag(description, "-v", "--verbose");
  }
}

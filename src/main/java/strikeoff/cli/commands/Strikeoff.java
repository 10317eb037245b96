package strikeoff.cli.commands;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import strikeoff.check.BuiltInRules;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.ShortOfMemory;
import strikeoff.units.Spelling;

/** The program's commands. */
public final class Strikeoff implements Runnable {

  /** Commands that need the rules, which load while the command line is read. */
  private static final Set<String> JUDGING =
      Set.of("check", "propose", "watch", "start", "schema", "rules", "explain");

  /** As help lists them. */
  private static final List<String> NAMES =
      List.of(
          "check",
          "join",
          "compare",
          "mend",
          "propose",
          "start",
          "watch",
          "schema",
          "completion",
          "rules",
          "explain",
          "licences",
          "help");

  /** Those that speak of the others. */
  private static final Set<String> ABOUT_ALL = Set.of("completion", "help");

  private final CommandSpec spec =
      CommandSpec.wrapWithoutInspection(this, Options.FACTORY).name("strikeoff");

  private Strikeoff() {
    spec.versionProvider(new Version())
        .addOption(Usual.help())
        .addOption(
            OptionSpec.builder("-V", "--version")
                .type(boolean.class)
                .converters(new YesOrNo())
                .versionHelp(true)
                .description("Print version information and exit.")
                .build());
    spec.usageMessage()
        .description("Checks a hand screen-printer's print plans before anyone mixes paste.");
    Options.exits(
        spec,
        Exit.ALL_PRINTABLE,
        Exit.SOME_NOT_PRINTABLE,
        Exit.WRONG_USAGE,
        Exit.SOME_UNREADABLE,
        Exit.TOOL_FAILED);
    Options.note(spec, Exit.WORST_COUNTS);
  }

  /**
   * Runs one command.
   *
   * @return the exit code
   */
  public static int run(Surroundings here, String... args) {
    if (args.length > 0 && JUDGING.contains(args[0])) {
      BuiltInRules.prepare();
    }
    // A command that is named first needs none beside it, except to list their options.
    boolean alone = args.length > 0 && NAMES.contains(args[0]) && !ABOUT_ALL.contains(args[0]);
    CommandLine line = commands(here, alone ? List.of(args[0]) : NAMES);
    line.setOut(here.out());
    line.setErr(here.err());
    line.setColorScheme(Help.defaultColorScheme(here.colourful() ? Help.Ansi.ON : Help.Ansi.OFF));
    line.setUsageHelpWidth(Math.max(55, here.width()));
    // A file called @name may have been handed in, and must not become part of the command.
    line.setExpandAtFiles(false);
    line.setExitCodeExceptionMapper(e -> Exit.FAULT.code());
    line.setParameterExceptionHandler((e, a) -> wrongUsage(here, e));
    line.setExecutionExceptionHandler((e, l, p) -> fault(here, e));
    try {
      Optional<String> handedIn = FileOptions.likeAFile(here, args);
      if (handedIn.isPresent()) {
        Complaint.say(here, handedIn.get());
        return Exit.USAGE.code();
      }
      return line.execute(args);
    } catch (OutOfMemoryError | NoClassDefFoundError e) {
      return fault(here, e);
    } finally {
      here.out().flush();
      here.err().flush();
    }
  }

  /** All commands, with the program's own name above them. */
  public static CommandLine commands(Surroundings here) {
    return commands(here, NAMES);
  }

  private static CommandLine commands(Surroundings here, List<String> names) {
    CommandSpec all = new Strikeoff().spec;
    names.forEach(name -> all.addSubcommand(name, command(here, name).spec()));
    return new CommandLine(all, Options.FACTORY);
  }

  private static Command command(Surroundings here, String name) {
    return switch (name) {
      case "check" -> new CheckCommand(here);
      case "join" -> new JoinCommand(here);
      case "compare" -> new CompareCommand(here);
      case "mend" -> new MendCommand(here);
      case "propose" -> new ProposeCommand(here);
      case "start" -> new StartCommand(here);
      case "watch" -> new WatchCommand(here);
      case "schema" -> new SchemaCommand(here);
      case "completion" -> new CompletionCommand(here);
      case "rules" -> new RulesCommand(here);
      case "explain" -> new ExplainCommand(here);
      case "licences" -> new LicencesCommand(here);
      case "help" -> new HelpCommand();
      default -> throw new IllegalArgumentException(name);
    };
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "no command given");
  }

  private static int wrongUsage(Surroundings here, ParameterException wrong) {
    Complaint.say(here, wrong instanceof UnmatchedArgumentException u ? unknown(u) : said(wrong));
    here.err().print("See: " + name(wrong) + " --help\n");
    return Exit.USAGE.code();
  }

  private static String name(ParameterException wrong) {
    return wrong.getCommandLine().getCommandSpec().qualifiedName();
  }

  private static String said(ParameterException wrong) {
    return String.valueOf(wrong.getMessage());
  }

  private static String unknown(UnmatchedArgumentException wrong) {
    String word = wrong.getUnmatched().get(0);
    CommandSpec command = wrong.getCommandLine().getCommandSpec();
    List<String> known = new ArrayList<>();
    boolean option = word.startsWith("-");
    if (option) {
      command.options().forEach(o -> known.addAll(List.of(o.names())));
    } else {
      known.addAll(command.subcommands().keySet());
    }
    String kind = option ? "option" : known.isEmpty() ? "further argument" : "command";
    return "no " + kind + " “" + word + "”" + Spelling.didYouMean(word, known);
  }

  private static int fault(Surroundings here, Throwable e) {
    Complaint.say(
        here,
        ShortOfMemory.caused(e)
            ? "there is too little memory for this; the JDK's option -Xmx gives more, as -Xmx512m"
            : "the tool failed: " + e);
    if (System.getProperty("strikeoff.trace") != null) {
      e.printStackTrace(here.err());
    }
    return Exit.FAULT.code();
  }

  /** Reads the version from the jar. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {
        "strikeoff " + number() + commit(), "Java " + System.getProperty("java.runtime.version")
      };
    }

    /** The first digits of the commit that was built; nothing where the build found no history. */
    private static String commit() {
      try (InputStream in = Strikeoff.class.getResourceAsStream("/META-INF/commit.properties")) {
        Properties known = new Properties();
        if (in != null) {
          known.load(in);
        }
        String commit = known.getProperty("git.commit.id.abbrev", "");
        return commit.isEmpty() || commit.startsWith("$") ? "" : " (" + commit + ")";
      } catch (IOException e) {
        return "";
      }
    }

    /** As {@code 0.2.0}; words where the classes don't come from the jar. */
    static String number() {
      String version = Strikeoff.class.getPackage().getImplementationVersion();
      return version == null ? "(not packaged)" : version;
    }
  }
}

package strikeoff.propose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import strikeoff.day.Doing;
import strikeoff.document.Scalars;
import strikeoff.plan.Begins;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.units.Measures;

/** Writes one step of a proposed run as the plan's language has it. */
final class StepLines {

  private final Leeway leeway;
  private final DryingTold waits;
  private final Measures units;

  StepLines(Leeway leeway, DryingTold waits) {
    this.leeway = leeway;
    this.waits = waits;
    this.units = leeway.plan().measures();
  }

  /** The lines of one step of a run, with a comment to each wait that is none of the printer's. */
  List<String> of(List<Step> run, int at) {
    List<String> lines = new ArrayList<>();
    Step step = run.get(at);
    if (step instanceof Step.Mix mix) {
      String line = "- mix: " + (mix.pastes().equals(all(mix)) ? "all" : names(mix.pastes()));
      lines.add(isAgain(run, at, mix) ? told(line, Reasons.AFRESH) : line);
      by(lines, step.by());
    } else if (step instanceof PrintStep print) {
      print(
          lines,
          print,
          at > 0 && run.subList(0, at).stream().anyMatch(PrintStep.class::isInstance));
    } else if (step instanceof Step.Dry dry) {
      lines.add(told("- dry: " + dry.until().text(), why(run, at)));
      dry.air().ifPresent(air -> lines.add("  air: " + air.text(units)));
      by(lines, dry.by());
    } else if (step instanceof Step.WashScreen wash) {
      boolean every = wash.screens().size() == leeway.plan().screens().size();
      String line = "- wash screen: " + (every ? "all" : names(wash.screens()));
      lines.add(wash.begins() == Begins.IN_TURN ? told(line, Reasons.WASHED) : line);
      by(lines, wash.by());
    } else if (step instanceof Step.Sew sew) {
      String line = "- sew: " + Scalars.text(sew.seam());
      boolean unfixed = Reasons.liesUnfixed(run.subList(0, at));
      lines.add(unfixed ? told(line, Reasons.PRESSED) : line);
      by(lines, sew.by());
    } else if (step instanceof Step.EndOfDay) {
      lines.add(told("- end of day", Reasons.night(run, at)));
    } else {
      throw new IllegalArgumentException("no proposed run has a step " + step.number());
    }
    if (step.begins() != Begins.IN_TURN) {
      within(
          lines,
          "begins: " + step.begins().text(),
          step.begins() == Begins.WHEN_FREE ? Reasons.BESIDE : Reasons.DONE);
    }
    return lines;
  }

  private static boolean isAgain(List<Step> run, int at, Step.Mix mix) {
    return run.subList(0, at).stream()
        .anyMatch(
            step ->
                step instanceof Step.Mix before
                    && !Collections.disjoint(before.pastes(), mix.pastes()));
  }

  /** Only a step that mixes everything says so, as others would be read in another order. */
  private List<String> all(Step.Mix mix) {
    boolean every =
        mix.pastes().size() == leeway.mixed().size()
            && leeway.plan().pastes().values().stream()
                .filter(p -> p.mixedBefore().isEmpty())
                .allMatch(p -> mix.pastes().contains(p.name()))
            && mix.pastes().stream()
                .allMatch(p -> leeway.plan().pastes().get(p).mixedBefore().isEmpty());
    return every ? mix.pastes() : List.of();
  }

  private void print(List<String> lines, PrintStep print, boolean printed) {
    lines.add(
        "- print: " + (print.numbers().isEmpty() ? names(print.arrangements()) : each(print)));
    if (!print.only().isEmpty()) {
      lines.add("  only: " + numbers(print.only()));
    }
    if (!print.separations().isEmpty()) {
      lines.add("  colours: " + colours(print));
    }
    switch (print.order()) {
      case BY_STATION -> lines.add("  order: by station");
      case OVER_ALL -> lines.add("  order: over all");
      case SET_BY_SET -> lines.add("  order: set by set");
      case BY_COLOUR -> {}
    }
    print.air().ifPresent(air -> lines.add("  air: " + air.text(units)));
    if (print.everyOther()) {
      lines.add("  every other: yes");
    }
    if (print.pause().minutes() > 0) {
      String line = "pause: " + print.pause().text();
      if (isWritten(print, PrintStep::pause)) {
        lines.add("  " + line);
      } else {
        within(lines, line, Reasons.NEIGHBOURS);
      }
    }
    wait(
        lines,
        Doing.Wait.BETWEEN_NEIGHBOURS,
        print,
        each -> Wait.of(each.dryBetweenNeighbours()),
        Reasons.NEIGHBOURS);
    wait(lines, Doing.Wait.BETWEEN_PASSES, print, PrintStep::dryBetweenPasses, Reasons.PASSES);
    wait(lines, Doing.Wait.BETWEEN_COLOURS, print, PrintStep::dryBetweenColours, Reasons.COLOURS);
    wait(
        lines,
        Doing.Wait.BEFORE_MOVING,
        print,
        PrintStep::beforeMoving,
        printed ? Reasons.MOVES : Reasons.STRETCHES);
    List<String> people = print.people();
    if (!people.isEmpty() && !(people.size() == 1 && goesWithoutSaying(people.get(0)))) {
      lines.add("  by: " + names(people));
    }
    print.washes().ifPresent(who -> lines.add("  washes: " + Scalars.text(who)));
    if (print.washBetweenColours()) {
      lines.add("  wash between colours: yes");
    }
  }

  /** By the paste where that says which colour is meant, else by its number. */
  private String colours(PrintStep print) {
    String design = leeway.plan().arrangements().get(print.arrangements().get(0)).design();
    var separations = leeway.plan().designs().get(design).separations();
    List<String> pastes =
        print.separations().stream().map(n -> separations.get(n - 1).paste()).toList();
    boolean clear =
        print.arrangements().stream()
            .allMatch(
                name ->
                    print.separations().stream()
                        .allMatch(
                            n -> isCalled(name, n, pastes.get(print.separations().indexOf(n)))));
    return clear
        ? names(pastes)
        : print.separations().stream()
            .map(String::valueOf)
            .collect(Collectors.joining(", ", "[", "]"));
  }

  /** True if a paste's name means that colour of the arrangement's design and no other. */
  private boolean isCalled(String arrangement, int number, String name) {
    String design = leeway.plan().arrangements().get(arrangement).design();
    return leeway.plan().designs().get(design).separations().stream()
        .filter(
            s ->
                s.paste().equals(name)
                    || s.screen().equals(name)
                    || Integer.toString(s.number()).equals(name))
        .map(s -> s.number())
        .toList()
        .equals(List.of(number));
  }

  /** True of what the plan's own run says of such prints: the printer knows why. */
  private boolean isWritten(PrintStep print, Function<PrintStep, ?> what) {
    return leeway.plan().steps(PrintStep.class).stream()
        .filter(own -> own.arrangements().stream().anyMatch(print.arrangements()::contains))
        .anyMatch(own -> what.apply(own).equals(what.apply(print)));
  }

  private void wait(
      List<String> lines,
      Doing.Wait waited,
      PrintStep print,
      Function<PrintStep, Wait> which,
      String why) {
    String key = waited.key();
    Wait wait = which.apply(print);
    if (wait.until() instanceof Until.Time && !wait.isNone() && isWritten(print, which)) {
      lines.add("  " + key + ": " + wait.text(units));
    } else if (!wait.isNone()) {
      String lasts = wait.until() instanceof Until.State ? waits.of(print.number(), waited) : "";
      within(lines, key + ": " + wait.text(units), lasts + why);
    }
  }

  /** What a drying step waits for, by the step that comes after it, and for how long. */
  private String why(List<Step> run, int at) {
    Step.Dry dry = (Step.Dry) run.get(at);
    if (!(dry.until() instanceof Until.State state)) {
      if (dry.air().isEmpty() && at + 1 < run.size() && run.get(at + 1) instanceof Step.Fix) {
        return Reasons.BREAK;
      }
      return Reasons.drying(run, at, Dryness.FRAME_SAFE);
    }
    return waits.of(dry.number(), new Doing.OfStep(dry)) + Reasons.drying(run, at, state.dryness());
  }

  /** Each arrangement with its numbers. */
  private static String each(PrintStep print) {
    return print.arrangements().stream()
        .map(
            name ->
                Scalars.text(name)
                    + ": "
                    + (print.only(name).isEmpty() ? "all" : numbers(print.only(name))))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  /** In one run where they are one, which stands in a map too. */
  private static String numbers(List<Integer> numbers) {
    int first = numbers.get(0);
    int last = numbers.get(numbers.size() - 1);
    boolean isRun =
        numbers.size() > 2 && numbers.equals(IntStream.rangeClosed(first, last).boxed().toList());
    return isRun ? first + "-" + last : numbers.toString();
  }

  private static String told(String line, String why) {
    return line + "   # " + oneLine(why);
  }

  /** A name that a comment tells may have more of them. */
  private static String oneLine(String why) {
    return why.replaceAll("\\p{Cntrl}|\\R", " ");
  }

  /** Within a step there is room for a line of its own. */
  private static void within(List<String> lines, String line, String why) {
    lines.add("  # " + oneLine(why));
    lines.add("  " + line);
  }

  private void by(List<String> lines, Optional<String> person) {
    person
        .filter(who -> !goesWithoutSaying(who))
        .ifPresent(who -> lines.add("  by: " + Scalars.text(who)));
  }

  /** True of the first of the crew, unless the plan's own run names them too. */
  private boolean goesWithoutSaying(String who) {
    return who.equals(leeway.crew().get(0))
        && leeway.plan().run().stream()
            .noneMatch(step -> step.by().filter(who::equals).isPresent());
  }

  /** One name, or several in brackets. */
  static String names(List<String> names) {
    return names.size() == 1
        ? Scalars.text(names.get(0))
        : names.stream().map(Scalars::text).collect(Collectors.joining(", ", "[", "]"));
  }
}

package strikeoff.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import strikeoff.check.Checked;
import strikeoff.day.Film;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Until.Dryness;
import strikeoff.report.drawing.FittedWords;
import strikeoff.report.page.DaySheet;
import strikeoff.report.page.DaySheet.Where;
import strikeoff.units.Phrase;

/**
 * Turns a day's blocks of work into jobs with the numbers of their steps: a set is one job, its
 * colours are its lines.
 */
final class DayJobs {

  /** Whoever feels films for these knows that the cloth may move. */
  private static final Set<Dryness> LIFTED = EnumSet.of(Dryness.LIFT_SAFE, Dryness.FIX_SAFE);

  /** Names are cut and long counts told in fewer words, so that a sheet stays a page. */
  private static final int LONGEST_NAME = 40;

  private static final int LONGEST_NUMBERS = 44;

  private final Checked.Judged judged;
  private final PrintPlan plan;
  private final TaskWords words;
  private final Behind behind;
  private final FeltWaits felt;
  private final Mornings mornings;
  private final int day;
  private final Hands hands;
  private final WaitLines waits;

  /** Whether it was said what dye looks like when a frame may lie on it. */
  private boolean saidSheen;

  /** Steps of which it was said until when a fan blows while they print. */
  private final Set<Integer> fans = new HashSet<>();

  private final List<DaySheet.Job> jobs = new ArrayList<>();
  private final List<WorkBlock> dries = new ArrayList<>();
  private final List<Task> washings = new ArrayList<>();

  private DayJobs(Checked.Judged judged, int day) {
    this.judged = judged;
    this.plan = judged.plan();
    this.words = new TaskWords(judged);
    this.behind = new Behind(judged.plan(), judged.facts().timeline());
    this.felt = new FeltWaits(judged);
    this.mornings = new Mornings(judged);
    this.day = day;
    this.hands = new Hands(plan.crew().names().size() == 1);
    this.waits = new WaitLines(words, felt, hands, day);
  }

  static List<DaySheet.Job> of(Checked.Judged judged, int day, List<WorkBlock> blocks) {
    DayJobs made = new DayJobs(judged, day);
    for (WorkBlock work : blocks) {
      if (work.kind() == Task.Kind.DRY_SCREEN) {
        made.dries.add(work);
      } else if (work.kind() == Task.Kind.WASH_SCREEN) {
        made.washings.addAll(work.tasks());
      }
    }
    List<List<WorkBlock>> groups = WorkGroups.of(blocks);
    for (int i = 0; i < groups.size(); i++) {
      List<WorkBlock> group = groups.get(i);
      made.jobs.add(
          group.get(0).prints()
              ? made.printJob(group, WorkGroups.mayMoveAfter(groups, i))
              : group.size() > 1 ? made.manyJob(group) : made.otherJob(group.get(0)));
    }
    return AtWork.in(BathsAhead.in(made.jobs, judged, day, blocks), judged, day);
  }

  /**
   * @param mayMove whether to say when the cloth may be moved
   */
  private DaySheet.Job printJob(List<WorkBlock> set, boolean mayMove) {
    List<Impression> all = set.stream().flatMap(w -> w.impressions().stream()).toList();
    WorkBlock lastPrint = set.get(0);
    for (WorkBlock work : set) {
      lastPrint = work.prints() ? work : lastPrint;
    }
    String moves =
        mayMove
            ? "cloth may move from "
                + WorkWords.reached(laidBy(all.get(all.size() - 1)), Film::liftSafe, day)
            : "";
    boolean told = false;
    List<DaySheet.Line> lines = new ArrayList<>();
    for (WorkBlock work : set) {
      if (work.prints()) {
        lines.add(printLine(work, all));
      } else if (work.kind() != Task.Kind.WAIT) {
        lines.add(
            new DaySheet.Line(
                work.start(),
                words.title(work),
                until(work) + felt.first(work, day),
                hands.of(work),
                laid(work)));
      } else if (work.start().compareTo(lastPrint.start()) < 0) {
        lines.add(waits.after(lines.remove(lines.size() - 1), work));
      } else if (!told
          || felt.state(work.first()).isPresent()
          || work.first().piece().isPresent()) {
        told = true;
        boolean feltToMove = felt.state(work.first()).filter(LIFTED::contains).isPresent();
        lines.add(
            waits.alone(
                work,
                felt.of(work, day)
                    .map(feel -> "Wait, feel it: " + feel.likely())
                    .orElse("Leave the cloth " + until(work)),
                feltToMove ? "" : moves));
      }
    }
    return new DaySheet.Job(
        number(set.get(0)),
        "Print " + name(WorkGroups.arrangement(set.get(0))) + " " + counted(all),
        Corners.of(all, judged),
        lines,
        told || moves.isEmpty() ? "" : Phrase.capital(moves) + ".",
        new DaySheet.Prints(
            all.stream().map(i -> i.footprint().placement().id()).collect(Collectors.toSet()),
            dries(all),
            lastPrint.start()));
  }

  /** A move of the cloth once a set is printed. */
  private String laid(WorkBlock move) {
    List<String> words = new ArrayList<>(this.words.laying(move));
    words.add(0, this.words.how(move));
    return words.stream().filter(said -> !said.isEmpty()).collect(Collectors.joining(". "));
  }

  /** The three limits as one sentence; of dye, once, what the clock can't know. */
  private String dries(List<Impression> all) {
    boolean dye =
        !saidSheen && all.stream().anyMatch(i -> i.footprint().paste().medium() == Medium.DYE);
    saidSheen |= dye;
    return "All of it: next frame on it from "
        + WorkWords.reached(all, Film::frameSafe, day)
        + (dye ? ", once its sheen is gone" : "")
        + "; lifted or moved from "
        + WorkWords.reached(all, Film::liftSafe, day)
        + "; fixed from "
        + WorkWords.reached(all, Film::fixSafe, day)
        + ".";
  }

  /** All films that lie on the cloth by then: it moves as a whole. */
  private List<Impression> laidBy(Impression last) {
    return judged.facts().timeline().impressions().stream()
        .filter(i -> i.laid().compareTo(last.laid()) <= 0)
        .toList();
  }

  private static String number(WorkBlock work) {
    int step = work.first().step();
    return step == 0 ? "" : Integer.toString(step);
  }

  static String name(String name) {
    return FittedWords.shortened(name, LONGEST_NAME);
  }

  /** The numbers in the order of printing, or how many they are. */
  private static String counted(List<Impression> impressions) {
    String numbers = WorkWords.numbers(impressions);
    return numbers.length() <= LONGEST_NUMBERS ? numbers : "(" + count(impressions) + " of them)";
  }

  private static long count(List<Impression> impressions) {
    return impressions.stream().map(i -> i.footprint().placement().id()).distinct().count();
  }

  private DaySheet.Line printLine(WorkBlock work, List<Impression> all) {
    String numbers = WorkWords.numbers(work.impressions());
    String on =
        numbers.length() <= LONGEST_NUMBERS
            ? numbers
            : numbers.equals(WorkWords.numbers(all))
                ? "all " + count(all) + " in this order"
                : count(work.impressions()) + ": " + FittedWords.shortened(numbers, 300);
    return new DaySheet.Line(
        work.start(),
        Phrase.capital(name(WorkWords.paste(work))),
        "on "
            + on
            + ", screen "
            + name(WorkWords.screen(work))
            + ", "
            + WorkWords.pulls(work)
            + behind.of(work)
            + air(work)
            + words.pause(work)
            + washedIn(work)
            + words.covered(work)
            + felt.first(work, day),
        hands.printing(work),
        frames(work.impressions()));
  }

  /** What moves the air while a step prints. */
  private String air(WorkBlock work) {
    int step = work.first().step();
    return plan.print(step)
        .flatMap(PrintStep::air)
        .map(
            air ->
                air.by() == Draught.By.FAN
                    ? ", fan on"
                        + (fans.add(step) ? " to " + WorkWords.clock(printed(step), day) : "")
                    : ", air " + air.text(plan.measures()))
        .orElse("");
  }

  /** When the last print of a step is done, by whomever. */
  private Moment printed(int step) {
    return judged.facts().timeline().impressions().stream()
        .filter(i -> i.step() == step)
        .map(Impression::lifted)
        .max(Moment::compareTo)
        .orElseThrow();
  }

  /** Screens that are washed out between the prints of a line, whose times stand further down. */
  private String washedIn(WorkBlock prints) {
    List<Task> tasks = prints.tasks();
    Moment first = tasks.get(0).end();
    Moment last = tasks.get(tasks.size() - 1).start();
    List<String> screens =
        washings.stream()
            .filter(w -> w.start().compareTo(first) >= 0 && w.start().compareTo(last) < 0)
            .map(w -> name(w.screen().orElseThrow()))
            .distinct()
            .toList();
    return screens.isEmpty() || words.pause(prints).isEmpty()
        ? ""
        : ", in which "
            + Phrase.list(screens)
            + (screens.size() == 1 ? " is" : " are")
            + " washed out";
  }

  /** The first is dry while the last is still wet: each with its number. */
  private String frames(List<Impression> films) {
    Impression first = films.get(0);
    Impression last = films.get(films.size() - 1);
    String from = WorkWords.reached(films, Film::frameSafe, day);
    Moment early = first.film().frameSafe().best();
    boolean apart =
        first.footprint().placement().number() != last.footprint().placement().number()
            && !first.film().frameSafe().never()
            && !WorkWords.clock(early, day)
                .equals(WorkWords.clock(last.film().frameSafe().best(), day));
    return apart
        ? "next frame on "
            + first.footprint().placement().number()
            + " not before "
            + WorkWords.clock(early, day)
            + ", on all not before "
            + from
        : "next frame on it " + (WorkWords.isNever(from) ? "" : "not before ") + from;
  }

  /** Pastes to mix or screens to wash, one after the other. */
  private DaySheet.Job manyJob(List<WorkBlock> works) {
    boolean washes = works.get(0).kind() == Task.Kind.WASH_SCREEN;
    return new DaySheet.Job(
        number(works.get(0)),
        washes ? "Wash out the screens" : "Mix the pastes",
        Where.NOWHERE,
        works.stream()
            .map(
                work ->
                    new DaySheet.Line(
                        work.start(),
                        words.title(work),
                        washes ? until(work) : words.how(work),
                        hands.of(work),
                        drying(work)))
            .toList(),
        "");
  }

  /** When a washed screen is dry: of a screen washed several times a day, after this washing. */
  private String drying(WorkBlock work) {
    return work.kind() != Task.Kind.WASH_SCREEN
        ? ""
        : dries.stream()
            .filter(dry -> dry.first().screen().equals(work.first().screen()))
            .filter(dry -> dry.start().compareTo(work.end()) >= 0)
            .findFirst()
            .map(dry -> "dry at " + WorkWords.clock(dry.end(), day))
            .orElse("");
  }

  private DaySheet.Job otherJob(WorkBlock work) {
    String what =
        felt.of(work, day)
            .map(feel -> "Feel it: " + feel.likely())
            .orElseGet(() -> morning(work) + Phrase.capital(until(work)) + felt.first(work, day));
    return new DaySheet.Job(
            number(work),
            words.title(work),
            Where.NOWHERE,
            List.of(waits.alone(work, what, drying(work))),
            "")
        .minding(words.laying(work));
  }

  /** What is felt before the first thing that a step does to cloth that dried overnight. */
  private String morning(WorkBlock work) {
    int step = work.first().step();
    return jobs.stream().anyMatch(job -> job.step() == step)
        ? ""
        : mornings.before(step, day).map(feel -> feel + " ").orElse("");
  }

  private String until(WorkBlock work) {
    return "until " + WorkWords.clock(work.end(), day);
  }
}

package strikeoff.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import strikeoff.check.Checked;
import strikeoff.plan.PrintPlan;
import strikeoff.report.drawing.Words;
import strikeoff.report.page.DaySheet;
import strikeoff.report.page.DaySheet.Where;
import strikeoff.timeline.Film;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Task;

/** Turns a day's blocks of work into numbered jobs: a set is one job, its colours are its lines. */
final class DayJobs {

  private static final Set<Task.Kind> ALIKE = EnumSet.of(Task.Kind.MIX, Task.Kind.WASH_SCREEN);

  /** Names are cut and long counts told in fewer words, so that a sheet stays a page. */
  private static final int LONGEST_NAME = 40;

  private static final int LONGEST_NUMBERS = 44;

  private final PrintPlan plan;
  private final TaskWords words;
  private final int day;
  private final List<DaySheet.Job> jobs = new ArrayList<>();
  private final List<Work> dries = new ArrayList<>();

  private DayJobs(Checked.Judged judged, int day) {
    this.plan = judged.plan();
    this.words = new TaskWords(judged);
    this.day = day;
  }

  static List<DaySheet.Job> of(Checked.Judged judged, int day, List<Work> blocks) {
    DayJobs made = new DayJobs(judged, day);
    for (Work work : blocks) {
      if (work.kind() == Task.Kind.DRY_SCREEN) {
        made.dries.add(work);
      }
    }
    for (List<Work> group : made.grouped(blocks)) {
      made.jobs.add(
          group.get(0).prints()
              ? made.printJob(group)
              : group.size() > 1 ? made.manyJob(group) : made.otherJob(group.get(0)));
    }
    return made.jobs;
  }

  /**
   * Colours of one set with the waits and moves between them; pastes mixed and screens washed, each
   * one after the other. A set's last wait stays with it though screens are washed meanwhile.
   */
  private List<List<Work>> grouped(List<Work> blocks) {
    List<List<Work>> groups = new ArrayList<>();
    List<Work> set = null;
    for (Work work : blocks) {
      if (work.kind() == Task.Kind.DRY_SCREEN || work.isPause()) {
        continue;
      }
      List<Work> last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
      if (set != null && work.kind() == Task.Kind.WAIT && sameStep(set.get(0), work)) {
        set.add(work);
      } else if (last != null && carriesOn(last.get(0), work)) {
        last.add(work);
      } else {
        groups.add(new ArrayList<>(List.of(work)));
        if (work.prints()) {
          set = groups.get(groups.size() - 1);
        }
      }
    }
    return groups;
  }

  private static boolean carriesOn(Work first, Work work) {
    if (!first.prints()) {
      return ALIKE.contains(work.kind()) && first.kind() == work.kind() && sameStep(first, work);
    }
    return work.prints()
        ? first.sameSet(work) && arrangement(first).equals(arrangement(work))
        : work.kind() == Task.Kind.MOVE && sameStep(first, work);
  }

  private static boolean sameStep(Work first, Work next) {
    return first.first().step() == next.first().step();
  }

  private static String arrangement(Work work) {
    return work.impressions().get(0).footprint().placement().arrangement();
  }

  private DaySheet.Job printJob(List<Work> set) {
    List<Impression> all = set.stream().flatMap(w -> w.impressions().stream()).toList();
    Work lastPrint = set.get(0);
    for (Work work : set) {
      lastPrint = work.prints() ? work : lastPrint;
    }
    String mayMove = "cloth may move from " + WorkWords.reached(all, Film::liftSafe, day);
    boolean told = false;
    List<DaySheet.Line> lines = new ArrayList<>();
    for (Work work : set) {
      if (work.prints()) {
        lines.add(printLine(work, all));
      } else if (work.kind() != Task.Kind.WAIT) {
        lines.add(
            new DaySheet.Line(
                work.start().clock(), words.title(work), until(work), words.how(work)));
      } else if (work.start().compareTo(lastPrint.start()) < 0) {
        lines.add(thenWait(lines.remove(lines.size() - 1), work));
      } else if (!told) {
        told = true;
        String lie = "Leave the cloth until " + WorkWords.clock(work.end(), day);
        lines.add(new DaySheet.Line(work.start().clock(), lie, "", mayMove));
      }
    }
    return new DaySheet.Job(
        jobs.size() + 1,
        "Print " + name(arrangement(set.get(0))) + " " + counted(all) + by(set),
        Corners.of(all, plan.cloth().closed() ? plan.cloth().length().mm() : Double.MAX_VALUE),
        lines,
        told ? "" : WorkWords.capital(mayMove) + ".");
  }

  private String by(List<Work> works) {
    Set<String> people = new LinkedHashSet<>();
    works.forEach(work -> who(work).forEach(people::add));
    return people.isEmpty() ? "" : " (" + String.join(", ", people) + ")";
  }

  private static String name(String name) {
    return Words.shortened(name, LONGEST_NAME);
  }

  /** The numbers in the order of printing, or how many they are. */
  private static String counted(List<Impression> impressions) {
    String numbers = WorkWords.numbers(impressions);
    return numbers.length() <= LONGEST_NUMBERS ? numbers : "(" + count(impressions) + " of them)";
  }

  private static long count(List<Impression> impressions) {
    return impressions.stream().map(i -> i.footprint().placement().id()).distinct().count();
  }

  private DaySheet.Line printLine(Work work, List<Impression> all) {
    String numbers = WorkWords.numbers(work.impressions());
    String on =
        numbers.length() <= LONGEST_NUMBERS
            ? numbers
            : numbers.equals(WorkWords.numbers(all))
                ? "all " + count(all) + " in this order"
                : count(work.impressions()) + ": " + Words.shortened(numbers, 300);
    return new DaySheet.Line(
        work.start().clock(),
        WorkWords.capital(name(WorkWords.paste(work))),
        "on "
            + on
            + ", screen "
            + name(WorkWords.screen(work))
            + ", "
            + WorkWords.pulls(work)
            + words.pause(work),
        "frame on it from " + WorkWords.reached(work.impressions(), Film::frameSafe, day));
  }

  private DaySheet.Line thenWait(DaySheet.Line before, Work work) {
    String with = words.how(work);
    String wait =
        "wait to " + WorkWords.clock(work.end(), day) + (with.isEmpty() ? "" : " " + with);
    String next = before.next().isEmpty() ? wait : before.next() + ", " + wait;
    return new DaySheet.Line(before.clock(), before.what(), before.with(), next);
  }

  /** Pastes to mix or screens to wash, one after the other. */
  private DaySheet.Job manyJob(List<Work> works) {
    boolean washes = works.get(0).kind() == Task.Kind.WASH_SCREEN;
    return new DaySheet.Job(
        jobs.size() + 1,
        (washes ? "Wash out the screens" : "Mix the pastes") + by(works),
        Where.NOWHERE,
        works.stream()
            .map(
                work ->
                    new DaySheet.Line(
                        work.start().clock(),
                        words.title(work),
                        washes ? until(work) : words.how(work),
                        drying(work)))
            .toList(),
        "");
  }

  /** When a washed screen is dry: of a screen washed several times a day, after this washing. */
  private String drying(Work work) {
    return work.kind() != Task.Kind.WASH_SCREEN
        ? ""
        : dries.stream()
            .filter(dry -> dry.first().screen().equals(work.first().screen()))
            .filter(dry -> dry.start().compareTo(work.end()) >= 0)
            .findFirst()
            .map(dry -> "dry at " + WorkWords.clock(dry.end(), day))
            .orElse("");
  }

  private DaySheet.Job otherJob(Work work) {
    return new DaySheet.Job(
        jobs.size() + 1,
        words.title(work) + by(List.of(work)),
        Where.NOWHERE,
        List.of(
            new DaySheet.Line(
                work.start().clock(),
                WorkWords.capital(until(work)),
                words.how(work),
                drying(work))),
        "");
  }

  private String until(Work work) {
    return "until " + WorkWords.clock(work.end(), day);
  }

  /** The people, where there are several to choose from. */
  private Stream<String> who(Work work) {
    Set<String> people = WorkWords.people(work);
    return plan.crew().names().size() > 1 ? people.stream().map(DayJobs::name) : Stream.of();
  }
}

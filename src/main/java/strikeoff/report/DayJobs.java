package strikeoff.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import strikeoff.plan.PrintPlan;
import strikeoff.report.page.DaySheet;
import strikeoff.timeline.Film;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Task;

/** Turns a day's blocks of work into numbered jobs: a set is one job, its colours are its lines. */
final class DayJobs {

  private static final Set<Task.Kind> ALIKE = EnumSet.of(Task.Kind.MIX, Task.Kind.WASH_SCREEN);

  private final PrintPlan plan;
  private final int day;
  private final List<DaySheet.Job> jobs = new ArrayList<>();
  private final List<Work> set = new ArrayList<>();
  private final Map<String, Work> dries = new HashMap<>();

  private DayJobs(PrintPlan plan, int day) {
    this.plan = plan;
    this.day = day;
  }

  static List<DaySheet.Job> of(PrintPlan plan, int day, List<Work> blocks) {
    DayJobs made = new DayJobs(plan, day);
    for (Work work : blocks) {
      if (work.kind() == Task.Kind.DRY_SCREEN) {
        made.dries.putIfAbsent(work.first().screen().orElse(""), work);
      }
    }
    for (Work work : blocks) {
      if (work.kind() == Task.Kind.DRY_SCREEN) {
        continue;
      }
      boolean carriesOn = !made.set.isEmpty() && made.carriesOn(work);
      if (!carriesOn) {
        made.close();
      }
      made.set.add(work);
    }
    made.close();
    return made.jobs;
  }

  /**
   * Colours of the same set with the waits and moves between them; pastes mixed, screens washed.
   */
  private boolean carriesOn(Work work) {
    Work first = set.get(0);
    if (!first.prints()) {
      return ALIKE.contains(work.kind())
          && first.kind() == work.kind()
          && first.first().step() == work.first().step();
    }
    if (work.prints()) {
      return first.sameSet(work) && arrangement(first).equals(arrangement(work));
    }
    return (work.kind() == Task.Kind.WAIT || work.kind() == Task.Kind.MOVE)
        && work.first().step() == first.first().step();
  }

  private static String arrangement(Work work) {
    return work.impressions().get(0).footprint().placement().arrangement();
  }

  private void close() {
    if (set.isEmpty()) {
      return;
    }
    jobs.add(set.get(0).prints() ? printJob() : set.size() > 1 ? manyJob() : otherJob(set.get(0)));
    set.clear();
  }

  private DaySheet.Job printJob() {
    List<Impression> all = set.stream().flatMap(w -> w.impressions().stream()).toList();
    List<DaySheet.Line> lines = new ArrayList<>();
    for (Work work : set) {
      if (work.prints()) {
        lines.add(printLine(work));
      } else if (work.kind() == Task.Kind.WAIT) {
        DaySheet.Line before = lines.remove(lines.size() - 1);
        lines.add(thenWait(before, work));
      } else {
        lines.add(new DaySheet.Line(work.start().clock(), WorkWords.title(work), until(work), ""));
      }
    }
    Set<String> people = new LinkedHashSet<>();
    set.forEach(work -> who(work).forEach(people::add));
    return new DaySheet.Job(
        jobs.size() + 1,
        "Print "
            + WorkWords.placements(all)
            + (people.isEmpty() ? "" : " (" + String.join(", ", people) + ")"),
        WorkWords.corners(all),
        lines,
        "The cloth may move from " + WorkWords.reached(all, Film::liftSafe, day) + ".");
  }

  private DaySheet.Line printLine(Work work) {
    return new DaySheet.Line(
        work.start().clock(),
        WorkWords.capital(WorkWords.paste(work)),
        "on "
            + WorkWords.numbers(work.impressions())
            + ", screen "
            + WorkWords.screen(work)
            + ", "
            + WorkWords.pulls(work),
        "frame " + WorkWords.reached(work.impressions(), Film::frameSafe, day));
  }

  private DaySheet.Line thenWait(DaySheet.Line before, Work work) {
    String wait = "wait to " + WorkWords.clock(work.end(), day);
    String next = before.next().isEmpty() ? wait : before.next() + ", " + wait;
    return new DaySheet.Line(before.clock(), before.what(), before.with(), next);
  }

  /** Pastes to mix or screens to wash, one after the other. */
  private DaySheet.Job manyJob() {
    boolean washes = set.get(0).kind() == Task.Kind.WASH_SCREEN;
    return new DaySheet.Job(
        jobs.size() + 1,
        washes ? "Wash out the screens" : "Mix the pastes",
        "",
        set.stream()
            .map(
                work ->
                    new DaySheet.Line(
                        work.start().clock(), WorkWords.title(work), until(work), drying(work)))
            .toList(),
        "");
  }

  private String drying(Work work) {
    Work dry = dries.get(work.first().screen().orElse(""));
    return work.kind() == Task.Kind.WASH_SCREEN && dry != null
        ? "dry at " + WorkWords.clock(dry.end(), day)
        : "";
  }

  private DaySheet.Job otherJob(Work work) {
    return new DaySheet.Job(
        jobs.size() + 1,
        WorkWords.title(work),
        "",
        List.of(
            new DaySheet.Line(
                work.start().clock(),
                "until " + WorkWords.clock(work.end(), day),
                work.end().since(work.start()).text()
                    + who(work).reduce("", (words, next) -> words + ", " + next),
                drying(work))),
        "");
  }

  private String until(Work work) {
    return "until "
        + WorkWords.clock(work.end(), day)
        + who(work).reduce("", (a, b) -> a + ", " + b);
  }

  /** The people, where there are several to choose from. */
  private Stream<String> who(Work work) {
    Set<String> people = WorkWords.people(work);
    return plan.crew().names().size() > 1 ? people.stream() : Stream.of();
  }
}

package strikeoff.propose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.PrintPlan;

/**
 * What people and the cloth do hour by hour in two runs, on one scale.
 *
 * @param fromHour full hour of the day before which nothing is shown, 0 to 23
 * @param toHour full hour after which nothing is shown, 1 to 24
 * @param today rows of the plan's own run; none if it prints nothing
 * @param proposed rows of the other one
 */
public record TwoClocks(int fromHour, int toHour, List<Row> today, List<Row> proposed) {

  public TwoClocks {
    today = List.copyOf(today);
    proposed = List.copyOf(proposed);
  }

  /** What is done. */
  public enum What {
    MIXES("mixes"),
    PRINTS("prints"),
    HANDLES("lays, moves or takes up the cloth"),
    SEWS("sews"),
    CLEANS("washes screens out"),
    FIXES("fixes, rinses and washes"),
    DRIES("the cloth dries or lies");

    private final String words;

    What(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * One day of one person, or of the cloth as it waits.
   *
   * @param day from 1
   * @param who a person's name; empty for the cloth
   * @param stretches in order of their beginning; may be none
   */
  public record Row(int day, String who, List<Stretch> stretches) {
    public Row {
      stretches = List.copyOf(stretches);
    }

    /** True for the row of the cloth. */
    public boolean ofCloth() {
      return who.isEmpty();
    }
  }

  /**
   * Something that goes on.
   *
   * @param from minutes after midnight
   * @param to minutes after midnight
   */
  public record Stretch(What what, double from, double to) {}

  /** Both runs of a proposal. */
  public static TwoClocks of(Proposal.Found found) {
    Timeline before = found.before().facts().timeline();
    boolean prints = !before.impressions().isEmpty();
    List<Row> today = prints ? rows(found.before().plan(), before) : List.of();
    List<Row> proposed = rows(found.after().plan(), found.after().facts().timeline());
    double first = 24 * 60;
    double last = 0;
    for (List<Row> rows : List.of(today, proposed)) {
      for (Row row : rows) {
        for (Stretch stretch : row.stretches()) {
          first = Math.min(first, stretch.from());
          last = Math.max(last, stretch.to());
        }
      }
    }
    int from = (int) Math.floor(first / 60);
    return new TwoClocks(
        Math.min(23, from), Math.max(from + 1, (int) Math.ceil(last / 60)), today, proposed);
  }

  private static List<Row> rows(PrintPlan plan, Timeline timeline) {
    Map<Integer, Map<String, List<Stretch>>> days = new LinkedHashMap<>();
    for (Task task : timeline.tasks()) {
      if (isShown(task)) {
        Map<String, List<Stretch>> day =
            days.computeIfAbsent(
                task.start().day(),
                number -> {
                  Map<String, List<Stretch>> all = new LinkedHashMap<>();
                  plan.crew().names().forEach(person -> all.put(person, new ArrayList<>()));
                  all.put("", new ArrayList<>());
                  return all;
                });
        Stretch stretch = stretch(task, plan);
        if (task.worked()) {
          task.people().forEach(person -> add(day.get(person), stretch));
        } else if (stretch.to() > stretch.from()) {
          add(day.get(""), stretch);
        }
      }
    }
    List<Row> rows = new ArrayList<>();
    days.forEach(
        (number, people) ->
            people.forEach((who, stretches) -> rows.add(new Row(number, who, stretches))));
    rows.removeIf(row -> row.ofCloth() && row.stretches().isEmpty());
    return rows;
  }

  private static boolean isShown(Task task) {
    return task.worked() ? task.kind() != Task.Kind.CLOSED : task.waits();
  }

  /** Of what goes on over night only the part within opening hours. */
  private static Stretch stretch(Task task, PrintPlan plan) {
    int day = task.start().day();
    double closes = plan.hours().of(day).closes();
    double from = task.start().minuteOfDay();
    double to = task.end().since(Moment.of(day, 0)).minutes();
    double end = task.worked() ? Math.min(to, 24 * 60) : Math.min(to, Math.max(from, closes));
    return new Stretch(what(task), from, end);
  }

  /** Joined with the one before if it goes on within a minute. */
  private static void add(List<Stretch> stretches, Stretch next) {
    Stretch last = stretches.isEmpty() ? null : stretches.get(stretches.size() - 1);
    if (last != null && last.what() == next.what() && next.from() - last.to() <= 1) {
      stretches.set(
          stretches.size() - 1,
          new Stretch(last.what(), last.from(), Math.max(last.to(), next.to())));
    } else {
      stretches.add(next);
    }
  }

  private static What what(Task task) {
    if (!task.worked()) {
      return What.DRIES;
    }
    return switch (task.kind()) {
      case MIX -> What.MIXES;
      case PRINT -> What.PRINTS;
      case SEW -> What.SEWS;
      case WASH_SCREEN, DRY_SCREEN -> What.CLEANS;
      case FIX, RINSE, WASH, HEAT_SET -> What.FIXES;
      case WAIT -> What.DRIES;
      case LOAD, MOVE, QUEUE, CLOSED -> What.HANDLES;
    };
  }
}

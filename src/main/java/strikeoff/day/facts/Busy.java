package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strikeoff.day.DayRun;
import strikeoff.day.Moment;
import strikeoff.day.Resource;
import strikeoff.day.Stations;
import strikeoff.day.Task;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Share;
import strikeoff.units.Span;

/**
 * How much of the days at the table something or somebody is busy.
 *
 * @param busy time in use; a screen is in use while it prints, is washed or dries, the cloth while
 *     something is done to it, a station while its placement is printed
 * @param share of the time from the start of each day at the table to its end, as far as it is busy
 *     then: a screen dries on, and a cloth lies batched, when everybody has gone
 */
public record Busy(Resource resource, Span busy, Share share) {

  /**
   * Everybody of the crew and the cloth; stations, pieces of equipment and screens as far as they
   * are used, by number and in the order of use.
   */
  static List<Busy> all(DayRun day, List<TableDay> days, PrintPlan plan) {
    Map<Resource.Kind, Map<Resource, Spent>> kinds = new TreeMap<>();
    for (Resource.Kind kind : Resource.Kind.values()) {
      kinds.put(kind, new LinkedHashMap<>());
    }
    plan.crew().names().forEach(name -> add(kinds, Resource.person(name), Spent.always(0)));
    add(kinds, Resource.CLOTH, Spent.always(0));
    stations(day, plan).forEach((station, takes) -> add(kinds, station, Spent.always(takes)));
    for (Task task : day.tasks()) {
      Spent takes = Spent.of(task, days);
      if (task.kind() != Task.Kind.QUEUE) {
        task.people().forEach(p -> add(kinds, Resource.person(p), takes));
        task.screen().ifPresent(s -> add(kinds, Resource.screen(s), takes));
        task.piece().ifPresent(piece -> add(kinds, piece, takes));
      }
      if (task.onCloth()) {
        add(kinds, Resource.CLOTH, takes);
      }
    }
    day.run().beside().forEach((piece, takes) -> add(kinds, piece, Spent.always(takes.minutes())));
    double open = 0;
    for (TableDay one : days) {
      open += one.ends().since(one.starts()).minutes();
    }
    List<Busy> all = new ArrayList<>();
    for (Map<Resource, Spent> kind : kinds.values()) {
      for (Map.Entry<Resource, Spent> entry : kind.entrySet()) {
        Spent spent = entry.getValue();
        double share = open > 0 ? spent.atTheTable() / open : 0;
        all.add(new Busy(entry.getKey(), new Span(spent.minutes()), new Share(share)));
      }
    }
    return all;
  }

  /**
   * Time in use.
   *
   * @param minutes in all
   * @param atTheTable minutes of it within days at the table
   */
  private record Spent(double minutes, double atTheTable) {

    /** Work, which is only done within days at the table. */
    static Spent always(double minutes) {
      return new Spent(minutes, minutes);
    }

    static Spent of(Task task, List<TableDay> days) {
      double within = 0;
      for (TableDay one : days) {
        Moment from = task.start().later(one.starts());
        Moment to = task.end().compareTo(one.ends()) < 0 ? task.end() : one.ends();
        within += Math.max(0, to.since(from).minutes());
      }
      return new Spent(task.end().since(task.start()).minutes(), within);
    }

    Spent plus(Spent other) {
      return new Spent(minutes + other.minutes, atTheTable + other.atTheTable);
    }
  }

  private static void add(
      Map<Resource.Kind, Map<Resource, Spent>> kinds, Resource resource, Spent spent) {
    kinds.get(resource.kind()).merge(resource, spent, Spent::plus);
  }

  /** From fetching the frame to taking it off, by station. */
  private static Map<Resource, Double> stations(DayRun day, PrintPlan plan) {
    if (plan.table().stations().isEmpty()) {
      return Map.of();
    }
    int of = plan.table().stations().get().count();
    Map<Integer, Double> takes = new LinkedHashMap<>();
    for (Task task : day.tasks()) {
      task.impression().ifPresent(i -> takes.put(i, task.end().since(task.start()).minutes()));
    }
    Map<Resource, Double> stations = new LinkedHashMap<>();
    Stations.of(plan, day.impressions())
        .forEach(
            (number, printed) ->
                stations.put(
                    Resource.piece(Resource.Kind.STATION, number, Math.max(of, number)),
                    printed.stream().mapToDouble(i -> takes.get(i.id())).sum()));
    return stations;
  }
}

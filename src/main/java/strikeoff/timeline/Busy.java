package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Share;
import strikeoff.units.Span;

/**
 * How much of the sessions something or somebody is busy.
 *
 * @param busy time in use; a screen is in use while it prints, is washed or dries, the cloth while
 *     something is done to it, a station while its placement is printed
 * @param share of the time from the start of each session to its end; above 1 for a screen that
 *     dries on when everybody has gone
 */
public record Busy(Resource resource, Span busy, Share share) {

  /**
   * Everybody of the crew and the cloth; stations, pieces of equipment and screens as far as they
   * are used, by number and in the order of use.
   */
  static List<Busy> all(Timeline.Day day, List<Session> sessions, PrintPlan plan) {
    Map<Resource.Kind, Map<Resource, Double>> kinds = new TreeMap<>();
    for (Resource.Kind kind : Resource.Kind.values()) {
      kinds.put(kind, new LinkedHashMap<>());
    }
    plan.crew().names().forEach(name -> add(kinds, Resource.person(name), 0));
    add(kinds, Resource.CLOTH, 0);
    stations(day, plan).forEach((station, takes) -> add(kinds, station, takes));
    for (Task task : day.tasks()) {
      double takes = task.end().since(task.start()).minutes();
      if (task.kind() != Task.Kind.QUEUE) {
        task.people().forEach(p -> add(kinds, Resource.person(p), takes));
        task.screen().ifPresent(s -> add(kinds, Resource.screen(s), takes));
        task.piece().ifPresent(piece -> add(kinds, piece, takes));
      }
      if (onCloth(task)) {
        add(kinds, Resource.CLOTH, takes);
      }
    }
    day.run().beside().forEach((piece, takes) -> add(kinds, piece, takes.minutes()));
    double open = 0;
    for (Session session : sessions) {
      open += session.ends().since(session.starts()).minutes();
    }
    List<Busy> all = new ArrayList<>();
    for (Map<Resource, Double> kind : kinds.values()) {
      for (Map.Entry<Resource, Double> entry : kind.entrySet()) {
        double share = open > 0 ? entry.getValue() / open : 0;
        all.add(new Busy(entry.getKey(), new Span(entry.getValue()), new Share(share)));
      }
    }
    return all;
  }

  private static void add(
      Map<Resource.Kind, Map<Resource, Double>> kinds, Resource resource, double minutes) {
    kinds.get(resource.kind()).merge(resource, minutes, Double::sum);
  }

  /** From fetching the frame to taking it off, by station. */
  private static Map<Resource, Double> stations(Timeline.Day day, PrintPlan plan) {
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

  /** True if something is done to the cloth. */
  static boolean onCloth(Task task) {
    return switch (task.kind()) {
      case MIX, WAIT, QUEUE, WASH_SCREEN, DRY_SCREEN, CLOSED -> false;
      case LOAD, PRINT, MOVE, SEW, FIX, RINSE, WASH, HEAT_SET -> true;
    };
  }
}

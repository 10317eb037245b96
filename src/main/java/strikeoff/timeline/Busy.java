package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Share;
import strikeoff.units.Span;

/**
 * How much of the sessions one person, screen or the cloth is busy.
 *
 * @param busy time in use; a screen is in use while it prints, is washed or dries, the cloth while
 *     something is done to it
 * @param share of the time from the start of each session to its end; above 1 for a screen that
 *     dries on when everybody has gone
 */
public record Busy(Resource resource, Span busy, Share share) {

  static List<Busy> all(List<Task> tasks, List<Session> sessions, PrintPlan plan) {
    Map<Resource, Double> minutes = new LinkedHashMap<>();
    plan.crew().names().forEach(name -> minutes.put(Resource.person(name), 0.0));
    minutes.put(Resource.CLOTH, 0.0);
    for (Task task : tasks) {
      double takes = task.end().since(task.start()).minutes();
      task.person().ifPresent(p -> minutes.merge(Resource.person(p), takes, Double::sum));
      task.screen().ifPresent(s -> minutes.merge(Resource.screen(s), takes, Double::sum));
      if (onCloth(task.kind())) {
        minutes.merge(Resource.CLOTH, takes, Double::sum);
      }
    }
    double open = 0;
    for (Session session : sessions) {
      open += session.ends().since(session.starts()).minutes();
    }
    List<Busy> all = new ArrayList<>();
    for (Map.Entry<Resource, Double> entry : minutes.entrySet()) {
      double share = open > 0 ? entry.getValue() / open : 0;
      all.add(new Busy(entry.getKey(), new Span(entry.getValue()), new Share(share)));
    }
    return all;
  }

  private static boolean onCloth(Task.Kind kind) {
    return switch (kind) {
      case MIX, WAIT, WASH_SCREEN, DRY_SCREEN, CLOSED -> false;
      case LOAD, PRINT, MOVE, SEW, FIX, RINSE, WASH, HEAT_SET -> true;
    };
  }
}

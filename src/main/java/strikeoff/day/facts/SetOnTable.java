package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.DayRun;
import strikeoff.day.Impression;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * One set of the run as it lies on the table: what all its frames together take up.
 *
 * @param step number of the print step
 * @param set number of the set in it
 * @param placements their names in the order of printing
 * @param from where the first frame begins along the cloth
 * @param to where the last one ends
 * @param taken length of table that the frames take
 * @param left length of table beside them; below zero if they do not fit
 * @param widest frame across the cloth
 */
public record SetOnTable(
    int step,
    int set,
    List<String> placements,
    Length from,
    Length to,
    Length taken,
    Length left,
    Length widest,
    PlanPath path)
    implements Evidence {

  public SetOnTable {
    placements = List.copyOf(placements);
  }

  static List<SetOnTable> all(DayRun day, PrintPlan plan) {
    Map<List<Object>, List<Impression>> sets = new LinkedHashMap<>();
    for (Impression impression : day.impressions()) {
      // Arrangements of a step number their sets apart.
      sets.computeIfAbsent(
              List.of(
                  impression.step(),
                  impression.footprint().placement().arrangement(),
                  impression.set()),
              k -> new ArrayList<>())
          .add(impression);
    }
    List<SetOnTable> all = new ArrayList<>();
    for (List<Impression> set : sets.values()) {
      Envelope frames = new Envelope();
      double widest = 0;
      Set<String> names = new LinkedHashSet<>();
      for (Impression impression : set) {
        Envelope frame = impression.footprint().frame().getEnvelopeInternal();
        frames.expandToInclude(frame);
        widest = Math.max(widest, frame.getHeight());
        names.add(impression.footprint().placement().name());
      }
      Impression first = set.get(0);
      all.add(
          new SetOnTable(
              first.step(),
              first.set(),
              List.copyOf(names),
              new Length(frames.getMinX()),
              new Length(frames.getMaxX()),
              new Length(frames.getWidth()),
              plan.table().length().minus(new Length(frames.getWidth())),
              new Length(widest),
              first.path()));
    }
    return all;
  }
}

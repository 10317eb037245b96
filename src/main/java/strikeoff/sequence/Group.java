package strikeoff.sequence;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import strikeoff.day.Impression;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.layout.Copies;
import strikeoff.layout.Placement;
import strikeoff.units.Area;

/** Gathers the laps of one print step, so that one cause gives one fact. */
final class Group {

  private final Set<String> above = new LinkedHashSet<>();
  private final Set<String> below = new LinkedHashSet<>();
  private final Set<Placement> placements = new LinkedHashSet<>();
  private final Set<Integer> earlierSteps = new TreeSet<>();
  private boolean certain;
  private double squareCm;
  private boolean whole = true;

  /** Adds what one print comes to lie over; together that is never more than it prints itself. */
  void add(List<Laps.Lap> laps) {
    laps.forEach(this::add);
    double own = 0;
    double shared = 0;
    for (Laps.Lap lap : laps) {
      own = lap.later().footprint().separation().printed().squareCm();
      shared += lap.most().squareCm();
    }
    squareCm += Math.min(own, shared);
  }

  /** Says that more may be concerned than was looked at. */
  void cutShort() {
    whole = false;
  }

  private void add(Laps.Lap lap) {
    above.add(lap.later().footprint().paste().name());
    below.add(lap.earlier().footprint().paste().name());
    placements.add(lap.later().footprint().placement());
    earlierSteps.add(lap.earlier().step());
    certain |= lap.certain();
  }

  boolean isEmpty() {
    return placements.isEmpty();
  }

  List<String> above() {
    return List.copyOf(above);
  }

  List<String> below() {
    return List.copyOf(below);
  }

  List<String> names() {
    return placements.stream().map(Placement::name).toList();
  }

  Copies copies() {
    Copies copies = Copies.of(placements);
    return whole ? copies : copies.andMore();
  }

  boolean certain() {
    return certain;
  }

  Area most() {
    return new Area(squareCm);
  }

  Set<Integer> earlierSteps() {
    return earlierSteps;
  }

  /** The earlier steps, each with its place, unless it is the step itself. */
  List<Related> related(Course course, int step) {
    List<Related> related = new ArrayList<>();
    for (int earlier : earlierSteps) {
      if (earlier != step) {
        related.add(new Related(Tie.PRINTED_BEFORE, course.path(earlier)));
      }
    }
    return related;
  }

  static Copies copies(List<Impression> impressions) {
    return Copies.of(impressions.stream().map(i -> i.footprint().placement()).toList());
  }

  static List<String> names(List<Impression> impressions) {
    Set<String> names = new LinkedHashSet<>();
    impressions.forEach(i -> names.add(i.footprint().placement().name()));
    return List.copyOf(names);
  }

  static List<String> pastes(List<Impression> impressions) {
    Set<String> names = new LinkedHashSet<>();
    impressions.forEach(i -> names.add(i.footprint().paste().name()));
    return List.copyOf(names);
  }
}

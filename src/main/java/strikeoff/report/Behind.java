package strikeoff.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.facts.Timeline;
import strikeoff.layout.Tube;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * How far apart people keep who print at the same time: as far as they ever come in the run.
 * Whoever prints the next colour on the same copies counts copies, everybody else measures.
 */
final class Behind {

  /** Kept to whole centimetres, which a glance judges. */
  private static final double CENTIMETRE = 10;

  private final Timeline run;
  private final PrintPlan plan;
  private final Tube tube;

  Behind(PrintPlan plan, Timeline run) {
    this.plan = plan;
    this.run = run;
    this.tube = Tube.of(plan.cloth());
  }

  /** As {@code , 6 copies behind Nan}; empty if nobody prints beside. */
  String of(WorkBlock work) {
    Set<String> own = WorkWords.people(work);
    if (own.size() != 1) {
      return "";
    }
    List<List<Impression>> others =
        others(work, own.iterator().next()).stream()
            .filter(other -> overlap(other, work.impressions()))
            .toList();
    Optional<List<Impression>> leader =
        others.stream()
            .filter(other -> follows(work.impressions(), other))
            .max(Comparator.comparingInt(other -> other.get(0).footprint().separation().number()));
    if (leader.isPresent()) {
      return copies(work, leader.get());
    }
    return apart(
        work.impressions(),
        others.stream()
            .filter(other -> !follows(other, work.impressions()))
            .flatMap(List::stream)
            .toList());
  }

  /** What others print, by colour and arrangement, as they print it. */
  private List<List<Impression>> others(WorkBlock work, String person) {
    Map<List<Object>, List<Impression>> all = new LinkedHashMap<>();
    for (Impression impression : run.impressions()) {
      if (!impression.person().equals(person) && impression.laid().day() == work.start().day()) {
        all.computeIfAbsent(
                List.of(
                    impression.step(),
                    impression.set(),
                    impression.footprint().placement().arrangement(),
                    impression.footprint().separation().number()),
                key -> new ArrayList<>())
            .add(impression);
      }
    }
    return List.copyOf(all.values());
  }

  private static boolean overlap(List<Impression> some, List<Impression> others) {
    return some.get(0).laid().compareTo(last(others)) < 0
        && others.get(0).laid().compareTo(last(some)) < 0;
  }

  private static Moment last(List<Impression> films) {
    return films.get(films.size() - 1).lifted();
  }

  /** True if each is printed on a copy that the others have printed before, in the same order. */
  private static boolean follows(List<Impression> later, List<Impression> earlier) {
    Map<Integer, Impression> under = new LinkedHashMap<>();
    earlier.forEach(film -> under.put(film.footprint().placement().id(), film));
    List<Integer> order = later.stream().map(i -> i.footprint().placement().id()).toList();
    return later.get(0).footprint().separation().number()
            > earlier.get(0).footprint().separation().number()
        && new ArrayList<>(under.keySet()).equals(order)
        && later.stream()
            .allMatch(
                film ->
                    under.get(film.footprint().placement().id()).lifted().compareTo(film.laid())
                        <= 0);
  }

  /** Of all moments at which one lays a frame while the other still prints, the one with fewest. */
  private static String copies(WorkBlock work, List<Impression> leader) {
    int least = Integer.MAX_VALUE;
    int begun = 0;
    for (Impression own : work.impressions()) {
      int done = (int) leader.stream().filter(i -> i.lifted().compareTo(own.laid()) <= 0).count();
      if (done < leader.size()) {
        least = Math.min(least, done - begun);
      }
      begun++;
    }
    return least == Integer.MAX_VALUE || least < 1
        ? ""
        : ", " + least + (least == 1 ? " copy" : " copies") + " behind " + people(leader);
  }

  /** How near two frames come that lie on the cloth at the same time. */
  private String apart(List<Impression> own, List<Impression> other) {
    double least = Double.MAX_VALUE;
    for (Impression one : own) {
      for (Impression two : other) {
        if (one.laid().compareTo(two.lifted()) < 0 && two.laid().compareTo(one.lifted()) < 0) {
          least = Math.min(least, tube.distance(one.footprint().frame(), two.footprint().frame()));
        }
      }
    }
    double whole = Math.floor(least / CENTIMETRE) * CENTIMETRE;
    return least == Double.MAX_VALUE || whole <= 0
        ? ""
        : ", frames "
            + new Length(whole).roundedDown(plan.measures())
            + " or more from "
            + people(other)
            + "'s";
  }

  private static String people(List<Impression> films) {
    Set<String> people = new LinkedHashSet<>();
    films.forEach(film -> people.add(DayJobs.name(film.person())));
    return String.join(", ", people);
  }
}

package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.DayRun;
import strikeoff.day.Films;
import strikeoff.day.Impression;
import strikeoff.document.PlanPath;
import strikeoff.drying.DryingClock;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Hours;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Room;
import strikeoff.policy.Policy;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/**
 * Films of one medium in the room's air.
 *
 * @param printed how many
 * @param films how many of them never get safe in it
 * @param state the first state that those don't reach
 * @param dampest the humidity above which they take water from the air
 * @param dryTo the dampest air that dries those; empty if there are none, or no air does
 */
public record FilmsInRoom(
    Medium medium,
    int printed,
    int films,
    String state,
    Temperature temperature,
    Share humidity,
    Share dampest,
    Optional<Share> dryTo,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public FilmsInRoom {
    related = List.copyOf(related);
  }

  static List<FilmsInRoom> all(DayRun day, PrintPlan plan, Policy policy) {
    Map<Medium, List<Impression>> printed = new LinkedHashMap<>();
    for (Impression impression : day.impressions()) {
      printed
          .computeIfAbsent(impression.footprint().paste().medium(), m -> new ArrayList<>())
          .add(impression);
    }
    List<FilmsInRoom> facts = new ArrayList<>();
    printed.forEach(
        (medium, all) -> {
          List<Impression> films = all.stream().filter(i -> i.film().liftSafe().never()).toList();
          boolean frame = films.stream().anyMatch(f -> f.film().frameSafe().never());
          List<Related> related = new ArrayList<>();
          films.stream()
              .limit(1)
              .forEach(film -> related.add(new Related(Tie.PRINTED_HERE, film.path())));
          facts.add(
              new FilmsInRoom(
                  medium,
                  all.size(),
                  films.size(),
                  frame ? "frame-safe" : "lift-safe",
                  plan.room().temperature(),
                  plan.room().humidity(),
                  policy.drying().activity(medium),
                  films.isEmpty() ? Optional.empty() : dryTo(day, plan, films),
                  plan.room().path(),
                  related));
        });
    return facts;
  }

  /** The dampest air in which all would be lift-safe by the morning, even in slow drying. */
  private static Optional<Share> dryTo(DayRun day, PrintPlan plan, List<Impression> films) {
    Hours hours = plan.hours();
    double night = 24 * 60 - hours.of(1).closes() + hours.of(2).opens();
    Room room = plan.room();
    for (int percent = DAMPEST_ROOM; percent > 0; percent -= STEP) {
      Share humidity = new Share(percent / 100.0);
      Films drier =
          day.run()
              .cloth()
              .films()
              .in(new Room(room.temperature(), humidity, room.air(), room.path()));
      DryingClock clock = new DryingClock(drier.drying(), 0);
      boolean dry =
          films.stream()
              .map(film -> clock.states(drier.need(film.footprint()), 0).liftSafe())
              .allMatch(lifted -> lifted.latest() <= night * 60);
      if (dry) {
        return Optional.of(humidity);
      }
    }
    return Optional.empty();
  }

  /** Percent; a dehumidifier shows no finer steps. */
  private static final int STEP = 5;

  private static final int DAMPEST_ROOM = 95;
}

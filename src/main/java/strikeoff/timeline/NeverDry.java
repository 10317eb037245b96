package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/**
 * Films of one medium that never get safe in the room's air.
 *
 * @param state the first state they don't reach
 * @param films how many
 * @param dampest the humidity above which they take water from the air
 */
public record NeverDry(
    Medium medium,
    String state,
    int films,
    Temperature temperature,
    Share humidity,
    Share dampest,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public NeverDry {
    related = List.copyOf(related);
  }

  /** {@code 5 films}, or {@code 1 film}. */
  public String counted() {
    return films == 1 ? "1 film" : films + " films";
  }

  static List<NeverDry> all(Timeline.Day day, PrintPlan plan, Policy policy) {
    Map<Medium, List<Impression>> never = new LinkedHashMap<>();
    for (Impression impression : day.impressions()) {
      if (impression.film().liftSafe().never()) {
        never
            .computeIfAbsent(impression.footprint().paste().medium(), m -> new ArrayList<>())
            .add(impression);
      }
    }
    List<NeverDry> all = new ArrayList<>();
    never.forEach(
        (medium, films) -> {
          boolean frame = films.stream().anyMatch(f -> f.film().frameSafe().never());
          String limit = "drying/activity-of-" + (medium == Medium.DYE ? "dye" : "paint");
          List<Related> related = new ArrayList<>();
          related.add(new Related("printed here", films.get(0).path()));
          all.add(
              new NeverDry(
                  medium,
                  frame ? "frame-safe" : "lift-safe",
                  films.size(),
                  plan.room().temperature(),
                  plan.room().humidity(),
                  new Share(policy.limit(limit).amount()),
                  plan.room().path(),
                  related));
        });
    return all;
  }
}

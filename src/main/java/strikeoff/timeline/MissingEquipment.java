package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.plan.Draught;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;

/**
 * Equipment that steps ask for though the room has none of it. The run is simulated as if there
 * were one.
 *
 * @param equipment what is missing, in the trade's words
 * @param key how the plan counts it
 * @param steps numbers of the steps that ask for it; empty if it is to blow all day
 * @param path the first of them, or the air of the room
 */
public record MissingEquipment(
    String equipment, String key, List<Integer> steps, PlanPath path, List<Related> related)
    implements Evidence {

  public MissingEquipment {
    steps = List.copyOf(steps);
    related = List.copyOf(related);
  }

  static List<MissingEquipment> all(Map<Resource.Kind, Set<Integer>> missing, PrintPlan plan) {
    List<MissingEquipment> all = new ArrayList<>();
    missing.forEach(
        (kind, steps) -> {
          Step first =
              plan.run().stream().filter(s -> steps.contains(s.number())).findFirst().orElseThrow();
          all.add(
              new MissingEquipment(
                  kind.text(),
                  key(kind),
                  List.copyOf(steps),
                  first.path(),
                  List.of(new Related("the equipment", plan.equipment().path().key(key(kind))))));
        });
    blownOnAllDay(plan)
        .filter(room -> all.stream().noneMatch(m -> m.key.equals(room.key)))
        .ifPresent(all::add);
    return all;
  }

  /** A room in which a fan blows has one. */
  private static Optional<MissingEquipment> blownOnAllDay(PrintPlan plan) {
    boolean missing =
        plan.room().air().by() == Draught.By.FAN && plan.equipment().fans() == 0
            || plan.room().air().by() == Draught.By.HAIR_DRYER
                && plan.equipment().hairDryers() == 0;
    if (!missing) {
      return Optional.empty();
    }
    Resource.Kind kind =
        plan.room().air().by() == Draught.By.FAN ? Resource.Kind.FAN : Resource.Kind.HAIR_DRYER;
    return Optional.of(
        new MissingEquipment(
            kind.text(),
            key(kind),
            List.of(),
            plan.room().path().key("air"),
            List.of(new Related("the equipment", plan.equipment().path().key(key(kind))))));
  }

  /** Where it is asked for. */
  public String where() {
    return steps.isEmpty()
        ? "for the air of the room"
        : "in step " + String.join(", ", steps.stream().map(String::valueOf).toList());
  }

  private static String key(Resource.Kind kind) {
    return switch (kind) {
      case SINK -> "sinks";
      case FAN -> "fans";
      case HAIR_DRYER -> "hair dryers";
      case DRYING_PLACE -> "drying places";
      case PERSON, CLOTH, STATION, SCREEN -> throw new IllegalArgumentException(kind.text());
    };
  }
}

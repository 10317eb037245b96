package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
 * @param steps numbers of the steps that ask for it
 * @param path the first of them
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
    return all;
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

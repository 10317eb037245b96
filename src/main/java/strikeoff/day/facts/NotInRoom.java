package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.day.Resource;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Draught;
import strikeoff.plan.Equipment;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;

/**
 * A kind of equipment that the room has none of, and what asks for it. The run is simulated as if
 * there were one.
 *
 * @param equipment what it is, in the trade's words
 * @param key how the plan counts it
 * @param steps numbers of the steps that ask for it
 * @param allDay true if it is to blow all day
 * @param path the first of the steps, or the air of the room; its count if nothing asks for it
 */
public record NotInRoom(
    String equipment,
    String key,
    List<Integer> steps,
    boolean allDay,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public NotInRoom {
    steps = List.copyOf(steps);
    related = List.copyOf(related);
  }

  /**
   * @param asked the steps that ask for what isn't there
   */
  public static List<NotInRoom> all(Map<Resource.Kind, Set<Integer>> asked, PrintPlan plan) {
    Equipment has = plan.equipment();
    List<NotInRoom> all = new ArrayList<>();
    add(all, Resource.Kind.SINK, "sinks", has.sinks(), asked, plan);
    add(all, Resource.Kind.FAN, "fans", has.fans(), asked, plan);
    add(all, Resource.Kind.HAIR_DRYER, "hair dryers", has.hairDryers(), asked, plan);
    add(all, Resource.Kind.DRYING_PLACE, "drying places", has.dryingPlaces(), asked, plan);
    return all;
  }

  private static void add(
      List<NotInRoom> all,
      Resource.Kind kind,
      String key,
      int count,
      Map<Resource.Kind, Set<Integer>> asked,
      PrintPlan plan) {
    if (count > 0) {
      return;
    }
    Set<Integer> steps = asked.getOrDefault(kind, Set.of());
    Draught.By blows = plan.room().air().by();
    boolean allDay =
        kind == Resource.Kind.FAN && blows == Draught.By.FAN
            || kind == Resource.Kind.HAIR_DRYER && blows == Draught.By.HAIR_DRYER;
    PlanPath counted = plan.equipment().path().key(key);
    PlanPath elsewhere = allDay ? plan.room().path().key("air") : counted;
    all.add(
        new NotInRoom(
            kind.text(),
            key,
            List.copyOf(steps),
            allDay,
            plan.run().stream()
                .filter(s -> steps.contains(s.number()))
                .findFirst()
                .map(Step::path)
                .orElse(elsewhere),
            List.of(new Related(Tie.EQUIPMENT, counted))));
  }

  /** How many steps ask for it, the air of the whole day counted as one. */
  public int asked() {
    return steps.size() + (allDay ? 1 : 0);
  }
}

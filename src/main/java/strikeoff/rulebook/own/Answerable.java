package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.described.ClothPrinted;
import strikeoff.described.EquipmentThere;
import strikeoff.described.PlaceOfWork;
import strikeoff.described.WholePlan;

/** Finds the conditions of a rule that no plan can ever meet. */
final class Answerable {

  /** Of these each plan has one: what several lines ask of them is asked of the same. */
  private static final Set<Class<?>> ONE_ONLY =
      Set.of(WholePlan.class, ClothPrinted.class, PlaceOfWork.class, EquipmentThere.class);

  private Answerable() {}

  /** Why a condition is never met, by its number. */
  static Map<Integer, String> never(List<Condition> conditions) {
    Map<Integer, String> never = new LinkedHashMap<>();
    Map<Class<?>, List<String>> together = new LinkedHashMap<>();
    for (int i = 0; i < conditions.size(); i++) {
      Condition one = conditions.get(i);
      List<String> asked = one.constraints();
      if (ONE_ONLY.contains(one.type()) && !one.absent()) {
        asked = together.computeIfAbsent(one.type(), t -> new ArrayList<>());
        asked.addAll(one.constraints());
      }
      Optional<String> impossible = Possible.impossible(one.type(), asked);
      if (impossible.isPresent()) {
        never.put(
            i,
            "nothing can be all of this at once, so the rule would never find anything: look at “"
                + impossible.get()
                + "”");
      } else if (one.absent() && one.constraints().isEmpty() && ONE_ONLY.contains(one.type())) {
        never.put(i, "every plan has this, so the rule would never find anything");
      } else if (one.absent() && conditions.stream().anyMatch(other -> denies(one, other))) {
        never.put(
            i,
            "another line asks for what must not be there by this one, so the rule would never"
                + " find anything");
      }
    }
    return never;
  }

  /** True if whatever the other condition finds must not be there by this one. */
  private static boolean denies(Condition absent, Condition other) {
    return !other.absent()
        && other.type() == absent.type()
        && other.constraints().containsAll(absent.constraints());
  }
}

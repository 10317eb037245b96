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
import strikeoff.policy.Limit;

/** What the lines of a rule have found so far, in their order. */
final class Things {

  /** Of these each plan has one: any line may speak of it. */
  static final Set<Class<?>> ONE_ONLY =
      Set.of(WholePlan.class, ClothPrinted.class, PlaceOfWork.class, EquipmentThere.class);

  /** Limits are numbered from here, below what each plan has. */
  private static final int LIMITS = 100;

  private final List<Thing> found = new ArrayList<>();
  private final Map<Class<?>, Thing> unnamed = new LinkedHashMap<>();
  private final Map<String, Thing> limits = new LinkedHashMap<>();
  private int last;

  Thing next(Class<?> type, String opening) {
    last++;
    return new Thing(last, type, opening);
  }

  void found(Thing thing) {
    found.add(thing);
  }

  /** The one of each plan: that which a line has found, or else one that no line names. */
  Thing only(Class<?> type) {
    return found.stream()
        .filter(thing -> thing.type() == type)
        .findFirst()
        .orElseGet(() -> unnamed.computeIfAbsent(type, t -> new Thing(-1 - unnamed.size(), t, "")));
  }

  /** A limit of the policy, which no line finds either. */
  Thing limit(String name) {
    return limits.computeIfAbsent(name, n -> new Thing(-LIMITS - limits.size(), Limit.class, name));
  }

  /** The nearest thing of a type before. */
  Optional<Thing> before(Class<?> type) {
    Optional<Thing> nearest = Optional.empty();
    for (Thing thing : found) {
      nearest = thing.type() == type ? Optional.of(thing) : nearest;
    }
    return nearest;
  }

  /** All, the nearest first. */
  List<Thing> nearestFirst() {
    List<Thing> all = new ArrayList<>();
    found.forEach(thing -> all.add(0, thing));
    return all;
  }

  List<Thing> all() {
    return List.copyOf(found);
  }
}

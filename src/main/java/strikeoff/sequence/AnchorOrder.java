package strikeoff.sequence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.Impression;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.layout.ClothIndex;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;

/** What is set from another placement, or goes over it, needs that one on the cloth first. */
final class AnchorOrder {

  private final PrintPlan plan;
  private final Course course;
  private final Layout layout;
  private final Map<Integer, Impression> first = new LinkedHashMap<>();
  private final Map<Key, List<Based>> based = new LinkedHashMap<>();

  /** Of one cause: an arrangement in a step, and whether it is set from its base. */
  private record Key(String arrangement, int step, boolean anchored) {}

  private record Based(Impression print, Impression base) {

    boolean isEarly() {
      return base.id() > print.id();
    }
  }

  AnchorOrder(PrintPlan plan, Course course, Layout layout) {
    this.plan = plan;
    this.course = course;
    this.layout = layout;
    course.impressions().forEach(i -> first.putIfAbsent(i.footprint().placement().id(), i));
  }

  List<Evidence> facts() {
    Optional<ClothIndex<Placement>> index = index();
    for (Impression print : first.values()) {
      Placement placement = print.footprint().placement();
      if (placement.anchor().isPresent()) {
        look(print, placement.anchor().getAsInt(), true);
      }
      List<String> over = plan.arrangements().get(placement.arrangement()).over();
      if (!over.isEmpty()) {
        for (Placement base : index.orElseThrow().near(placement.outline(), 0)) {
          boolean anchor = placement.anchor().stream().anyMatch(id -> id == base.id());
          if (!anchor && over.contains(base.arrangement()) && shareCloth(placement, base)) {
            look(print, base.id(), false);
          }
        }
      }
    }
    return based.entrySet().stream().map(e -> fact(e.getKey(), e.getValue())).toList();
  }

  /** Of all placements, if anything goes over another. */
  private Optional<ClothIndex<Placement>> index() {
    if (plan.arrangements().values().stream().allMatch(a -> a.over().isEmpty())) {
      return Optional.empty();
    }
    ClothIndex<Placement> index = new ClothIndex<>(layout.tube());
    layout.placements().forEach(p -> index.add(p.outline(), p));
    return Optional.of(index);
  }

  private boolean shareCloth(Placement one, Placement other) {
    return layout.tube().overlap(one.outline(), other.outline()).squareCm() > 0;
  }

  private void look(Impression print, int baseId, boolean anchored) {
    Impression base = first.get(baseId);
    if (base != null) {
      String arrangement = print.footprint().placement().arrangement();
      based
          .computeIfAbsent(new Key(arrangement, print.step(), anchored), k -> new ArrayList<>())
          .add(new Based(print, base));
    }
  }

  /** One of those that are printed too early, if any are. */
  private Evidence fact(Key key, List<Based> all) {
    List<Based> early = all.stream().filter(Based::isEarly).toList();
    List<Based> told = early.isEmpty() ? all : early;
    List<Impression> prints = told.stream().map(Based::print).distinct().toList();
    Impression base = told.get(0).base();
    String baseName = base.footprint().placement().arrangement();
    return new BaseOrder(
        key.anchored(),
        key.arrangement(),
        early.isEmpty() ? 0 : prints.size(),
        Group.copies(prints),
        baseName,
        course.step(key.step()),
        key.step(),
        course.step(base.step()),
        base.step(),
        key.step() == base.step() ? inOrder(key, baseName) : List.of(),
        Group.names(prints),
        key.step() == base.step()
            ? List.of()
            : List.of(
                new Related(
                    key.anchored() ? Tie.ANCHOR_PRINTED : Tie.BASE_PRINTED,
                    course.path(base.step()))),
        course.path(key.step()));
  }

  /** What a step prints with the base in front; empty if it stands there already. */
  private List<String> inOrder(Key key, String base) {
    List<String> names =
        plan.print(key.step()).map(PrintStep::arrangements).orElseGet(() -> List.of());
    if (names.indexOf(base) < names.indexOf(key.arrangement())) {
      return List.of();
    }
    List<String> inOrder = new ArrayList<>(names);
    inOrder.remove(base);
    inOrder.add(inOrder.indexOf(key.arrangement()), base);
    return inOrder;
  }
}

package strikeoff.sequence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.Evidence;
import strikeoff.plan.Evidence.Related;
import strikeoff.timeline.Impression;

/** What is set from another placement needs that one on the cloth first. */
final class AnchorOrder {

  private final Course course;
  private final Layout layout;

  AnchorOrder(Course course, Layout layout) {
    this.course = course;
    this.layout = layout;
  }

  List<Evidence> facts() {
    Map<Integer, Impression> first = new LinkedHashMap<>();
    course.impressions().forEach(i -> first.putIfAbsent(i.footprint().placement().id(), i));
    Map<String, List<Impression>> early = new LinkedHashMap<>();
    for (Impression print : first.values()) {
      Placement placement = print.footprint().placement();
      if (placement.anchor().isPresent()) {
        Impression anchor = first.get(placement.anchor().getAsInt());
        if (anchor != null && anchor.id() > print.id()) {
          early
              .computeIfAbsent(
                  placement.arrangement() + "\n" + print.step(), k -> new ArrayList<>())
              .add(print);
        }
      }
    }
    return early.values().stream().map(prints -> fact(prints, first)).toList();
  }

  private Evidence fact(List<Impression> prints, Map<Integer, Impression> first) {
    Placement placement = prints.get(0).footprint().placement();
    int anchorId = placement.anchor().getAsInt();
    int step = prints.get(0).step();
    int anchorStep = first.get(anchorId).step();
    return new AnchoredTooEarly(
        placement.arrangement(),
        Group.places(prints),
        layout.placements().get(anchorId).arrangement(),
        course.name(step),
        course.name(anchorStep),
        Group.names(prints),
        List.of(new Related("the anchor is printed", course.path(anchorStep))),
        course.path(step));
  }
}

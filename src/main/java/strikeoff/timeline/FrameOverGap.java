package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Table;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * Frames of one arrangement that are laid over a gap between two boards, or past their end. What
 * takes a board of its own is not among them: it is printed only where it has one.
 *
 * @param first the first such copy, as people call it
 * @param frames how many lays
 * @param fixed true if the boards are fixed, false if they are set under what is printed beside it
 */
public record FrameOverGap(
    String arrangement,
    String first,
    int frames,
    int step,
    boolean fixed,
    List<String> marks,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public FrameOverGap {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  static List<FrameOverGap> all(Timeline.Day day, PrintPlan plan) {
    Optional<Table.Stations> stations = plan.table().stations();
    if (stations.isEmpty()) {
      return List.of();
    }
    Map<String, List<Impression>> over = new LinkedHashMap<>();
    for (Impression impression : day.impressions()) {
      String arrangement = impression.footprint().placement().arrangement();
      Envelope frame = impression.footprint().frame().getEnvelopeInternal();
      if (!plan.arrangements().get(arrangement).takesBoard()
          && !Boards.hold(lies(day, impression), frame)) {
        over.computeIfAbsent(arrangement, name -> new ArrayList<>()).add(impression);
      }
    }
    List<FrameOverGap> all = new ArrayList<>();
    over.forEach(
        (arrangement, laid) ->
            all.add(
                new FrameOverGap(
                    arrangement,
                    laid.get(0).footprint().placement().name(),
                    laid.size(),
                    laid.get(0).step(),
                    stations.get().fixed(),
                    laid.stream().map(i -> i.footprint().placement().name()).distinct().toList(),
                    plan.arrangements().get(arrangement).path(),
                    List.of(new Related("the boards", stations.get().path())))));
    return all;
  }

  /** The boards under the cloth at that time. */
  private static List<Envelope> lies(Timeline.Day day, Impression impression) {
    List<Envelope> boards = List.of();
    for (ClothLies place : day.run().places()) {
      if (place.from().compareTo(impression.laid()) <= 0) {
        boards = place.boards();
      }
    }
    return boards;
  }

  /** What keeps the frames on boards, as an instruction without a full stop. */
  public String mending(Measures units) {
    return fixed
        ? "Push the boards together (`gap: 0 "
            + Length.columnUnit(units)
            + "`), or leave `fixed` out: loose boards are pushed"
            + " together under what takes no board of its own"
        : "Print " + arrangement + " in a step of its own: the boards are then pushed together";
  }
}

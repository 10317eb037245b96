package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.Boards;
import strikeoff.day.ClothLies;
import strikeoff.day.DayRun;
import strikeoff.day.Impression;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Table;

/**
 * Frames of one arrangement on a table of boards. What takes a board of its own is not among them:
 * it is printed only where it has one.
 *
 * @param lays how many are laid
 * @param frames how many of them over a gap between two boards, or past their end
 * @param first the first copy that has one of those, as people call it; empty if there are none
 * @param step the first step that lays one of those; 0 if none does
 * @param fixed true if the boards are fixed, false if they are set under what is printed beside it
 */
public record FramesOnBoards(
    String arrangement,
    int lays,
    int frames,
    String first,
    int step,
    boolean fixed,
    List<String> marks,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public FramesOnBoards {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  static List<FramesOnBoards> all(DayRun day, PrintPlan plan) {
    Optional<Table.Stations> stations = plan.table().stations();
    if (stations.isEmpty()) {
      return List.of();
    }
    Map<String, List<Impression>> lays = new LinkedHashMap<>();
    for (Impression impression : day.impressions()) {
      String arrangement = impression.footprint().placement().arrangement();
      if (!plan.arrangements().get(arrangement).takesBoard()) {
        lays.computeIfAbsent(arrangement, name -> new ArrayList<>()).add(impression);
      }
    }
    List<FramesOnBoards> all = new ArrayList<>();
    lays.forEach(
        (arrangement, laid) -> {
          List<Impression> over = laid.stream().filter(i -> !isOnBoards(day, i)).toList();
          Optional<Impression> first = over.stream().findFirst();
          all.add(
              new FramesOnBoards(
                  arrangement,
                  laid.size(),
                  over.size(),
                  first.map(i -> i.footprint().placement().name()).orElse(""),
                  first.map(Impression::step).orElse(0),
                  stations.get().fixed(),
                  over.stream().map(i -> i.footprint().placement().name()).distinct().toList(),
                  plan.arrangements().get(arrangement).path(),
                  List.of(new Related(Tie.BOARDS, stations.get().path()))));
        });
    return all;
  }

  private static boolean isOnBoards(DayRun day, Impression impression) {
    Envelope frame = impression.footprint().frame().getEnvelopeInternal();
    return Boards.hold(lies(day, impression), frame);
  }

  /** The boards under the cloth at that time. */
  private static List<Envelope> lies(DayRun day, Impression impression) {
    List<Envelope> boards = List.of();
    for (ClothLies place : day.run().places()) {
      if (place.from().compareTo(impression.laid()) <= 0) {
        boards = place.boards();
      }
    }
    return boards;
  }
}

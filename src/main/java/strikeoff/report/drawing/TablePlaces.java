package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import strikeoff.day.ClothLies;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;

/** Which stretch of the cloth lies on the table, and from when to when. */
final class TablePlaces {

  private static final Set<Task.Kind> TAKEN_UP =
      EnumSet.of(Task.Kind.SEW, Task.Kind.FIX, Task.Kind.RINSE, Task.Kind.WASH, Task.Kind.HEAT_SET);

  private TablePlaces() {}

  /**
   * One place of the table.
   *
   * @param x where on the cloth the table's start lies, in millimetres
   */
  record Place(double x, Moment from, Moment to) {}

  static List<Place> of(Timeline run) {
    List<Moment> lifted =
        run.tasks().stream()
            .filter(t -> TAKEN_UP.contains(t.kind()))
            .map(Task::start)
            .sorted()
            .toList();
    List<ClothLies> lies = run.clothLies();
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < lies.size(); i++) {
      Moment from = lies.get(i).from();
      Moment next =
          i + 1 < lies.size() ? lies.get(i + 1).work() : new Moment(run.finish().seconds() + 1);
      Moment to =
          lifted.stream()
              .filter(up -> up.compareTo(from) >= 0 && up.compareTo(next) < 0)
              .findFirst()
              .orElse(next);
      places.add(new Place(lies.get(i).at().mm(), from, to));
    }
    return places;
  }
}

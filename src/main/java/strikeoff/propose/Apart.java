package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import strikeoff.layout.FilmUnder;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;

/**
 * Prints in passes: in none of them does a frame lie on a film of its own colour beside it. Every
 * other one along a row makes two such passes; a brick, a half-drop or a close grid needs more.
 */
final class Apart {

  private final Layout layout;

  Apart(Layout layout) {
    this.layout = layout;
  }

  /**
   * Each print goes into the first pass in which it meets none, in the order of their numbers.
   *
   * @return one pass if none meet
   */
  List<List<Placement>> passes(List<Placement> prints) {
    List<List<Placement>> passes = new ArrayList<>();
    for (Placement print : prints) {
      passes.stream()
          .filter(pass -> pass.stream().noneMatch(other -> meet(print, other)))
          .findFirst()
          .orElseGet(
              () -> {
                List<Placement> next = new ArrayList<>();
                passes.add(next);
                return next;
              })
          .add(print);
    }
    return passes;
  }

  /** True if no frame of one print lies on another of its arrangement. */
  boolean liesApart(List<Placement> prints) {
    return prints.stream().collect(Collectors.groupingBy(Placement::arrangement)).values().stream()
        .allMatch(own -> passes(own).size() < 2);
  }

  /** True if prints 1, 3, 5 and so on meet among themselves, or the others do. */
  boolean needsMoreThanTwo(List<Placement> prints) {
    for (int i = 0; i < prints.size(); i++) {
      for (int j = i + 2; j < prints.size(); j += 2) {
        if (meet(prints.get(i), prints.get(j))) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean meet(Placement one, Placement other) {
    List<Footprint> first = layout.footprintsOf(one.id());
    List<Footprint> second = layout.footprintsOf(other.id());
    for (int i = 0; i < Math.min(first.size(), second.size()); i++) {
      if (liesOn(first.get(i), second.get(i)) || liesOn(second.get(i), first.get(i))) {
        return true;
      }
    }
    return false;
  }

  private boolean liesOn(Footprint frame, Footprint film) {
    return FilmUnder.lies(film, frame.frame(), layout.tube());
  }
}

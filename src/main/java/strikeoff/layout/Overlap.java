package strikeoff.layout;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Arrangement;
import strikeoff.units.Area;
import strikeoff.units.Share;

/**
 * Placements that lie on each other though neither is anchored to the other. One fact for two
 * arrangements, or for one whose own copies collide.
 *
 * @param arrangement the one that stands later in the plan
 * @param other the earlier one, or the same
 * @param pairs how many pairs overlap
 * @param moreThanPairs true if there are more than were counted
 * @param first of the pair that overlaps most, the earlier one
 * @param second of that pair, the later one
 * @param area that this pair shares: the rectangles of the designs, or the outlines around what
 *     they print where films tell that
 * @param share that area as a part of the smaller design, or of the outline around what it prints
 */
public record Overlap(
    String arrangement,
    String other,
    int pairs,
    boolean moreThanPairs,
    String first,
    String second,
    Area area,
    Share share,
    List<String> marks,
    PlanPath path,
    PlanPath otherPath)
    implements Evidence {

  public Overlap {
    marks = List.copyOf(marks);
  }

  static Overlap of(
      Arrangement later,
      Arrangement earlier,
      int pairs,
      boolean more,
      Placement first,
      Placement second,
      Area area,
      Share share,
      List<String> marks) {
    return new Overlap(
        later.name(),
        earlier.name(),
        pairs,
        more,
        first.name(),
        second.name(),
        area,
        share,
        marks,
        later.path(),
        earlier.path());
  }

  @Override
  public List<Related> related() {
    return path.equals(otherPath) ? List.of() : List.of(new Related(Tie.LIES_ON, otherPath));
  }
}

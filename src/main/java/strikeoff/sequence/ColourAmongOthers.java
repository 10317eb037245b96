package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.plan.Colour;
import strikeoff.plan.Medium;
import strikeoff.units.Length;
import strikeoff.units.Ratio;
import strikeoff.units.Share;

/**
 * A colour of a design that shares its place with other prints, over or under which nobody sees it:
 * earlier or later colours of its motif, and other placements.
 *
 * @param under true if the others are printed over it, false if it is printed over them
 * @param key true for an outline or key colour
 * @param named the plan's colour
 * @param lightness L* of it
 * @param others pastes it is lost over or under
 * @param without estimate of the look of the first of them alone, wet
 * @param withoutLightness L* of that
 * @param look estimate of both together
 * @param difference CIEDE2000 between the two
 * @param missed CIEDE2000 between {@code look} and the colour as named
 * @param share of what it prints that is lost, where that is most. On its own motif what must be
 *     lost for want of room, since stencils of one motif are cut for each other; of an outline, its
 *     share by the fills it lies on. On other placements what is lost if the two fall independently
 * @param seenBeside whether it is seen on the bare ground, where none of them lies
 * @param would what would be seen in its place
 * @param afterwards whether it would be seen if it was printed after the others, which it can be
 * @param meant whether it lies under them because the plan says that they go over it
 * @param knockout what to leave under each of the others where it is knocked out of its film: how
 *     far a frame can be off; empty where films don't tell all that is hidden
 * @param copies the placements concerned
 * @param path of the paste's colour
 */
public record ColourAmongOthers(
    String design,
    String paste,
    boolean under,
    boolean key,
    Colour named,
    Ratio lightness,
    List<String> others,
    Colour without,
    Ratio withoutLightness,
    Colour look,
    Ratio difference,
    Ratio missed,
    Share share,
    boolean seenBeside,
    Instead would,
    boolean afterwards,
    boolean meant,
    Optional<Length> knockout,
    Copies copies,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  /**
   * What would be seen in the place of a colour that is not.
   *
   * @param furtherFrom the colours from which an opaque one has to lie further; empty for others
   * @param opaque of which medium, if an opaque grade of it would be seen
   * @param deeper the lightest colour that would be seen, L*
   */
  public record Instead(List<String> furtherFrom, Optional<Medium> opaque, OptionalInt deeper) {}

  public ColourAmongOthers {
    others = List.copyOf(others);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}

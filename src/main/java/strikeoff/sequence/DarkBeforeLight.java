package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.units.Ratio;

/**
 * A transparent colour of a design that is printed before a lighter transparent one which it may
 * touch: the pair that is furthest apart in lightness. Outlines are left out, since their place is
 * a matter of its own; so are lighter colours that are opaque.
 *
 * @param dark paste printed first
 * @param light paste printed after it
 * @param darkLightness L* of the dark one
 * @param lightLightness L* of the light one
 * @param step how much darker the first one is, in L*
 * @param printed pastes of the design in the order they are printed
 * @param better the same, light before dark
 * @param copies the placements concerned
 * @param path of what sets the order: the design's list, or the print step that leaves it
 */
public record DarkBeforeLight(
    String design,
    String dark,
    String light,
    Ratio darkLightness,
    Ratio lightLightness,
    Ratio step,
    List<String> printed,
    List<String> better,
    Copies copies,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public DarkBeforeLight {
    printed = List.copyOf(printed);
    better = List.copyOf(better);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}

package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.plan.Colour;
import strikeoff.units.Ratio;
import strikeoff.units.Share;

/**
 * A translucent paint of a design that is printed over darker prints, which it hides in part: it is
 * seen, and comes out dull.
 *
 * @param named the plan's colour
 * @param lightness L* of it
 * @param others pastes that it lies on
 * @param without estimate of the look of the first of them alone, wet
 * @param withoutLightness L* of that
 * @param look estimate of both together
 * @param missed CIEDE2000 between {@code look} and the colour as named
 * @param share of what it prints that lies on them, where that is most
 * @param seenBeside whether it is seen on the bare ground, where none of them lies
 * @param copies the placements concerned
 * @param path of the paste's colour
 */
public record PaintOnDarker(
    String design,
    String paste,
    Colour named,
    Ratio lightness,
    List<String> others,
    Colour without,
    Ratio withoutLightness,
    Colour look,
    Ratio missed,
    Share share,
    boolean seenBeside,
    Copies copies,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public PaintOnDarker {
    others = List.copyOf(others);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}

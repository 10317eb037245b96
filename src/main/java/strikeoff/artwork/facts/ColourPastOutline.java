package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Joint;
import strikeoff.policy.Limits;
import strikeoff.units.Length;
import strikeoff.units.Ratio;
import strikeoff.units.Share;

/**
 * A colour that stands out past the outline drawn over it, by their films: a rim of it between the
 * outline and bare ground.
 *
 * @param key paste of the outline
 * @param colour paste that stands out
 * @param width of the rim, on average
 * @param over how long it is, as far as it keeps its width
 * @param ofEdge how much of the edge that the outline could cover that is
 * @param line how wide the outline is there, on average
 * @param ofLine how wide the rim is, of that
 * @param spread true if, by the policy, it was spread too far: it stands out along most of the
 *     outline, by no more than that is wide, and leaves no narrow ground beside it
 */
public record ColourPastOutline(
    String design,
    String key,
    String colour,
    Length width,
    Length over,
    Share ofEdge,
    Length line,
    Ratio ofLine,
    boolean spread,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public ColourPastOutline {
    related = List.copyOf(related);
  }

  /** Empty if none of the two is an outline, or both are, or the colour stands out nowhere. */
  static Optional<ColourPastOutline> of(Design design, Joint joint, Limits.Artwork limits) {
    Separation one = design.separation(joint.one());
    Separation other = design.separation(joint.other());
    Separation key = one.key() ? one : other;
    Separation colour = one.key() ? other : one;
    return one.key() == other.key()
        ? Optional.empty()
        : joint
            .of(colour.number())
            .rim()
            .filter(rim -> rim.line().isPresent())
            .map(rim -> of(design, key, colour, joint, rim, rim.line().get(), limits));
  }

  private static ColourPastOutline of(
      Design design,
      Separation key,
      Separation colour,
      Joint joint,
      Joint.Rim rim,
      Length line,
      Limits.Artwork limits) {
    double over = rim.over().mm();
    double ofEdge = over / (over + joint.lapped().mm());
    double ofLine = rim.width().mm() / line.mm();
    return new ColourPastOutline(
        design.name(),
        key.paste(),
        colour.paste(),
        rim.width(),
        rim.over(),
        new Share(ofEdge),
        line,
        new Ratio(ofLine),
        !joint.gapes(limits.stripLeast())
            && rim.width().mm() >= limits.rimSeen().mm()
            && over >= limits.rimLeast().mm()
            && ofEdge >= limits.rimOfEdge().fraction()
            && ofLine <= limits.rimOfLine().value(),
        List.of(new Related(Tie.OTHER_FILM, key.path().key("artwork"))),
        colour.path().key("artwork"));
  }

  /** True if it stands out past that outline because it was spread. */
  public boolean isSpread(String outline, String paste) {
    return spread && key.equals(outline) && colour.equals(paste);
  }

  /** True if it is one of two colours. */
  public boolean isOneOf(String one, String other) {
    return colour.equals(one) || colour.equals(other);
  }

  /** How far it stands out from the middle of the outline, where its edge is hidden best. */
  public Length toMiddle() {
    return width.plus(line.times(0.5));
  }
}

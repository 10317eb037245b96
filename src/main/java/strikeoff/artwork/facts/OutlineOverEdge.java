package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Joint;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * An outline that lies over the edge of another colour, by their films; or of several colours that
 * are told together.
 *
 * @param key paste of the outline
 * @param colour paste of what it outlines
 * @param lap how far it reaches over that where it does so least
 * @param doubt how much further or less far that may be: a point of the films
 * @param width how wide the outline is there by itself; empty from 4 mm on
 * @param butts true if, by the policy, the two only meet edge to edge over some of it
 * @param bare ground that shows beside the colour where the outline is laid off by the tolerance,
 *     in the worst of eight directions, in each print
 * @param tolerance how far a frame can be off on this table
 * @param further the same outline over other colours, told with this one
 * @param path of the film that is to be drawn anew: the colour's where it is choked, else the
 *     outline's
 */
public record OutlineOverEdge(
    String design,
    String key,
    String colour,
    Length lap,
    Length doubt,
    Optional<Length> width,
    boolean butts,
    Area bare,
    boolean railed,
    Length tolerance,
    List<OutlineOverEdge> further,
    List<Related> related,
    PlanPath path)
    implements Evidence.Gathered {

  public OutlineOverEdge {
    further = List.copyOf(further);
    related = List.copyOf(related);
  }

  /** Empty if none of the two is an outline, or both are, or it laps the other nowhere. */
  static Optional<OutlineOverEdge> of(
      Design design, Joint joint, Length buttLeast, boolean railed, Length tolerance) {
    Separation one = design.separation(joint.one());
    Separation other = design.separation(joint.other());
    if (one.key() == other.key() || joint.lap().isEmpty()) {
      return Optional.empty();
    }
    Separation key = one.key() ? one : other;
    Separation colour = one.key() ? other : one;
    OutlineOverEdge outline =
        new OutlineOverEdge(
            design.name(),
            key.paste(),
            colour.paste(),
            joint.lap().get().width(),
            joint.point(),
            joint.of(key.number()).wide(),
            joint.butting().mm() >= buttLeast.mm(),
            joint.of(key.number()).bare(),
            railed,
            tolerance,
            List.of(),
            List.of(new Related(Tie.OTHER_FILM, colour.path().key("artwork"))),
            key.path().key("artwork"));
    return Optional.of(outline.choked() ? outline.atColour() : outline);
  }

  /** The same at the colour's film. */
  private OutlineOverEdge atColour() {
    return with(List.of(), List.of(new Related(Tie.OTHER_FILM, path)), related.get(0).path());
  }

  private OutlineOverEdge with(
      List<OutlineOverEdge> further, List<Related> related, PlanPath path) {
    return new OutlineOverEdge(
        design, key, colour, lap, doubt, width, butts, bare, railed, tolerance, further, related,
        path);
  }

  /** What is drawn anew in one go: an outline for all colours that it outlines. */
  @Override
  public Object gathering() {
    return List.of(design, path);
  }

  @Override
  public OutlineOverEdge and(List<Evidence> others) {
    List<OutlineOverEdge> more = others.stream().map(OutlineOverEdge.class::cast).toList();
    return with(
        more,
        Stream.concat(Stream.of(this), more.stream()).flatMap(o -> o.related.stream()).toList(),
        path);
  }

  /** This one, and those that are told with it. */
  public List<OutlineOverEdge> all() {
    return Stream.concat(Stream.of(this), further.stream()).toList();
  }

  /** What it outlines. */
  public List<String> colours() {
    return all().stream().map(OutlineOverEdge::colour).toList();
  }

  /** True if it reaches over the edge by less than the tolerance, whatever the doubt. */
  public boolean narrow() {
    return lap.plus(doubt).finerThan(tolerance.mm());
  }

  /** True if it is, and ground shows beside the colour where a frame is off. */
  public boolean opens() {
    return narrow() && bare.squareCm() > 0;
  }

  /** How far the colour should run under it: by the tolerance, or to the middle of a thin one. */
  public Length under() {
    return new Length(
        Math.min(tolerance.mm(), width.map(w -> w.mm() / 2).orElse(Double.MAX_VALUE)));
  }

  /** True if the outline has room for more of a lap than there is, whatever the doubt. */
  public boolean choked() {
    return lap.plus(doubt).finerThan(under().mm());
  }

  /** True if it is too thin to hide an edge however it is laid. */
  public boolean thin() {
    return under().plus(doubt).finerThan(tolerance.mm());
  }

  /** By how much the colour is to be spread for that. */
  public Length spread() {
    return under().minus(lap);
  }

  /** How wide it covers an edge however it is laid. */
  public Length wanted() {
    return tolerance.times(2);
  }
}

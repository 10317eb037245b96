package strikeoff.artwork.facts;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.FilmPlace;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Design;
import strikeoff.plan.Joint;
import strikeoff.policy.Limits;
import strikeoff.units.Length;

/**
 * Where two colours of a design come near to each other without a lap, by their films.
 *
 * @param one paste of the separation that is listed first
 * @param other paste of the other one
 * @param under which of the two is to run under the other: the one that is no outline, or is listed
 *     first
 * @param over the other of the two
 * @param gap the narrowest bare ground between them; empty if there is none of up to 4 mm
 * @param strips how wide such ground becomes that wasn't meant to be seen, and over how much there
 *     is any
 * @param gapes true if, by the policy, there is enough of that to be no scrap of ground
 * @param doubt how much wider or narrower that may be: a point of the films
 * @param butt over how much they meet edge to edge, to a point of the films
 * @param butts true if, by the policy, that is an edge and not the corners of lines that cross
 * @param buttAt where the longest such edge is; empty if there is none
 * @param tolerance how far a frame can be off on this table
 */
public record OpenJoint(
    String design,
    String one,
    String other,
    String under,
    String over,
    Optional<Finest> gap,
    Optional<Joint.Strips> strips,
    boolean gapes,
    Length doubt,
    Length butt,
    boolean butts,
    Optional<FilmPlace> buttAt,
    boolean railed,
    Length tolerance,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public OpenJoint {
    related = List.copyOf(related);
  }

  static OpenJoint of(
      Design design, Joint joint, Limits.Artwork limits, boolean railed, Length tolerance) {
    Design.Separation one = design.separation(joint.one());
    Design.Separation other = design.separation(joint.other());
    boolean first = !one.key() || other.key();
    return new OpenJoint(
        design.name(),
        one.paste(),
        other.paste(),
        first ? one.paste() : other.paste(),
        first ? other.paste() : one.paste(),
        joint.openGap(),
        joint.gapUpTo(),
        joint.gapes(limits.stripLeast()),
        joint.point(),
        joint.butting(),
        joint.butting().mm() >= limits.buttLeast().mm(),
        joint.butt().map(Finest::place),
        railed,
        tolerance,
        List.of(new Related(Tie.OTHER_FILM, one.path().key("artwork"))),
        other.path().key("artwork"));
  }

  @Override
  public Map<String, FilmPlace> onFilms() {
    Map<String, FilmPlace> all = new HashMap<>();
    gap.ifPresent(g -> all.put("gapText", g.place()));
    buttAt.ifPresent(place -> all.put("butt", place));
    return Map.copyOf(all);
  }

  /** By how much the one is to be spread so that it runs under the other by the tolerance. */
  public Length spread() {
    return ground().orElse(new Length(0)).plus(tolerance);
  }

  /** The widest of such ground; the narrowest where they differ by no more than their doubts. */
  public Optional<Length> ground() {
    Optional<Length> narrowest = gap.map(Finest::width);
    return strips
        .map(Joint.Strips::widest)
        .filter(w -> narrowest.isEmpty() || w.minus(doubt.times(2)).compareTo(narrowest.get()) > 0)
        .or(() -> narrowest);
  }

  /** Width of the narrowest bare ground; endless if there is none. */
  public double gapMm() {
    return gap.map(g -> g.width().mm()).orElse(Double.MAX_VALUE);
  }

  /** True if it is one of two colours, in any order. */
  public boolean isBetween(String first, String second) {
    return one.equals(first) && other.equals(second) || one.equals(second) && other.equals(first);
  }
}

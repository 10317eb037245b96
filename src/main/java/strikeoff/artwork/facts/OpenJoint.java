package strikeoff.artwork.facts;

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
import strikeoff.units.Length;

/**
 * Where two colours of a design come near to each other without a lap, by their films.
 *
 * @param one paste of the separation that is listed first
 * @param other paste of the other one
 * @param gap the narrowest bare ground between them; empty if there is none of up to 4 mm
 * @param butt over how much they meet edge to edge
 * @param tolerance how far a frame can be off on this table
 */
public record OpenJoint(
    String design,
    String one,
    String other,
    Optional<Finest> gap,
    Length butt,
    boolean railed,
    Length tolerance,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public OpenJoint {
    related = List.copyOf(related);
  }

  static OpenJoint of(Design design, Joint joint, boolean railed, Length tolerance) {
    Design.Separation one = design.separation(joint.one());
    Design.Separation other = design.separation(joint.other());
    return new OpenJoint(
        design.name(),
        one.paste(),
        other.paste(),
        joint.gap(),
        joint.butt(),
        railed,
        tolerance,
        List.of(new Related(Tie.OTHER_FILM, one.path().key("artwork"))),
        other.path().key("artwork"));
  }

  @Override
  public Map<String, FilmPlace> onFilms() {
    return gap.map(g -> Map.of("gapText", g.place())).orElse(Map.of());
  }

  /** Width of the narrowest bare ground; endless if there is none. */
  public double gapMm() {
    return gap.map(g -> g.width().mm()).orElse(Double.MAX_VALUE);
  }
}

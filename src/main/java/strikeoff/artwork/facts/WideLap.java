package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Joint;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * Where two colours, neither of them an outline, lap most widely, by their films.
 *
 * @param one paste of the separation that is listed first
 * @param other paste of the other one
 * @param lap the widest of up to 10 mm
 * @param seen true if the one shows through the other, so that they make a third colour
 * @param tolerance how far a frame can be off on this table
 */
public record WideLap(
    String design,
    String one,
    String other,
    Finest lap,
    boolean seen,
    boolean railed,
    Length tolerance,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public WideLap {
    related = List.copyOf(related);
  }

  static Optional<WideLap> of(
      PrintPlan plan, Design design, Joint joint, boolean railed, Length tolerance) {
    Separation one = design.separation(joint.one());
    Separation other = design.separation(joint.other());
    if (one.key() || other.key()) {
      return Optional.empty();
    }
    return joint
        .wideLap()
        .map(
            lap ->
                new WideLap(
                    design.name(),
                    one.paste(),
                    other.paste(),
                    lap,
                    plan.pastes().get(other.paste()).transparent(),
                    railed,
                    tolerance,
                    List.of(new Related(Tie.OTHER_FILM, one.path().key("artwork"))),
                    other.path().key("artwork")));
  }

  public Length width() {
    return lap.width();
  }
}

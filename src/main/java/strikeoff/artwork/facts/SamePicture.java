package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Joint;

/**
 * Two films of one design that print the same, point for point: each prints nothing but what both
 * do.
 *
 * @param one file of the film that is listed first, as the plan writes it
 * @param other file of the other one; the same where the plan names it twice
 * @param first paste of the one
 * @param second paste of the other
 */
public record SamePicture(
    String design,
    String one,
    String other,
    String first,
    String second,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  /** What rounding leaves of a sum of points, in cm². */
  private static final double ROUNDING = 1e-6;

  public SamePicture {
    related = List.copyOf(related);
  }

  /** Empty if one of two films prints anything that the other one doesn't. */
  static Optional<SamePicture> of(Design design, Joint joint) {
    Separation one = design.separation(joint.one());
    Separation other = design.separation(joint.other());
    double both = joint.both().squareCm();
    boolean same =
        both > 0
            && !one.paste().equals(other.paste())
            && Math.abs(both - one.printed().squareCm()) < ROUNDING
            && Math.abs(both - other.printed().squareCm()) < ROUNDING;
    return same
        ? Optional.of(
            new SamePicture(
                design.name(),
                one.artwork().orElseThrow().file(),
                other.artwork().orElseThrow().file(),
                one.paste(),
                other.paste(),
                List.of(new Related(Tie.OTHER_FILM, one.path().key("artwork"))),
                other.path().key("artwork")))
        : Optional.empty();
  }

  /** True if the plan names one file for both. */
  public boolean isOneFile() {
    return one.equals(other);
  }

  /** True if it is printed with that paste. */
  public boolean isOf(String paste) {
    return first.equals(paste) || second.equals(paste);
  }
}

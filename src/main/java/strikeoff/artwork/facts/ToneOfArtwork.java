package strikeoff.artwork.facts;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Share;

/**
 * How much of a film is dark, light and between.
 *
 * @param file the film's name, as the plan writes it
 * @param tone which of its tones prints
 * @param printed share of its points that print
 * @param grey share of them that are neither dark nor light, by the policy
 * @param greyMost how much of it may be grey
 */
public record ToneOfArtwork(
    String design,
    int separation,
    String file,
    Artwork.Tone tone,
    Share printed,
    Share grey,
    Limit greyMost,
    PlanPath path)
    implements Evidence {

  static ToneOfArtwork of(
      Design design, Design.Separation separation, Artwork artwork, Policy policy) {
    return new ToneOfArtwork(
        design.name(),
        separation.number(),
        artwork.file(),
        artwork.prints(),
        artwork.printed(),
        policy.grey(artwork),
        policy.artwork().greyMost(),
        separation.path().key("artwork"));
  }

  /** True if it has no point that prints. */
  public boolean nothing() {
    return printed.fraction() == 0;
  }
}

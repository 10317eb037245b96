package strikeoff.artwork.facts;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Area;
import strikeoff.units.Share;

/**
 * What a plan says that a separation prints, and what its film prints.
 *
 * @param file the film's name, as the plan writes it
 * @param key under which the plan says it
 * @param stated by the plan
 * @param statedShare the same of its rectangle
 * @param printed by the film
 * @param printedShare the same of its rectangle
 * @param prints the tone that takes paste
 * @param off how far the plan's figure is from the film's, as a share of the film's
 * @param grey share of the film that is neither dark nor light: where that is much, nobody knows
 *     what it prints
 * @param greyMost how much of it may be grey
 */
public record StatedPrint(
    String design,
    int separation,
    String file,
    String key,
    Area stated,
    Share statedShare,
    Area printed,
    Share printedShare,
    Artwork.Tone prints,
    Share off,
    Share grey,
    Limit greyMost,
    PlanPath path)
    implements Evidence {

  private static final double HALF_A_PERCENT = 0.005;

  /** True if the plan states, to the percent that people write, what the film leaves bare. */
  public boolean bareInstead() {
    double bare = 1 - printedShare.fraction();
    return Math.abs(statedShare.fraction() - bare) <= HALF_A_PERCENT;
  }

  /** Empty if the plan leaves it to the film, or the film prints nothing. */
  static Optional<StatedPrint> of(
      Design design, Design.Separation separation, Artwork artwork, Policy policy) {
    if (artwork.stated().isEmpty() || artwork.printed().fraction() == 0) {
      return Optional.empty();
    }
    Area stated = artwork.stated().get().area();
    String key = artwork.stated().get().key();
    Area printed = separation.printed();
    double whole = separation.rectangle().squareCm();
    return Optional.of(
        new StatedPrint(
            design.name(),
            separation.number(),
            artwork.file(),
            key,
            stated,
            new Share(stated.squareCm() / whole),
            printed,
            artwork.printed(),
            artwork.prints(),
            new Share(Math.abs(stated.squareCm() - printed.squareCm()) / printed.squareCm()),
            policy.grey(artwork),
            policy.artwork().greyMost(),
            separation.path().key(key)));
  }
}

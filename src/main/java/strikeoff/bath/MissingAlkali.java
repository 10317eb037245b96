package strikeoff.bath;

import java.util.List;
import strikeoff.paste.SodaLife;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Span;

/**
 * Dye that is batched or steamed with no alkali: neither in its paste nor from a soak.
 *
 * @param how batch or steam
 * @param dyes the pastes without alkali
 * @param shortLived those of them that would not live to their last print with soda in them
 * @param path of the fix step
 */
public record MissingAlkali(
    int step,
    String how,
    List<String> dyes,
    List<SodaLife> shortLived,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public MissingAlkali {
    dyes = List.copyOf(dyes);
    shortLived = List.copyOf(shortLived);
    related = List.copyOf(related);
  }

  /** Where to put the alkali, in words: the soak first where a paste would die of it. */
  public String mending() {
    if (shortLived.isEmpty()) {
      return "Put the alkali into the paste, or soak the cloth in soda before";
    }
    SodaLife first = shortLived.get(0);
    return "Soak the cloth in soda before and dry it; in the paste the alkali would leave "
        + first.paste()
        + " at least "
        + new Span(Math.floor(first.lifeMinutes().low())).text()
        + " of life, and from mixing to its last print the run takes "
        + first.needed().text();
  }
}

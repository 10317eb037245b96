package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.policy.Limit;
import strikeoff.units.Ratio;
import strikeoff.units.Share;

/**
 * An outline or key colour beside fills of its motif that look like it on the bare ground.
 *
 * @param key its paste
 * @param fills pastes of those fills
 * @param share of all fills that it can lie at, by their printed area
 * @param beside the least CIEDE2000 between it and one of them, side by side on the ground
 * @param shows CIEDE2000 from which on one shows beside the other
 * @param over CIEDE2000 between that fill and the outline printed over it
 * @param path of the key's colour
 */
public record KeyLikeFill(
    String design,
    String key,
    List<String> fills,
    Share share,
    Ratio beside,
    Limit shows,
    Ratio over,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public KeyLikeFill {
    fills = List.copyOf(fills);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}

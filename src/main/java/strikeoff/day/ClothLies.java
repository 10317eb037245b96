package strikeoff.day;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Length;

/**
 * Where the cloth lies on the table for a while.
 *
 * @param at what of the cloth lies at the table's start, from the cloth's start; below zero if the
 *     cloth's start lies that far in from the table's
 * @param work the laying or moving after which it lies there: when that began
 * @param from when it lies there
 * @param boards stretches of the cloth, in mm, that lie on boards without a gap; empty if the top
 *     has none
 */
public record ClothLies(Length at, Moment work, Moment from, List<Envelope> boards, PlanPath path)
    implements Evidence {

  public ClothLies {
    boards = List.copyOf(boards);
  }

  /**
   * Where a place of the cloth then lies, from the table's start; below zero if it hangs off there.
   *
   * @param x from the cloth's start
   */
  public Length onTable(Length x) {
    return x.minus(at);
  }
}

package strikeoff.bath;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * Paint that was printed, and what follows it.
 *
 * @param paints the paints
 * @param impressions how many prints of them
 * @param heats how many heat-sets follow
 * @param baths how many soaks, rinses and washes follow: in the first it is lost before any heat
 * @param setting what would set them
 * @param marks placements concerned
 * @param path of the last print step with such paint
 */
public record PaintPrinted(
    List<String> paints,
    int impressions,
    int heats,
    int baths,
    Setting setting,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  /**
   * What sets paints on a cloth.
   *
   * @param paint the one that asks for most
   * @param at how hot, at the film
   * @param lasts how long at that, in an oven
   * @param fibre of the cloth that stands least
   * @param harmsAbove what that stands
   */
  public record Setting(
      String paint, Temperature at, Span lasts, String fibre, Temperature harmsAbove) {

    /** True if no heat both sets the paint and spares the cloth. */
    public boolean harms() {
      return at.compareTo(harmsAbove) > 0;
    }
  }

  public PaintPrinted {
    paints = List.copyOf(paints);
    marks = List.copyOf(marks);
  }
}

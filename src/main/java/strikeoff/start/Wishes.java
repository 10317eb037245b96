package strikeoff.start;

import java.util.List;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * What a printer says before there is a plan.
 *
 * @param title of the plan
 * @param dye true for thickened dye, false for paint
 * @param fibre of the cloth, as plans name it
 * @param colours in the order of printing, as plans write them; at least one
 * @param along the motif's size along the cloth
 * @param across the same across it
 * @param count how many motifs, from 1
 * @param units that the motif's size was given in, for all measures of the plan
 */
public record Wishes(
    String title,
    boolean dye,
    String fibre,
    List<String> colours,
    Length along,
    Length across,
    int count,
    Measures units) {

  /** The same with the colours in another order of printing. */
  public Wishes inOrder(List<String> others) {
    return new Wishes(title, dye, fibre, others, along, across, count, units);
  }

  public Wishes {
    colours = List.copyOf(colours);
    if (colours.isEmpty() || count < 1 || along.mm() <= 0 || across.mm() <= 0) {
      throw new IllegalArgumentException("nothing to print");
    }
  }
}

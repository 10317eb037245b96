package strikeoff.colour;

import java.util.List;
import strikeoff.plan.Colour;
import strikeoff.plan.Medium;

/**
 * One paste's colour, as named and as it is expected on this cloth.
 *
 * @param named the plan's colour: its wet look on white cloth
 * @param lab of {@code named}
 * @param onGround estimate of its wet look on this ground
 * @param washed estimate of its look after wash-off: softer for dye, paler still on a blend;
 *     unchanged for paint
 * @param onGroundLab of {@code onGround}
 * @param placements names of the placements that it is printed at; empty for a paste that no placed
 *     design uses
 */
public record Swatch(
    String paste,
    Medium medium,
    boolean transparent,
    Colour named,
    Lab lab,
    Colour onGround,
    Colour washed,
    Lab onGroundLab,
    List<String> placements) {

  public Swatch {
    placements = List.copyOf(placements);
  }

  /** L* of the named colour. */
  public double lightness() {
    return lab.lightness();
  }
}

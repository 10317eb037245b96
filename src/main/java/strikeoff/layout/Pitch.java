package strikeoff.layout;

import java.util.Optional;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * From one copy to the next.
 *
 * @param along the cloth
 * @param across it, for what repeats both ways; empty for a row
 */
public record Pitch(Length along, Optional<Length> across) {

  static Pitch row(double alongMm) {
    return new Pitch(new Length(alongMm), Optional.empty());
  }

  static Pitch lattice(double alongMm, double acrossMm) {
    return new Pitch(new Length(alongMm), Optional.of(new Length(acrossMm)));
  }

  /** As it is said, and exact enough to be written into a plan. */
  public String text(Measures units) {
    return along.writtenText(units) + across.map(a -> " by " + a.writtenText(units)).orElse("");
  }

  /** As a plan has it. */
  public String written(Measures units) {
    return along.writtenText(units) + across.map(a -> " x " + a.writtenText(units)).orElse("");
  }
}

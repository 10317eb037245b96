package strikeoff.drying;

import java.util.Optional;
import strikeoff.units.Span;

/**
 * Water that must evaporate from a film until each state, in g/m² at the full rate of an open film.
 * Water that the cloth has taken up leaves more slowly, so it counts for more than its mass.
 *
 * @param frameSafe until another frame may touch it
 * @param sinksIn g/(m² h) that the cloth goes on soaking up meanwhile, which takes the sheen away
 *     in any air; zero for paint, and where the fibres are full
 * @param liftSafe until the cloth may move
 * @param frameMeasured the printer's own time in the room's air, which replaces the estimate
 * @param liftMeasured the same for lift-safe
 * @param cure time after printing before heat or a bath, however dry it is; zero for dye
 */
public record FilmNeed(
    double frameSafe,
    double sinksIn,
    double liftSafe,
    Optional<Span> frameMeasured,
    Optional<Span> liftMeasured,
    Span cure) {

  /**
   * @throws IllegalArgumentException unless 0 ≤ frameSafe ≤ liftSafe and 0 ≤ sinksIn
   */
  public FilmNeed {
    if (!(frameSafe >= 0 && frameSafe <= liftSafe && sinksIn >= 0)) {
      throw new IllegalArgumentException("not in order: " + frameSafe + ", " + liftSafe);
    }
  }
}

package strikeoff.artwork.facts;

import java.util.Optional;
import strikeoff.plan.Artwork;
import strikeoff.units.Length;
import strikeoff.units.Numbers;
import strikeoff.units.Pair;
import strikeoff.units.Ratio;

/**
 * How close a film's points stand.
 *
 * @param points to an inch or a centimetre
 * @param perInch true if to an inch
 * @param plain true if that is a figure as programs are set to, which tells every point of the film
 */
public record FilmResolution(double points, boolean perInch, boolean plain) {

  private static final double INCH = 25.4;
  private static final double CENTIMETRE = 10;

  /** Sides of a picture are rounded up or down, in points. */
  private static final double ROUNDING = 1;

  /**
   * What makes a film as large as it is wanted, its margin included; empty if its shape speaks
   * against that, and of a drawing, which has no points of its own.
   *
   * @param is how long and wide it is now
   * @param step plain figures are whole multiples of that
   */
  static Optional<FilmResolution> asWanted(
      Artwork film, Pair is, Length length, Length width, Length tolerance, Ratio step) {
    double margins = 2 * film.margin().mm();
    double columns = film.columns() * (1 + margins / is.along().mm());
    double rows = film.rows() * (1 + margins / is.across().mm());
    double along = length.mm() + margins;
    double across = width.mm() + margins;
    if (film.drawn() || Math.abs(rows * along / columns - across) > tolerance.mm()) {
      return Optional.empty();
    }
    return plain(columns, rows, along, across, CENTIMETRE, step)
        .or(() -> plain(columns, rows, along, across, INCH, step))
        .or(() -> Optional.of(new FilmResolution(columns / along * CENTIMETRE, false, false)));
  }

  private static Optional<FilmResolution> plain(
      double columns, double rows, double along, double across, double unit, Ratio step) {
    double points = Math.round(columns / along * unit / step.value()) * step.value();
    boolean tellsAll =
        points > 0
            && Math.abs(points * along / unit - columns) <= ROUNDING
            && Math.abs(points * across / unit - rows) <= ROUNDING;
    return tellsAll
        ? Optional.of(new FilmResolution(points, unit == INCH, true))
        : Optional.empty();
  }

  /** As a plan writes it. */
  public String written() {
    return Numbers.plain(points, 2) + (perInch ? "/in" : "/cm");
  }
}

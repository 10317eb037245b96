package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintedCells;
import strikeoff.policy.Limits;
import strikeoff.units.Share;

/**
 * How much of a film prints: in all, at its border, and over what is printed before it, by the
 * films' cells of about a millimetre. A ground prints up to its border, and so does a negative.
 *
 * @param file the film's name, as the plan writes it
 * @param tone which of its tones prints
 * @param paste its paste
 * @param key true for an outline
 * @param likeNegative true if it prints what a negative does, by the policy: the most of its
 *     rectangle, all round up to its border, and yet not all
 * @param printed share of its rectangle
 * @param bare the rest of it
 * @param border share of its outermost cells, all round
 * @param over share of what films before it print on which it prints as well; nothing where there
 *     are none
 * @param enclosed how well what it and all fills leave bare is what an outline encloses: what is
 *     both, as a share of what is either; nothing of an outline
 * @param suspect true of no outline that is like a negative, by the policy, and lies on most of
 *     what is printed before it, or leaves bare what an outline encloses
 */
public record PrintAtBorder(
    String design,
    int separation,
    String file,
    Artwork.Tone tone,
    String paste,
    boolean key,
    boolean likeNegative,
    Share printed,
    Share bare,
    Share border,
    Share over,
    Share enclosed,
    boolean suspect,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public PrintAtBorder {
    related = List.copyOf(related);
  }

  /** Of a film that prints somewhere. */
  static Optional<PrintAtBorder> of(
      Design design, Separation separation, Artwork film, Limits.Artwork limits) {
    if (film.reach().isEmpty()) {
      return Optional.empty();
    }
    List<Separation> before =
        design.separations().subList(0, separation.number() - 1).stream()
            .filter(s -> s.artwork().isPresent())
            .toList();
    double printed = film.printed().fraction();
    double border = border(film.cells());
    double over = over(separation, before);
    double enclosed = separation.key() ? 0 : Enclosed.bareIn(design, separation);
    boolean like =
        printed > limits.negativePrints().fraction()
            && border >= limits.negativeBorder().fraction()
            && 1 - printed >= limits.negativeBare().fraction();
    return Optional.of(
        new PrintAtBorder(
            design.name(),
            separation.number(),
            film.file(),
            film.prints(),
            separation.paste(),
            separation.key(),
            like,
            film.printed(),
            new Share(1 - printed),
            new Share(border),
            new Share(over),
            new Share(enclosed),
            like
                && !separation.key()
                && (over > limits.negativeOver().fraction()
                    || enclosed > limits.negativeEnclosed().fraction()),
            before.stream().map(s -> new Related(Tie.OTHER_FILM, path(s))).toList(),
            path(separation)));
  }

  private static PlanPath path(Separation separation) {
    return separation.path().key("artwork");
  }

  private static double border(PrintedCells cells) {
    long sum = 0;
    long count = 0;
    for (int row = 0; row < cells.rows(); row++) {
      boolean whole = row == 0 || row == cells.rows() - 1;
      int step = whole ? 1 : Math.max(1, cells.columns() - 1);
      for (int column = 0; column < cells.columns(); column += step) {
        sum += cells.share(column, row);
        count++;
      }
    }
    return (double) sum / count / PrintedCells.FULL;
  }

  private static double over(Separation later, List<Separation> before) {
    double all = 0;
    double over = 0;
    PrintedCells above = later.artwork().orElseThrow().cells();
    for (Separation earlier : before) {
      PrintedCells cells = earlier.artwork().orElseThrow().cells();
      double x = earlier.x().mm() - later.x().mm();
      double y = earlier.y().mm() - later.y().mm();
      double area = cells.cellLength() * cells.cellWidth();
      for (int row = 0; row < cells.rows(); row++) {
        for (int column = 0; column < cells.columns(); column++) {
          int share = cells.share(column, row);
          if (share > 0) {
            all += share * area;
            over +=
                share
                    * area
                    * above.at(
                        x + (column + 0.5) * cells.cellLength(),
                        y + (row + 0.5) * cells.cellWidth())
                    / PrintedCells.FULL;
          }
        }
      }
    }
    return all == 0 ? 0 : over / all;
  }

  /** True for an outline that prints what none does. */
  public boolean negativeOutline() {
    return key && likeNegative;
  }

  /** True if it is told as a negative, so that nothing that follows from it is worth telling. */
  public boolean isNegative() {
    return suspect || negativeOutline();
  }

  /** The tone that doesn't print, as a plan writes it. */
  public String otherTone() {
    return tone.other().word();
  }
}

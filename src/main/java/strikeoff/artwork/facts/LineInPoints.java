package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/**
 * The finest line of a film in points of the film.
 *
 * @param file the film's name, as the plan writes it
 * @param ofMark true if it is a part of a register mark
 * @param points how many points it is wide
 * @param least how many it should be
 * @param wantedPerInch points an inch at which it is so many points wide
 */
public record LineInPoints(
    String design,
    int separation,
    String file,
    boolean ofMark,
    Length line,
    Length point,
    double points,
    Limit least,
    double wantedPerInch,
    PlanPath path)
    implements Evidence {

  private static final double INCH = 25.4;

  /** Empty if it has no line, or is grey. */
  static Optional<LineInPoints> of(
      Design design,
      Design.Separation separation,
      Artwork artwork,
      List<MarksOnFilms> marks,
      Policy policy) {
    Limit least = policy.artwork().pointsLeast();
    return policy
        .fine(artwork)
        .flatMap(
            fine ->
                fine.line()
                    .map(
                        line ->
                            new LineInPoints(
                                design.name(),
                                separation.number(),
                                artwork.file(),
                                marks.stream()
                                    .anyMatch(m -> m.areAt(separation.path(), fine.line())),
                                line.width(),
                                fine.point(),
                                line.width().mm() / fine.point().mm(),
                                least,
                                least.amount() / line.width().mm() * INCH,
                                separation.path().key("artwork"))));
  }
}

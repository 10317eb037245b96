package strikeoff.screens;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.FilmPlace;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Fine;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Design;
import strikeoff.plan.Screen;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;

/**
 * What a film has that is fine besides lines, against the mesh of its screen.
 *
 * @param file the film's name, as the plan writes it
 * @param gap the finest gap between parts that print; empty if there is none of up to 4 mm
 * @param gapWanted how many openings a gap should be wide
 * @param gapHolds the finest gap that stays open on this mesh, for certain
 * @param lineHolds the finest line that the mesh holds
 * @param tips how many parts run out to a point
 * @param tipLost how much of such a point is finer than the mesh holds, on average
 * @param specks how many parts are too small to be meant
 */
public record FineOnMesh(
    String design,
    int separation,
    String screen,
    String file,
    Length point,
    Optional<Finest> gap,
    MeshCount mesh,
    Length opening,
    Limit gapWanted,
    Length gapHolds,
    Length lineHolds,
    int tips,
    Length tipLost,
    int specks,
    PlanPath path,
    PlanPath screenPath)
    implements Evidence {

  /** Empty without a film of lines, and if the mesh has no openings. */
  static Optional<FineOnMesh> of(
      Design design, Design.Separation separation, Screen screen, Policy policy) {
    Mesh mesh = Mesh.of(screen);
    return fine(separation, policy)
        .filter(fine -> mesh.canBeWoven())
        .map(fine -> of(design, separation, screen, fine, policy));
  }

  private static FineOnMesh of(
      Design design, Design.Separation separation, Screen screen, Fine fine, Policy policy) {
    Length opening = Mesh.of(screen).opening();
    double holds = opening.mm() * policy.screens().detailOpenings().amount();
    double lost = fine.tips() == 0 ? 0 : fine.tipLength() * holds / fine.tips();
    return new FineOnMesh(
        design.name(),
        separation.number(),
        screen.name(),
        separation.artwork().map(Artwork::file).orElseThrow(),
        fine.point(),
        fine.gap(),
        screen.mesh(),
        opening,
        policy.artwork().gapOpenings(),
        opening.times(policy.artwork().gapOpenings().amount()).plus(fine.point()),
        new Length(holds),
        fine.tips(),
        new Length(lost),
        (int)
            Math.min(
                Integer.MAX_VALUE, fine.specksUpTo(policy.artwork().speckArea().squareCm() * 100)),
        separation.path().key("artwork"),
        screen.path());
  }

  /** What is fine in a separation's film; empty without one, and where it is grey. */
  static Optional<Fine> fine(Design.Separation separation, Policy policy) {
    return separation.artwork().flatMap(policy::fine);
  }

  /** True if the finest gap may be narrower than so many openings. */
  public boolean fills(double openings) {
    return gap.isPresent() && gap.get().width().minus(point).finerThan(opening.mm() * openings);
  }

  @Override
  public Map<String, FilmPlace> onFilms() {
    return gap.map(g -> Map.of("gapText", g.place())).orElse(Map.of());
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.SCREEN, screenPath));
  }
}

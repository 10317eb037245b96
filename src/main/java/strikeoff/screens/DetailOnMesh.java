package strikeoff.screens;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.FilmPlace;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork.Fine;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Design;
import strikeoff.plan.Screen;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;

/**
 * The finest detail of a separation against the openings of its mesh.
 *
 * @param line the same as it was measured on a film; empty if the plan states it
 * @param doubt how much finer or coarser it may be: a point of the film that it was measured on;
 *     nothing if the plan states it
 * @param openings how many openings wide the detail is
 * @param wanted how many openings wide it should be
 * @param holds the finest detail that the mesh holds
 * @param better coarsest mesh that is sold and holds the detail; empty if paste for cloth goes
 *     through none that does
 * @param finest the finest mesh that paste for cloth goes through
 * @param finestHolds the finest detail that it holds
 */
public record DetailOnMesh(
    String design,
    int separation,
    String screen,
    Length detail,
    Optional<Finest> line,
    Length doubt,
    MeshCount mesh,
    Length opening,
    double openings,
    Limit wanted,
    Length holds,
    Optional<Mesh> better,
    Mesh finest,
    Length finestHolds,
    PlanPath path,
    PlanPath screenPath)
    implements Evidence {

  /** Empty if neither film nor plan names a detail, or the mesh has no openings. */
  static Optional<DetailOnMesh> of(
      Design design,
      Design.Separation separation,
      Screen screen,
      UsualMeshes usual,
      Policy policy) {
    Mesh mesh = Mesh.of(screen);
    Optional<Fine> fine = FineOnMesh.fine(separation, policy);
    Optional<Length> detail =
        fine.isPresent() ? fine.get().line().map(Finest::width) : separation.detail();
    if (detail.isEmpty() || !mesh.canBeWoven()) {
      return Optional.empty();
    }
    Limit wanted = policy.screens().detailOpenings();
    Length doubt = fine.map(Fine::point).orElse(new Length(0));
    Length least = new Length(Math.max(0, detail.get().mm() - doubt.mm()));
    return Optional.of(
        new DetailOnMesh(
            design.name(),
            separation.number(),
            screen.name(),
            detail.get(),
            fine.flatMap(Fine::line),
            doubt,
            screen.mesh(),
            mesh.opening(),
            detail.get().mm() / mesh.opening().mm(),
            wanted,
            mesh.opening().times(wanted.amount()).plus(doubt),
            usual.holding(least, wanted.amount()),
            Mesh.finest(policy),
            finestHolds(policy).plus(doubt),
            separation.path().key(fine.isPresent() ? "artwork" : "detail"),
            screen.path()));
  }

  /** The finest detail that the finest mesh for paste on cloth holds, in hundredths of a mm. */
  static Length finestHolds(Policy policy) {
    double mm = Mesh.finest(policy).opening().mm() * policy.screens().detailOpenings().amount();
    // Up to what the words show, so that what they name does hold.
    return new Length(Math.ceil(mm * 100 - 1e-9) / 100);
  }

  /** True if it is finer than so many openings, whatever the doubt. */
  public boolean surelyFiner(double openings) {
    return detail.plus(doubt).finerThan(opening.mm() * openings);
  }

  /** True if it may be finer than so many openings. */
  public boolean perhapsFiner(double openings) {
    return detail.minus(doubt).finerThan(opening.mm() * openings);
  }

  /** True if it was measured on a film. */
  public boolean measured() {
    return doubt.mm() > 0;
  }

  @Override
  public Map<String, FilmPlace> onFilms() {
    return line.map(l -> Map.of("detail", l.place())).orElse(Map.of());
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.SCREEN, screenPath));
  }
}

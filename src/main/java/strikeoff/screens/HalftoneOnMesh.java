package strikeoff.screens;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.Screen;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.MeshCount;

/**
 * A film's halftone against the mesh of its screen.
 *
 * @param file the film's name, as the plan writes it
 * @param ruling how close its dots stand, in whole rows a cm: it is measured to a fiftieth
 * @param times how many threads of the mesh go on each row of dots
 * @param wanted how many should
 * @param finer the coarsest mesh that has so many
 * @param holds the closest dots that this mesh holds
 */
public record HalftoneOnMesh(
    String design,
    int separation,
    String screen,
    String file,
    MeshCount ruling,
    MeshCount mesh,
    double times,
    Limit wanted,
    MeshCount finer,
    MeshCount holds,
    PlanPath path,
    PlanPath screenPath)
    implements Evidence {

  /** Empty without a film that is a halftone. */
  static Optional<HalftoneOnMesh> of(
      Design design, Design.Separation separation, Screen screen, Policy policy) {
    Limit wanted = policy.artwork().meshOfRuling();
    return separation
        .artwork()
        .flatMap(Artwork::halftone)
        .map(MeshCount::told)
        .map(
            ruling ->
                new HalftoneOnMesh(
                    design.name(),
                    separation.number(),
                    screen.name(),
                    separation.artwork().map(Artwork::file).orElseThrow(),
                    ruling,
                    screen.mesh(),
                    screen.mesh().perCm() / ruling.perCm(),
                    wanted,
                    new MeshCount(Math.ceil(ruling.perCm() * wanted.amount())),
                    new MeshCount(Math.floor(screen.mesh().perCm() / wanted.amount())),
                    separation.path().key("artwork"),
                    screen.path()));
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.SCREEN, screenPath));
  }
}

package strikeoff.screens;

import java.util.List;
import java.util.Optional;
import strikeoff.plan.Design;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;

/**
 * The finest detail of a separation against the openings of its mesh.
 *
 * @param openings how many openings wide the detail is
 * @param holds the finest detail that the mesh holds
 * @param countNeeded coarsest mesh of the same thread that holds the detail
 */
public record DetailOnMesh(
    String design,
    int separation,
    String screen,
    Length detail,
    MeshCount mesh,
    Length opening,
    double openings,
    Length holds,
    MeshCount countNeeded,
    PlanPath path,
    PlanPath screenPath)
    implements Evidence {

  /** Empty if the plan names no detail, or the mesh has no openings. */
  static Optional<DetailOnMesh> of(
      Design design, Design.Separation separation, Screen screen, Policy policy) {
    Mesh mesh = Mesh.of(screen);
    if (separation.detail().isEmpty() || !mesh.canBeWoven()) {
      return Optional.empty();
    }
    double wanted = policy.limit("screens/detail-openings").amount();
    double detail = separation.detail().get().mm();
    return Optional.of(
        new DetailOnMesh(
            design.name(),
            separation.number(),
            screen.name(),
            separation.detail().get(),
            screen.mesh(),
            mesh.opening(),
            detail / mesh.opening().mm(),
            mesh.opening().times(wanted),
            new MeshCount(Math.ceil(10 / (detail / wanted + screen.thread().mm()))),
            separation.path().key("detail"),
            screen.path()));
  }

  @Override
  public List<Related> related() {
    return List.of(new Related("the screen", screenPath));
  }
}

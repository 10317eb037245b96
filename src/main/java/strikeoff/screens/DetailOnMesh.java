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
 * @param finest the finest mesh that paste for cloth goes through
 * @param finestHolds the finest detail that it holds
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
    MeshCount finest,
    Length finestHolds,
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
    Mesh finest = Mesh.finest(policy);
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
            finest.count(),
            finestHolds(policy),
            separation.path().key("detail"),
            screen.path()));
  }

  /** The finest detail that the finest mesh for paste on cloth holds, in hundredths of a mm. */
  static Length finestHolds(Policy policy) {
    double mm =
        Mesh.finest(policy).opening().mm() * policy.limit("screens/detail-openings").amount();
    // Up to what the words show, so that what they name does hold.
    return new Length(Math.ceil(mm * 100 - 1e-9) / 100);
  }

  /** True if the mesh that would hold it is too fine for paste on cloth. */
  public boolean beyondPaste() {
    return countNeeded.perCm() > finest.perCm() && detail.compareTo(finestHolds) < 0;
  }

  /** What to change, as an instruction without a full stop. */
  public String mending() {
    return beyondPaste()
        ? "No mesh does both: this detail needs "
            + countNeeded
            + ", and paste for cloth goes through "
            + finest
            + " at the finest; draw nothing finer than "
            + finestHolds
            + " and use a mesh of "
            + finest
        : "Use a mesh of about " + countNeeded + " or finer, or draw nothing finer than " + holds;
  }

  @Override
  public List<Related> related() {
    return List.of(new Related("the screen", screenPath));
  }
}

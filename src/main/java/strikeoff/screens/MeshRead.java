package strikeoff.screens;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.MeshCount;

/**
 * A mesh count as it was read, and what the same number would be by the other unit: centimetres and
 * inches are mixed up more often than any other two.
 *
 * @param perInch the count for each inch
 * @param coarsest the coarsest mesh for colour on cloth, by the policy
 * @param finest the finest mesh that is woven for printing, by the policy
 * @param meant the same number by the other unit, as one would write it; empty if that is no mesh
 *     for cloth either
 */
public record MeshRead(
    String screen,
    MeshCount count,
    double perInch,
    MeshCount coarsest,
    MeshCount finest,
    Optional<MeshCount> meant,
    PlanPath path)
    implements Evidence {

  private static final double CM_IN_INCH = 2.54;

  static MeshRead of(Screen screen, Policy policy) {
    double perCm = screen.mesh().perCm();
    double coarsest = policy.screens().coarsestMesh().perCm();
    double finest = policy.screens().finestWoven().perCm();
    boolean coarse = perCm < coarsest;
    double other = coarse ? perCm * CM_IN_INCH : perCm / CM_IN_INCH;
    Optional<MeshCount> meant =
        other < coarsest || other > finest ? Optional.empty() : Optional.of(new MeshCount(other));
    return new MeshRead(
        screen.name(),
        screen.mesh().told(),
        Math.rint(perCm * CM_IN_INCH),
        new MeshCount(coarsest),
        new MeshCount(finest),
        meant,
        screen.path().key("mesh"));
  }

  /** True if it is coarser than any mesh for cloth, false if it may be finer. */
  public boolean coarse() {
    return count.compareTo(coarsest) < 0;
  }
}

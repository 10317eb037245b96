package strikeoff.screens;

import java.util.Optional;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.MeshCount;
import strikeoff.units.Numbers;

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
    Optional<String> meant,
    PlanPath path)
    implements Evidence {

  private static final double CM_IN_INCH = 2.54;

  static MeshRead of(Screen screen, Policy policy) {
    double perCm = screen.mesh().perCm();
    double coarsest = policy.limit("screens/coarsest-mesh").amount();
    double finest = policy.limit("screens/finest-woven").amount();
    boolean coarse = perCm < coarsest;
    double other = coarse ? perCm * CM_IN_INCH : perCm / CM_IN_INCH;
    Optional<String> meant =
        other < coarsest || other > finest
            ? Optional.empty()
            : Optional.of(
                coarse
                    ? new MeshCount(other).text()
                    : Numbers.plain(perCm, 0) + "/in, which is " + new MeshCount(other).text());
    return new MeshRead(
        screen.name(),
        screen.mesh().told(),
        Math.rint(perCm * CM_IN_INCH),
        new MeshCount(coarsest),
        new MeshCount(finest),
        meant,
        screen.path().key("mesh"));
  }

  /** What to ask oneself, as an instruction without a full stop. */
  public String asking() {
    return meant.map(text -> "Is it " + text + "? ").orElse("")
        + "Read the label, or count the threads over a centimetre, and write `mesh` with its unit";
  }
}

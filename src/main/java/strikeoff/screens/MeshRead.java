package strikeoff.screens;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Numbers;
import strikeoff.units.UnitSystem;

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

  static MeshRead of(Screen screen, Policy policy, Measures units) {
    double perCm = screen.mesh().perCm();
    double coarsest = policy.screens().coarsestMesh().perCm();
    double finest = policy.screens().finestWoven().perCm();
    boolean coarse = perCm < coarsest;
    double other = coarse ? perCm * CM_IN_INCH : perCm / CM_IN_INCH;
    Optional<String> meant =
        other < coarsest || other > finest
            ? Optional.empty()
            : Optional.of(meant(perCm, coarse, new MeshCount(other), units));
    return new MeshRead(
        screen.name(),
        screen.mesh().told(),
        Math.rint(perCm * CM_IN_INCH),
        new MeshCount(coarsest),
        new MeshCount(finest),
        meant,
        screen.path().key("mesh"));
  }

  /** The number as it stands, by the unit that it was not written in. */
  private static String meant(double perCm, boolean perInch, MeshCount other, Measures units) {
    boolean metric = isMetric(units);
    String told = other.text(units);
    if (perInch == metric) {
      return told;
    }
    return perInch
        ? Numbers.plain(other.perCm(), 0) + "/cm, which is " + told
        : Numbers.plain(perCm, 0) + "/in, which is " + told;
  }

  private static boolean isMetric(Measures units) {
    return units.of(MeasureKind.MESH_COUNT) == UnitSystem.METRIC;
  }

  /** The count for each inch or centimetre, whichever it is not told in. */
  public String otherwise(Measures units) {
    return isMetric(units) ? Numbers.plain(perInch, 2) + "/in" : count.text(Measures.METRIC);
  }

  /** What to ask oneself, as an instruction without a full stop. */
  public String asking(Measures units) {
    return meant.map(text -> "Is it " + text + "? ").orElse("")
        + "Read the label, or count the threads over "
        + (isMetric(units) ? "a centimetre" : "an inch")
        + ", and write `mesh` with its unit";
  }
}

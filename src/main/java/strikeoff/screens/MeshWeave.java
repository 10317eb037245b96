package strikeoff.screens;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Range;
import strikeoff.units.Share;

/**
 * A screen's mesh as a weave: whether threads so thick can lie so close.
 *
 * @param pitch from thread to thread
 * @param opening free width between threads; zero or less if they can't be woven
 * @param threadShare thread as a share of the pitch
 * @param thickest half the pitch, which a plain weave's thread stays below
 * @param openArea openings as a share of the whole
 * @param volume theoretical volume, cm³/m²
 * @param finest the finest detail that it holds
 */
public record MeshWeave(
    String screen,
    MeshCount count,
    Length thread,
    Length pitch,
    Length opening,
    Share threadShare,
    Length thickest,
    Share openArea,
    Range volume,
    Length finest,
    PlanPath path)
    implements Evidence {

  static MeshWeave of(Screen screen, Policy policy) {
    Mesh mesh = Mesh.of(screen);
    return new MeshWeave(
        screen.name(),
        mesh.count(),
        mesh.thread(),
        mesh.pitch(),
        mesh.opening(),
        mesh.threadShare(),
        mesh.pitch().times(0.5),
        mesh.openArea(),
        mesh.theoreticalVolume(),
        mesh.opening().times(policy.screens().detailOpenings().amount()),
        screen.path().key("thread"));
  }

  /** Thread in micrometres, as meshes are sold. */
  public double threadMicrometres() {
    return thread.mm() * 1000;
  }

  /** Half the pitch in micrometres. */
  public double thickestMicrometres() {
    return thickest.mm() * 1000;
  }
}

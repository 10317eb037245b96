package strikeoff.screens;

import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Range;
import strikeoff.units.Share;

/**
 * A plain-woven mesh as its count and its thread make it. The formulas are those of weavers'
 * specification pages; catalogues give up to 3 points less open area and a tenth less opening,
 * since threads flatten where they cross. Twill weaves, with threads thicker than half the pitch,
 * lie outside the formulas.
 *
 * @param count threads per centimetre
 * @param thread diameter of one
 */
public record Mesh(MeshCount count, Length thread) {

  /**
   * Thickness of a plain weave in thread diameters. Two would be threads that stay round where they
   * cross; a trade article of June 2009 and a weaver's page show 1.475 to 1.575.
   */
  public static final Range THREADS_THICK = new Range(1.45, 1.5, 1.6);

  /**
   * @throws IllegalArgumentException unless count and thread are above zero
   */
  public Mesh {
    if (!(count.perCm() > 0) || !(thread.mm() > 0)) {
      throw new IllegalArgumentException("no mesh: " + count + ", thread " + thread);
    }
  }

  public static Mesh of(Screen screen) {
    return new Mesh(screen.mesh(), screen.thread());
  }

  /** The finest mesh that paste for cloth goes through, with the usual thread of such a count. */
  static Mesh finest(Policy policy) {
    double count = policy.screens().finestMesh().perCm();
    Length thread = policy.screens().finestThread();
    return new Mesh(new MeshCount(count), thread);
  }

  /** From the middle of one thread to the middle of the next. */
  public Length pitch() {
    return new Length(10 / count.perCm());
  }

  /** Free width between two threads; zero or less if threads so thick can't lie so close. */
  public Length opening() {
    return pitch().minus(thread);
  }

  public boolean canBeWoven() {
    return opening().mm() > 0;
  }

  /** Thread as a share of the pitch; a plain weave stays below one half. */
  public Share threadShare() {
    return new Share(thread.mm() / pitch().mm());
  }

  /** Openings as a share of the whole area; zero for a mesh that can't be woven. */
  public Share openArea() {
    double side = Math.max(0, opening().mm()) / pitch().mm();
    return new Share(side * side);
  }

  /** Thickness of the woven mesh, mm. */
  public Range thicknessMm() {
    return THREADS_THICK.times(thread.mm());
  }

  /** Volume that the openings hold, cm³/m²: open area times thickness. */
  public Range theoreticalVolume() {
    return thicknessMm().times(1000 * openArea().fraction());
  }
}

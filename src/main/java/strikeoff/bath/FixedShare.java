package strikeoff.bath;

import strikeoff.colour.Lab;
import strikeoff.plan.Colour;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Range;

/**
 * How much of one paste's dye is fixed when the cloth is rinsed, as a share of what can be fixed.
 *
 * @param group its reactive group; of several the one of which least is fixed
 * @param deep true for a deep shade, which needs longer
 * @param share first order in time: what each step gives adds up
 * @param alive the share of its dye that still lived at its last print; 1 for a paste within its
 *     life
 * @param full its colour on this ground if all of it is fixed
 * @param now its colour with the likeliest share of dye that lives
 * @param last the same at its last print
 */
public record FixedShare(
    String paste,
    ReactiveGroup group,
    boolean deep,
    Range share,
    Range alive,
    Colour full,
    Colour now,
    Colour last) {

  /** All but what nobody can weigh. */
  private static final double MOST = 1 - 1e-12;

  /** How far the colour is off for what stays loose, as a CIELAB difference. */
  public double change() {
    return Lab.of(full).distance(Lab.of(now));
  }

  /**
   * The share that is as likely missed as passed. Where sources give only a least time, as for
   * works' steam, the likeliest share lies at the end of its range and not in its middle. The time
   * that a dye needs is known as a factor, so its middle is that of its logarithm; what is left
   * unfixed falls by equal parts in equal times, so the part of the time that a step gives is as
   * the logarithm of that.
   */
  public double median() {
    double least = -Math.log1p(-Math.min(MOST, share.low()));
    double most = -Math.log1p(-Math.min(MOST, share.high()));
    return -Math.expm1(-Math.sqrt(least * most));
  }

  /** True if its paste was past its life at its last print. */
  public boolean aged() {
    return alive.low() < 1;
  }
}

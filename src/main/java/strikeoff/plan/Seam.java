package strikeoff.plan;

import strikeoff.document.PlanPath;
import strikeoff.units.Length;

/**
 * A seam across the length of the cloth.
 *
 * @param at where along the length, x
 * @param allowance width of the seam allowance on each side
 * @param padded whether the ridge is levelled by padding when printed over
 * @param sewnBefore true if it is sewn and pressed before the print day; else a sew step of the run
 *     sews it
 */
public record Seam(
    String name, Length at, Length allowance, boolean padded, boolean sewnBefore, PlanPath path) {}

package strikeoff.layout;

import java.util.List;
import java.util.Map;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Cloth;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;
import strikeoff.units.Pair;
import strikeoff.units.Share;

/**
 * What becomes of a cloth that was not washed before it was printed, and of what is printed on it.
 *
 * @param shrinkLength expected loss of length in the first wash
 * @param shrinkWidth expected loss of width
 * @param finishedLength length after it
 * @param finishedWidth width after it
 * @param lengthToCut length that finishes at what the plan gives
 * @param widthToCut width that finishes at what the plan gives
 * @param size the size that the plan gives, without its allowances, as a plan writes it
 * @param roundPitches by arrangement, what to write beside the new length so that a tube still
 *     closes
 * @param printedPitches by arrangement, the pitch of what shrinks with the cloth
 * @param garment true for a cloth closed into a tube: a measure of somebody's body
 * @param asked true if the plan asks for a finished size, which is then judged instead
 */
public record Shrinkage(
    Length length,
    Length width,
    Share shrinkLength,
    Share shrinkWidth,
    Length finishedLength,
    Length finishedWidth,
    Length lengthToCut,
    Length widthToCut,
    String size,
    Map<String, Length> roundPitches,
    Map<String, Length> printedPitches,
    boolean garment,
    boolean asked,
    PlanPath path)
    implements Evidence {

  static List<Shrinkage> of(PrintPlan plan) {
    Cloth cloth = plan.cloth();
    double keepsLength = 1 - cloth.shrinkLength().fraction();
    double keepsWidth = 1 - cloth.shrinkWidth().fraction();
    boolean shrinks = keepsLength < 1 || keepsWidth < 1;
    boolean washed = cloth.washed() || plan.washedFirst();
    if (washed || !shrinks || !(keepsLength > 0) || !(keepsWidth > 0)) {
      return List.of();
    }
    Pair size =
        new Pair(
            cloth.length().minus(FinishedSize.cutOffLength(cloth)),
            cloth.width().minus(FinishedSize.cutOffWidth(cloth)));
    Pair cut = FinishedSize.toCut(cloth, size, plan.measures());
    return List.of(
        new Shrinkage(
            cloth.length(),
            cloth.width(),
            cloth.shrinkLength(),
            cloth.shrinkWidth(),
            cloth.length().times(keepsLength),
            cloth.width().times(keepsWidth),
            cut.along(),
            cut.across(),
            size.along().writtenText(plan.measures())
                + " x "
                + size.across().writtenText(plan.measures()),
            FinishedSize.round(plan, cut.along()),
            FinishedSize.pitches(plan),
            cloth.closed(),
            cloth.finished().isPresent(),
            cloth.path().key("washed")));
  }
}

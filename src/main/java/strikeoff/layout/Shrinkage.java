package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Basis;
import strikeoff.plan.Cloth;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;
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
 * @param pitches each series' and border's pitch with its finished value
 * @param garment true for a cloth closed into a tube: a measure of somebody's body
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
    String pitches,
    boolean garment,
    PlanPath path)
    implements Evidence {

  /** What finished sizes rest on. */
  public static final Basis BASIS =
      new Basis(
          "Finished sizes",
          "Length and width lose their stated or usual shares in the first wash, evenly over the"
              + " cloth.",
          "Cloth that was not washed before. Shops' cloths differ by 2 % and more: wash a measured"
              + " square.",
          "a trade table of 2018; ISO 5077 for the sign and the measure");

  private static final int MOST_PITCHES = 4;

  static List<Shrinkage> of(PrintPlan plan) {
    Cloth cloth = plan.cloth();
    double keepsLength = 1 - cloth.shrinkLength().fraction();
    double keepsWidth = 1 - cloth.shrinkWidth().fraction();
    boolean shrinks = keepsLength < 1 || keepsWidth < 1;
    if (cloth.washed() || !shrinks || !(keepsLength > 0) || !(keepsWidth > 0)) {
      return List.of();
    }
    return List.of(
        new Shrinkage(
            cloth.length(),
            cloth.width(),
            cloth.shrinkLength(),
            cloth.shrinkWidth(),
            cloth.length().times(keepsLength),
            cloth.width().times(keepsWidth),
            cloth.length().times(1 / keepsLength),
            cloth.width().times(1 / keepsWidth),
            pitches(plan, keepsLength),
            cloth.closed(),
            cloth.path().key("washed")));
  }

  private static String pitches(PrintPlan plan, double keeps) {
    List<String> said = new ArrayList<>();
    for (Arrangement arrangement : plan.arrangements().values()) {
      Length pitch = null;
      if (arrangement instanceof Arrangement.Series series && series.count() > 1) {
        pitch = series.pitch();
      } else if (arrangement instanceof Arrangement.Border border) {
        pitch = border.repeat();
      }
      if (pitch != null && said.size() < MOST_PITCHES) {
        said.add(
            "the pitch of "
                + arrangement.name()
                + " from "
                + pitch.text()
                + " to "
                + pitch.times(keeps).text());
      }
    }
    return said.isEmpty() ? "" : "; " + String.join(", ", said);
  }
}

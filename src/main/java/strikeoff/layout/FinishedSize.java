package strikeoff.layout;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Cloth;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Pair;
import strikeoff.units.Share;

/**
 * The size that the plan asks for, against what is left of the cloth when its allowances are sewn
 * or cut away and it has been washed.
 *
 * @param leftLength what is left of the length
 * @param leftWidth what is left of the width
 * @param lacks the larger of what is missing in length and in width; zero if nothing is
 * @param cutOff what allowances take of length and width
 * @param shrinkLength what the first wash takes of the length
 * @param shrinkWidth likewise the width
 * @param lengthToCut length that leaves what is asked, never less than the cloth has
 * @param widthToCut likewise the width
 * @param pitches by arrangement, what to write beside a new length so that a tube still closes
 */
public record FinishedSize(
    Length askedLength,
    Length askedWidth,
    Length length,
    Length width,
    Length leftLength,
    Length leftWidth,
    Length lacks,
    Pair cutOff,
    Share shrinkLength,
    Share shrinkWidth,
    Length lengthToCut,
    Length widthToCut,
    Map<String, Length> pitches,
    PlanPath path)
    implements Evidence {

  /** Empty unless the plan asks for a finished size. */
  static Optional<FinishedSize> of(PrintPlan plan) {
    return plan.cloth().finished().map(asked -> of(plan, plan.cloth(), asked));
  }

  private static FinishedSize of(PrintPlan plan, Cloth cloth, Pair asked) {
    Length leftLength = cloth.length().minus(cutOffLength(cloth)).times(keepsLength(cloth));
    Length leftWidth = cloth.width().minus(cutOffWidth(cloth)).times(keepsWidth(cloth));
    Pair cut = toCut(cloth, asked, plan.measures());
    Length length = longer(cut.along(), cloth.length());
    return new FinishedSize(
        asked.along(),
        asked.across(),
        cloth.length(),
        cloth.width(),
        leftLength,
        leftWidth,
        new Length(
            Math.max(
                0,
                Math.max(
                    asked.along().mm() - leftLength.mm(), asked.across().mm() - leftWidth.mm()))),
        new Pair(cutOffLength(cloth), cutOffWidth(cloth)),
        cloth.shrinkLength(),
        cloth.shrinkWidth(),
        length,
        longer(cut.across(), cloth.width()),
        length.mm() > cloth.length().mm() ? round(plan, length) : Map.of(),
        cloth.path().key("finished"));
  }

  /** What must be cut so that a size is left of it, up to whole steps. */
  static Pair toCut(Cloth cloth, Pair size, Measures units) {
    return new Pair(
        whole(size.along().times(1 / keepsLength(cloth)).plus(cutOffLength(cloth)), units),
        whole(size.across().times(1 / keepsWidth(cloth)).plus(cutOffWidth(cloth)), units));
  }

  static Length cutOffLength(Cloth cloth) {
    return cloth.startAllowance().plus(cloth.endAllowance());
  }

  static Length cutOffWidth(Cloth cloth) {
    return cloth.nearAllowance().plus(cloth.farAllowance());
  }

  private static double keepsLength(Cloth cloth) {
    return 1 - cloth.shrinkLength().fraction();
  }

  private static double keepsWidth(Cloth cloth) {
    return 1 - cloth.shrinkWidth().fraction();
  }

  private static Length whole(Length length, Measures units) {
    double step = Length.measuredTo(units).mm();
    return new Length(Math.ceil((length.mm() - 1e-6) / step) * step);
  }

  private static Length longer(Length one, Length other) {
    return one.compareTo(other) > 0 ? one : other;
  }

  /** What goes round a tube takes its pitch from the new length; empty for an open cloth. */
  static Map<String, Length> round(PrintPlan plan, Length newLength) {
    if (!plan.cloth().closed()) {
      return Map.of();
    }
    double longer = newLength.mm() / plan.cloth().length().mm();
    Map<String, Length> pitches = pitches(plan);
    pitches.replaceAll((name, pitch) -> pitch.times(longer));
    return pitches;
  }

  /** Pitch of each series and repeat of each border, by name. */
  static Map<String, Length> pitches(PrintPlan plan) {
    Map<String, Length> pitches = new LinkedHashMap<>();
    for (Arrangement arrangement : plan.arrangements().values()) {
      if (arrangement instanceof Arrangement.Series series && series.count() > 1) {
        pitches.put(series.name(), series.pitch());
      } else if (arrangement instanceof Arrangement.Border border) {
        pitches.put(border.name(), border.repeat());
      }
    }
    return pitches;
  }
}

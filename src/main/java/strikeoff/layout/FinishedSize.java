package strikeoff.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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

/**
 * The size that the plan asks for, against what is left of the cloth when its allowances are sewn
 * or cut away and it has been washed.
 *
 * @param leftLength what is left of the length
 * @param leftWidth what is left of the width
 * @param lacks the larger of what is missing in length and in width; zero if nothing is
 * @param taken what takes it, in words
 * @param lengthToCut length that leaves what is asked, never less than the cloth has
 * @param widthToCut likewise the width
 * @param round what to write beside the new length so that a tube still closes; empty if open
 */
public record FinishedSize(
    Length askedLength,
    Length askedWidth,
    Length length,
    Length width,
    Length leftLength,
    Length leftWidth,
    Length lacks,
    String taken,
    Length lengthToCut,
    Length widthToCut,
    String round,
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
        taken(cloth, plan.measures()),
        length,
        longer(cut.across(), cloth.width()),
        length.mm() > cloth.length().mm() ? round(plan, length) : "",
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

  private static String taken(Cloth cloth, Measures units) {
    List<String> takers = new ArrayList<>();
    if (cutOffLength(cloth).mm() > 0 || cutOffWidth(cloth).mm() > 0) {
      takers.add(
          "the allowances take "
              + cutOffLength(cloth).text(units)
              + " by "
              + cutOffWidth(cloth).text(units)
              + " of it");
    }
    if (keepsLength(cloth) < 1 || keepsWidth(cloth) < 1) {
      takers.add(
          "the first wash takes "
              + cloth.shrinkLength().text()
              + " of the length and "
              + cloth.shrinkWidth().text()
              + " of the width");
    }
    return takers.isEmpty() ? "" : ": " + String.join(", and ", takers);
  }

  /** What goes round a tube takes its pitch from the new length; empty for an open cloth. */
  static String round(PrintPlan plan, Length newLength) {
    if (!plan.cloth().closed()) {
      return "";
    }
    double longer = newLength.mm() / plan.cloth().length().mm();
    List<String> said = new ArrayList<>();
    pitches(plan)
        .forEach(
            (name, pitch) ->
                said.add(pitch.times(longer).fineText(plan.measures()) + " for " + name));
    return said.isEmpty() ? "" : ", with a pitch of " + String.join(", ", said);
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

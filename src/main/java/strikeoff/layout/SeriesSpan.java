package strikeoff.layout;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.units.Length;

/**
 * How far a series reaches along the cloth.
 *
 * @param count copies
 * @param pitch from one copy to the next
 * @param designLength length of the design as it lies
 * @param span from the first copy's beginning to the last one's end: (count − 1) · pitch + length
 * @param gap free length between neighbours, along the cloth where they come nearest; below zero if
 *     they overlap
 * @param end where the last copy ends, x
 */
public record SeriesSpan(
    String arrangement,
    int count,
    Length pitch,
    Length designLength,
    Length span,
    Length gap,
    Length end,
    PlanPath path)
    implements Evidence {

  static SeriesSpan of(Arrangement.Series series, Template template) {
    double length = template.bounds().getWidth();
    double span = (series.count() - 1) * series.pitch().mm() + length;
    return new SeriesSpan(
        series.name(),
        series.count(),
        series.pitch(),
        new Length(length),
        new Length(span),
        apart(series.pitch().mm() - template.parts()),
        new Length(series.start().mm() + span),
        series.path());
  }

  private static Length apart(double mm) {
    return new Length(Math.abs(mm) < Length.TOLERANCE ? 0 : mm);
  }
}

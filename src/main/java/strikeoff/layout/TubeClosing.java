package strikeoff.layout;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.units.Length;

/**
 * A series that goes round a closed cloth: it closes if circumference = count · pitch, so that the
 * gap across the seam equals the others.
 *
 * @param count copies in the series, two at least
 * @param misfit circumference less count · pitch; below zero if the last copy's pitch reaches past
 *     the first copy
 * @param seamGap free length between last and first copy; below zero if they overlap
 * @param gap free length between all others
 * @param closingPitch pitch with which as many copies close
 * @param roomFor how many copies more the tube holds at this pitch
 * @param fullCount copies that the tube holds at this pitch, one at least
 * @param fullPitch pitch with which that many close
 */
public record TubeClosing(
    String arrangement,
    int count,
    Length pitch,
    Length circumference,
    Length misfit,
    Length seamGap,
    Length gap,
    Length closingPitch,
    int roomFor,
    int fullCount,
    Length fullPitch,
    PlanPath path)
    implements Evidence {

  static TubeClosing of(Arrangement.Series series, Template template, Tube tube) {
    double pitch = series.pitch().mm();
    double round = tube.circumference();
    double misfit = round - series.count() * pitch;
    double gap = pitch - template.parts();
    int full = (int) Math.max(1, Math.floor((round + Length.TOLERANCE) / pitch));
    return new TubeClosing(
        series.name(),
        series.count(),
        series.pitch(),
        new Length(round),
        new Length(Math.abs(misfit) < Length.TOLERANCE ? 0 : misfit),
        new Length(gap + misfit),
        new Length(gap),
        new Length(round / series.count()),
        Math.max(0, full - series.count()),
        full,
        new Length(round / full),
        series.path().key("pitch"));
  }

  /** Size of the misfit, whether too long or too short. */
  public Length misfitSize() {
    return new Length(Math.abs(misfit.mm()));
  }

  /** Length that the series takes with all its gaps. */
  public Length taken() {
    return pitch.times(count);
  }
}

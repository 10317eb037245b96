package strikeoff.layout;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.units.Length;

/**
 * A fill that goes all round a closed cloth: its columns have to close like a series, and a
 * half-drop's only close in pairs.
 *
 * @param columns whole columns that the circumference holds, one at least
 * @param misfit circumference less columns · pitch
 * @param halfDrop true for a half-drop
 * @param designLength length of the design as it lies
 */
public record FillRound(
    String arrangement,
    int columns,
    Length pitch,
    Length circumference,
    Length misfit,
    boolean halfDrop,
    Length designLength,
    PlanPath path)
    implements Evidence {

  static boolean goesRound(Arrangement.Fill fill, Tube tube) {
    return tube.closed()
        && fill.to().mm() - fill.from().mm() >= tube.circumference() - Length.TOLERANCE;
  }

  static FillRound of(Arrangement.Fill fill, double designLength, Tube tube) {
    double pitch = fill.pitchLength().mm();
    double round = tube.circumference();
    int columns = (int) Math.max(1, Math.floor((round + Length.TOLERANCE) / pitch));
    double misfit = round - columns * pitch;
    return new FillRound(
        fill.name(),
        columns,
        fill.pitchLength(),
        new Length(round),
        new Length(Math.abs(misfit) < Length.TOLERANCE ? 0 : misfit),
        fill.lattice() == Arrangement.Lattice.HALF_DROP,
        new Length(designLength),
        fill.path().key("pitch"));
  }

  public Length misfitSize() {
    return new Length(Math.abs(misfit.mm()));
  }

  /** Whether so many columns have room for the design. */
  public boolean parts(int count) {
    return count > 0 && circumference.mm() / count >= designLength.mm() - Length.TOLERANCE;
  }

  /** True if it would close, were it not a half-drop of an odd number of columns. */
  public boolean oddHalfDrop() {
    return halfDrop && columns % 2 == 1;
  }
}

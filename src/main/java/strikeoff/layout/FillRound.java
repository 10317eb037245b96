package strikeoff.layout;

import strikeoff.plan.Arrangement;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Length;

/**
 * A fill that goes all round a closed cloth: its columns have to close like a series, and a
 * half-drop's only close in pairs.
 *
 * @param columns whole columns that the circumference holds, one at least
 * @param misfit circumference less columns · pitch
 * @param halfDrop true for a half-drop
 */
public record FillRound(
    String arrangement,
    int columns,
    Length pitch,
    Length circumference,
    Length misfit,
    boolean halfDrop,
    PlanPath path)
    implements Evidence {

  static boolean goesRound(Arrangement.Fill fill, Tube tube) {
    return tube.closed()
        && fill.to().mm() - fill.from().mm() >= tube.circumference() - Tube.ROUNDING;
  }

  static FillRound of(Arrangement.Fill fill, Tube tube) {
    double pitch = fill.pitchLength().mm();
    double round = tube.circumference();
    int columns = (int) Math.max(1, Math.floor((round + Tube.ROUNDING) / pitch));
    double misfit = round - columns * pitch;
    return new FillRound(
        fill.name(),
        columns,
        fill.pitchLength(),
        new Length(round),
        new Length(Math.abs(misfit) < Tube.ROUNDING ? 0 : misfit),
        fill.lattice() == Arrangement.Lattice.HALF_DROP,
        fill.path().key("pitch"));
  }

  public Length misfitSize() {
    return new Length(Math.abs(misfit.mm()));
  }

  /** The pitches that close, each with its number of columns; a half-drop's are even. */
  public String closings() {
    boolean pairs = halfDrop;
    int fewer = pairs ? columns - columns % 2 : columns;
    int more = fewer + (pairs ? 2 : 1);
    String last = closing(more);
    return fewer == 0 ? last : closing(fewer) + " or " + last;
  }

  private String closing(int count) {
    return new Length(circumference.mm() / count).fineText() + " for " + count + " columns";
  }

  /** True if it would close, were it not a half-drop of an odd number of columns. */
  public boolean oddHalfDrop() {
    return halfDrop && columns % 2 == 1;
  }
}

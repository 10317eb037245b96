package strikeoff.layout;

import java.util.List;
import java.util.stream.IntStream;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.units.Length;
import strikeoff.units.Measures;

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

  /**
   * The pitches that close, each with its number of columns, as an instruction without a full stop;
   * a half-drop's numbers are even, and no pitch is shorter than the design.
   */
  public String closings(Measures units) {
    boolean pairs = halfDrop;
    int fewer = pairs ? columns - columns % 2 : columns;
    int more = fewer + (pairs ? 2 : 1);
    List<String> said =
        IntStream.of(fewer, more).filter(this::parts).mapToObj(n -> closing(n, units)).toList();
    return said.isEmpty()
        ? "Make the cloth longer, or the design shorter: no pitch closes"
        : "Set the pitch along the length to " + String.join(" or ", said);
  }

  private boolean parts(int count) {
    return count > 0 && circumference.mm() / count >= designLength.mm() - Length.TOLERANCE;
  }

  private String closing(int count, Measures units) {
    return new Length(circumference.mm() / count).fineText(units)
        + " for "
        + (count == 1 ? "1 column" : count + " columns");
  }

  /** True if it would close, were it not a half-drop of an odd number of columns. */
  public boolean oddHalfDrop() {
    return halfDrop && columns % 2 == 1;
  }
}

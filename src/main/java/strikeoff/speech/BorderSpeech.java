package strikeoff.speech;

import java.util.Optional;
import strikeoff.layout.BorderRepeats;
import strikeoff.layout.RoundTwice;
import strikeoff.layout.TubeClosing;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** Says how borders and rows close round a cloth or a tube. */
public final class BorderSpeech {

  private BorderSpeech() {}

  /** Whether the series leaves the tube open or runs into itself. */
  public static String misfitKind(TubeClosing closing) {
    return closing.misfit().mm() < 0 ? "too long" : "too short";
  }

  /** The gaps across the seam and elsewhere, as a sentence. */
  public static String gapsText(TubeClosing closing, Measures units) {
    return "Across the seam "
        + (closing.seamGap().mm() < 0
            ? "the last copy would lie "
                + closing.seamGap().times(-1).text(units)
                + " over the first"
            : "the gap would be " + closing.seamGap().text(units))
        + "; the other copies "
        + (closing.gap().mm() < 0
            ? "overlap by " + closing.gap().times(-1).text(units)
            : "lie " + closing.gap().text(units) + " apart")
        + ".";
  }

  /** What to change, as an instruction without a full stop; no pitch is shorter than the design. */
  public static String closing(TubeClosing closing, Measures units) {
    boolean parts =
        closing.closingPitch().mm() >= closing.pitch().mm() - closing.gap().mm() - Length.TOLERANCE;
    return parts
        ? "Set the pitch to " + closing.closingPitch().fineText(units)
        : "Print " + closing.fullCount() + " at a pitch of " + closing.fullPitch().fineText(units);
  }

  /** Where it is to end, exact enough to be written into the plan. */
  public static String endText(RoundTwice twice, Measures units) {
    return twice.end().writtenText(units);
  }

  /**
   * What to change, as an instruction without a full stop; no repeat is shorter than the design.
   */
  public static String closing(BorderRepeats repeats, Measures units) {
    if (repeats.repeats() == 0) {
      String least = repeats.designLength().roundedUp(units);
      return "Its motif takes "
          + least
          + ": let it run so far at least, with `repeat: "
          + least
          + "`";
    }
    return ends(repeats, units)
            .map(to -> "Let it end at `to: " + to + "`, after its whole repeats. ")
            .orElse("")
        + "Write `repeat: "
        + repeats.longer().fineText(units)
        + "` for "
        + (repeats.repeats() == 1 ? "one repeat" : repeats.repeats() + " repeats")
        + ifShorter(repeats, units)
            .map(s -> " or `repeat: " + s + "` for " + repeats.oneMore())
            .orElse("")
        + (repeats.wholeTo().isPresent()
            ? " if its ends have to stay"
            : ", or let the border end elsewhere");
  }

  /** Where its whole repeats end, to be written. */
  public static Optional<String> ends(BorderRepeats repeats, Measures units) {
    return repeats.wholeTo().map(to -> to.fineText(units));
  }

  /** The longer repeat, to be written; empty if the run holds none. */
  public static Optional<String> ifLonger(BorderRepeats repeats, Measures units) {
    return repeats.repeats() == 0
        ? Optional.empty()
        : Optional.of(repeats.longer().fineText(units));
  }

  /** The shorter repeat, to be written; empty if the design is longer. */
  public static Optional<String> ifShorter(BorderRepeats repeats, Measures units) {
    boolean fits =
        repeats.repeats() > 0
            && repeats.shorter().mm() >= repeats.designLength().mm() - Length.TOLERANCE;
    return fits ? Optional.of(repeats.shorter().fineText(units)) : Optional.empty();
  }
}

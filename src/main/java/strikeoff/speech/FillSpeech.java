package strikeoff.speech;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import strikeoff.layout.AnchorCircle;
import strikeoff.layout.Anchoring;
import strikeoff.layout.FillFit;
import strikeoff.layout.FillRound;
import strikeoff.layout.NeighbourGap;
import strikeoff.layout.Overlap;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** Says how fills, anchored copies and neighbours find room. */
public final class FillSpeech {

  private FillSpeech() {}

  /** How copies lie to each other, in words. */
  public static String apartText(NeighbourGap gap, Measures units) {
    return gap.gap().mm() < 0
        ? "run " + gap.gap().times(-1).text(units) + " into each other"
        : "lie " + gap.gap().text(units) + " apart";
  }

  /** What to print first, in words. */
  public static String everyText(NeighbourGap gap) {
    return switch (gap.everyNth()) {
      case 1 -> "every one";
      case 2 -> "every other one";
      case 3 -> "every third one";
      default -> "every " + gap.everyNth() + "th one";
    };
  }

  /** The pitch at which the rectangle holds as many as expected, to be written. */
  public static Optional<String> closerPitch(FillFit fit, Measures units) {
    return fit.closer().map(p -> p.written(units));
  }

  /** What room there is for as many as expected, as a sentence. */
  public static String enoughText(FillFit fit, Measures units) {
    return fit.enoughWith().mm() < 0
        ? "The others would lie on " + String.join(" or ", fit.around()) + "."
        : "For "
            + fit.expected()
            + ", come closer: write `clear: "
            + fit.enoughWith().roundedDown(units)
            + "`.";
  }

  /** What makes room where nothing fits, as an instruction without a full stop. */
  public static String roomText(FillFit fit, Measures units) {
    return fit.candidates() == 0
        ? "Enlarge the rectangle until it holds one repeat"
        : "Enlarge the rectangle, or keep less than " + fit.clear().text(units) + " clear";
  }

  /** What to count on, as an instruction without a full stop. */
  public static String countingText(FillFit fit, Measures units) {
    String fewer =
        fit.fitted() == 0
            ? "Leave " + fit.arrangement() + " out"
            : "Write `count: " + fit.fitted() + "`";
    return fewer
        + closerPitch(fit, units)
            .map(
                pitch ->
                    ", or write `pitch: "
                        + pitch
                        + "`, with which its rectangle holds "
                        + fit.expected())
            .orElse(", or enlarge its rectangle");
  }

  /** Why nothing fits, in words; of no meaning if something does. */
  public static String noRoomText(FillFit fit, Measures units) {
    return fit.candidates() == 0
        ? "its rectangle is too small for one repeat"
        : "every one of the "
            + fit.candidates()
            + " repeats of its rectangle comes closer than "
            + fit.clear().text(units)
            + " to "
            + String.join(" or ", fit.around());
  }

  /** How many pairs there are altogether, to end the sentence; nothing if it is this one only. */
  public static String pairsText(Overlap overlap) {
    return overlap.pairs() == 1 && !overlap.moreThanPairs()
        ? ""
        : "; in all, "
            + (overlap.moreThanPairs() ? "more than " : "")
            + (overlap.pairs() == 1 ? "1 pair" : overlap.pairs() + " pairs")
            + " of "
            + overlap.arrangement()
            + " and "
            + overlap.other()
            + " overlap";
  }

  /** What to change, as an instruction without a full stop. */
  public static String mending(Anchoring anchoring) {
    String room = "ake room for more of " + anchoring.anchor();
    return anchoring.anchors() == 0
        ? "M" + room
        : "Write `which: 1"
            + (anchoring.anchors() == 1 ? "" : "-" + anchoring.anchors())
            + "` at most, or m"
            + room;
  }

  /** The numbers beyond them, as people say them. */
  public static String beyondText(Anchoring anchoring) {
    return Numbering.brief(anchoring.beyond());
  }

  /** The ring as people say it: {@code eye, shells, eye}. */
  public static String ring(AnchorCircle circle) {
    return String.join(", ", circle.members()) + ", " + circle.members().get(0);
  }

  public static String first(AnchorCircle circle) {
    return circle.members().get(0);
  }

  /**
   * The pitches that close, each with its number of columns, as an instruction without a full stop;
   * a half-drop's numbers are even, and no pitch is shorter than the design.
   */
  public static String closings(FillRound round, Measures units) {
    boolean pairs = round.halfDrop();
    int fewer = pairs ? round.columns() - round.columns() % 2 : round.columns();
    int more = fewer + (pairs ? 2 : 1);
    List<String> said =
        IntStream.of(fewer, more)
            .filter(round::parts)
            .mapToObj(n -> closing(round, n, units))
            .toList();
    return said.isEmpty()
        ? "Make the cloth longer, or the design shorter: no pitch closes"
        : "Set the pitch along the length to " + String.join(" or ", said);
  }

  public static String closing(FillRound round, int count, Measures units) {
    return new Length(round.circumference().mm() / count).fineText(units)
        + " for "
        + (count == 1 ? "1 column" : count + " columns");
  }
}

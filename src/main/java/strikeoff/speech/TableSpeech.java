package strikeoff.speech;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * Says where frames and designs come to lie, as tapes on the table show it.
 *
 * @param railed true if stops are set along a rail
 * @param fits false for a cloth wider than the table: it is moved across for each frame, so that
 *     across only its own near edge counts
 */
public record TableSpeech(Measures units, boolean railed, boolean fits) {

  /** Which tapes a place is read on. */
  public enum Tape {
    ALONG,
    ACROSS,
    BOTH
  }

  public static TableSpeech of(PrintPlan plan) {
    return new TableSpeech(
        plan.measures(),
        plan.table().railed(),
        !plan.cloth().width().above(plan.table().width().mm()));
  }

  /**
   * What is measured from where, to stand before the places.
   *
   * @param askew true if of each only its middle is told
   * @param row true if all lie alike across, which {@link #across} tells
   */
  public String measured(boolean askew, boolean row) {
    String what =
        askew
            ? "Middle of the design"
            : "Frame's edge"
                + (railed ? ", for the stop" : "")
                + " · design's corner nearest start and near edge";
    return what
        + (inches() ? ", from " : ", cm from ")
        + "the table's start"
        + (row ? ":" : (inches() ? " and from " : "/") + near() + ":");
  }

  /** How all of a row lie. */
  public String across(String places) {
    return "Across, "
        + (inches() ? "" : "cm ")
        + "from the "
        + (fits ? "table" : "cloth")
        + "'s near edge: "
        + places
        + ".";
  }

  private String near() {
    return fits ? "its near edge" : "the cloth's near edge";
  }

  /** A place by the tapes. */
  public String at(Length along, Length across, Tape tape) {
    // A slash or a bare number beside fractions of an inch would read as another fraction.
    String unit = inches() ? " in" : "";
    return switch (tape) {
      case ALONG -> along.inColumn(units) + unit;
      case ACROSS -> across.inColumn(units) + unit;
      case BOTH ->
          along.inColumn(units)
              + (inches() ? " in along, " : "/")
              + across.inColumn(units)
              + (inches() ? " in across" : "");
    };
  }

  /** Of one placement the frame's places, by screens where they differ, and the design's. */
  public String of(Map<String, Set<String>> frames, String corner) {
    return frames.entrySet().stream()
            .map(
                f ->
                    f.getKey()
                        + (frames.size() == 1 ? "" : " (" + String.join(", ", f.getValue()) + ")"))
            .collect(Collectors.joining(", "))
        + " · "
        + corner;
  }

  private boolean inches() {
    return Length.columnUnit(units).equals("in");
  }
}

package strikeoff.speech;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.day.ClothLies;
import strikeoff.day.Moment;
import strikeoff.day.Resource;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.plan.Table;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.Span;

/** Says at the table what a plan leaves to whoever knows the trade. */
public final class SheetSpeech {

  /** More marks are told by the moves that need them alone. */
  private static final int MOST_MARKS = 8;

  private SheetSpeech() {}

  /**
   * A wait of its own, which begins with what moves the air.
   *
   * @param piece of the equipment; nothing if the air is left as it is
   * @param wait as a sentence
   */
  public static String moved(Optional<Resource> piece, String wait) {
    return piece.map(air -> Phrase.capital(air.name()) + " on. " + wait).orElse(wait);
  }

  /** The same at the end of another line, so that it is told when it begins. */
  public static String moved(Resource piece, String from, String wait) {
    return piece.name() + " on from " + from + ", " + wait + ", " + off(piece);
  }

  /** What becomes of it at the wait's end. */
  public static String off(Resource piece) {
    return "then " + piece.name() + " off";
  }

  /** Whether a mark is told when the cloth is laid; the others are, by the moves that need them. */
  public static boolean isTold(Length mark, List<Length> marks) {
    return marks.indexOf(mark) >= 0 && marks.indexOf(mark) < MOST_MARKS;
  }

  /** Marks that the cloth gets while it can still be measured, by which it is moved later. */
  public static String marks(List<Length> marks, Measures units) {
    List<String> first = marks.stream().limit(MOST_MARKS).map(mark -> mark.text(units)).toList();
    return "Mark its near edge now for the moves to come: "
        + Phrase.list(first)
        + " from its start"
        + (marks.size() > first.size() ? ", and where later moves say." : ".");
  }

  /**
   * What brings the cloth to where a move wants it.
   *
   * @param past loose widths before the mark, the nearest first
   * @param made when the cloth was laid and got the mark; empty if it has none yet
   */
  public static String mark(Length mark, List<Seam> past, Optional<Moment> made, Measures units) {
    String from =
        past.isEmpty()
            ? ""
            : ", "
                + mark.minus(past.get(0).at()).text(units)
                + " past "
                + past.get(0).name()
                + "'s seam line,";
    return "its mark of "
        + mark.text(units)
        + made.map(on -> ", made " + on.dayWhen() + (from.isEmpty() ? "," : "")).orElse("")
        + from
        + " comes to the table's start"
        + (made.isEmpty() ? "; make it before lifting" : "");
  }

  /**
   * How widths lie that are not sewn together yet. The layout has one measure from the start of the
   * cloth to its end, the same before the seam is sewn and after: nothing is added or taken away
   * there, so that the lines along which it is sewn lie on each other.
   */
  public static String loose(Seam seam, ClothLies lies, Measures units) {
    return Phrase.capital(seam.name())
        + " is not sewn: lay the widths seam line on seam line, "
        + lies.onTable(seam.at()).text(units)
        + " from the table's start ("
        + seam.at().text(units)
        + " of the cloth)"
        + (seam.allowance().above(0)
            ? ", their allowances of " + seam.allowance().text(units) + " folded under."
            : ".")
        + " Both are measured from the first one's start.";
  }

  /** Where loose boards go. Those that meet are told as one; where none has its place all meet. */
  public static String boards(Table.Stations boards, ClothLies lies, Measures units) {
    if (lies.boards().isEmpty()) {
      return "Boards: pushed together, without a gap.";
    }
    List<String> stretches =
        lies.boards().stream()
            .map(
                board ->
                    edge(board.getMinX(), lies, units)
                        + (board.getWidth() > boards.length().mm() + Length.TOLERANCE
                            ? " (pushed together up to " + edge(board.getMaxX(), lies, units) + ")"
                            : ""))
            .toList();
    return "Boards: start edge at "
        + Phrase.list(stretches)
        + " "
        + Length.columnUnit(units)
        + " from the table's start.";
  }

  private static String edge(double x, ClothLies lies, Measures units) {
    return lies.onTable(new Length(x)).inColumn(units);
  }

  /** Where they lie then after the cloth, and both widths with it, is moved. */
  public static String meets(Seam seam, ClothLies lies, Measures units) {
    return Phrase.capital(seam.name())
        + " is not sewn: its seam lines meet "
        + lies.onTable(seam.at()).text(units)
        + " from the table's start.";
  }

  /** Which seams are still open, within commas; empty if none is. */
  public static String open(List<Seam> seams) {
    return seams.isEmpty()
        ? ""
        : ", " + Phrase.list(seams.stream().map(Seam::name).toList()) + " not sewn,";
  }

  /** What must stand ready, and when, as the title of a job. */
  public static String ready(Moment by) {
    return "Have the bath ready by " + by.clock();
  }

  /** What it is then. */
  public static String bath(Step.Fix fix, Measures units) {
    return parts(fix) + ": weighed, dissolved and at " + fix.temperature().text(units);
  }

  /** What is done the day before: a bath that is warmed then is cold in the morning. */
  public static String dissolve(Moment by) {
    return "Weigh and dissolve the bath for " + by.text();
  }

  /** What goes into it. */
  public static String dissolved(Step.Fix fix, Measures units) {
    return parts(fix) + ". It comes to " + fix.temperature().text(units) + " on the day.";
  }

  /** What is left to do with it then. */
  public static String warm(Step.Fix fix, Moment by, Measures units) {
    return "Bring the bath to "
        + fix.temperature().text(units)
        + " before the cloth goes in at "
        + by.clock();
  }

  /**
   * What time there is.
   *
   * @param left from when the room opens until the cloth goes in
   */
  public static String left(Span left) {
    return "The plan has no step for warming it: from opening until the cloth goes in there "
        + (left.seconds() < 60 ? "are no minutes." : "is " + left.text() + ".");
  }

  private static String parts(Step.Fix fix) {
    return fix.bath().stream()
        .map(part -> part.written() + " " + part.named())
        .collect(Collectors.joining(", "));
  }

  /** When a rinse is over, whatever the clock says: common practice, no source. */
  public static String rinsed() {
    return "until the water runs clear";
  }
}

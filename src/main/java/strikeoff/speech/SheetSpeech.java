package strikeoff.speech;

import java.util.List;
import java.util.stream.Collectors;
import strikeoff.day.ClothLies;
import strikeoff.day.Moment;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;

/** Says at the table what a plan leaves to whoever knows the trade. */
public final class SheetSpeech {

  /** More marks are told by the moves that need them alone. */
  private static final int MOST_MARKS = 8;

  private SheetSpeech() {}

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
   */
  public static String mark(Length mark, List<Seam> past, Measures units) {
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
        + from
        + " comes to the table's start; make it before lifting";
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
  public static String ready(Moment by, int day) {
    return "Have the bath ready by " + (by.day() == day ? by.clock() : by.text());
  }

  /** What it is then. */
  public static String bath(Step.Fix fix, Measures units) {
    return fix.bath().stream()
            .map(part -> part.written() + " " + part.named())
            .collect(Collectors.joining(", "))
        + ": weighed, dissolved and at "
        + fix.temperature().text(units);
  }

  /** When a rinse is over, whatever the clock says: common practice, no source. */
  public static String rinsed() {
    return "until the water runs clear";
  }
}

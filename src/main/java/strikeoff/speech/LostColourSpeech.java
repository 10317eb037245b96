package strikeoff.speech;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.Medium;
import strikeoff.sequence.ColourAmongOthers;
import strikeoff.sequence.PaintOnDarker;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.Share;

/** Says where a colour is lost among others, and what lets it be seen. */
public final class LostColourSpeech {

  private LostColourSpeech() {}

  /** What would be seen in the place of a colour that is not; empty if nothing would. */
  public static String instead(ColourAmongOthers colour) {
    ColourAmongOthers.Instead would = colour.would();
    if (!would.furtherFrom().isEmpty()) {
      return "a colour further from that of " + String.join(" and ", would.furtherFrom());
    }
    List<String> ways = new ArrayList<>();
    would
        .opaque()
        .ifPresent(
            medium ->
                ways.add(
                    medium == Medium.DYE
                        ? "an opaque paint for it, printed once all dye is fixed, washed off and dry"
                        : "its opaque grade, written `transparent: no`"));
    would.deeper().ifPresent(most -> ways.add("a colour of L* " + most + " or darker"));
    return String.join(", or ", ways);
  }

  /** How much of it lies on them, before {@code of it}. */
  public static String howMuch(PaintOnDarker darker) {
    return howMuch(darker.share());
  }

  /** A further way, after a comma; nothing where it is seen on them alone. */
  public static String orOff(PaintOnDarker darker) {
    return darker.seenBeside() ? ", or keep it off " + Phrase.list(darker.others()) : "";
  }

  /** Where it lies, before the names of the others. */
  public static String where(ColourAmongOthers colour) {
    return colour.under() ? "under" : "over";
  }

  /** How it is known what they cover, to end a sentence. */
  public static String known(ColourAmongOthers colour) {
    return colour.knockout().isPresent() ? ", by their films" : "";
  }

  /** The same where the drawing may leave a gap: films tell that it doesn't. */
  public static String drawing(ColourAmongOthers colour, Measures units) {
    String way = way(colour);
    return colour
        .knockout()
        .map(
            trap ->
                "Knock it out of the film of "
                    + colour.paste()
                    + ", and leave "
                    + trap.roundedUp(units)
                    + " under "
                    + String.join(" and ", colour.others())
                    + " all round, or "
                    + Character.toLowerCase(way.charAt(0))
                    + way.substring(1))
        .orElse("Look at the drawing: unless it leaves a gap there, this holds. " + way);
  }

  /** What to do about one that others are printed over. */
  public static String way(ColourAmongOthers colour) {
    String names = String.join(" and ", colour.others());
    if (colour.meant()) {
      return "Leave it a gap in " + names + ", or leave it out";
    }
    return colour.afterwards()
        ? "Print it after " + names + ", or leave it out"
        : instead(colour).isEmpty()
            ? "Leave it out"
            : "Choose " + instead(colour) + " and print it after " + names + ", or leave it out";
  }

  /** What to do about one that is printed over others. */
  public static String off(ColourAmongOthers colour) {
    String off =
        colour.seenBeside()
            ? "keep it off " + String.join(" and ", colour.others())
            : "leave it out";
    return Phrase.capital(
        instead(colour).isEmpty() ? off : "choose " + instead(colour) + ", or " + off);
  }

  /** How much of it is lost, before {@code of it}. */
  public static String howMuch(ColourAmongOthers colour) {
    return howMuch(colour.share());
  }

  private static String howMuch(Share share) {
    return share.fraction() < 1 ? "about " + share.text() : "all";
  }
}

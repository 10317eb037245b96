package strikeoff.speech;

import java.util.List;
import java.util.stream.Collectors;
import strikeoff.sequence.AcrossFirstWash;
import strikeoff.sequence.Adjoining;
import strikeoff.sequence.AtCopies;
import strikeoff.sequence.BaseOrder;
import strikeoff.sequence.DarkBeforeLight;
import strikeoff.sequence.KeyBeforeOthers;
import strikeoff.sequence.KeyLikeFill;
import strikeoff.sequence.OpenSeam;
import strikeoff.sequence.PaintInBath;
import strikeoff.sequence.PaintOverDye;
import strikeoff.sequence.PrintAcrossSeam;
import strikeoff.sequence.PrintAfterFix;
import strikeoff.sequence.PrintsOfArrangement;
import strikeoff.sequence.PrintsOfStep;
import strikeoff.sequence.TrapWidth;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;

/** Says which order of prints, baths and seams spoils what, and which one does not. */
public final class SequenceSpeech {

  private SequenceSpeech() {}

  /** The placements concerned, as {@code herons 1–6}. */
  public static String places(AtCopies fact) {
    return Numbering.places(fact.copies());
  }

  /** Which prints of an arrangement are left out, in short. */
  public static String what(PrintsOfArrangement prints) {
    return what(prints.parts());
  }

  /** Which of them are printed again, in short. */
  public static String what(PrintsOfStep prints) {
    return what(prints.parts());
  }

  private static String what(List<PrintsOfArrangement.Part> parts) {
    return parts.stream()
        .map(
            part ->
                (part.only()
                        ? ""
                        : part.all()
                            ? "(all " + part.numbers().size() + ") "
                            : Numbering.brief(part.numbers()) + " ")
                    + "in "
                    + (part.colours().isEmpty()
                        ? "all colours"
                        : String.join(" and ", part.colours())))
        .collect(Collectors.joining("; "));
  }

  /** When the dye has to be fixed, as a part of a sentence. */
  public static String between(PaintOverDye dye, Measures units) {
    return dye.dyeStep().number() == dye.step().number()
        ? "Print the dye in a step of its own before the paint. Between the two"
        : "After "
            + StepSpeech.numbered(dye.dyeStep(), units)
            + " and before "
            + StepSpeech.numbered(dye.step(), units)
            + ",";
  }

  /** What fixes the dye after all, as a sentence. */
  public static String fixedLater(PaintOverDye dye, Measures units) {
    return dye.fix()
        .map(fix -> "The dye is fixed only in " + StepSpeech.numbered(fix, units) + ".")
        .orElse("No later step fixes the dye.");
  }

  /** What to do, as an instruction without a full stop. */
  public static String mending(PaintInBath bath, Measures units) {
    String names = Phrase.list(bath.paints());
    return bath.looseDye()
        .map(
            dye ->
                "Fix the dye of "
                    + StepSpeech.numbered(dye, units)
                    + " first, wash it off and dry the cloth. Print "
                    + names
                    + " only after "
                    + StepSpeech.numbered(bath.lastWater(), units)
                    + ", on dry cloth, and heat-set "
                    + (bath.paints().size() == 1 ? "it" : "them")
                    + " then")
        .orElseGet(
            () ->
                "Heat-set "
                    + names
                    + " before "
                    + StepSpeech.numbered(bath.step(), units)
                    + ", or print the paint after "
                    + StepSpeech.numbered(bath.lastWater(), units)
                    + " on dry cloth");
  }

  /** What sets the paint after all, as a sentence. */
  public static String setLater(PaintInBath bath, Measures units) {
    boolean one = bath.paints().size() == 1;
    return bath.heatSet()
        .map(
            step ->
                (one ? "It is" : "They are")
                    + " heat-set only in "
                    + StepSpeech.numbered(step, units)
                    + ".")
        .orElse("No later step heat-sets " + (one ? "it." : "them."));
  }

  /** What the opaque ones do to it, as a sentence with a blank before it; or nothing. */
  public static String covering(KeyBeforeOthers keyBeforeOthers) {
    return keyBeforeOthers.opaque().isEmpty()
        ? ""
        : " "
            + Phrase.capital(Phrase.list(keyBeforeOthers.opaque()))
            + (keyBeforeOthers.opaque().size() == 1 ? " is" : " are")
            + " opaque and "
            + (keyBeforeOthers.opaque().size() == 1 ? "hides" : "hide")
            + " the line where "
            + (keyBeforeOthers.opaque().size() == 1 ? "it lies" : "they lie")
            + " over it.";
  }

  /** The overlap in words; nothing where the plan doesn't say. */
  public static String overlapText(KeyBeforeOthers keyBeforeOthers, Measures units) {
    return keyBeforeOthers.overlap().map(width -> width.text(units)).orElse("");
  }

  /** The finest line in words, likewise. */
  public static String finestText(KeyBeforeOthers keyBeforeOthers, Measures units) {
    return keyBeforeOthers.finest().map(width -> width.text(units)).orElse("");
  }

  /** As {@code sand, then ink}. */
  public static String betterOrder(KeyBeforeOthers keyBeforeOthers) {
    return String.join(", then ", keyBeforeOthers.better());
  }

  /** The fill that is most like it. */
  public static String fill(KeyLikeFill fill) {
    return fill.fills().get(0);
  }

  /** As {@code ink, then sand}. */
  public static String printedOrder(DarkBeforeLight light) {
    return String.join(", then ", light.printed());
  }

  /** As {@code sand, then ink}. */
  public static String betterOrder(DarkBeforeLight light) {
    return String.join(", then ", light.better());
  }

  /** What comes before the sewing, as a part of a sentence; may be empty. */
  public static String once(OpenSeam seam) {
    return seam.filmsBefore() ? ", with `- dry: until lift-safe` before it" : "";
  }

  /** What the ridge asks for besides, as a sentence that begins with a space; may be empty. */
  public static String ridge(OpenSeam seam) {
    return besides(seam.padded());
  }

  /** Where the first print of the base comes, for a sentence that has named the step. */
  public static String later(BaseOrder order, Measures units) {
    return order.number() == order.baseNumber()
        ? "later in that step"
        : "only in " + StepSpeech.numbered(order.baseStep(), units);
  }

  /** What to change, as an instruction without a full stop. */
  public static String mending(BaseOrder order, Measures units) {
    if (order.number() != order.baseNumber()) {
      return "Put "
          + StepSpeech.numbered(order.step(), units)
          + " after "
          + StepSpeech.numbered(order.baseStep(), units)
          + ", once that is dry enough for a frame";
    }
    return order.inOrder().isEmpty()
        ? "Print "
            + order.base()
            + " in a step of its own before "
            + StepSpeech.numbered(order.step(), units)
        : "Write `print: ["
            + String.join(", ", order.inOrder())
            + "]` in step "
            + order.number()
            + ", which prints "
            + order.base()
            + " first";
  }

  public static String table(Adjoining adjoining) {
    return laid(adjoining.railed());
  }

  /** How frames come down. */
  static String laid(boolean railed) {
    return railed ? "on a railed table" : "laid by eye";
  }

  /** What is missing to the tolerance as that is told, so that the trap and it add up. */
  public static String missing(TrapWidth width, Measures units) {
    return width.tolerance().up(units).minus(width.trap()).roundedUp(units);
  }

  public static String table(TrapWidth width) {
    return laid(width.railed());
  }

  public static String table(AcrossFirstWash motifs) {
    return laid(motifs.railed());
  }

  /** What the two overlap by, as a part of a sentence; empty if nobody says. */
  public static String trapped(AcrossFirstWash motifs, Measures units) {
    return motifs.trap().map(trap -> ", and the trap is " + trap.text(units)).orElse("");
  }

  /** What lies across it. */
  public static String numbers(PrintAcrossSeam seam) {
    return Numbering.brief(seam.across());
  }

  /** What of it lies elsewhere, and can be printed before. */
  public static String others(PrintAcrossSeam seam) {
    return seam.rest().isEmpty() ? "none" : Numbering.brief(seam.rest());
  }

  /** What to change, as an instruction without a full stop. */
  public static String mending(PrintAcrossSeam seam, Measures units) {
    return seam.rest().isEmpty()
        ? "Sew "
            + seam.seam()
            + " before "
            + StepSpeech.numbered(seam.step(), units)
            + (seam.filmsBefore() ? ", and write `- dry: until lift-safe` before it" : "")
        : "Let "
            + StepSpeech.numbered(seam.step(), units)
            + " print only "
            + others(seam)
            + " of "
            + seam.arrangement()
            + ", and print "
            + numbers(seam)
            + " after "
            + StepSpeech.numbered(seam.sewing(), units);
  }

  /** What the ridge asks for besides, as a sentence that begins with a space; may be empty. */
  public static String ridge(PrintAcrossSeam seam) {
    return besides(seam.padded());
  }

  /** What was done to it since it was fixed, to end a sentence. */
  public static String since(PrintAfterFix fix) {
    return !fix.rinsed()
        ? "and not rinsed since"
        : fix.washed() ? "and rinsed and washed since" : "and rinsed since, but not washed";
  }

  /** As a sentence that begins with a space; empty if it is levelled. */
  public static String besides(boolean padded) {
    return padded
        ? ""
        : " Its ridge would print a line: level it with padding and say `padded: yes`.";
  }
}

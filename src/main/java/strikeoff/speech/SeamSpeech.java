package strikeoff.speech;

import java.util.stream.Collectors;
import strikeoff.layout.FrameAtSeam;
import strikeoff.layout.MirrorLine;
import strikeoff.layout.MirroredPanels;
import strikeoff.layout.SeamAllowanceReach;
import strikeoff.layout.SeamCrossing;
import strikeoff.layout.SeamMove;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** Says what lies across seams and the lines that panels mirror in. */
public final class SeamSpeech {

  private SeamSpeech() {}

  /** What runs across it. */
  public static String which(SeamCrossing crossing) {
    return Numbering.places(crossing.copies());
  }

  /** What is laid on its ridge. */
  public static String which(FrameAtSeam frame) {
    return Numbering.places(frame.copies());
  }

  /** What reaches into its allowance. */
  public static String placements(SeamAllowanceReach reach) {
    return Numbering.places(reach.copies());
  }

  /** What to write for the mirrored arrangement so that nothing misfits. */
  public static String mend(MirroredPanels panels, Measures units) {
    MirroredPanels.Mend mend = panels.mend();
    if (mend instanceof MirroredPanels.Mend.Values values) {
      return "`" + values.written() + "`";
    }
    if (mend instanceof MirroredPanels.Mend.Places places) {
      return "`"
          + places.written()
          + "`"
          + (places.instead() ? " in place of how they are set now" : "");
    }
    MirroredPanels.Mend.Partners partners = (MirroredPanels.Mend.Partners) mend;
    String sum = partners.sum().writtenText(units);
    return partners.across()
        ? "places `at:` whose x is " + sum + " less that of the partner, and whose y is the same"
        : "places `at:` whose y is " + sum + " less that of the partner, and whose x is the same";
  }

  /** The line where it lies, in words. */
  public static String text(MirrorLine line, Length axis, Measures units) {
    String at =
        (line.across() ? "at " : "")
            + axis.text(units)
            + (line.across() ? "" : " from the near edge");
    return switch (line.setBy()) {
      case SEAM -> "the seam " + line.name() + ", " + at;
      case OTHER_PANELS -> "the line of " + line.name() + ", " + at;
      case PANELS -> "the line between them, " + at;
    };
  }

  /** What a printer can do instead of padding the ridge, to end a sentence; may be empty. */
  public static String orMove(SeamCrossing crossing, Measures units) {
    return crossing
        .move()
        .map(m -> ", or move " + crossing.arrangement() + " " + text(m, units))
        .orElse("");
  }

  /** The placements as people call them, and that they lie. */
  public static String whichText(SeamCrossing crossing) {
    return which(crossing) + (crossing.crossing().size() == 1 ? " lies" : " lie");
  }

  /** As an instruction goes on: {@code by 3 cm towards the end (`start: 38 cm`)}. */
  public static String text(SeamMove move, Measures units) {
    String written =
        move.keys().entrySet().stream()
            .map(key -> key.getKey() + ": " + key.getValue())
            .collect(Collectors.joining(", "));
    return "by "
        + move.by().text(units)
        + (move.toEnd() ? " towards the end" : " towards the start")
        + (move.keys().isEmpty() ? "" : " (`" + written + "`)");
  }

  /** What keeps images out of the allowance, in words. */
  public static String mending(SeamAllowanceReach reach, Measures units) {
    String cross = reach.sewnLater() ? "" : ", or let the image cross it";
    return reach.closesRound()
        ? "A border that closes round the tube can't move: write "
            + reach.arrangement()
            + " as a `series` with the same pitch that starts so that one image crosses the seam, and sew"
            + " and line the seam before (`sewn: yes, padded: yes`)"
        : reach
            .move()
            .map(m -> "Move " + reach.arrangement() + " " + text(m, units) + cross)
            .orElse(
                "Print fewer of "
                    + reach.arrangement()
                    + " or set them further apart: moved as they are, others come to lie at a seam"
                    + " or past the cloth"
                    + cross);
  }

  /** What a printer can do besides, to end a sentence; may be empty. */
  public static String orMove(FrameAtSeam seam, Measures units) {
    return seam.move().map(m -> ", or move it " + text(m, units)).orElse("");
  }

  /** The line in words: {@code the seam centre, at 2 m}. */
  public static String lineText(MirroredPanels panels, Measures units) {
    return text(panels.line(), panels.axis(), units);
  }

  /** How far the two lie from each other where they come nearest to the line, in words. */
  public static String apartText(MirroredPanels panels, Measures units) {
    return panels.apart().mm() > 0
        ? panels.apart().text(units) + " apart"
        : panels.apart().mm() < 0
            ? new Length(-panels.apart().mm()).text(units) + " over each other"
            : "edge to edge";
  }
}

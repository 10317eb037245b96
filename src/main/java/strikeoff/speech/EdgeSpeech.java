package strikeoff.speech;

import strikeoff.layout.BladeOverEdge;
import strikeoff.layout.ClothEdge;
import strikeoff.layout.ClothLay;
import strikeoff.layout.EdgeReach;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** Says what reaches over the edges of cloth and table. */
public final class EdgeSpeech {

  private EdgeSpeech() {}

  public static String text(ClothEdge edge) {
    return switch (edge) {
      case START -> "start";
      case END -> "end";
      case NEAR -> "near edge";
      case FAR -> "far edge";
    };
  }

  /** Where the frames reach past the cloth, in words. */
  public static String edge(BladeOverEdge over) {
    return over.edges().size() > 1 ? "near and far edge" : text(over.edges().get(0));
  }

  /** What reaches into the strip along an edge. */
  public static String placements(EdgeReach reach) {
    return Numbering.places(reach.copies());
  }

  /** What to change, as an instruction without a full stop. */
  public static String mending(EdgeReach reach, Measures units) {
    if (reach.room().mm() >= reach.into().mm() - Length.TOLERANCE) {
      return "Move "
          + reach.arrangement()
          + " by "
          + reach.into().roundedUp(units)
          + ", away from the "
          + text(reach.edge());
    }
    return reach
            .fitting()
            .map(f -> text(f, units))
            .orElseGet(
                () ->
                    "Make "
                        + reach.arrangement()
                        + " "
                        + new Length(reach.into().mm() - Math.max(0, reach.room().mm()))
                            .roundedUp(units)
                        + (reach.edge().isEnd()
                            ? " shorter along the cloth, or print fewer"
                            : " narrower across the cloth"))
        + (reach.room().mm() >= 1
            ? ", and move it by "
                + reach.room().roundedDown(units)
                + ", away from the "
                + text(reach.edge())
            : ": there is no room to move it away from the " + text(reach.edge()));
  }

  /** The strip that it reaches into, in words. */
  public static String strip(EdgeReach reach, Measures units) {
    return "the allowance of "
        + reach.allowance().text(units)
        + (reach.intoSelvedge().mm() > 0
            ? " and the selvedge of " + reach.selvedge().text(units) + " behind it"
            : "");
  }

  public static String text(EdgeReach.Fitting fitting, Measures units) {
    return "Print "
        + fitting.left()
        + " of "
        + fitting.series()
        + " in place of "
        + fitting.count()
        + fitting.pitch().map(p -> ", or set their pitch to " + p.roundedDown(units)).orElse("");
  }

  /** Whose frames reach over the table's edge and how far, in words. */
  public static String reach(ClothLay lay, Measures units) {
    return String.join(", ", lay.arrangements())
        + " reach over the table's edge"
        + (lay.arrangements().size() == 1 ? "" : ", those of " + lay.worst())
        + " by "
        + lay.over().text(units);
  }

  /** How the cloth lies, in words. */
  public static String lies(ClothLay lay, Measures units) {
    return lay.stated()
        ? "the cloth's near edge " + lay.at().text(units) + " from the table's"
        : "the cloth in the middle of the table";
  }

  /** The place for its near edge on this table, exact enough to be written into the plan. */
  public static String place(ClothLay lay, Measures units) {
    return lay.proposed().writtenText(units);
  }

  /** The place for its near edge on a table of the width needed, as exact. */
  public static String needed(ClothLay lay, Measures units) {
    return lay.from().writtenText(units);
  }

  /** What keeps the frame level, as an instruction without a full stop. */
  public static String levelling(BladeOverEdge edge) {
    return "Level the table beside the cloth with a strip of the same cloth"
        + (edge.selvedge().mm() > 0 ? ", or trim the selvedge" : "");
  }
}

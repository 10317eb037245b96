package strikeoff.speech;

import strikeoff.layout.BoardsAtPitch;
import strikeoff.layout.Crowding;
import strikeoff.layout.Lays;
import strikeoff.layout.StationFit;
import strikeoff.layout.StationRow;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;

/** Says how stations, boards and lays fit on a table. */
public final class StationSpeech {

  private StationSpeech() {}

  /** Which copies have a board under them, in words. */
  public static String everyText(BoardsAtPitch pitch) {
    return pitch.every() == 2
        ? "every other one"
        : pitch.every() == 3 ? "every third one" : "one in " + pitch.every();
  }

  /** What puts a board under each copy, as an instruction without a full stop. */
  public static String mending(BoardsAtPitch pitch, Measures units) {
    if (!pitch.fixed()) {
      return (pitch.boardNeeded().mm() > 0
              ? "Use boards of " + pitch.boardNeeded().fineText(units) + " or less, or set "
              : "Set ")
          + pitch.arrangement()
          + " at a pitch of at least "
          + pitch.boardLength().writtenText(units)
          + fewer(pitch);
    }
    String set =
        "Set "
            + pitch.arrangement()
            + " at a pitch of "
            + pitch.boardStep().writtenText(units)
            + fewer(pitch);
    return pitch.pitch().below(pitch.boardLength().mm())
        ? set
        : set + ", or use loose boards, which are set at the motifs' pitch (leave `fixed` out)";
  }

  private static String fewer(BoardsAtPitch pitch) {
    return pitch.holds() < pitch.copies()
        ? " and print " + pitch.holds() + " at most, which is what the cloth holds then"
        : "";
  }

  /** How often the table is filled, in words; nothing if it has no stations. */
  public static String setsText(Lays lays) {
    return lays.stationThen().mm() <= 0 || lays.sets() < 1
        ? ""
        : lays.sets() == 1 ? " in one set" : " in " + lays.sets() + " sets";
  }

  /** The screens for each placement, in words. */
  public static String screensText(Lays lays) {
    return lays.separations() == 1 ? "one screen" : lays.separations() + " screens";
  }

  /** What stations it would take, in words; nothing if the table has none. */
  public static String stationText(Lays lays, Measures units) {
    return lays.stationThen().mm() > 0
        ? ", and stations of " + lays.stationThen().roundedUp(units)
        : "";
  }

  /** What to change, as an instruction without a full stop. */
  public static String mending(StationRow row, Measures units) {
    String shorter = "make each " + row.stationThatFits().roundedDown(units) + " long at most";
    boolean canBeShorter =
        row.stationThatFits().mm() >= 10 && !row.stationThatFits().below(row.stationNeeded().mm());
    if (row.holds() == 0) {
      String table = "use a table of " + row.tableNeeded().roundedUp(units);
      return Phrase.capital(canBeShorter ? shorter + ", or " + table : table);
    }
    return "Write `count: " + row.holds() + "`" + (canBeShorter ? ", or " + shorter : "");
  }

  /**
   * What to change, as an instruction without a full stop; no station is wider than the table, and
   * no more of them are kept than it holds.
   */
  public static String mending(StationFit fit, Measures units) {
    if (fit.holds() < 1 || fit.widthNeeded().above(fit.tableWidth().mm())) {
      return "Use a table of "
          + fit.lengthNeeded().roundedUp(units)
          + " by "
          + fit.widthNeeded().roundedUp(units)
          + " or larger, or smaller frames";
    }
    return "Make the stations "
        + larger(fit.lengthNeeded(), fit.stationLength(), units)
        + " by "
        + larger(fit.widthNeeded(), fit.stationWidth(), units)
        + " or larger, which leaves "
        + fit.clearance().text(units)
        + " on each side"
        + (fit.holds() < fit.count()
            ? "; the table holds " + fit.holds() + " of them, so write `count: " + fit.holds() + "`"
            : "");
  }

  private static String larger(Length one, Length other, Measures units) {
    return (one.compareTo(other) > 0 ? one : other).roundedUp(units);
  }

  /** What to change, as an instruction without a full stop. */
  public static String parting(Crowding crowding, Measures units) {
    String key = crowding.path().text().endsWith(".repeat") ? "repeat" : "pitch";
    String set = "Write `" + key + ": " + crowding.needed().written(units) + "`";
    return crowding.holds() == Crowding.ALL
        ? set
        : set + " and print " + crowding.holds() + " at most, which is what the cloth holds then";
  }
}

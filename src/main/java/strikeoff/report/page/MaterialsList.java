package strikeoff.report.page;

import java.util.List;

/**
 * What to take to the shop, and what to weigh by at the scales.
 *
 * @param buy the one
 * @param weigh the other, in the order of the run
 * @param notes what both rest on
 * @param wear what to have at hand; may be empty
 * @param mind what can hurt; may be empty
 */
public record MaterialsList(
    Listed<Bought> buy, Listed<Weighed> weigh, List<String> notes, String wear, String mind) {

  public MaterialsList {
    notes = List.copyOf(notes);
  }

  public boolean isEmpty() {
    return buy.shown().isEmpty() && weigh.shown().isEmpty();
  }

  /** What the lists leave out; empty if nothing. */
  public String more() {
    return weigh.note(buy.note("", "things to buy"), "things to weigh");
  }

  MaterialsList cut(int times) {
    return with(buy.cut(times), weigh.cut(times), notes);
  }

  /** Another part of the lists, with the same to mind. */
  public MaterialsList with(Listed<Bought> buy, Listed<Weighed> weigh, List<String> notes) {
    return new MaterialsList(buy, weigh, notes, wear, mind);
  }

  /**
   * A thing to buy.
   *
   * @param much how much of it
   * @param note what it is for; may be empty
   */
  public record Bought(String much, String name, String note) {}

  /**
   * A batch or a bath.
   *
   * @param when its step and time, and whose recipe it is
   * @param lines what goes into it; none where nobody knows
   * @param note a sentence below, may be empty
   */
  public record Weighed(String title, String when, List<Line> lines, String note) {
    public Weighed {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A part.
   *
   * @param much to weigh
   * @param measure in spoons, for who can't weigh; may be empty
   */
  public record Line(String much, String name, String measure) {}
}

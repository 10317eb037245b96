package strikeoff.report.page;

import java.util.List;

/**
 * As much of a long list as one page shows: more is read by nobody, and a browser has to hold it.
 *
 * @param more how many are left out
 */
public record Listed<T>(List<T> shown, int more) {

  /** Rows of a table, and findings under one heading. */
  public static final int ROWS = 200;

  /** Tables or drawings side by side, sheets, colours of the legend. */
  public static final int BLOCKS = 60;

  /** States of the cloth to step through. */
  public static final int STAGES = 400;

  public Listed {
    shown = List.copyOf(shown);
  }

  /** At most so many of them. */
  public static <T> Listed<T> of(List<T> all, int most) {
    return all.size() <= most
        ? new Listed<>(all, 0)
        : new Listed<>(all.subList(0, most), all.size() - most);
  }

  /** The first of them, so many times fewer, but at least one. */
  public Listed<T> cut(int times) {
    Listed<T> fewer = of(shown, Math.max(1, shown.size() / times));
    return new Listed<>(fewer.shown, more + fewer.more);
  }

  /** A note that also counts what is left out, if anything is. */
  String note(String note, String what) {
    return more == 0
        ? note
        : (note.isEmpty() ? "" : note + " ")
            + "And "
            + more
            + " more "
            + what
            + ", not listed here.";
  }
}

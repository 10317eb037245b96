package strikeoff.report.page;

import gg.jte.Content;
import java.util.List;

/**
 * A plan's sheets for the wall, and nothing else.
 *
 * @param file the plan's, as the user named it
 * @param materials what to buy and to weigh, each a page of paper before the run
 */
public record WallPage(
    Head head, String title, String file, List<MaterialsList> materials, List<Sheet> sheets) {

  /** What is left of a longer name is its end, which tells plans apart. */
  private static final int LONGEST_FILE = 40;

  public WallPage {
    materials = List.copyOf(materials);
    sheets = List.copyOf(sheets);
  }

  /** What each sheet is called by: plans of two folders may have one title. */
  public String plan() {
    String[] parts = file.split("/");
    String last = parts.length < 2 ? file : parts[parts.length - 2] + "/" + parts[parts.length - 1];
    int letters = last.codePointCount(0, last.length());
    return title
        + " · "
        + (letters <= LONGEST_FILE
            ? last
            : "…" + last.substring(last.offsetByCodePoints(0, letters - LONGEST_FILE + 1)));
  }

  /**
   * One page of paper: what one person does in half a day, or in a day where that fits.
   *
   * @param title the day, and from when on
   * @param who whose it is; empty where there is one person anyway
   * @param part {@code page 1 of 2}; empty where there is one
   * @param first what comes first, with its time
   * @param cloth where the cloth lies then; empty if it was never laid before
   * @param wear what to have at hand; may be empty
   * @param mind what can hurt; may be empty
   */
  public record Sheet(
      String title,
      String who,
      String part,
      DaySheet.Warning warning,
      String first,
      String cloth,
      String wear,
      String mind,
      List<Work> work) {

    public Sheet {
      work = List.copyOf(work);
    }
  }

  /**
   * One job.
   *
   * @param map the cloth with what is printed; null where nothing is
   * @param counted how its numbers run where not all stand on the map; may be empty
   */
  public record Work(DaySheet.Job job, Content map, String counted) {}
}

package strikeoff.report.page;

import gg.jte.Content;
import java.util.List;

/**
 * The films of one design.
 *
 * @param heading the design's name and size
 * @param pictures each film in its colour, and all of them together; empty if no picture is shown
 * @param rings findings that are marked in the last picture
 * @param closeUps where colours meet, as drawn and with a frame laid off
 * @param tables the same in figures
 */
public record FilmSheet(
    String heading,
    List<Picture> pictures,
    List<Ring> rings,
    List<Picture> closeUps,
    List<TableBlock> tables) {

  public FilmSheet {
    pictures = List.copyOf(pictures);
    rings = List.copyOf(rings);
    closeUps = List.copyOf(closeUps);
    tables = List.copyOf(tables);
  }

  /**
   * A picture with what is said of it.
   *
   * @param off where the plan says otherwise; empty if it doesn't
   */
  public record Picture(Content drawn, String title, List<String> lines, String off) {

    public Picture {
      lines = List.copyOf(lines);
    }
  }

  /** A finding that has a place on a film. */
  public record Ring(int number, String severity, String summary) {}

  FilmSheet cut(int times) {
    return new FilmSheet(
        heading,
        pictures,
        rings,
        List.of(),
        tables.stream().map(table -> table.cut(times)).toList());
  }
}

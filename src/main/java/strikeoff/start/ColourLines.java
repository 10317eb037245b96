package strikeoff.start;

import java.util.ArrayList;
import java.util.List;

/** The parts of a first plan that have a line for each colour: its pastes, and its one design. */
final class ColourLines {

  private ColourLines() {}

  /**
   * Pastes and design.
   *
   * @param colours in the order of printing
   * @param size of the motif, as the plan writes it
   */
  static List<String> of(List<String> colours, FixingText fixing, String size) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "pastes:                   # amounts are worked out; the report says how much to mix");
    for (int i = 1; i <= colours.size(); i++) {
      lines.add("  colour " + i + ": " + fixing.paste(colours.get(i - 1)));
    }
    lines.add("designs:");
    lines.add("  motif:");
    lines.add("    size: " + size);
    lines.add("    separations:          # light colours first, an outline last");
    for (int i = 1; i <= colours.size(); i++) {
      lines.add("      - {screen: screen " + i + ", paste: colour " + i + ", covers: 30 %}");
    }
    return lines;
  }
}

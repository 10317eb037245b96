package strikeoff.start;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Scalars;

/** The parts of a first plan that have a line for each colour: its pastes and designs. */
final class ColourLines {

  private ColourLines() {}

  /** Pastes and designs. */
  static List<String> of(FirstDesigns motifs, FixingText fixing) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "pastes:                   # amounts are worked out; the report says how much to mix");
    for (FirstDesigns.Coloured paste : motifs.pastes()) {
      lines.add(
          "  "
              + Scalars.text(paste.name())
              + ": "
              + fixing.paste(paste.colour())
              + (paste.standsIn() ? "  # stands in: write its colour" : ""));
    }
    if (motifs.ofFilms()) {
      lines.add(
          "# A film with a strip of register marks: say “margin: 1 cm” beside its artwork, and");
      lines.add("# as “size” what it measures without.");
    }
    lines.add("designs:");
    for (FirstDesigns.Motif motif : motifs.motifs()) {
      lines.add("  " + Scalars.text(motif.name()) + ":");
      lines.add("    size: " + motif.size().text());
      lines.add("    separations:          # light colours first, an outline last");
      for (FirstDesigns.Layer layer : motif.layers()) {
        lines.add(
            "      - {screen: "
                + Scalars.text(layer.screen())
                + ", paste: "
                + Scalars.text(layer.paste())
                + ", "
                + layer.prints()
                + "}");
      }
    }
    return lines;
  }
}

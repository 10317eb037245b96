package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.materials.Materials;
import strikeoff.materials.Purchase;
import strikeoff.materials.Weighing;
import strikeoff.speech.MaterialsSpeech;
import strikeoff.units.Measures;

/** Says what a plan takes: what to buy and what to weigh. */
public record MaterialsText(int width) {

  private static final String INDENT = "    ";

  private static final int MUCH = 18;

  /** Nothing for a plan that was not judged, or that takes nothing. */
  public List<String> of(Checked checked) {
    return checked instanceof Checked.Judged judged ? told(judged) : List.of();
  }

  private List<String> told(Checked.Judged judged) {
    Measures units = judged.plan().measures();
    Materials materials =
        Materials.of(judged.plan(), judged.facts().timeline(), judged.facts().policy());
    List<String> lines = new ArrayList<>();
    if (materials.weighings().isEmpty()) {
      return lines;
    }
    lines.add("");
    lines.add("  To buy");
    for (Purchase purchase : materials.purchases()) {
      String note = MaterialsSpeech.shares(purchase, units);
      row(
          MaterialsSpeech.toBuy(purchase, units),
          MaterialsSpeech.name(purchase) + (note.isEmpty() ? "" : " (" + note + ")"),
          lines);
    }
    lines.add("");
    lines.add("  To weigh");
    for (Weighing weighing : materials.weighings()) {
      String recipe = MaterialsSpeech.recipe(weighing);
      lines.addAll(
          Plain.wrap(
              INDENT,
              INDENT + "  ",
              MaterialsSpeech.title(weighing, units)
                  + "; "
                  + MaterialsSpeech.when(weighing)
                  + (recipe.isEmpty() ? "" : "; " + recipe),
              width));
      weighing
          .parts()
          .forEach(part -> row("  " + MaterialsSpeech.weigh(part, units), part.name(), lines));
    }
    lines.add("");
    for (String note :
        List.of(
            MaterialsSpeech.unknown(materials),
            MaterialsSpeech.basis(materials),
            MaterialsSpeech.CAUTION)) {
      if (!note.isEmpty()) {
        lines.addAll(Plain.wrap("  ", "  ", note, width));
      }
    }
    return lines;
  }

  private void row(String much, String what, List<String> lines) {
    String first = INDENT + much + " ".repeat(Math.max(1, MUCH - Plain.columns(much)));
    lines.addAll(Plain.wrap(first, INDENT + " ".repeat(MUCH), what, width));
  }
}

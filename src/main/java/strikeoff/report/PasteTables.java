package strikeoff.report;

import static strikeoff.report.page.TableBlock.Column.number;
import static strikeoff.report.page.TableBlock.Column.words;

import java.util.ArrayList;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.paste.PasteAge;
import strikeoff.paste.PasteUse;
import strikeoff.paste.Pastes;
import strikeoff.plan.Paste;
import strikeoff.report.drawing.Patches;
import strikeoff.report.page.Cell;
import strikeoff.report.page.TableBlock;
import strikeoff.report.page.TableSection;
import strikeoff.speech.PasteSpeech;
import strikeoff.speech.PasteUseSpeech;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/** What each paste needs, and how long it lasts. */
final class PasteTables {

  private PasteTables() {}

  static List<TableSection> of(Checked.Judged judged) {
    Pastes pastes = judged.facts().pastes();
    List<TableSection> sections = new ArrayList<>();
    List<TableBlock> tables = new ArrayList<>();
    if (!pastes.uses().isEmpty()) {
      tables.add(amounts(judged));
    }
    if (!pastes.ages().isEmpty()) {
      tables.add(ages(pastes.ages()));
    }
    if (!tables.isEmpty()) {
      sections.add(new TableSection("pastes", "Pastes", "", tables, false));
    }
    return sections;
  }

  private static TableBlock amounts(Checked.Judged judged) {
    Measures units = judged.plan().measures();
    List<List<Cell>> rows = new ArrayList<>();
    for (PasteUse use : judged.facts().pastes().uses()) {
      Paste paste = judged.plan().pastes().get(use.paste());
      rows.add(
          List.of(
              Cell.of(Patches.of(paste.colour()), use.paste(), medium(paste)),
              Cell.of(Integer.toString(use.impressions()), use.printed().text(units)),
              Cell.of(
                  Estimates.best(use.needGrams(), Mass::new, units),
                  Estimates.spread(use.needGrams(), Mass::new, units)),
              use.mixedGrams()
                  .map(
                      m ->
                          Cell.of(
                              Estimates.best(m, Mass::new, units),
                              Estimates.spread(m, Mass::new, units)))
                  .orElse(Cell.of("not stated")),
              Cell.of(balance(use, units)),
              Cell.of(use.toMix().enough(units), PasteUseSpeech.basis(use))));
    }
    return new TableBlock(
        "Amounts",
        List.of(
            words("Paste"),
            number("Impressions"),
            number("Need"),
            number("Mixed"),
            words("Balance"),
            number("Enough by the careful estimate")),
        rows,
        "The need holds what is laid down, what is lost in mesh and on blade each time a screen is"
            + " washed out, the bead that the last pulls need before the blade, and a share of waste."
            + " Most of the bead is scraped back afterwards.");
  }

  private static String medium(Paste paste) {
    return paste.groups().isEmpty()
        ? paste.medium().text()
        : paste.medium().text() + ", " + String.join(" and ", paste.groups());
  }

  private static String balance(PasteUse use, Measures units) {
    if (!use.amountKnown()) {
      return "open";
    }
    if (use.shortLeast().grams() > 0) {
      return "runs out: " + use.more().enough(units) + " more";
    }
    if (use.shortMost().grams() > 0) {
      return "may run out: " + use.more().enough(units) + " more";
    }
    return use.over().grams() > 0 ? use.over().text(units) + " over" : "suffices";
  }

  private static TableBlock ages(List<PasteAge> ages) {
    List<List<Cell>> rows = new ArrayList<>();
    for (PasteAge age : ages) {
      rows.add(
          List.of(
              Cell.of(age.paste(), PasteSpeech.holds(age) + ", kept " + age.kept().text()),
              Cell.of(age.mixedAt().text()),
              Cell.of(age.lastUse().text(), age.lastPlacement()),
              Cell.of(age.age().text()),
              Cell.of(
                  Estimates.best(age.lifeMinutes(), Span::new, Measures.METRIC),
                  Estimates.spread(age.lifeMinutes(), Span::new, Measures.METRIC))));
    }
    return new TableBlock(
        "Age and life",
        List.of(
            words("Paste"),
            words("Ready"),
            words("Last used"),
            number("Age then"),
            number("Lives about")),
        rows,
        "");
  }
}

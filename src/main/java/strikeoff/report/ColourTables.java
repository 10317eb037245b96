package strikeoff.report;

import static strikeoff.report.page.TableBlock.Column.number;
import static strikeoff.report.page.TableBlock.Column.words;

import java.util.ArrayList;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.colour.Lab;
import strikeoff.colour.MotifLook;
import strikeoff.colour.Overprint;
import strikeoff.colour.Swatch;
import strikeoff.colour.Swatches;
import strikeoff.plan.Colour;
import strikeoff.plan.Medium;
import strikeoff.report.drawing.Patches;
import strikeoff.report.page.Cell;
import strikeoff.report.page.TableBlock;
import strikeoff.report.page.TableSection;
import strikeoff.speech.ColourSpeech;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.Phrase;

/** The colours as named, as they look on this cloth, and where they lie over each other. */
final class ColourTables {

  private ColourTables() {}

  static TableSection of(Checked.Judged judged) {
    Swatches swatches = judged.facts().swatches();
    List<TableBlock> tables = new ArrayList<>();
    tables.add(pastes(swatches));
    if (!swatches.overprints().isEmpty()) {
      tables.add(overprints(swatches, judged.plan().measures()));
    }
    if (swatches.motifs().stream().anyMatch(m -> m.mean().isPresent())) {
      tables.add(afar(swatches));
    }
    return new TableSection(
        "colours",
        "Colours",
        "Estimates for the eye: a screen shows no cloth. L* is lightness, from 0 for black to 100"
            + " for white.",
        tables,
        false);
  }

  private static TableBlock pastes(Swatches swatches) {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(
        List.of(
            Cell.of(Patches.of(swatches.ground()), "the ground", swatches.ground().written()),
            Cell.of(lightness(swatches.groundLab())),
            Cell.of("–"),
            Cell.of("–"),
            Cell.of("–")));
    for (Swatch swatch : swatches.swatches()) {
      rows.add(
          List.of(
              Cell.of(Patches.of(swatch.named()), swatch.paste(), swatch.named().written()),
              Cell.of(lightness(swatch.lab())),
              looks(swatch.onGround()),
              looks(swatch.washed()),
              Cell.of(over(swatch))));
    }
    return new TableBlock(
        "Pastes on this cloth",
        List.of(
            words("Colour"),
            number("L* as named"),
            words("Wet on the ground"),
            words("After wash-off"),
            words("Over others")),
        rows,
        "");
  }

  private static String over(Swatch swatch) {
    if (!swatch.transparent()) {
      return "covers";
    }
    return swatch.medium() == Medium.PAINT ? "hides a part" : "transparent";
  }

  private static TableBlock overprints(Swatches swatches, Measures units) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Overprint overprint : swatches.overprints()) {
      rows.add(
          List.of(
              Cell.of(
                  overprint.upperPaste() + " over " + overprint.lowerPaste(), overprint.design()),
              looks(overprint.look()),
              looks(overprint.washed()),
              Cell.of(
                  overprint.most().text(units),
                  overprint.measured()
                      ? "by their films"
                      : "at least " + overprint.least().text(units))));
    }
    return new TableBlock(
        "Overprints",
        List.of(words("Where"), words("Wet"), words("After wash-off"), number("Area, at most")),
        rows,
        swatches.overprints().stream()
            .map(o -> Phrase.capital(ColourSpeech.text(o.model())))
            .distinct()
            .reduce((a, b) -> a + ". " + b)
            .map(words -> words + ".")
            .orElse(""));
  }

  private static TableBlock afar(Swatches swatches) {
    List<List<Cell>> rows = new ArrayList<>();
    for (MotifLook look : swatches.motifs()) {
      look.mean()
          .ifPresent(
              mean ->
                  rows.add(
                      List.of(
                          Cell.of(look.design()),
                          looks(mean),
                          Cell.of(Numbers.plain(look.difference(), 0)))));
    }
    return new TableBlock(
        "From across the room",
        List.of(words("Design"), words("Mean colour, wet"), number("Stands out by, ΔE₀₀")),
        rows,
        "The mean of each design over its whole rectangle, if its colours fall independently.");
  }

  private static Cell looks(Colour colour) {
    return Cell.of(Patches.of(colour), "L* " + lightness(Lab.of(colour)), colour.hex());
  }

  private static String lightness(Lab lab) {
    return Numbers.plain(lab.lightness(), 0);
  }
}

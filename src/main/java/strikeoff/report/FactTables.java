package strikeoff.report;

import static strikeoff.report.page.Table.Column.number;
import static strikeoff.report.page.Table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import strikeoff.check.Checked;
import strikeoff.plan.Assumption;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.report.drawing.Swatches;
import strikeoff.report.page.Cell;
import strikeoff.report.page.Table;

/** Pastes, screens and assumptions as tables. */
final class FactTables {

  private FactTables() {}

  static List<Table> of(Checked.Judged judged) {
    List<Table> tables = new ArrayList<>();
    tables.add(pastes(judged.plan()));
    tables.add(screens(judged.plan()));
    return tables;
  }

  static Table assumptions(PrintPlan plan) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Assumption assumed : plan.assumptions()) {
      rows.add(
          List.of(
              Cell.of(assumed.name(), assumed.path().text()),
              Cell.of(assumed.value()),
              Cell.of(assumed.source())));
    }
    return new Table(
        "Values taken where the plan says nothing",
        List.of(words("What"), words("Taken"), words("From")),
        rows,
        "");
  }

  private static Table pastes(PrintPlan plan) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Paste paste : plan.pastes().values()) {
      rows.add(
          List.of(
              Cell.of(Swatches.of(paste.colour()), paste.name(), paste.colour().written()),
              Cell.of(paste.medium().text(), paste.group().orElse("")),
              Cell.of(paste.amount().map(a -> a.text()).orElse("not stated")),
              Cell.of(recipe(paste.recipe())),
              Cell.of(paste.storage().text(), paste.alkaliInPaste() ? "holds its alkali" : "")));
    }
    return new Table(
        "Pastes",
        List.of(words("Paste"), words("Medium"), number("Mixed"), words("Recipe"), words("Kept")),
        rows,
        "");
  }

  private static String recipe(List<Ingredient> recipe) {
    return recipe.isEmpty()
        ? "not stated"
        : recipe.stream()
            .map(i -> i.written() + " " + i.substance())
            .collect(Collectors.joining(", "));
  }

  private static Table screens(PrintPlan plan) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Screen screen : plan.screens().values()) {
      rows.add(
          List.of(
              Cell.of(screen.name()),
              Cell.of(screen.frameLength().text() + " × " + screen.frameWidth().text()),
              Cell.of(screen.imageLength().text() + " × " + screen.imageWidth().text()),
              Cell.of(screen.mesh().text()),
              Cell.of(screen.squeegee().map(s -> s.text()).orElse("not stated"))));
    }
    return new Table(
        "Screens",
        List.of(
            words("Screen"),
            number("Frame outside"),
            number("Image"),
            number("Mesh"),
            number("Squeegee")),
        rows,
        "");
  }
}

package strikeoff.report;

import static strikeoff.report.page.Table.Column.number;
import static strikeoff.report.page.Table.Column.words;

import java.util.ArrayList;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.plan.Assumption;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.report.page.Cell;
import strikeoff.report.page.Table;
import strikeoff.report.page.TableSection;

/** Derived figures as tables, in the order they are wanted at the table. */
final class FactTables {

  private FactTables() {}

  static List<TableSection> of(Checked.Judged judged) {
    List<TableSection> sections = new ArrayList<>();
    sections.addAll(PasteTables.of(judged));
    sections.addAll(BathTables.of(judged));
    sections.add(
        new TableSection("screens", "Screens", "", List.of(screens(judged.plan())), false));
    sections.add(ColourTables.of(judged));
    return sections;
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
        "Frames, images and meshes",
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

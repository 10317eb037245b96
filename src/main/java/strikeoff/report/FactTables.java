package strikeoff.report;

import static strikeoff.report.page.Table.Column.number;
import static strikeoff.report.page.Table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.check.Checked;
import strikeoff.facts.Bases;
import strikeoff.findings.Sources;
import strikeoff.plan.AssumedAlike;
import strikeoff.plan.Basis;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.report.page.Cell;
import strikeoff.report.page.Table;
import strikeoff.report.page.TableSection;
import strikeoff.screens.MeshForPaste;
import strikeoff.screens.MeshWeave;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Numbers;

/** Derived figures as tables, in the order they are wanted at the table. */
final class FactTables {

  private static final int MOST_PLACES = 3;

  private FactTables() {}

  static List<TableSection> of(Checked.Judged judged) {
    List<TableSection> sections = new ArrayList<>();
    sections.addAll(RunTables.of(judged));
    sections.addAll(PasteTables.of(judged));
    sections.addAll(BathTables.of(judged));
    sections.add(
        new TableSection(
            "screens", "Screens", "", List.of(screens(judged.plan()), meshes(judged)), false));
    sections.add(ColourTables.of(judged));
    bases(judged).ifPresent(sections::add);
    return sections;
  }

  /** By which models the figures above were reckoned, and how far each of them holds. */
  private static Optional<TableSection> bases(Checked.Judged judged) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Basis basis : Bases.of(judged.plan(), judged.facts())) {
      rows.add(
          List.of(
              Cell.of(basis.estimate()),
              Cell.of(basis.method()),
              Cell.of(basis.holds()),
              Cell.of(Sources.shown(basis.source()))));
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new TableSection(
                "estimates",
                "What the estimates rest on",
                "A measured value in the plan always comes before any of these.",
                List.of(
                    new Table(
                        "Models and their limits",
                        List.of(
                            words("Estimate"), words("Model"), words("Holds for"), words("Source")),
                        rows,
                        "")),
                false));
  }

  /**
   * @param policies names of the policy files that applied
   */
  static Table assumptions(PrintPlan plan, List<String> policies) {
    List<List<Cell>> rows = new ArrayList<>();
    for (AssumedAlike assumed : AssumedAlike.of(plan.assumptions())) {
      rows.add(
          List.of(
              Cell.of(assumed.name(), places(assumed.paths())),
              Cell.of(assumed.value()),
              Cell.of(Sources.shown(assumed.source()))));
    }
    return new Table(
        "Values taken where the plan says nothing",
        List.of(words("What"), words("Taken"), words("From")),
        rows,
        policies.isEmpty()
            ? ""
            : "Policy files that apply, from the top down: " + String.join(", ", policies) + ".");
  }

  private static String places(List<PlanPath> paths) {
    int more = paths.size() - MOST_PLACES;
    String first =
        paths.stream().limit(MOST_PLACES).map(PlanPath::spoken).collect(Collectors.joining(", "));
    return more <= 0 ? first : first + " and " + more + " more";
  }

  /** What each mesh lets through. */
  private static Table meshes(Checked.Judged judged) {
    List<Evidence> facts = judged.facts().evidence();
    List<List<Cell>> rows = new ArrayList<>();
    for (Evidence fact : facts) {
      if (fact instanceof MeshWeave mesh) {
        List<MeshForPaste> uses =
            facts.stream()
                .filter(MeshForPaste.class::isInstance)
                .map(MeshForPaste.class::cast)
                .filter(use -> use.screen().equals(mesh.screen()))
                .toList();
        rows.add(
            List.of(
                Cell.of(mesh.screen(), mesh.count().text() + ", " + micrometres(mesh.thread())),
                Cell.of(micrometres(mesh.opening())),
                Cell.of(mesh.openArea().text()),
                Cell.of(
                    whole(mesh.volume().best()) + " cm³/m²",
                    whole(mesh.volume().low()) + " to " + whole(mesh.volume().high())),
                uses.isEmpty() ? Cell.of("–") : deposit(uses.get(0)),
                Cell.of(Numbers.fixed(mesh.finest().mm(), 2) + " mm")));
      }
    }
    return new Table(
        "What the meshes let through",
        List.of(
            words("Screen"),
            number("Opening"),
            number("Open area"),
            number("Theoretical volume"),
            number("Deposit of a pull"),
            number("Finest detail")),
        rows,
        "");
  }

  private static Cell deposit(MeshForPaste use) {
    return Cell.of(
        Estimates.best(use.deposit().gramsPerSquareMetre(), ArealMass::new),
        use.deposit().measured()
            ? "weighed"
            : Estimates.spread(use.deposit().gramsPerSquareMetre(), ArealMass::new));
  }

  private static String micrometres(Length length) {
    return whole(length.mm() * 1000) + " µm";
  }

  private static String whole(double value) {
    return Long.toString(Math.round(value));
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

package strikeoff.report;

import static strikeoff.report.page.TableBlock.Column.number;
import static strikeoff.report.page.TableBlock.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.check.Checked;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Basis;
import strikeoff.evidence.Evidence;
import strikeoff.facts.Bases;
import strikeoff.findings.Sources;
import strikeoff.plan.AssumedAlike;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.report.page.Cell;
import strikeoff.report.page.TableBlock;
import strikeoff.report.page.TableSection;
import strikeoff.screens.MeshForPaste;
import strikeoff.screens.MeshWeave;
import strikeoff.speech.ModelText;
import strikeoff.units.ArealMass;
import strikeoff.units.ArealVolume;
import strikeoff.units.Length;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.UnitSystem;

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
      ModelText model = ModelText.of(basis, judged.facts().policy());
      rows.add(
          List.of(
              Cell.of(model.estimate()),
              Cell.of(model.method()),
              Cell.of(model.holds()),
              Cell.of(Sources.shown(model.source()))));
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new TableSection(
                "estimates",
                "What the estimates rest on",
                "A measured value in the plan always comes before any of these.",
                List.of(
                    new TableBlock(
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
  static TableBlock assumptions(PrintPlan plan, List<String> policies) {
    List<List<Cell>> rows = new ArrayList<>();
    for (AssumedAlike assumed : AssumedAlike.of(plan.assumptions())) {
      rows.add(
          List.of(
              Cell.of(assumed.name(), places(assumed.paths())),
              Cell.of(assumed.value()),
              Cell.of(Sources.shown(assumed.source()))));
    }
    return new TableBlock(
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
  private static TableBlock meshes(Checked.Judged judged) {
    List<Evidence> facts = judged.facts().evidence();
    Measures units = judged.plan().measures();
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
                Cell.of(
                    mesh.screen(), mesh.count().text(units) + ", " + mesh.thread().thinText(units)),
                Cell.of(mesh.opening().thinText(units)),
                Cell.of(mesh.openArea().text()),
                Cell.of(
                    volume(mesh.volume().best(), units) + " " + ArealVolume.unit(units),
                    volume(mesh.volume().low(), units)
                        + " to "
                        + volume(mesh.volume().high(), units)),
                uses.isEmpty() ? Cell.of("–") : deposit(uses.get(0), units),
                Cell.of(finest(mesh.finest(), units))));
      }
    }
    return new TableBlock(
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

  private static Cell deposit(MeshForPaste use, Measures units) {
    return Cell.of(
        Estimates.best(use.deposit().gramsPerSquareMetre(), ArealMass::new, units),
        use.deposit().measured()
            ? "weighed"
            : Estimates.spread(use.deposit().gramsPerSquareMetre(), ArealMass::new, units));
  }

  /** With two decimals in any row, where it is told in metric units. */
  private static String finest(Length detail, Measures units) {
    boolean metric = units.of(MeasureKind.SMALL_LENGTH) == UnitSystem.METRIC;
    return metric ? Numbers.fixed(detail.mm(), 2) + " mm" : detail.text(units);
  }

  private static String volume(double cubicCmPerSquareMetre, Measures units) {
    return new ArealVolume(cubicCmPerSquareMetre).number(units);
  }

  private static TableBlock screens(PrintPlan plan) {
    Measures units = plan.measures();
    List<List<Cell>> rows = new ArrayList<>();
    for (Screen screen : plan.screens().values()) {
      rows.add(
          List.of(
              Cell.of(screen.name()),
              Cell.of(screen.frameLength().text(units) + " × " + screen.frameWidth().text(units)),
              Cell.of(screen.imageLength().text(units) + " × " + screen.imageWidth().text(units)),
              Cell.of(screen.mesh().text(units)),
              Cell.of(screen.squeegee().map(s -> s.text(units)).orElse("not stated"))));
    }
    return new TableBlock(
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

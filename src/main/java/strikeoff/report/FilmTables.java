package strikeoff.report;

import static strikeoff.report.page.TableBlock.Column.number;
import static strikeoff.report.page.TableBlock.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Fine;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Joint;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.report.page.Cell;
import strikeoff.report.page.TableBlock;
import strikeoff.screens.FineOnMesh;
import strikeoff.speech.ArtworkSpeech;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Share;

/** What was measured on the films of a design, in figures. */
final class FilmTables {

  private static final String NONE = "–";

  private final PrintPlan plan;
  private final Policy policy;
  private final List<Evidence> facts;
  private final Measures units;

  FilmTables(Checked.Judged judged) {
    this.plan = judged.plan();
    this.policy = judged.facts().policy();
    this.facts = judged.facts().evidence();
    this.units = plan.measures();
  }

  /** How far a frame can be off on this table. */
  Length tolerance() {
    return plan.table().railed()
        ? policy.order().registrationRailed()
        : policy.order().registrationByEye();
  }

  List<TableBlock> of(Design design) {
    return design.joints().isEmpty()
        ? List.of(films(design))
        : List.of(films(design), joints(design));
  }

  String printed(Separation colour, Artwork film) {
    return ArtworkSpeech.printed(colour.printed(), film.printed(), units);
  }

  /** What the plan says otherwise; empty if it doesn't. */
  String off(Separation colour, Artwork film) {
    return film.stated()
        .map(s -> stated(s, colour))
        .filter(text -> !text.equals(printed(colour, film)))
        .map(text -> "the plan says " + text)
        .orElse("");
  }

  private String stated(Artwork.Stated stated, Separation colour) {
    return ArtworkSpeech.printed(
        stated.area(), new Share(stated.area().squareCm() / colour.rectangle().squareCm()), units);
  }

  Optional<FineOnMesh> mesh(Design design, Separation colour) {
    return facts.stream()
        .filter(FineOnMesh.class::isInstance)
        .map(FineOnMesh.class::cast)
        .filter(f -> f.design().equals(design.name()) && f.separation() == colour.number())
        .findFirst();
  }

  /** Of a halftone its ruling, since it has no lines. */
  String line(Artwork film) {
    return film.halftone()
        .map(ruling -> "halftone, " + ruling.told().text(units))
        .orElseGet(() -> finest(policy.fine(film).map(Fine::line)));
  }

  String gap(Artwork film) {
    return finest(policy.fine(film).map(Fine::gap));
  }

  /** Empty where a film is grey or a texture; empty inside where nothing of it is fine. */
  private String finest(Optional<Optional<Finest>> finest) {
    return finest
        .map(
            known ->
                known
                    .map(f -> f.width().text(units))
                    .orElse("over " + Artwork.WIDEST_FINE.text(units)))
        .orElse(NONE);
  }

  private TableBlock films(Design design) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Separation colour : design.separations()) {
      rows.add(
          colour
              .artwork()
              .map(film -> row(design, colour, film))
              .orElse(
                  List.of(
                      Cell.of(colour.number() + " " + colour.paste(), "no film"),
                      Cell.of(colour.printed().text(units), "as the plan says"),
                      Cell.of(NONE),
                      Cell.of(NONE),
                      Cell.of(NONE),
                      Cell.of(NONE))));
    }
    return new TableBlock(
        "What the films of " + design.name() + " print",
        List.of(
            words("Film"),
            number("Prints"),
            number("Finest line"),
            number("Finest gap"),
            number("Its mesh holds"),
            words("Reaches")),
        rows,
        "");
  }

  private List<Cell> row(Design design, Separation colour, Artwork film) {
    Optional<FineOnMesh> mesh = mesh(design, colour);
    return List.of(
        Cell.of(colour.number() + " " + colour.paste(), film.file()),
        Cell.of(printed(colour, film), off(colour, film)),
        Cell.of(line(film)),
        Cell.of(gap(film)),
        mesh.map(m -> Cell.of(m.lineHolds().text(units), m.mesh().text(units)))
            .orElse(Cell.of(NONE)),
        Cell.of(film.reach().map(this::reach).orElse("nowhere")));
  }

  private String reach(Artwork.Reach reach) {
    return reach.left().text(units)
        + " to "
        + reach.right().text(units)
        + " from the left, "
        + reach.near().text(units)
        + " to "
        + reach.far().text(units)
        + " from the near edge";
  }

  private TableBlock joints(Design design) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Joint joint : design.joints()) {
      rows.add(
          List.of(
              Cell.of(paste(design, joint.one()) + " and " + paste(design, joint.other())),
              width(joint.lap(), design, joint),
              width(joint.gap(), design, joint),
              Cell.of(joint.butt().above(0) ? joint.butt().text(units) : "nowhere")));
    }
    return new TableBlock(
        "How the colours of " + design.name() + " meet",
        List.of(
            words("Colours"),
            words("Narrowest lap"),
            words("Narrowest strip of ground"),
            words("Edge to edge over")),
        rows,
        "A frame "
            + (plan.table().railed() ? "on this railed table" : "laid by eye")
            + " can be off by "
            + tolerance().text(units)
            + ".");
  }

  private Cell width(Optional<Finest> finest, Design design, Joint joint) {
    return finest
        .map(
            f ->
                Cell.of(
                    f.width().text(units),
                    f.x().text(units)
                        + " from the left, "
                        + f.y().text(units)
                        + " from the near edge"))
        .orElse(Cell.of("none"));
  }

  static String paste(Design design, int separation) {
    return design.separations().get(separation - 1).paste();
  }
}

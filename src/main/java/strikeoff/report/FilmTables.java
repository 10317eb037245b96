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
import strikeoff.units.Area;
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
    return policy.registration(plan.table().railed());
  }

  /** How much ground that comes bare somebody sees. */
  Area bareSeen() {
    return policy.artwork().bareSeen();
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
  private String line(Artwork film) {
    return film.halftone()
        .map(ruling -> "halftone, " + ruling.told().text(units))
        .orElseGet(() -> finest(policy.fine(film).map(Fine::line)));
  }

  private String gap(Artwork film) {
    return finest(policy.fine(film).map(Fine::gap));
  }

  /** The same, and whether it is drawn for its own sake. */
  String lineTold(Separation colour, Artwork film) {
    return line(film) + mark(colour, policy.fine(film).flatMap(Fine::line));
  }

  String gapTold(Separation colour, Artwork film) {
    return gap(film) + mark(colour, policy.fine(film).flatMap(Fine::gap));
  }

  private String mark(Separation colour, Optional<Finest> finest) {
    return ArtworkSpeech.mark(facts, colour, finest).map(mark -> " " + mark).orElse("");
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
            words("Finest line"),
            words("Finest gap"),
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
        Cell.of(line(film), lies(colour, policy.fine(film).flatMap(Fine::line))),
        Cell.of(gap(film), lies(colour, policy.fine(film).flatMap(Fine::gap))),
        mesh.map(m -> Cell.of(m.lineHolds().text(units), m.mesh().text(units)))
            .orElse(Cell.of(NONE)),
        Cell.of(film.reach().map(this::reach).orElse("nowhere")));
  }

  /** How much of it there is, and where one is; empty where nothing is fine. */
  private String lies(Separation colour, Optional<Finest> finest) {
    return finest.isEmpty()
        ? ""
        : ArtworkSpeech.mark(facts, colour, finest).map(mark -> mark + ", ").orElse("")
            + "over "
            + ArtworkSpeech.over(finest, units)
            + ", for instance at "
            + ArtworkSpeech.at(finest, units);
  }

  private String reach(Artwork.Reach reach) {
    return range(reach.left(), reach.right())
        + " from the left, "
        + range(reach.near(), reach.far())
        + " from the near edge";
  }

  /** In one unit, that of the longer. */
  private String range(Length low, Length high) {
    String from = low.text(units);
    String to = high.text(units);
    boolean alike = from.replaceFirst(".* ", "").equals(to.replaceFirst(".* ", ""));
    return alike
        ? from + " to " + to
        : low.inColumn(units) + " to " + high.inColumn(units) + " " + Length.columnUnit(units);
  }

  private TableBlock joints(Design design) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Joint joint : design.joints()) {
      rows.add(
          List.of(
              Cell.of(paste(design, joint.one()) + " and " + paste(design, joint.other())),
              joint.lap().or(joint::butt).map(this::width).orElseGet(() -> noLap(design, joint)),
              joint.gap().map(this::width).orElse(Cell.of("none")),
              Cell.of(joint.butt().map(b -> b.over().text(units)).orElse("nowhere"))));
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

  private Cell width(Finest finest) {
    return Cell.of(finest.width().text(units), ArtworkSpeech.at(Optional.of(finest), units));
  }

  /** Two that lap nowhere may lie over each other all the same: lines across a fill do. */
  private Cell noLap(Design design, Joint joint) {
    if (joint.both().squareCm() == 0) {
      return Cell.of("none");
    }
    String area = ArtworkSpeech.small(joint.both(), units);
    return inside(design, joint.one(), joint)
        .or(() -> inside(design, joint.other(), joint))
        .map(paste -> Cell.of(paste + " lies inside", area))
        .orElseGet(() -> Cell.of("over each other", area));
  }

  /** The paste of a film all of whose points the other prints too. */
  private static Optional<String> inside(Design design, int number, Joint joint) {
    double printed = design.separation(number).printed().squareCm();
    return joint.both().squareCm() >= printed * (1 - 1e-9)
        ? Optional.of(paste(design, number))
        : Optional.empty();
  }

  static String paste(Design design, int separation) {
    return design.separation(separation).paste();
  }
}

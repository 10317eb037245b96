package strikeoff.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import strikeoff.artwork.facts.FilmOnOthers;
import strikeoff.check.Checked;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Colour;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Joint;
import strikeoff.report.drawing.CloseUp;
import strikeoff.report.drawing.ColourSigns;
import strikeoff.report.drawing.FilmDrawing;
import strikeoff.report.drawing.RingMark;
import strikeoff.report.page.FilmSheet;
import strikeoff.speech.ArtworkSpeech;
import strikeoff.units.Length;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.UnitSystem;

/** The films of each design: as they were understood, in pictures and in figures. */
final class FilmSheets {

  private static final int MOST_CLOSE_UPS = 2;
  private final FilmTables tables;
  private final ColourSigns signs;
  private final FindingCards findings;
  private final Measures units;
  private final Colour ground;
  private final Length tolerance;
  private final List<Evidence> facts;

  private FilmSheets(Checked.Judged judged, ColourSigns signs, FindingCards findings) {
    this.signs = signs;
    this.findings = findings;
    this.units = judged.plan().measures();
    this.ground = judged.plan().cloth().ground();
    this.tables = new FilmTables(judged);
    this.tolerance = tables.tolerance();
    this.facts = judged.facts().evidence();
  }

  /** One for each design that names a film. */
  static List<FilmSheet> of(Checked.Judged judged, ColourSigns signs, FindingCards findings) {
    FilmSheets sheets = new FilmSheets(judged, signs, findings);
    return judged.plan().designs().values().stream()
        .filter(design -> design.separations().stream().anyMatch(s -> s.artwork().isPresent()))
        .map(sheets::sheet)
        .toList();
  }

  private FilmSheet sheet(Design design) {
    List<Separation> pictured =
        design.separations().stream()
            .filter(s -> signs.pictures(design.name(), s.number()))
            .toList();
    List<RingMark> rings =
        findings.rings().stream()
            .filter(r -> design.separations().stream().anyMatch(s -> FilmDrawing.isOf(r, s)))
            .toList();
    List<FilmSheet.Picture> pictures = new ArrayList<>();
    for (Separation colour : pictured) {
      pictures.add(picture(design, colour));
    }
    if (!pictured.isEmpty()) {
      pictures.add(together(design, rings));
    }
    return new FilmSheet(
        design.name() + ", " + design.length().text(units) + " by " + design.width().text(units),
        pictures,
        pictured.isEmpty() ? List.of() : ringed(rings),
        closeUps(design, rings),
        tables.of(design));
  }

  private FilmSheet.Picture picture(Design design, Separation colour) {
    Artwork film = colour.artwork().orElseThrow();
    List<String> lines = new ArrayList<>();
    lines.add(tables.printed(colour, film));
    lines.add("line " + tables.lineTold(colour, film) + ", gap " + tables.gapTold(colour, film));
    tables
        .mesh(design, colour)
        .ifPresent(m -> lines.add(m.mesh().text(units) + " holds " + m.lineHolds().text(units)));
    String title = colour.number() + " " + colour.paste() + (colour.key() ? " (key)" : "");
    return new FilmSheet.Picture(
        FilmDrawing.film(
            signs,
            design,
            colour,
            ground,
            "The film of " + colour.paste() + " for " + design.name()),
        title,
        lines,
        tables.off(colour, film));
  }

  private FilmSheet.Picture together(Design design, List<RingMark> rings) {
    List<String> lines = new ArrayList<>();
    if (!rings.isEmpty()) {
      lines.add("Rings are round what was found.");
    }
    return new FilmSheet.Picture(
        FilmDrawing.together(
            signs, design, ground, rings, "All films of " + design.name() + " over each other"),
        "All together",
        lines,
        "");
  }

  private List<FilmSheet.Ring> ringed(List<RingMark> rings) {
    return rings.stream()
        .map(
            ring ->
                new FilmSheet.Ring(
                    ring.number(), ring.severity().text(), findings.summary(ring.number())))
        .toList();
  }

  /**
   * A place where two colours meet.
   *
   * @param at the narrowest lap, or strip of ground
   */
  private record Meeting(Joint joint, Finest at, String words) {}

  /** Where a finding tells of ground between colours, or of an edge, and where they lap least. */
  private List<FilmSheet.Picture> closeUps(Design design, List<RingMark> rings) {
    List<Meeting> gaps = new ArrayList<>();
    List<Meeting> laps = new ArrayList<>();
    for (Joint joint : design.joints()) {
      if (signs.pictures(design.name(), joint.one())
          && signs.pictures(design.name(), joint.other())) {
        joint
            .gap()
            .filter(gap -> isRinged(gap, rings))
            .ifPresent(gap -> gaps.add(new Meeting(joint, gap, ground(joint, gap))));
        joint
            .butt()
            .filter(butt -> isRinged(butt, rings))
            .ifPresent(butt -> gaps.add(new Meeting(joint, butt, "of lap: they only touch here")));
        joint.lap().ifPresent(lap -> laps.add(new Meeting(joint, lap, "of lap, at the narrowest")));
      }
    }
    Comparator<Meeting> narrowest = Comparator.comparing(meeting -> meeting.at().width());
    return Stream.concat(gaps.stream().sorted(narrowest), laps.stream().sorted(narrowest))
        .limit(MOST_CLOSE_UPS)
        .flatMap(meeting -> closeUp(design, meeting).stream())
        .toList();
  }

  /** The ground beside the narrowest place, which is the one that is told. */
  private String ground(Joint joint, Finest gap) {
    String widest =
        joint
            .gapUpTo()
            .map(Joint.Strips::widest)
            .filter(most -> most.minus(joint.point().times(2)).compareTo(gap.width()) > 0)
            .map(most -> "at the narrowest, up to " + most.text(units) + " ")
            .orElse("");
    return widest + "of ground lie between them";
  }

  private boolean liesOff(Design design, String one, String other) {
    return facts.stream()
        .flatMap(fact -> fact instanceof FilmOnOthers film ? Stream.of(film) : Stream.of())
        .anyMatch(f -> f.liesOff() && f.design().equals(design.name()) && f.isOf(one, other));
  }

  private static boolean isRinged(Finest gap, List<RingMark> rings) {
    return rings.stream().anyMatch(ring -> ring.place().equals(gap.place()));
  }

  private List<FilmSheet.Picture> closeUp(Design design, Meeting meeting) {
    Separation lower = design.separation(meeting.joint().one());
    Separation upper = design.separation(meeting.joint().other());
    String both = lower.paste() + " and " + upper.paste();
    Length bar = new Length(units.of(MeasureKind.LENGTH) == UnitSystem.METRIC ? 5 : 25.4 / 4);
    CloseUp closeUp =
        CloseUp.of(
            signs,
            design,
            ground,
            upper.x().plus(meeting.at().x()).mm(),
            design.width().mm() - upper.y().plus(meeting.at().y()).mm(),
            lower,
            upper,
            tolerance,
            bar,
            both);
    FilmSheet.Picture drawn =
        new FilmSheet.Picture(
            closeUp.asDrawn(),
            both + ", " + new Length(CloseUp.SIDE).text(units) + " square",
            List.of(
                meeting.at().width().text(units) + " " + meeting.words(),
                "the bar is " + bar.text(units) + " long"),
            "");
    if (liesOff(design, lower.paste(), upper.paste())) {
      // What a frame that is off lays bare says nothing of films that lie off by more.
      return List.of(drawn);
    }
    return List.of(
        drawn,
        new FilmSheet.Picture(
            closeUp.laidOff(),
            upper.paste()
                + " laid off by "
                + tolerance.text(units)
                + " "
                + ArtworkSpeech.towards(closeUp.right(), closeUp.far()),
            List.of(
                ArtworkSpeech.bared(
                    meeting.joint().of(upper.number()).bare(), tables.bareSeen(), units)),
            ""));
  }
}

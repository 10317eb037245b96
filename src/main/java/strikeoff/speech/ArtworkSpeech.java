package strikeoff.speech;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.artwork.facts.ArtworksApart;
import strikeoff.artwork.facts.ColourOffUnderlay;
import strikeoff.artwork.facts.FilmOnOthers;
import strikeoff.artwork.facts.FilmUnderOthers;
import strikeoff.artwork.facts.LineInPoints;
import strikeoff.artwork.facts.LooseOutline;
import strikeoff.artwork.facts.MarksOnFilms;
import strikeoff.artwork.facts.OpenJoint;
import strikeoff.artwork.facts.OutlineOverEdge;
import strikeoff.artwork.facts.PointsApart;
import strikeoff.artwork.facts.PrintAtBorder;
import strikeoff.artwork.facts.SamePicture;
import strikeoff.artwork.facts.StatedPrint;
import strikeoff.artwork.facts.StatedWidth;
import strikeoff.artwork.facts.ToneOfArtwork;
import strikeoff.artwork.facts.WideLap;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Design.Separation;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.Phrase;
import strikeoff.units.Share;
import strikeoff.units.UnitSystem;

/** Says what films print, and how they meet. */
public final class ArtworkSpeech {

  private static final double SMALL = 1000;
  private static final double HUNDRED = 100;

  private ArtworkSpeech() {}

  /** The tone that prints, as a plan writes it. */
  public static String toneText(ToneOfArtwork artwork) {
    return artwork.tone().word();
  }

  /** The tone that doesn't. */
  public static String otherText(ToneOfArtwork artwork) {
    return artwork.tone().other().word();
  }

  /** What speaks for a negative besides; to go on a sentence. */
  public static String sign(PrintAtBorder print) {
    return print.enclosed().fraction() > print.over().fraction()
        ? ", and what stays bare is what the outline encloses"
        : ", and lies on " + print.over().text() + " of what is printed before it";
  }

  /** What would lie between a film's edges and the others'; to go on a sentence. */
  public static String stripText(FilmOnOthers film, Measures units) {
    double lap = film.lap().mm();
    if (Math.abs(lap) < Length.FINE_TOLERANCE) {
      return "edge to edge";
    }
    return lap < 0
        ? "with " + film.lap().times(-1).text(units) + " of ground between them"
        : "lapping them by " + film.lap().text(units);
  }

  /** What a film misses, as it would be set right. */
  public static String how(FilmOnOthers film, Measures units) {
    List<String> all = new ArrayList<>();
    if (film.otherSize()) {
      all.add("came out at " + film.scale().text() + " of its size");
    }
    if (film.isSkewed()) {
      double degrees = film.skew().degrees();
      all.add(
          "were turned by "
              + Numbers.plain(Math.abs(degrees), 1)
              + "° "
              + (degrees > 0 ? "anticlockwise" : "clockwise"));
    }
    List<String> moves = new ArrayList<>();
    move(film.right(), "to the right", "to the left", units).ifPresent(moves::add);
    move(film.far(), "to the far edge", "to the near edge", units).ifPresent(moves::add);
    if (!moves.isEmpty()) {
      all.add("lay " + String.join(" and ", moves));
    }
    return Phrase.list(all);
  }

  /** Whether it is that film; to go on after a sentence. */
  public static String which(FilmOnOthers film) {
    return film.eitherOne() ? " Films don't tell which of them it is." : "";
  }

  /** What is turned and how, as far as films tell. */
  public static String turnedFilm(FilmOnOthers film) {
    return (film.eitherOne() ? "one of the two" : film.file())
        + switch (film.turn()) {
          case OVER -> " were turned over, left for right";
          case UPENDED -> " were turned over, top for bottom";
          case ROUND -> " were turned by 180°";
        };
  }

  /** What to look for on films that are turned, and what to do then. */
  public static String turnBack(FilmOnOthers film) {
    String look =
        film.eitherOne()
            ? "Look at the drawing which of the two "
                + (film.turn() == FilmOnOthers.Turn.ROUND
                    ? "lies upside down, "
                    : "is turned over, ")
                + film.file()
                + " or "
                + Phrase.list(film.others())
                + "."
            : "Hold " + film.file() + " against the drawing.";
    String back =
        "Is it seen through its back, write `reads: wrong` beside it, or drop that if it is there;"
            + " was it exported as a mirror image, export it anew";
    return look
        + switch (film.turn()) {
          case OVER -> " " + back + ".";
          case UPENDED -> " " + back + ". Save it the right way up either way.";
          case ROUND -> " Save it anew the right way up.";
        };
  }

  private static Optional<String> move(Length by, String there, String back, Measures units) {
    double mm = Math.abs(by.mm());
    return mm < Length.TOLERANCE
        ? Optional.empty()
        : Optional.of(toTenths(new Length(mm), units) + " further " + (by.mm() > 0 ? there : back));
  }

  public static String byText(FilmOnOthers film, Measures units) {
    return toTenths(film.by(), units);
  }

  public static String table(FilmOnOthers film) {
    return SequenceSpeech.laid(film.railed());
  }

  /** What to write to have the marks cut off, and what to do instead. */
  public static String cut(MarksOnFilms marks, Measures units) {
    if (!marks.clear()) {
      return "Output them without marks, or with marks that stand clear of the design: no strip takes"
          + " these alone.";
    }
    String margin =
        marks
            .wholeMargin()
            .map(all -> "`margin: " + all.writtenText(units) + "`")
            .orElse("a `margin` wider by " + marks.margin().writtenText(units));
    String rest =
        marks.sized()
            ? ", `size: " + marks.sizeText(units) + "` and `at: " + marks.atText(units) + "`"
            : "";
    return "Write "
        + margin
        + rest
        + (marks.files().size() == 1
            ? " beside it, or output it without marks."
            : " beside each film, or output them without marks.");
  }

  /** How large the largest is: measured with a rule on the film it is found by that. */
  public static String largestText(MarksOnFilms marks, Measures units) {
    return toTenths(marks.largest(), units);
  }

  /** Which films have none to meet them. */
  public static String unmet(MarksOnFilms marks) {
    List<String> films = marks.without();
    return films.isEmpty()
        ? ""
        : " " + Phrase.list(films) + (films.size() == 1 ? " has" : " have") + " none to meet them.";
  }

  /** What to do for them to be of use; to end a sentence. */
  public static String meet(MarksOnFilms marks) {
    return marks.without().isEmpty()
        ? ""
        : ", and output "
            + Phrase.list(marks.without())
            + " with the same ones, or nothing shows whether the frames meet";
  }

  /** Told beside a line that isn't drawn for its own sake. */
  private static final String OF_MARK = "of a register mark";

  /** Whose a separation’s finest line is; empty of what is drawn for its own sake. */
  public static Optional<String> mark(
      List<Evidence> facts, Separation separation, Optional<Finest> finest) {
    return facts.stream()
        .filter(MarksOnFilms.class::isInstance)
        .map(MarksOnFilms.class::cast)
        .filter(marks -> marks.areAt(separation.path(), finest))
        .map(marks -> OF_MARK)
        .findFirst();
  }

  /** What else to do where the plan gives them sizes of their own; to end a sentence. */
  public static String unsized(ArtworksApart apart) {
    return apart.sized() ? ", and leave out the `size` of its separations" : "";
  }

  /** A film taken the wrong way round prints what it should leave bare. */
  public static String negative(StatedPrint print) {
    return print.bareInstead()
        ? " That is what the film leaves bare: if it is a negative, write `prints: "
            + print.prints().other().word()
            + "`."
        : "";
  }

  public static String byText(ArtworksApart apart, Measures units) {
    return toTenths(apart.by(), units);
  }

  public static String table(ArtworksApart apart) {
    return SequenceSpeech.laid(apart.railed());
  }

  /** Who has how many points, those that are most first. */
  public static String pointsText(PointsApart apart) {
    List<String> all = new ArrayList<>();
    for (PointsApart.Kind kind : apart.kinds()) {
      boolean one = kind.files().size() == 1;
      String has = all.isEmpty() ? (one ? " has " : " have ") : " ";
      String points = kind.columns() + " x " + kind.rows();
      all.add(Phrase.list(kind.files()) + has + points + (all.isEmpty() ? " points" : ""));
    }
    return String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
  }

  /** How large the odd ones are of the first ones, if all are of one resolution. */
  public static String scaled(PointsApart apart) {
    return Phrase.list(apart.worst())
        + (apart.worst().size() == 1 ? " is " : " are ")
        + Numbers.plain(apart.scale().percent(), 1)
        + " % of the size of "
        + Phrase.list(apart.kinds().get(0).files());
  }

  /** What to write beside those whose resolution is another one; to end a sentence. */
  public static String resolutions(PointsApart apart) {
    return Phrase.list(
        apart.writes().stream()
            .map(w -> "`resolution: " + Numbers.plain(w.points(), 2) + "/cm` beside " + w.file())
            .toList());
  }

  public static String byText(PointsApart apart, Measures units) {
    return toTenths(apart.by(), units);
  }

  public static String table(PointsApart apart) {
    return SequenceSpeech.laid(apart.railed());
  }

  public static String statedText(StatedPrint print, Measures units) {
    return printed(print.stated(), print.statedShare(), units);
  }

  public static String printedText(StatedPrint print, Measures units) {
    return printed(print.printed(), print.printedShare(), units);
  }

  /** What the film says instead. */
  public static String measuredText(StatedWidth width, Measures units) {
    boolean trap = width.key().equals("trap");
    return width.file()
        + width
            .measured()
            .map(m -> (trap ? " laps another colour by " : "’s finest line is ") + m.text(units))
            .orElse(trap ? " laps no other colour" : " has no line so fine that it is measured");
  }

  /** An area that a film prints, also as a share of its rectangle. */
  public static String printed(Area area, Share share, Measures units) {
    return toTenths(area, units) + " (" + share.text() + ")";
  }

  /** The bare ground between two colours. */
  public static String gapText(OpenJoint joint, Measures units) {
    String least = width(joint.gap(), units);
    String most = joint.ground().map(widest -> widest.text(units)).orElse(least);
    return least.equals(most) ? least : least + " to " + most;
  }

  public static String gapOver(OpenJoint joint, Measures units) {
    return joint.strips().map(s -> s.over().roundedUp(units)).orElse("");
  }

  /** Where to look for it. */
  public static String gapAt(OpenJoint joint, Measures units) {
    return at(joint.gap(), units);
  }

  public static String table(OpenJoint joint) {
    return SequenceSpeech.laid(joint.railed());
  }

  /** Of all that are told together; each is the worst of its own. */
  public static String bareText(OutlineOverEdge outline, Measures units) {
    double bare = outline.all().stream().mapToDouble(o -> o.bare().squareCm()).sum();
    return small(new Area(bare), units);
  }

  public static String lapText(OutlineOverEdge outline, Measures units) {
    return outline.lap().text(units);
  }

  /** How far it reaches over each colour. */
  public static String lapsText(OutlineOverEdge outline, Measures units) {
    return Phrase.list(
        outline.all().stream().map(o -> o.colour() + " by " + o.lap().text(units)).toList());
  }

  /** How much of each colour lies beside what it is printed on. */
  public static String besideText(ColourOffUnderlay off, Measures units) {
    return Phrase.list(
        off.all().stream()
            .map(o -> o.share().text() + " of " + o.paste() + " (" + small(o.area(), units) + ")")
            .toList());
  }

  public static String table(ColourOffUnderlay off) {
    return SequenceSpeech.laid(off.railed());
  }

  /** To look at two films, after what to write where one may be a negative. */
  public static String layText(ColourOffUnderlay off) {
    StringBuilder all = new StringBuilder();
    for (PrintAtBorder film : off.negative()) {
      all.append(film.file())
          .append(" prints ")
          .append(film.printed().text())
          .append(" of its rectangle, all round up to its border, as a negative does: if it was")
          .append(" saved as one, write `prints: ")
          .append(film.otherTone())
          .append("` beside it. ");
    }
    return all + (all.isEmpty() ? "Lay" : "Otherwise lay");
  }

  public static String secondText(SamePicture same) {
    return same.isOneFile() ? "The film of " + same.second() : same.other();
  }

  public static String oneText(SamePicture same) {
    return same.isOneFile() ? "that of " + same.first() + ", " + same.one() : same.one();
  }

  public static String besideText(FilmUnderOthers film, Measures units) {
    return small(film.beside(), units);
  }

  /** How each colour misses its outline; a sentence's beginning. */
  public static String misses(LooseOutline outline, Measures units) {
    List<String> all = new ArrayList<>();
    for (OpenJoint joint : outline.open()) {
      all.add(
          joint.gapes()
              ? joint.under() + " leaves " + gapText(joint, units) + " of ground beside it"
              : joint.under() + " only touches it over " + joint.butt().text(units));
    }
    for (OutlineOverEdge lap : outline.hardly()) {
      all.add(lap.colour() + " runs under it by " + lap.lap().text(units) + " at least");
    }
    return Phrase.list(all);
  }

  /** By how much to spread each. */
  public static String spreads(LooseOutline outline, Measures units) {
    List<String> all = new ArrayList<>();
    outline.open().forEach(j -> all.add(j.under() + " by " + j.spread().roundedUp(units)));
    outline.hardly().forEach(o -> all.add(o.colour() + " by " + o.spread().roundedUp(units)));
    return Phrase.list(all);
  }

  public static String table(LooseOutline outline) {
    return SequenceSpeech.laid(outline.railed());
  }

  /** How wide the outline is where it laps least. */
  public static String widthText(OutlineOverEdge outline, Measures units) {
    return outline.all().stream()
        .flatMap(o -> o.width().stream())
        .min(Comparator.naturalOrder())
        .map(width -> width.text(units))
        .orElse("more than " + Artwork.WIDEST_FINE.text(units));
  }

  /** What an outline leaves open that is thin as well; to end a sentence. */
  public static String thin(OutlineOverEdge outline, Measures units) {
    return outline.thin()
        ? ", or be drawn "
            + outline.wanted().roundedUp(units)
            + " wide, which hides the edge surely"
        : "";
  }

  public static String table(OutlineOverEdge outline) {
    return SequenceSpeech.laid(outline.railed());
  }

  public static String over(WideLap lap, Measures units) {
    return over(Optional.of(lap.lap()), units);
  }

  public static String table(WideLap lap) {
    return SequenceSpeech.laid(lap.railed());
  }

  /** Where to look for it. */
  public static String at(WideLap lap, Measures units) {
    return at(Optional.of(lap.lap()), units);
  }

  /** Slivers are told in square millimetres. */
  public static String small(Area area, Measures units) {
    double squareMm = area.squareCm() * HUNDRED;
    return units.of(MeasureKind.AREA) == UnitSystem.METRIC && squareMm < SMALL
        ? Numbers.plain(squareMm, squareMm < TEN ? 1 : 0) + " mm²"
        : area.text(units);
  }

  private static final double TEN = 10;

  /**
   * To which side something is moved.
   *
   * @param right how far to the right, to the left if negative
   * @param far the same towards the far edge
   */
  public static String towards(double right, double far) {
    double least = (Math.abs(right) + Math.abs(far)) / HUNDRED;
    List<String> sides = new ArrayList<>();
    if (Math.abs(right) > least) {
      sides.add(right > 0 ? "to the right" : "to the left");
    }
    if (Math.abs(far) > least) {
      sides.add(far > 0 ? "to the far edge" : "to the near edge");
    }
    return String.join(" and ", sides);
  }

  /**
   * What opens where a film is laid off, over all of it.
   *
   * @param seen less of it is found by nobody
   */
  public static String bared(Area most, Area seen, Measures units) {
    if (most.squareCm() == 0) {
      return "no more ground comes bare to any side, on the whole film";
    }
    return most.squareCm() < seen.squareCm()
        ? "no more ground comes bare that anybody would see, on the whole film: less than "
            + small(seen, units)
        : "more ground that comes bare on the whole film, not all of it here: up to "
            + small(most, units);
  }

  /** How wide it is; nothing if there is none. */
  public static String width(Optional<Finest> finest, Measures units) {
    return finest.map(f -> f.width().text(units)).orElse("");
  }

  /** How long it is. */
  public static String over(Optional<Finest> finest, Measures units) {
    return finest.map(f -> f.over().roundedUp(units)).orElse("");
  }

  /** Where on its separation. */
  public static String at(Optional<Finest> finest, Measures units) {
    return finest
        .map(
            f ->
                f.x().text(units)
                    + " from the left and "
                    + f.y().text(units)
                    + " from the near edge")
        .orElse("");
  }

  /** How many points, in words of people. */
  public static String pointsText(LineInPoints line) {
    String points = Numbers.plain(line.points(), 1);
    return points + (points.equals("1") ? " point" : " points");
  }

  /** A resolution that shows it well, in hundreds of points an inch. */
  public static String resolution(LineInPoints line) {
    return Numbers.plain(Math.ceil(line.wantedPerInch() / HUNDRED) * HUNDRED, 0) + "/in";
  }

  /** What is compared is told to a figure more than what is needed. */
  static String toTenths(Area area, Measures units) {
    return units.of(MeasureKind.AREA) == UnitSystem.METRIC && area.squareCm() < SMALL
        ? Numbers.plain(area.squareCm(), 1) + " cm²"
        : area.text(units);
  }

  static String toTenths(Length length, Measures units) {
    return units.of(MeasureKind.LENGTH) == UnitSystem.METRIC
        ? Numbers.plain(length.mm(), 1) + " mm"
        : length.text(units);
  }
}

package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.artwork.facts.CellParts.Part;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.document.Scalars;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.FilmPlace;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintedCells;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Pair;

/**
 * Small marks near the border of films: register marks. They stand at the same places of all films
 * of a design, which hardly has such itself, since its colours would print there over each other,
 * and are several crosses, or each has its fellow across the middle; or they are crosses in the
 * four corners of some films, or the only two that a film has, which mirror each other.
 *
 * @param files the films, as the plan writes them
 * @param count of such marks on each of them
 * @param strip how wide a strip all round takes them
 * @param largest the longer side of the largest one
 * @param without the other films of their rectangle, which have none in their corners
 * @param boxes around them on the first film, with a cell more on each side
 * @param clear true if that strip holds nothing else but small parts, so that it can be cut off
 * @param sized true if the films say how large they are
 * @param films of each separation, what is written of it
 */
public record MarksOnFilms(
    String design,
    List<String> files,
    int count,
    Length strip,
    Length largest,
    List<String> without,
    List<Box> boxes,
    boolean clear,
    boolean sized,
    List<Film> films,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public MarksOnFilms {
    files = List.copyOf(files);
    without = List.copyOf(without);
    boxes = List.copyOf(boxes);
    films = List.copyOf(films);
    related = List.copyOf(related);
  }

  /** A rectangle on a separation, in mm from its left near corner. */
  public record Box(double left, double right, double near, double far) {

    boolean holds(FilmPlace place) {
      return place.x().mm() >= left
          && place.x().mm() <= right
          && place.y().mm() >= near
          && place.y().mm() <= far;
    }
  }

  /** True if what is finest on a separation of the design is a part of such a mark. */
  public boolean areAt(PlanPath separation, Optional<Finest> finest) {
    return finest.isPresent()
        && films.stream().anyMatch(f -> f.separation().equals(separation))
        && boxes.stream().anyMatch(b -> b.holds(finest.get().place()));
  }

  /**
   * A film with marks.
   *
   * @param margin that is cut off already
   * @param corner of its rectangle, on the design
   * @param size of its rectangle
   */
  public record Film(PlanPath separation, Length margin, Pair corner, Pair size) {

    private Length wider(Length by) {
      return margin.plus(by);
    }
  }

  /**
   * None where there are no marks; films of another size than is wanted have to come right first.
   * What stands on all films of one rectangle is told of them together, wherever it is if it is a
   * cross; else crosses in all four corners are, of the films that have them.
   */
  static List<MarksOnFilms> of(Design design, Length tolerance, Policy policy) {
    List<Separation> films =
        design.separations().stream().filter(s -> s.artwork().isPresent()).toList();
    double most = policy.artwork().markMost().mm();
    double strip = policy.artwork().markStrip().mm();
    boolean together =
        films.size() > 1
            && films.stream().allMatch(s -> s.fillsRectangleOf(films.get(0)))
            && films.stream().allMatch(s -> isOfSize(s, tolerance));
    if (together) {
      List<List<Part>> parts = parts(films, strip);
      List<Part> marks = onAll(parts.get(0), parts, most, film(films.get(0)).cells());
      List<Part> fellows =
          marks.stream().filter(p -> hasFellow(marks, p, film(films.get(0)).cells())).toList();
      if (!fellows.isEmpty()) {
        return List.of(of(design, films, List.of(), fellows, parts, most, true));
      }
    }
    List<MarksOnFilms> all = new ArrayList<>();
    for (List<Separation> here : Separation.byRectangle(films)) {
      crosses(design, here, tolerance, most, strip).ifPresent(all::add);
    }
    return all;
  }

  private static List<List<Part>> parts(List<Separation> films, double strip) {
    return films.stream().map(s -> CellParts.of(film(s).cells(), strip)).toList();
  }

  /** Those of one film that may be marks and stand on all of some films. */
  private static List<Part> onAll(
      List<Part> of, List<List<Part>> films, double most, PrintedCells cells) {
    return of.stream()
        .filter(p -> !p.deep() && p.extent() <= most)
        .filter(p -> films.stream().allMatch(others -> has(others, p, cells)))
        .toList();
  }

  private static final int CORNERS = 4;

  /** Crosses with fellows both ways, on those of some films of one rectangle that have any. */
  private static Optional<MarksOnFilms> crosses(
      Design design, List<Separation> films, Length tolerance, double most, double strip) {
    List<Separation> marked = new ArrayList<>();
    List<String> without = new ArrayList<>();
    List<Part> marks = List.of();
    for (Separation film : films) {
      PrintedCells cells = film(film).cells();
      List<Part> crosses =
          CellParts.of(cells, strip).stream().filter(p -> p.cross() && p.extent() <= most).toList();
      List<Part> corners =
          crosses.stream()
              .filter(p -> has(crosses, over(p, cells), cells))
              .filter(p -> has(crosses, across(p, cells), cells))
              .toList();
      // Two that mirror each other are marks as well, where no other cross is.
      boolean pair =
          crosses.size() == 2 && crosses.stream().allMatch(p -> isMirrored(crosses, p, cells));
      List<Part> here = pair ? crosses : corners;
      boolean alike =
          marks.isEmpty() || onAll(here, List.of(marks), most, cells).size() >= marks.size();
      // More of them, or one further in, are a pattern of crosses.
      boolean few =
          (pair || corners.size() >= CORNERS)
              && crosses.size() <= 2 * CORNERS
              && crosses.stream().noneMatch(Part::deep);
      if (here.isEmpty()) {
        without.add(film(film).file());
      }
      if (isOfSize(film, tolerance) && few && alike) {
        marks = marks.isEmpty() ? here : marks;
        marked.add(film);
      }
    }
    return marked.isEmpty()
        ? Optional.empty()
        : Optional.of(
            of(
                design,
                marked,
                without,
                marks,
                parts(marked, strip),
                most,
                marked.size() == films.size()));
  }

  private static boolean isOfSize(Separation separation, Length tolerance) {
    return film(separation)
        .says()
        .filter(
            says ->
                Math.abs(says.along().mm() - separation.length().mm()) > tolerance.mm()
                    || Math.abs(says.across().mm() - separation.width().mm()) > tolerance.mm())
        .isEmpty();
  }

  private static Artwork film(Separation separation) {
    return separation.artwork().orElseThrow();
  }

  /** Areas of one mark on two films differ by less, as a share: by its edges' points. */
  private static final double ALIKE = 0.1;

  /** True if one of them lies there and is as large, to a cell either way, and prints as much. */
  private static boolean has(List<Part> parts, Part mark, PrintedCells cells) {
    double along = 1.5 * cells.cellLength();
    double across = 1.5 * cells.cellWidth();
    return parts.stream()
        .anyMatch(
            p ->
                Math.abs(p.left() - mark.left()) <= along
                    && Math.abs(p.right() - mark.right()) <= along
                    && Math.abs(p.near() - mark.near()) <= across
                    && Math.abs(p.far() - mark.far()) <= across
                    && Math.abs(p.area() - mark.area()) <= ALIKE * mark.area());
  }

  /**
   * True if another one is a cross as well, or its mirror image across a middle line, or across
   * both one after the other.
   */
  private static boolean hasFellow(List<Part> marks, Part p, PrintedCells cells) {
    List<Part> others = marks.stream().filter(m -> m != p).toList();
    return p.cross() && others.stream().anyMatch(Part::cross) || isMirrored(others, p, cells);
  }

  /** True if one of them is its mirror image across a middle line, or across both. */
  private static boolean isMirrored(List<Part> parts, Part p, PrintedCells cells) {
    List<Part> others = parts.stream().filter(o -> o != p).toList();
    return has(others, over(p, cells), cells)
        || has(others, across(p, cells), cells)
        || has(others, across(over(p, cells), cells), cells);
  }

  /** Its mirror image across the middle line that runs upright. */
  private static Part over(Part p, PrintedCells cells) {
    double length = cells.length();
    return moved(p, length - p.right(), length - p.left(), p.near(), p.far());
  }

  private static Part across(Part p, PrintedCells cells) {
    double width = cells.width();
    return moved(p, p.left(), p.right(), width - p.far(), width - p.near());
  }

  private static Part moved(Part p, double left, double right, double near, double far) {
    return new Part(left, right, near, far, p.length(), p.width(), p.area(), false, p.cross());
  }

  /**
   * @param without files of films of their rectangle that have none
   * @param whole true if all films of their rectangle have them
   */
  private static MarksOnFilms of(
      Design design,
      List<Separation> films,
      List<String> without,
      List<Part> marks,
      List<List<Part>> all,
      double most,
      boolean whole) {
    double length = films.get(0).length().mm();
    double width = films.get(0).width().mm();
    double strip =
        marks.stream()
            .mapToDouble(
                m ->
                    Math.min(
                        Math.min(m.right(), length - m.left()),
                        Math.min(m.far(), width - m.near())))
            .max()
            .orElseThrow();
    // A cell may hold a part of a mark alone, so the next whole millimetre takes all of it: by its
    // cells too, by which it is seen below whether all of it lies in the strip.
    double wide = Math.ceil(strip - 1e-6);
    boolean clear =
        all.stream()
            .flatMap(List::stream)
            .allMatch(
                p ->
                    p.left() >= wide
                            && p.near() >= wide
                            && p.right() <= length - wide
                            && p.far() <= width - wide
                        || Math.min(p.length(), p.width()) <= most
                            && liesIn(p, wide, length, width));
    boolean sized = films.stream().allMatch(s -> film(s).says().isPresent());
    return new MarksOnFilms(
        design.name(),
        films.stream().map(s -> film(s).file()).distinct().toList(),
        marks.size(),
        new Length(wide),
        new Length(marks.stream().mapToDouble(Part::extent).max().orElse(0)),
        without.stream().distinct().toList(),
        marks.stream().map(m -> box(m, film(films.get(0)).cells())).toList(),
        // Without a size of their own the rest would fill the rectangle, unlike their fellows.
        clear && 2 * wide < Math.min(length, width) && (whole || sized),
        sized,
        films.stream()
            .map(
                s ->
                    new Film(
                        s.path(),
                        film(s).margin(),
                        new Pair(s.x(), s.y()),
                        new Pair(s.length(), s.width())))
            .toList(),
        films.stream()
            .skip(1)
            .map(s -> new Related(Tie.OTHER_FILM, s.path().key("artwork")))
            .toList(),
        films.get(0).path().key("artwork"));
  }

  private static Box box(Part mark, PrintedCells cells) {
    return new Box(
        mark.left() - cells.cellLength(),
        mark.right() + cells.cellLength(),
        mark.near() - cells.cellWidth(),
        mark.far() + cells.cellWidth());
  }

  /** True if a part lies all in the strip along one of the sides. */
  private static boolean liesIn(Part p, double strip, double length, double width) {
    return p.right() <= strip
        || p.left() >= length - strip
        || p.far() <= strip
        || p.near() >= width - strip;
  }

  /**
   * What to write so that the strip is cut off. Of films that say their size the rest keeps its
   * size and its place; of others the rest fills the rectangle.
   */
  public List<List<Edit>> margins(Measures units) {
    if (!clear) {
      return List.of();
    }
    List<Edit> edits = new ArrayList<>();
    for (Film film : films) {
      edits.add(write(film, "margin", film.wider(margin()).writtenText(units)));
      if (sized) {
        edits.add(write(film, "size", sizeText(units)));
        edits.add(write(film, "at", Scalars.quoted(atText(units))));
      }
    }
    return List.of(edits);
  }

  private static Edit write(Film film, String key, String value) {
    return new Edit.Write(film.separation().key(key), value);
  }

  /** How large the films are without the strip, as a plan writes it. */
  public String sizeText(Measures units) {
    Pair size = films.get(0).size();
    return less(size.along(), strip.mm()).writtenText(units)
        + " x "
        + less(size.across(), strip.mm()).writtenText(units);
  }

  /** Where they lie then. */
  public String atText(Measures units) {
    Pair corner = films.get(0).corner();
    return corner.along().plus(strip).writtenText(units)
        + ", "
        + corner.across().plus(strip).writtenText(units);
  }

  /** What to cut off in all; empty if the films have margins that differ. */
  public Optional<Length> wholeMargin() {
    boolean alike = films.stream().allMatch(f -> f.margin().equals(films.get(0).margin()));
    return alike ? Optional.of(films.get(0).wider(margin())) : Optional.empty();
  }

  private static Length less(Length side, double strip) {
    return new Length(side.mm() - 2 * strip);
  }

  /**
   * How wide the strip is on films as large as they come out: where nothing says their size, the
   * rectangle is that of the rest.
   */
  public Length margin() {
    if (sized) {
      return strip;
    }
    Pair size = films.get(0).size();
    double along = strip.mm() / (1 - 2 * strip.mm() / size.along().mm());
    double across = strip.mm() / (1 - 2 * strip.mm() / size.across().mm());
    return new Length(Math.ceil(Math.max(along, across) - 1e-6));
  }
}

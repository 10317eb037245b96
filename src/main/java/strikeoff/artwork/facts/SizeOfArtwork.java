package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Sized;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.policy.Limits;
import strikeoff.units.Length;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Pair;
import strikeoff.units.Share;
import strikeoff.units.UnitSystem;

/**
 * How large films of one design are by their own resolution, and how large the plan wants them;
 * those that are alike are told together.
 *
 * @param files their names, as the plan writes them
 * @param is how long and wide they are without the margin as the plan writes it; where nothing says
 *     a resolution, as wide as they are once they are as long as the plan wants
 * @param margin that is cut off all round
 * @param length that the plan wants
 * @param width that the plan wants
 * @param far how far what they print lies off at the far edge
 * @param tolerance how far a frame can be off on this table
 * @param columns points along, of each of them
 * @param rows points across
 * @param corner where the near left corner of their rectangle lies on the design
 * @param numbers of their separations, from 1 on
 * @param sized where the plan writes the size that it wants
 * @param fits true if the design and the screens hold what is printed at their own size
 * @param planMayBeWrong true if all films of the design are of this size and fill one rectangle,
 *     the plan says its size in one manner, and it would fit
 * @param stretched how many times as far as any output stretches a film it is stretched: above one
 *     it is another film
 * @param resolutionMayBeWrong true if all films of the design are off by the same scale, or one of
 *     the wanted size has as many points
 * @param asWanted points that make it as large as it is wanted; empty if none do
 * @param pastes that they print
 */
public record SizeOfArtwork(
    String design,
    List<String> files,
    Pair is,
    Length margin,
    Length length,
    Length width,
    Length far,
    boolean railed,
    Length tolerance,
    int columns,
    int rows,
    Pair corner,
    List<Integer> numbers,
    Sized sized,
    boolean fits,
    double stretched,
    boolean planMayBeWrong,
    boolean resolutionMayBeWrong,
    Optional<FilmResolution> asWanted,
    List<String> pastes,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  /** In mm. */
  private static final double TENTH_OF_INCH = 2.54;

  /** A point of a coarse film, in mm. */
  private static final double ROUNDING = 0.1;

  public SizeOfArtwork {
    files = List.copyOf(files);
    numbers = List.copyOf(numbers);
    pastes = List.copyOf(pastes);
    related = List.copyOf(related);
  }

  /** Of each film of a design, by itself. */
  static List<SizeOfArtwork> each(
      Design design, PrintPlan plan, Length tolerance, Limits.Artwork limits) {
    List<SizeOfArtwork> each = new ArrayList<>();
    for (Design.Separation separation : design.separations()) {
      separation
          .artwork()
          .map(artwork -> of(design, separation, artwork, plan, tolerance, limits))
          .ifPresent(each::add);
    }
    return each.stream().map(one -> one.among(each)).toList();
  }

  /** Those that are alike in one. */
  static List<SizeOfArtwork> together(List<SizeOfArtwork> each) {
    Map<List<Object>, SizeOfArtwork> bySize = new LinkedHashMap<>();
    each.forEach(one -> bySize.merge(one.size(), one, SizeOfArtwork::and));
    return List.copyOf(bySize.values());
  }

  private static SizeOfArtwork of(
      Design design,
      Design.Separation separation,
      Artwork artwork,
      PrintPlan plan,
      Length tolerance,
      Limits.Artwork limits) {
    Length length = separation.length();
    Length width = separation.width();
    Pair is =
        artwork
            .says()
            .orElseGet(
                () -> new Pair(length, length.times((double) artwork.rows() / artwork.columns())));
    Length margin = artwork.margin();
    Pair drawn = drawn(is, margin, length, width, tolerance);
    double far =
        Math.max(
            Math.abs(drawn.along().mm() - length.mm()), Math.abs(drawn.across().mm() - width.mm()));
    double shape =
        page(is.along(), margin)
            / page(is.across(), margin)
            * page(width, margin)
            / page(length, margin);
    return new SizeOfArtwork(
        design.name(),
        List.of(artwork.file()),
        is,
        margin,
        length,
        width,
        new Length(far),
        plan.table().railed(),
        tolerance,
        artwork.columns(),
        artwork.rows(),
        new Pair(separation.x(), separation.y()),
        List.of(separation.number()),
        artwork.sized(),
        fits(is, design, separation, artwork.sized(), plan.screens().get(separation.screen())),
        Math.max(shape, 1 / shape) / limits.stretchedMost().value(),
        true,
        true,
        FilmResolution.asWanted(artwork, is, length, width, tolerance, limits.resolutionStep()),
        List.of(separation.paste()),
        List.of(),
        separation.path().key("artwork"));
  }

  /** How long or wide a film is with what is cut off of it, in mm. */
  private static double page(Length side, Length margin) {
    return side.mm() + 2 * margin.mm();
  }

  /** True if a scale makes all of it as large as it is wanted, margin and all. */
  private static boolean scaled(
      Pair is, Length margin, Length length, Length width, Length tolerance) {
    double across = page(is.across(), margin) * page(length, margin) / page(is.along(), margin);
    return Math.abs(across - page(width, margin)) <= tolerance.mm();
  }

  /** How large what is drawn on it came out: at another scale so did its margin. */
  private static Pair drawn(Pair is, Length margin, Length length, Length width, Length tolerance) {
    return margin.mm() > 0 && scaled(is, margin, length, width, tolerance)
        ? new Pair(
            length.times(page(is.along(), margin) / page(length, margin)),
            width.times(page(is.across(), margin) / page(width, margin)))
        : is;
  }

  private static boolean fits(
      Pair is, Design design, Design.Separation separation, Sized sized, Screen screen) {
    Length right = separation.x().plus(is.along());
    Length far = separation.y().plus(is.across());
    boolean inDesign =
        sized instanceof Sized.ByDesign
            || !right.above(design.length().mm()) && !far.above(design.width().mm());
    return inDesign
        && (screen == null
            || !is.along().above(screen.imageLength().mm())
                && !is.across().above(screen.imageWidth().mm()));
  }

  /** The same with what the others of its design tell of it. */
  private SizeOfArtwork among(List<SizeOfArtwork> each) {
    boolean oneSize =
        each.stream()
            .allMatch(o -> o.is.equals(is) && o.fillsAs(this) && o.sized.equals(sized) && o.fits);
    boolean oneScale = each.stream().allMatch(this::hasScaleOf);
    boolean twin =
        each.stream().anyMatch(o -> !o.isOff() && o.columns == columns && o.rows == rows);
    return with(files, numbers, pastes, oneSize && !isAnother(), oneScale || twin, related);
  }

  private boolean hasScaleOf(SizeOfArtwork other) {
    return near(other.drawn().along().mm(), along().fraction() * other.length.mm())
        && near(other.drawn().across().mm(), across().fraction() * other.width.mm());
  }

  /** How long and wide what is drawn on it came out. */
  public Pair drawn() {
    return drawn(is, margin, length, width, tolerance);
  }

  /** True if both fill one rectangle. */
  boolean fillsAs(SizeOfArtwork other) {
    return corner.equals(other.corner) && length.equals(other.length) && width.equals(other.width);
  }

  /** True if what it prints at its far edge lies off by more than a frame can be. */
  public boolean isOff() {
    return far.mm() > tolerance.mm();
  }

  /** True if it is off by so much in its shape that no output made it so. */
  public boolean isAnother() {
    return stretched > 1;
  }

  /** What films have to share to be told together. */
  private List<Object> size() {
    return List.of(is, margin, length, width, columns, rows, asWanted);
  }

  /** True if it has the size that is wanted once it is turned by a right angle. */
  public boolean turned() {
    return isOff() && near(is.along().mm(), width.mm()) && near(is.across().mm(), length.mm());
  }

  /**
   * How wide a strip all round makes it larger than it is wanted; empty if none does, or frames are
   * off by more.
   */
  public Optional<Length> strip() {
    double strip = (is.along().mm() - length.mm()) / 2;
    return isOff() && strip > 0 && near(is.across().mm() - 2 * strip, width.mm())
        ? Optional.of(new Length(strip))
        : Optional.empty();
  }

  /**
   * Points that make it as large as it is wanted; empty if its shape or its fellows speak against
   * it. A plain figure speaks for itself: what came out at another size hardly has one.
   */
  public Optional<FilmResolution> resolution() {
    return asWanted.filter(points -> resolutionMayBeWrong || points.plain());
  }

  /** What to write if only that is wrong; nothing for a figure that is none to be set. */
  public List<List<Edit>> resolutions() {
    return resolution().filter(FilmResolution::plain).stream()
        .map(points -> written("resolution", points.written()))
        .toList();
  }

  /** What to write so that a strip all round is cut off of them as well. */
  public List<List<Edit>> margins(Measures units) {
    return wholeMargin(units).stream()
        .map(whole -> written("margin", whole.writtenText(units)))
        .toList();
  }

  private List<Edit> written(String key, String value) {
    return Stream.concat(Stream.of(path), related.stream().map(Related::path))
        .<Edit>map(film -> new Edit.Write(film.parent().key(key), value))
        .toList();
  }

  /**
   * What is cut off already and that strip: to a whole millimetre or tenth of an inch where it is
   * one but for rounding; empty if there is no such strip.
   */
  public Optional<Length> wholeMargin(Measures units) {
    double step = units.of(MeasureKind.LENGTH) == UnitSystem.METRIC ? 1 : TENTH_OF_INCH;
    return strip()
        .map(margin::plus)
        .map(
            whole -> {
              Length round = new Length(Math.round(whole.mm() / step) * step);
              return Math.abs(round.mm() - whole.mm()) < ROUNDING ? round : whole;
            });
  }

  /**
   * True if it is off in its shape, so that no scale makes it as large as it is wanted, nor a strip
   * that is cut off, nor a turn.
   */
  public boolean otherShape() {
    return isOff() && !turned() && strip().isEmpty() && !scaled();
  }

  /** True if it is as large as it is wanted once a strip is cut off, and no scale makes it so. */
  public boolean onlyStrip() {
    return strip().isPresent() && !scaled();
  }

  private boolean scaled() {
    return scaled(is, margin, length, width, tolerance);
  }

  /**
   * True if what it prints lies elsewhere than it was drawn once its page is as large as it is
   * wanted: its page has another shape, a strip all round, or lies on its side.
   */
  public boolean distorted() {
    return otherShape() || turned() || strip().isPresent();
  }

  /** How long it is, of what is wanted. */
  public Share along() {
    return new Share(drawn().along().mm() / length.mm());
  }

  /** How wide it is, of what is wanted. */
  public Share across() {
    return new Share(drawn().across().mm() / width.mm());
  }

  /** True if one of two colours is printed from it. */
  public boolean isOf(String one, String other) {
    return pastes.contains(one) || pastes.contains(other);
  }

  /** True if one of some colours is printed from it. */
  public boolean isOfAny(List<String> colours) {
    return !Collections.disjoint(pastes, colours);
  }

  private boolean near(double mm, double wanted) {
    return Math.abs(mm - wanted) <= tolerance.mm();
  }

  private SizeOfArtwork and(SizeOfArtwork other) {
    Set<String> all = new LinkedHashSet<>(files);
    all.addAll(other.files);
    List<Integer> both = new ArrayList<>(numbers);
    both.addAll(other.numbers);
    Set<String> inks = new LinkedHashSet<>(pastes);
    inks.addAll(other.pastes);
    List<Related> further = new ArrayList<>(related);
    further.add(new Related(Tie.OTHER_FILM, other.path));
    return with(
        List.copyOf(all), both, List.copyOf(inks), planMayBeWrong, resolutionMayBeWrong, further);
  }

  private SizeOfArtwork with(
      List<String> all,
      List<Integer> numbers,
      List<String> inks,
      boolean planMayBe,
      boolean resolutionMayBe,
      List<Related> further) {
    return new SizeOfArtwork(
        design,
        all,
        is,
        margin,
        length,
        width,
        far,
        railed,
        tolerance,
        columns,
        rows,
        corner,
        numbers,
        sized,
        fits,
        stretched,
        planMayBe,
        resolutionMayBe,
        asWanted,
        inks,
        further,
        path);
  }
}

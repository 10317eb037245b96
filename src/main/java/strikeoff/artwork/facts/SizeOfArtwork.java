package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/**
 * How large films of one design are by their own resolution, and how large the plan wants them;
 * those that are alike are told together.
 *
 * @param files their names, as the plan writes them
 * @param is how long and wide they are; where nothing says a resolution, as wide as they are once
 *     they are as long as the plan wants
 * @param length that the plan wants
 * @param width that the plan wants
 * @param far how far what they print lies off at the far edge
 * @param tolerance how far a frame can be off on this table
 * @param columns points along, of each of them
 * @param rows points across
 * @param corner where the near left corner of their rectangle lies on the design
 * @param planMayBeWrong true if all films of the design are of this size and fill one rectangle
 * @param resolutionMayBeWrong true if all films of the design are off by the same scale, or one of
 *     the wanted size has as many points
 */
public record SizeOfArtwork(
    String design,
    List<String> files,
    Pair is,
    Length length,
    Length width,
    Length far,
    boolean railed,
    Length tolerance,
    int columns,
    int rows,
    Pair corner,
    boolean planMayBeWrong,
    boolean resolutionMayBeWrong,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public SizeOfArtwork {
    files = List.copyOf(files);
    related = List.copyOf(related);
  }

  /** Of each film of a design, by itself. */
  static List<SizeOfArtwork> each(Design design, boolean railed, Length tolerance) {
    List<SizeOfArtwork> each = new ArrayList<>();
    for (Design.Separation separation : design.separations()) {
      separation
          .artwork()
          .map(artwork -> of(design, separation, artwork, railed, tolerance))
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
      boolean railed,
      Length tolerance) {
    Length length = separation.length();
    Length width = separation.width();
    Pair is =
        artwork
            .says()
            .orElseGet(
                () -> new Pair(length, length.times((double) artwork.rows() / artwork.columns())));
    double far =
        Math.max(Math.abs(is.along().mm() - length.mm()), Math.abs(is.across().mm() - width.mm()));
    return new SizeOfArtwork(
        design.name(),
        List.of(artwork.file()),
        is,
        length,
        width,
        new Length(far),
        railed,
        tolerance,
        artwork.columns(),
        artwork.rows(),
        new Pair(separation.x(), separation.y()),
        true,
        true,
        List.of(),
        separation.path().key("artwork"));
  }

  /** The same with what the others of its design tell of it. */
  private SizeOfArtwork among(List<SizeOfArtwork> each) {
    boolean oneSize = each.stream().allMatch(o -> o.is.equals(is) && o.fillsAs(this));
    boolean oneScale = each.stream().allMatch(this::hasScaleOf);
    boolean twin =
        each.stream().anyMatch(o -> !o.isOff() && o.columns == columns && o.rows == rows);
    return with(files, oneSize, oneScale || twin, related);
  }

  private boolean hasScaleOf(SizeOfArtwork other) {
    double along = is.along().mm() / length.mm() * other.length.mm();
    double across = is.across().mm() / width.mm() * other.width.mm();
    return near(other.is.along().mm(), along) && near(other.is.across().mm(), across);
  }

  /** True if both fill one rectangle. */
  boolean fillsAs(SizeOfArtwork other) {
    return corner.equals(other.corner) && length.equals(other.length) && width.equals(other.width);
  }

  /** True if what it prints at its far edge lies off by more than a frame can be. */
  public boolean isOff() {
    return far.mm() > tolerance.mm();
  }

  /** What films have to share to be told together. */
  private List<Object> size() {
    return List.of(is, length, width, columns, rows);
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
   * Points a centimetre that make it as large as it is wanted; empty if its shape or its fellows
   * speak against it.
   */
  public Optional<Double> pointsPerCm() {
    double scale = length.mm() / is.along().mm();
    return resolutionMayBeWrong && near(is.across().mm() * scale, width.mm())
        ? Optional.of(columns / length.cm())
        : Optional.empty();
  }

  private boolean near(double mm, double wanted) {
    return Math.abs(mm - wanted) <= tolerance.mm();
  }

  private SizeOfArtwork and(SizeOfArtwork other) {
    Set<String> all = new LinkedHashSet<>(files);
    all.addAll(other.files);
    List<Related> further = new ArrayList<>(related);
    further.add(new Related(Tie.OTHER_FILM, other.path));
    return with(List.copyOf(all), planMayBeWrong, resolutionMayBeWrong, further);
  }

  private SizeOfArtwork with(
      List<String> all, boolean planMayBe, boolean resolutionMayBe, List<Related> further) {
    return new SizeOfArtwork(
        design,
        all,
        is,
        length,
        width,
        far,
        railed,
        tolerance,
        columns,
        rows,
        corner,
        planMayBe,
        resolutionMayBe,
        further,
        path);
  }
}

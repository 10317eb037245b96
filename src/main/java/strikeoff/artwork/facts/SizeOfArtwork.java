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
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public SizeOfArtwork {
    files = List.copyOf(files);
    related = List.copyOf(related);
  }

  static List<SizeOfArtwork> of(Design design, boolean railed, Length tolerance) {
    Map<List<Double>, SizeOfArtwork> bySize = new LinkedHashMap<>();
    for (Design.Separation separation : design.separations()) {
      separation
          .artwork()
          .map(artwork -> of(design, separation, artwork, railed, tolerance))
          .ifPresent(one -> bySize.merge(one.size(), one, SizeOfArtwork::and));
    }
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
        List.of(),
        separation.path().key("artwork"));
  }

  /** What films have to share to be told together. */
  private List<Double> size() {
    return List.of(is.along().mm(), is.across().mm(), length.mm(), width.mm(), (double) columns);
  }

  /** True if it has the size that is wanted once it is turned by a right angle. */
  public boolean turned() {
    return near(is.along().mm(), width.mm()) && near(is.across().mm(), length.mm());
  }

  /** How wide a strip all round makes it larger than it is wanted; empty if none does. */
  public Optional<Length> strip() {
    double strip = (is.along().mm() - length.mm()) / 2;
    return strip > 0 && near(is.across().mm() - 2 * strip, width.mm())
        ? Optional.of(new Length(strip))
        : Optional.empty();
  }

  /** Points a centimetre that make it as large as it is wanted; empty if its shape is another. */
  public Optional<Double> pointsPerCm() {
    double scale = length.mm() / is.along().mm();
    return near(is.across().mm() * scale, width.mm())
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
    return new SizeOfArtwork(
        design,
        List.copyOf(all),
        is,
        length,
        width,
        far,
        railed,
        tolerance,
        columns,
        further,
        path);
  }
}

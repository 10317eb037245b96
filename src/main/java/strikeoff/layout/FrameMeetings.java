package strikeoff.layout;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What of a layout meets, in whatever order it is printed: the films that a frame would lie on, and
 * the frames that would lie in its way. A frame's are looked up when somebody first asks for them.
 * One thread at a time.
 */
public final class FrameMeetings {

  /** Meetings that are kept; past it all are forgotten, so that they don't fill memory. */
  private static final int MOST = 1_000_000;

  private final Tube tube;
  private final ClothIndex<Footprint> images;
  private final ClothIndex<Footprint> frames;

  /** By identity: the footprints of one layout are asked for and told. */
  private final Map<Footprint, List<Footprint>> under = new IdentityHashMap<>();

  private final Map<Footprint, List<Footprint>> inTheWay = new IdentityHashMap<>();
  private int kept;

  public FrameMeetings(Layout layout) {
    this.tube = layout.tube();
    this.images = new ClothIndex<>(tube);
    this.frames = new ClothIndex<>(tube);
    for (Footprint footprint : layout.footprints()) {
      images.add(footprint.image(), footprint);
      frames.add(footprint.frame(), footprint);
    }
  }

  /** What prints something where the frame lies, its own print among it; in the layout's order. */
  public List<Footprint> under(Footprint frame) {
    List<Footprint> known = under.get(frame);
    return known != null
        ? known
        : keep(under, frame, images, film -> FilmUnder.lies(film, frame.frame(), tube));
  }

  /** What has a frame that overlaps that frame, itself among it; in the layout's order. */
  public List<Footprint> inTheWay(Footprint frame) {
    List<Footprint> known = inTheWay.get(frame);
    return known != null
        ? known
        : keep(inTheWay, frame, frames, other -> tube.overlaps(other.frame(), frame.frame()));
  }

  private List<Footprint> keep(
      Map<Footprint, List<Footprint>> all,
      Footprint frame,
      ClothIndex<Footprint> index,
      Predicate<Footprint> meets) {
    List<Footprint> found = new ArrayList<>(index.near(frame.frame(), 0));
    found.removeIf(meets.negate());
    kept += found.size();
    if (kept > MOST) {
      under.clear();
      inTheWay.clear();
      kept = found.size();
    }
    all.put(frame, found);
    return found;
  }

  /** True if some of a film lies under a frame. */
  public boolean lies(Footprint film, Footprint frame) {
    return isIn(under(frame), film);
  }

  /** True if two frames can't lie at the same time. */
  public boolean meet(Footprint frame, Footprint other) {
    return isIn(inTheWay(frame), other);
  }

  private static boolean isIn(List<Footprint> all, Footprint wanted) {
    for (Footprint one : all) {
      if (one == wanted) {
        return true;
      }
    }
    return false;
  }
}

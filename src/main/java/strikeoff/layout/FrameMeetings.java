package strikeoff.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;

/**
 * What of a layout meets, in whatever order it is printed: the films that a frame would lie on, and
 * the frames that would lie in its way. What lies near a frame is looked up when somebody first
 * asks for it, and measured when somebody first asks for that. One thread at a time.
 */
public final class FrameMeetings {

  /**
   * What lies near is kept for so much; past it all is forgotten, so that it doesn't fill memory.
   */
  private static final int MOST = 1_000_000;

  /** Of hundreds of prints on one another few are printed when it is asked: those are measured. */
  private static final int DENSE = 400;

  private final Map<Footprint, Integer> order = new IdentityHashMap<>();
  private final Meetings films;
  private final Meetings frames;
  private int kept;

  public FrameMeetings(Layout layout) {
    Tube tube = layout.tube();
    this.films = new Meetings(tube, (film, on) -> FilmUnder.lies(film, on.frame(), tube));
    this.frames = new Meetings(tube, (one, on) -> tube.overlaps(one.frame(), on.frame()));
    for (Footprint footprint : layout.footprints()) {
      order.put(footprint, order.size());
      films.index.add(footprint.image(), footprint);
      frames.index.add(footprint.frame(), footprint);
    }
  }

  /**
   * What prints something where a frame lies, its own print among it.
   *
   * @param of what is asked for
   * @return in the layout's order
   */
  public List<Footprint> under(Footprint frame, Map<Footprint, ?> of) {
    return films.of(frame, of);
  }

  /** The same of what has a frame that overlaps that frame. */
  public List<Footprint> inTheWay(Footprint frame, Map<Footprint, ?> of) {
    return frames.of(frame, of);
  }

  /** True if some of a film lies under a frame. */
  public boolean lies(Footprint film, Footprint frame) {
    return films.are(film, frame);
  }

  /** True if two frames can't lie at the same time. */
  public boolean meet(Footprint frame, Footprint other) {
    return frames.are(other, frame);
  }

  /** One kind of them. */
  private final class Meetings {

    private final ClothIndex<Footprint> index;
    private final BiPredicate<Footprint, Footprint> measure;

    /** By identity: the footprints of one layout are asked for and told. */
    private final Map<Footprint, Near> near = new IdentityHashMap<>();

    Meetings(Tube tube, BiPredicate<Footprint, Footprint> measure) {
      this.index = new ClothIndex<>(tube);
      this.measure = measure;
    }

    List<Footprint> of(Footprint frame, Map<Footprint, ?> of) {
      List<Footprint> found = new ArrayList<>();
      Near all = near(frame);
      for (int i = 0; i < all.all.length; i++) {
        if (of.containsKey(all.all[i]) && meets(all, i, frame)) {
          found.add(all.all[i]);
        }
      }
      if (all.dense) {
        of.keySet().stream()
            .filter(one -> measure.test(one, frame))
            .sorted(Comparator.comparing(order::get))
            .forEach(found::add);
      }
      return found;
    }

    boolean are(Footprint one, Footprint frame) {
      Near all = near(frame);
      for (int i = 0; i < all.all.length; i++) {
        if (all.all[i] == one) {
          return meets(all, i, frame);
        }
      }
      return all.dense && measure.test(one, frame);
    }

    private boolean meets(Near all, int i, Footprint frame) {
      if (all.meets[i] == null) {
        all.meets[i] = measure.test(all.all[i], frame);
      }
      return all.meets[i];
    }

    private Near near(Footprint frame) {
      Near known = near.get(frame);
      if (known == null) {
        known = Near.of(index.near(frame.frame(), 0));
        kept += known.all.length;
        if (kept > MOST) {
          films.near.clear();
          frames.near.clear();
          kept = known.all.length;
        }
        near.put(frame, known);
      }
      return known;
    }
  }

  /**
   * What lies near a frame.
   *
   * @param dense true if it is too much to be kept; then there is none
   * @param meets whether each meets it; null until somebody asks
   */
  private record Near(Footprint[] all, Boolean[] meets, boolean dense) {

    static Near of(List<Footprint> near) {
      boolean dense = near.size() > DENSE;
      Footprint[] all = dense ? new Footprint[0] : near.toArray(Footprint[]::new);
      return new Near(all, new Boolean[all.length], dense);
    }
  }
}

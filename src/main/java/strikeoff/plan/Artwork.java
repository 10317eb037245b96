package strikeoff.plan;

import java.util.List;
import java.util.Optional;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Pair;
import strikeoff.units.Share;

/**
 * A separation's film positive or drawing, as it was measured; its margin is cut off.
 *
 * @param file its name, as the plan writes it
 * @param prints which of its tones takes paste
 * @param columns points along
 * @param rows points across
 * @param says how long and wide the picture's resolution makes it, or the plan's where it names
 *     one; empty if neither does
 * @param printed share of its points that take paste
 * @param tones how dark its points are
 * @param reach where it prints; empty if it prints nowhere
 * @param stated printed area that the plan states besides; empty if it leaves that to the picture
 */
public record Artwork(
    String file,
    Tone prints,
    int columns,
    int rows,
    Optional<Pair> says,
    Share printed,
    Tones tones,
    Optional<Reach> reach,
    Optional<Stated> stated) {

  /** The same with what the plan states besides. */
  public Artwork stating(Optional<Stated> besides) {
    return new Artwork(file, prints, columns, rows, says, printed, tones, reach, besides);
  }

  /**
   * A printed area that a plan states.
   *
   * @param key under which it does
   */
  public record Stated(Area area, String key) {}

  /** Which tone of a picture takes paste. */
  public enum Tone {
    DARK("dark"),
    LIGHT("light");

    private final String word;

    Tone(String word) {
      this.word = word;
    }

    /** As a plan writes it. */
    public String word() {
      return word;
    }

    public Tone other() {
      return this == DARK ? LIGHT : DARK;
    }
  }

  /**
   * How many points there are of each tone.
   *
   * @param counts of points that are 0, 1, … 100 % of full paste
   */
  public record Tones(List<Long> counts) {
    public Tones {
      counts = List.copyOf(counts);
    }

    /** The share of points that are neither bare nor full: between two tones, both included. */
    public Share between(Share least, Share most) {
      long all = 0;
      long between = 0;
      for (int percent = 0; percent < counts.size(); percent++) {
        long count = counts.get(percent);
        all += count;
        if (percent >= least.percent() && percent <= most.percent()) {
          between += count;
        }
      }
      return new Share(all == 0 ? 0 : (double) between / all);
    }
  }

  /**
   * The rectangle around all that is printed, in the separation's own, as it is seen on the cloth.
   *
   * @param left from its left edge to the first that is printed
   * @param right from its left edge to the last
   * @param near from its near edge to the first
   * @param far from its near edge to the last
   */
  public record Reach(Length left, Length right, Length near, Length far) {}
}

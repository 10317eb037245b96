package strikeoff.plan;

import java.util.List;
import java.util.Optional;
import strikeoff.evidence.FilmPlace;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Pair;
import strikeoff.units.Share;

/**
 * A separation's film positive or drawing, as it was measured; its margin is cut off.
 *
 * @param file its name, as the plan writes it
 * @param prints which of its tones takes paste
 * @param margin the strip that is cut off all round
 * @param columns points along
 * @param rows points across
 * @param drawn true of a drawing: its points are laid on it here, as close as is wanted
 * @param says how long and wide the picture's resolution makes it, or the plan's where it names
 *     one; empty if neither does
 * @param printed share of its points that take paste
 * @param tones how dark its points are
 * @param reach where it prints; empty if it prints nowhere
 * @param cells how much of it prints, cell by cell
 * @param halftone how close the dots of its halftone stand, in rows a length; empty if it has none
 * @param fine what is fine in it; empty if it is a halftone, or a texture all over
 * @param mirrorApart how much of it and its mirror image is printed in one of them alone
 * @param traced where it prints, as outlines for a page; empty if that is nowhere, or a texture
 * @param stated printed area that the plan states besides; empty if it leaves that to the picture
 * @param sized where the size of the rectangle that it fills is written
 */
public record Artwork(
    String file,
    Tone prints,
    Length margin,
    int columns,
    int rows,
    boolean drawn,
    Optional<Pair> says,
    Share printed,
    Tones tones,
    Optional<Reach> reach,
    PrintedCells cells,
    Optional<MeshCount> halftone,
    Optional<Fine> fine,
    Share mirrorApart,
    Optional<Traced> traced,
    Optional<Stated> stated,
    Sized sized) {

  /** Lines, gaps and laps that are wider are not measured. */
  public static final Length WIDEST_FINE = new Length(4);

  /** The same with what the plan states besides, and where it says how large it is. */
  public Artwork stating(Optional<Stated> besides, Sized by) {
    return new Artwork(
        file,
        prints,
        margin,
        columns,
        rows,
        drawn,
        says,
        printed,
        tones,
        reach,
        cells,
        halftone,
        fine,
        mirrorApart,
        traced,
        besides,
        by);
  }

  /**
   * Corners in turn of the convex outline around all that prints, from the separation's left near
   * corner; empty if it prints nowhere.
   */
  public List<FilmPlace> outline() {
    return reach.map(cells::outline).orElse(List.of());
  }

  /**
   * What is fine in a film; known to one of its points either way.
   *
   * @param point the larger side of a point, on the cloth
   * @param line the finest line; empty if there is none of up to 4 mm
   * @param gap the finest gap between two parts that print, likewise
   * @param tips how many parts run out to a point
   * @param tipLength how long they would be, together, from where they are 1 mm wide, in mm
   * @param specks how many parts stand by themselves, by their area, in steps of 0.01 mm²
   */
  public record Fine(
      Length point,
      Optional<Finest> line,
      Optional<Finest> gap,
      int tips,
      double tipLength,
      List<Long> specks) {

    /** Areas of specks are told in steps of so many mm². */
    public static final double SPECK_STEP = 0.01;

    public Fine {
      specks = List.copyOf(specks);
    }

    /** How many parts are at most so large, in mm². */
    public long specksUpTo(double area) {
      long count = 0;
      for (int i = 0; i < specks.size() && (i + 1) * SPECK_STEP <= area + 1e-9; i++) {
        count += specks.get(i);
      }
      return count;
    }
  }

  /**
   * The finest of its kind, kept over a millimetre and more.
   *
   * @param width across its own direction
   * @param over how much there is that is no more than a point wider
   * @param x where one is, from the separation's left edge
   * @param y the same from its near edge
   */
  public record Finest(Length width, Length over, Length x, Length y) {

    /** Where one is. */
    public FilmPlace place() {
      return new FilmPlace(x, y);
    }
  }

  /**
   * A printed area that a plan states.
   *
   * @param key under which it does
   */
  public record Stated(Area area, String key) {}

  /** Where the size of a film's rectangle is written. */
  public sealed interface Sized {

    /** Nowhere but at the design: the film fills it. */
    record ByDesign() implements Sized {}

    /** The separation begins elsewhere in the design, and takes what is left of it. */
    record ByPlace() implements Sized {}

    /** The separation has a size. */
    record BySeparation() implements Sized {}

    /**
     * The studio's film brings one.
     *
     * @param source the file and line of that film
     */
    record ByStudio(String source) implements Sized {}
  }

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

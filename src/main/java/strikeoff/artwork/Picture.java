package strikeoff.artwork;

import java.io.IOException;
import java.util.Optional;
import strikeoff.plan.Artwork.Tone;

/** A picture whose head was read and whose points come next. */
interface Picture {

  /** Larger sides are no film's: 2.5 m at 1000 points an inch, and a row that a buffer holds. */
  int LONGEST_SIDE = 100_000;

  /** What the head says. */
  Head head();

  default int columns() {
    return head().columns();
  }

  default int rows() {
    return head().rows();
  }

  /** What the file says of its size, in points a millimetre; empty if it says nothing. */
  default Optional<Grid> grid() {
    return head().grid();
  }

  /**
   * What is known of a picture before its points are.
   *
   * @param columns how many points it has along
   * @param rows how many across
   * @param grid how large the file says that they are
   */
  record Head(int columns, int rows, Optional<Grid> grid) {}

  /**
   * Hands its points on, row by row.
   *
   * @param prints which tone counts as paste
   * @throws UnreadablePicture if it ends too early, or is damaged
   */
  void read(Tone prints, PointTaker points) throws IOException, UnreadablePicture;

  /** Points a millimetre, along and across. */
  record Grid(double along, double across) {

    /** False of so few as say nothing. */
    boolean isSaid() {
      return Resolution.isSaid(along) && Resolution.isSaid(across);
    }

    /** False of what no film has. */
    boolean canBe() {
      return Resolution.canBe(along) && Resolution.canBe(across);
    }

    /** The same both ways. */
    static Grid square(double perMm) {
      return new Grid(perMm, perMm);
    }
  }

  /** Refuses sizes that no film has. */
  static void requireSize(long columns, long rows) throws UnreadablePicture {
    if (columns < 1 || rows < 1) {
      throw new UnreadablePicture("this picture says that it has no points; save it again");
    }
    if (columns > LONGEST_SIDE || rows > LONGEST_SIDE) {
      throw new UnreadablePicture(
          "a picture of "
              + columns
              + " x "
              + rows
              + " points; at most "
              + LONGEST_SIDE
              + " along or across are taken in; save it at fewer points an inch");
    }
  }

  /**
   * A film is one bit a point, but a drawing program saves three bytes a point if nobody tells it
   * otherwise. So many bytes hold A2 at 600 points an inch so saved; more keep a machine busy for
   * nothing.
   */
  long MOST_UNPACKED_MB = 420;

  /**
   * Refuses more colours than any film has; of black and white, points are counted.
   *
   * @param samples of each point
   */
  static void requireUnpacked(PngSamples samples, long columns, long rows)
      throws UnreadablePicture {
    long megabytes = samples.rowBytes((int) columns) * rows / 1_000_000;
    if (samples.depth() * samples.channels() > 1 && megabytes > MOST_UNPACKED_MB) {
      throw new UnreadablePicture(
          "this picture has "
              + megabytes
              + " MB of colours once it is unpacked, and at most "
              + MOST_UNPACKED_MB
              + " are taken in; save the film in black and white, one bit a point");
    }
  }
}

package strikeoff.artwork;

/**
 * Hands points on, and refuses what is finer than any mesh all over, noise and tones made of single
 * points, as soon as there is too much of it for the whole film.
 */
final class HeldPoints implements PointTaker {

  /** No mesh holds so many lines or dots a cm; of a film that has them all over, nothing prints. */
  private static final double MOST_PER_CM = Halftone.FINEST;

  private final OpenPoints points;
  private final Bits bits;
  private final int acrossMargin;

  /** Lengths of all rows of the film and of all its columns, in cm. */
  private final double rows;

  private final double columns;

  private int counted;
  private long runs;
  private long runsAcross;

  HeldPoints(OpenPoints points, Wanted wanted, Placing placing) {
    this.points = points;
    this.bits = points.bits();
    this.acrossMargin = placing.acrossMargin();
    this.rows = bits.rows() * wanted.size().along().cm();
    this.columns = bits.columns() * wanted.size().across().cm();
  }

  @Override
  public void row(int y, int first, int step, byte[] ink, int count) throws UnreadablePicture {
    points.row(y, first, step, ink, count);
    // Of an interlaced picture, rows are whole in its last pass alone.
    if (step == 1) {
      count(y - acrossMargin);
    }
  }

  @Override
  public void bits(int y, byte[] packed, int from, int prints) throws UnreadablePicture {
    points.bits(y, packed, from, prints);
    count(y - acrossMargin);
  }

  private void count(int row) throws UnreadablePicture {
    if (row >= 0 && row < bits.rows()) {
      runs += bits.runs(row);
      runsAcross += bits.runsAcross(row);
      counted++;
      requireHeld();
    }
  }

  private void requireHeld() throws UnreadablePicture {
    if (Math.max(runs / rows, runsAcross / columns) > MOST_PER_CM) {
      double share = (double) counted / bits.rows();
      throw new UnreadablePicture(
          "this picture has "
              + Math.round(Math.max(runs / rows, runsAcross / columns) / share)
              + " lines or dots a cm"
              + (counted < bits.rows() ? " over its first " + counted + " rows" : " all over")
              + ", and no mesh holds more than "
              + Math.round(MOST_PER_CM)
              + "; save the film as lines and plain areas, or with a halftone of dots that the mesh"
              + " holds");
    }
  }

  /** Looks at all of it, after the last row. */
  void end() throws UnreadablePicture {
    runs = bits.runs();
    runsAcross = bits.runsAcross();
    counted = bits.rows();
    requireHeld();
  }
}

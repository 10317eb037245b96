package strikeoff.artwork;

import java.util.Arrays;
import java.util.Optional;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Joint.Strips;
import strikeoff.units.Length;

/** Which widths strokes keep that run one way: how much of each, and where the extremes are. */
final class KeptWidths {

  private static final double BIN = 0.005;

  private final double along;
  private final double across;

  /** Length of strokes by their width, in steps of {@link #BIN}, in mm. */
  private final double[] lengths;

  private double finest = Double.MAX_VALUE;

  /** Where the finest is, in columns and rows. */
  private double x;

  private double y;

  /** The widest that is kept, and where that is. */
  private double most;

  private double mostX;
  private double mostY;

  /**
   * @param along mm from one point of a row to the next
   * @param across mm from one row to the next
   * @param widest what is as wide is never added, in mm
   */
  KeptWidths(double along, double across, double widest) {
    this.along = along;
    this.across = across;
    this.lengths = new double[(int) Math.ceil(widest / BIN) + 1];
  }

  /**
   * Notes a stretch of a stroke.
   *
   * @param width that it keeps, in mm
   * @param length for how long, in mm
   * @param column of its middle
   * @param row of its middle
   */
  void add(double width, double length, double column, double row) {
    lengths[(int) (width / BIN)] += length;
    if (width > most) {
      most = width;
      mostX = column;
      mostY = row;
    }
    if (width < finest) {
      finest = width;
      x = column;
      y = row;
    }
  }

  /**
   * The finest of a picture.
   *
   * @param upright of its strokes along the rows
   * @param flat of those of the same picture turned
   * @param bits the picture
   * @param wrong true if it is seen through its back
   * @return empty if there is none
   */
  static Optional<Finest> finest(KeptWidths upright, KeptWidths flat, Bits bits, boolean wrong) {
    boolean standing = upright.finest <= flat.finest;
    double width = Math.min(upright.finest, flat.finest);
    if (width == Double.MAX_VALUE) {
      return Optional.empty();
    }
    double x = standing ? upright.x : flat.y;
    double y = standing ? upright.y : flat.x;
    double upTo = width + Math.max(upright.along, upright.across);
    return Optional.of(
        new Finest(
            new Length(width),
            new Length(upright.upTo(upTo) + flat.upTo(upTo)),
            new Length((wrong ? bits.columns() - x : x) * upright.along),
            new Length((bits.rows() - y) * upright.across)));
  }

  /** The widest of the same, and how much is no more than a point narrower. */
  static Optional<Finest> widest(KeptWidths upright, KeptWidths flat, Bits bits) {
    boolean standing = upright.most >= flat.most;
    double width = Math.max(upright.most, flat.most);
    if (width == 0) {
      return Optional.empty();
    }
    double below = width - Math.max(upright.along, upright.across);
    double over = upright.upTo(width) - upright.upTo(below) + flat.upTo(width) - flat.upTo(below);
    return Optional.of(
        new Finest(
            new Length(width),
            new Length(over),
            new Length((standing ? upright.mostX : flat.mostY) * upright.along),
            new Length((bits.rows() - (standing ? upright.mostY : flat.mostX)) * upright.across)));
  }

  /** Those no wider than a limit; empty if there are none. */
  static Optional<Strips> strips(KeptWidths upright, KeptWidths flat, Length limit) {
    double widest = Math.max(upright.widestUpTo(limit.mm()), flat.widestUpTo(limit.mm()));
    double over = upright.upTo(widest) + flat.upTo(widest);
    return over == 0
        ? Optional.empty()
        : Optional.of(new Strips(new Length(widest), new Length(over)));
  }

  /** How long all of the same are together. */
  static Length over(KeptWidths upright, KeptWidths flat) {
    return new Length(Arrays.stream(upright.lengths).sum() + Arrays.stream(flat.lengths).sum());
  }

  /** How wide the same are on average; empty if there are none. */
  static Optional<Length> mean(KeptWidths upright, KeptWidths flat) {
    double over = over(upright, flat).mm();
    double area = 0;
    for (int bin = 0; bin < upright.lengths.length; bin++) {
      area += (bin + 0.5) * BIN * (upright.lengths[bin] + flat.lengths[bin]);
    }
    return over == 0 ? Optional.empty() : Optional.of(new Length(area / over));
  }

  private double widestUpTo(double limit) {
    int bin = (int) (Math.min(limit, most) / BIN);
    while (bin > 0 && lengths[bin] == 0) {
      bin--;
    }
    return Math.min(limit, bin * BIN + BIN / 2);
  }

  /** How much of all strokes is at most so wide, in mm. */
  private double upTo(double width) {
    double sum = 0;
    for (int bin = 0; bin < lengths.length && bin * BIN <= width; bin++) {
      sum += lengths[bin];
    }
    return sum;
  }
}

package strikeoff.artwork;

import strikeoff.artwork.Strokes.Ended;
import strikeoff.plan.Artwork;

/**
 * How wide strokes are across their own direction, and where they keep that. A width counts if a
 * millimetre of one stroke keeps it, and two and a half of one that is hardly wider than two
 * points; what runs out to a point is told by how sharp it is instead.
 */
final class Widths {

  /** So long a stroke has to keep its width, in mm. */
  static final double KEPT = 1;

  private static final double KEPT_NEAR_POINTS = 2.5;

  /** Below so many points it has to be longer. */
  private static final double NEAR_POINTS = 4;

  /** So many points a width may stray where it counts as kept. */
  private static final double BAND = 1.5;

  /** What widens by more for each millimetre doesn't keep its width. */
  private static final double MOST_TAPER = 0.05;

  /** What widens by more runs out to a corner, not to a point. */
  private static final double CORNER = 1;

  /** A tip is at most so many points wide. */
  private static final double TIP = 3;

  /** Steeper strokes are measured along the other side; a little further both do. */
  static final double STEEPEST = 1.2;

  /** Strokes that are wider are no lines, in mm. */
  static final double WIDEST = Artwork.WIDEST_FINE.mm();

  private final double along;
  private final double across;

  private final double widest;
  private final double least;

  private final KeptWidths kept;
  private double tips;
  private double tipLength;

  /** Of one stroke after the other, row by row. */
  private double[] width = new double[0];

  private double[] step = new double[0];
  private double[] slope = new double[0];

  /**
   * @param along mm from one point of a row to the next
   * @param across mm from one row to the next
   */
  Widths(double along, double across) {
    this(along, across, WIDEST, 0);
  }

  /**
   * @param widest what is wider is no stroke, in mm
   * @param points what is no wider than so many points doesn't count
   */
  Widths(double along, double across, double widest, double points) {
    this.along = along;
    this.across = across;
    this.widest = widest;
    this.least = points * along;
    this.kept = new KeptWidths(along, across, widest);
  }

  /** Strokes that make no mark here have fewer rows. */
  int fewestRows() {
    return rows(KEPT);
  }

  /** How many rows a stroke of so many mm has at least, at any slope that is measured here. */
  int rows(double length) {
    return Math.max(2, (int) (length / across / Math.hypot(1, STEEPEST)));
  }

  /** The most points of a row that a stroke may have. */
  int mostPoints() {
    return (int) Math.ceil(widest * Math.hypot(1, STEEPEST) / along);
  }

  void take(Ended ended) {
    Profile profile = new Profile(ended.stroke());
    profile.stretches();
    if (ended.beginsFree()) {
      profile.tip(0, 1);
    }
    if (ended.endsFree()) {
      profile.tip(profile.rows - 1, -1);
    }
  }

  /** The widths that strokes keep. */
  KeptWidths kept() {
    return kept;
  }

  /** How many tips there are. */
  double tips() {
    return tips;
  }

  /** How many mm of tips are less than 1 mm wide, if they all went on so far. */
  double tipLength() {
    return tipLength;
  }

  /** A stroke's widths, row by row. */
  private final class Profile {

    private final Stroke stroke;
    private final int rows;

    Profile(Stroke stroke) {
      this.stroke = stroke;
      this.rows = stroke.rows();
      if (width.length < rows) {
        width = new double[2 * rows];
        step = new double[2 * rows];
        slope = new double[2 * rows];
      }
      int half = Math.max(2, (int) (KEPT / 2 / across));
      for (int row = 0; row < rows; row++) {
        int low = Math.max(0, row - half);
        int high = Math.min(rows - 1, row + half);
        slope[row] = (stroke.middle(high) - stroke.middle(low)) * along / ((high - low) * across);
        // Slopes are far from where hypot would be needed, which takes many times as long.
        double slant = Math.sqrt(1 + slope[row] * slope[row]);
        width[row] = stroke.length(row) * along / slant;
        step[row] = across * slant;
      }
    }

    /** False where it is measured along the other side. */
    private boolean isMine(int row) {
      return Math.abs(slope[row]) <= STEEPEST;
    }

    /** What both ways measure counts half. */
    private double share(int row) {
      return Math.abs(slope[row]) >= 1 / STEEPEST ? 0.5 : 1;
    }

    void stretches() {
      for (int row = 0; row < rows; ) {
        int end = kept(row);
        if (end < 0) {
          row++;
        } else {
          row = whole(row, end);
        }
      }
    }

    /** The row after those that keep their width just long enough; below zero if they don't. */
    private int kept(int first) {
      double length = 0;
      double wanted = KEPT;
      double sum = 0;
      double least = Double.MAX_VALUE;
      double most = 0;
      for (int row = first; row < rows && isMine(row); row++) {
        length += step[row];
        sum += width[row];
        least = Math.min(least, width[row]);
        most = Math.max(most, width[row]);
        if (most - least > 2 * BAND * along) {
          return -1;
        }
        if (length >= wanted) {
          double mean = sum / (row + 1 - first);
          if (mean < NEAR_POINTS * along && wanted < KEPT_NEAR_POINTS) {
            wanted = KEPT_NEAR_POINTS;
            if (length < wanted) {
              continue;
            }
          }
          boolean even = Math.abs(taper(first, row + 1)) <= MOST_TAPER;
          return even && !isPartOfWedge(first, row + 1) ? row + 1 : -1;
        }
      }
      return -1;
    }

    /**
     * True if it widens evenly a little further on both sides: a slender wedge is as wide over a
     * millimetre, and then a point wider.
     */
    private boolean isPartOfWedge(int first, int end) {
      int more = (end - first) * 3 / 4;
      int low = first;
      int high = end;
      while (low > Math.max(0, first - more) && isMine(low - 1)) {
        low--;
      }
      while (high < Math.min(rows, end + more) && isMine(high)) {
        high++;
      }
      double taper = taper(low, high);
      if (Math.abs(taper) <= MOST_TAPER) {
        return false;
      }
      double mean = 0;
      double length = 0;
      for (int row = low; row < high; row++) {
        mean += width[row] / (high - low);
        length += step[row];
      }
      double s = 0;
      for (int row = low; row < high; row++) {
        if (Math.abs(width[row] - mean - taper * (s - length / 2)) > BAND * along) {
          return false;
        }
        s += step[row];
      }
      return true;
    }

    /** Goes on as long as the width is kept, and notes it; tells the row after that. */
    private int whole(int first, int keptTo) {
      double sum = 0;
      double length = 0;
      double counted = 0;
      int row = first;
      for (; row < rows && isMine(row); row++) {
        if (row >= keptTo && Math.abs(width[row] - sum / (row - first)) > BAND * along) {
          break;
        }
        sum += width[row];
        length += step[row];
        counted += step[row] * share(row);
      }
      double mean = sum / (row - first);
      if (mean < widest && mean > least) {
        int middle = (first + row) / 2;
        kept.add(mean, counted, stroke.middle(middle), stroke.firstRow() + middle + 0.5);
      }
      return row;
    }

    /** How much wider it gets for each mm, by least squares. */
    private double taper(int first, int end) {
      int n = end - first;
      double s = 0;
      double sumS = 0;
      double sumW = 0;
      double sumSs = 0;
      double sumSw = 0;
      for (int row = first; row < end; row++) {
        sumS += s;
        sumW += width[row];
        sumSs += s * s;
        sumSw += s * width[row];
        s += step[row];
      }
      double spread = n * sumSs - sumS * sumS;
      return spread == 0 ? 0 : (n * sumSw - sumS * sumW) / spread;
    }

    /** Notes a tip, if a free end is one: narrow, and widening evenly over a millimetre or more. */
    void tip(int end, int way) {
      double length = 0;
      int row = end;
      while (row >= 0 && row < rows && length < KEPT_NEAR_POINTS && isMine(row)) {
        length += step[row];
        row += way;
      }
      if (length < KEPT || width[end] > TIP * along) {
        return;
      }
      int low = Math.min(end, row - way);
      int high = Math.max(end, row - way) + 1;
      double taper = taper(low, high) * way;
      if (taper <= MOST_TAPER || taper > CORNER) {
        return;
      }
      double s = 0;
      for (int at = end; at != row; at += way) {
        if (Math.abs(width[at] - width[end] - taper * s) > 2 * BAND * along) {
          return;
        }
        s += step[at];
      }
      tips += share(end);
      tipLength += share(end) / taper;
    }
  }
}

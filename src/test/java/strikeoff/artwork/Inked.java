package strikeoff.artwork;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** A film drawn with a pen and a blade: areas filled, strokes of any width, and what is cut out. */
final class Inked {

  private static final double INCH = 25.4;

  /** From one dab of the pen to the next, in mm. */
  private static final double DAB = 0.1;

  private final double perMm;
  private final int columns;
  private final BitSet[] rows;

  /**
   * @param length in mm
   * @param width in mm
   * @param perInch points an inch
   */
  Inked(double length, double width, double perInch) {
    this.perMm = perInch / INCH;
    this.columns = (int) Math.round(length * perMm);
    this.rows = new BitSet[(int) Math.round(width * perMm)];
    Arrays.setAll(rows, y -> new BitSet(columns));
  }

  /** Fills what a line goes round; a point is dark if its middle lies inside. */
  Inked area(Curve around) {
    List<double[]> points = around.points();
    for (int y = 0; y < rows.length; y++) {
      double at = (y + 0.5) / perMm;
      double[] crossings = new double[points.size()];
      int count = 0;
      double[] last = points.get(points.size() - 1);
      for (double[] next : points) {
        if (last[1] <= at != next[1] <= at) {
          crossings[count++] = last[0] + (at - last[1]) / (next[1] - last[1]) * (next[0] - last[0]);
        }
        last = next;
      }
      Arrays.sort(crossings, 0, count);
      for (int i = 0; i + 1 < count; i += 2) {
        run(y, crossings[i], crossings[i + 1], true);
      }
    }
    return this;
  }

  /** Draws a line with a round pen that is so wide at its beginning, and so wide at its end. */
  Inked stroke(Curve line, double first, double last) {
    return draw(line, first, last, true);
  }

  /** Takes away what such a stroke covers. */
  Inked scratch(Curve line, double first, double last) {
    return draw(line, first, last, false);
  }

  Inked dot(double x, double y, double diameter) {
    dab(x, y, diameter / 2, true);
    return this;
  }

  Inked hole(double x, double y, double diameter) {
    dab(x, y, diameter / 2, false);
    return this;
  }

  /** Takes away what is dark on another film of the same size. */
  Inked without(Inked other) {
    for (int y = 0; y < rows.length; y++) {
      rows[y].andNot(other.rows[y]);
    }
    return this;
  }

  private Inked draw(Curve line, double first, double last, boolean dark) {
    double whole = 0;
    List<double[]> points = line.points();
    for (int i = 1; i < points.size(); i++) {
      whole += apart(points.get(i - 1), points.get(i));
    }
    double gone = 0;
    for (int i = 1; i < points.size(); i++) {
      double[] from = points.get(i - 1);
      double[] to = points.get(i);
      double length = apart(from, to);
      int dabs = (int) Math.ceil(length / DAB);
      for (int d = 0; d <= dabs; d++) {
        double share = dabs == 0 ? 0 : d / (double) dabs;
        double along = (gone + share * length) / whole;
        dab(
            from[0] + share * (to[0] - from[0]),
            from[1] + share * (to[1] - from[1]),
            (first + along * (last - first)) / 2,
            dark);
      }
      gone += length;
    }
    return this;
  }

  private static double apart(double[] from, double[] to) {
    double x = to[0] - from[0];
    double y = to[1] - from[1];
    return Math.sqrt(x * x + y * y);
  }

  private void dab(double x, double y, double radius, boolean dark) {
    int from = Math.max(0, (int) Math.floor((y - radius) * perMm));
    int to = Math.min(rows.length - 1, (int) Math.ceil((y + radius) * perMm));
    for (int row = from; row <= to; row++) {
      double off = (row + 0.5) / perMm - y;
      double half = radius * radius - off * off;
      if (half > 0) {
        run(row, x - Math.sqrt(half), x + Math.sqrt(half), dark);
      }
    }
  }

  private void run(int row, double from, double to, boolean dark) {
    int first = Math.max(0, (int) Math.ceil(from * perMm - 0.5));
    int end = Math.min(columns, (int) Math.ceil(to * perMm - 0.5));
    if (first < end) {
      rows[row].set(first, end, dark);
    }
  }

  /** As PNG of one bit a point, which says its resolution. */
  byte[] png() {
    int rowBytes = (columns + 7) / 8;
    byte[] raw = new byte[(rowBytes + 1) * rows.length];
    for (int y = 0; y < rows.length; y++) {
      for (int x = 0; x < columns; x++) {
        if (!rows[y].get(x)) {
          raw[y * (rowBytes + 1) + 1 + (x >> 3)] |= (byte) (0x80 >> (x & 7));
        }
      }
    }
    return Drawn.file(columns, rows.length, 1, 0, 0, raw, perMm * 1000);
  }
}

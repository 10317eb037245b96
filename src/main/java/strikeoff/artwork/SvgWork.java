package strikeoff.artwork;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;

/**
 * How long an outline takes to fill, known before. In each row of points the edges that cross it
 * are kept in order: they are moved by one another wherever they cross, at worst each by each. So
 * work grows with rows times the square of the edges in a row.
 */
final class SvgWork {

  /** About a second of one processor. */
  static final double MOST = 3e9;

  private SvgWork() {}

  /**
   * @param outline in points of the film
   * @param around what it lies in
   */
  static double of(Shape outline, Rectangle2D around) {
    double rows = Math.max(1, around.getHeight());
    double crossed = 0;
    double count = 0;
    double[] to = new double[6];
    double from = 0;
    double first = 0;
    for (PathIterator at = outline.getPathIterator(null); !at.isDone(); at.next()) {
      int kind = at.currentSegment(to);
      double next = first;
      if (kind == PathIterator.SEG_CUBICTO) {
        crossed += Math.abs(to[1] - from) + Math.abs(to[3] - to[1]) + Math.abs(to[5] - to[3]);
        next = to[5];
        from = next;
      } else if (kind == PathIterator.SEG_QUADTO) {
        crossed += Math.abs(to[1] - from) + Math.abs(to[3] - to[1]);
        next = to[3];
        from = next;
      } else if (kind == PathIterator.SEG_MOVETO) {
        first = to[1];
        next = first;
        from = first;
      } else if (kind == PathIterator.SEG_LINETO) {
        next = to[1];
      }
      crossed += Math.abs(next - from);
      from = next;
      count++;
    }
    double each = crossed / rows;
    return crossed * (1 + each) + count * 100;
  }

  /**
   * How many points it paints at most: those of the triangles from the beginning of each of its
   * parts to the edges of that, which leave out nothing that is filled, and not more than lie
   * around it.
   *
   * @param around what it lies in, as far as that is on the film
   */
  static double painted(Shape outline, Rectangle2D around) {
    if (around.isEmpty()) {
      return 0;
    }
    double twice = 0;
    double[] to = new double[6];
    double firstX = 0;
    double firstY = 0;
    double x = 0;
    double y = 0;
    for (PathIterator at = outline.getPathIterator(null); !at.isDone(); at.next()) {
      int kind = at.currentSegment(to);
      int corners = CORNERS[kind];
      if (kind == PathIterator.SEG_MOVETO) {
        firstX = to[0];
        firstY = to[1];
      }
      // A curve lies in the triangles of its handles.
      for (int i = 0; i < corners; i++) {
        double nextX = to[2 * i];
        double nextY = to[2 * i + 1];
        twice += Math.abs((x - firstX) * (nextY - firstY) - (nextX - firstX) * (y - firstY));
        x = nextX;
        y = nextY;
      }
    }
    return Math.min(twice / 2, around.getWidth() * around.getHeight());
  }

  /** How many places each kind of segment of a path has: move, line, two curves, close. */
  private static final int[] CORNERS = {1, 1, 2, 3, 0};
}

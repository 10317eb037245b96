package strikeoff.artwork;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.document.GivenUp;
import strikeoff.plan.FilmFit;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * Finds how a film would have to lie so that its edges run along another's: first points of its
 * edge vote for all that brings them to edges which face them; then it is laid by least squares,
 * from point to line as surfaces are laid on each other (Chen and Medioni 1992), with a lap that is
 * the same all round left free. A colour that was choked or spread stays where it is.
 */
final class EdgeFitting {

  /** So wide a lap or strip of ground still is one, in mm. */
  private static final double REACH = Widths.WIDEST;

  /** Steps of the search, in mm; what lies between is followed from one of them. */
  private static final double STEP = 2;

  /** Steps of size, by how far the end of the longer side moves. */
  private static final double SIZE_STEP = 3;

  /**
   * Steps either way, and coarser ones where a policy's limits ask for more: no search is endless.
   */
  private static final int STEPS = 50;

  /**
   * Nothing is taken for a drawing of less than half its size, whatever a policy's limits allow.
   */
  private static final double LARGER = 0.5;

  /** As many points vote, for places of so many points of the other edge. */
  private static final int FEW_POINTS = 300;

  private static final int OTHER_POINTS = 1500;

  /**
   * So many of the places that they vote for are followed, on few points; then the best on more.
   */
  private static final int FOLLOWED = 60;

  private static final int FIRST_POINTS = 120;
  private static final int LAID = 5;
  private static final int SOME_POINTS = 400;
  private static final int POINTS = 1500;

  /** Steps across strips, in mm; within one they are followed point by point. */
  private static final double STRIDE = 0.15;

  /** Two edges face each other if their ways out are so much against each other, as a cosine. */
  private static final double FACES = -0.9;

  /** A film that is moved by less, in mm, lies. */
  private static final double STILL = 0.005;

  /** Edges that run so much one way, by the spread of their way out, say nothing of the other. */
  private static final double ONE_WAY = 0.003;

  /** What lies further off than so many times the others' distance is another edge. */
  private static final double STRAY = 3;

  /** As long as all are so near, in mm, none is. */
  private static final double STRAY_LEAST = 0.5;

  /** Halved so far, it has been laid often enough. */
  private static final double GIVEN_UP = REACH / (1 << 10);

  /** What is more even by less is so by chance. */
  private static final double CLEARLY = 1.5;

  /** What fits better elsewhere by less fits as well as it lies. */
  private static final double AS_WELL = 1.1;

  /** So much less is worth what lies off by a millimetre more. */
  private static final double UNLIKELY = 0.002;

  /** The same of votes: on a dense drawing all that is far off gets nearly as many. */
  private static final double UNLIKELY_VOTES = 0.01;

  /**
   * How a film lies: first made larger from the middle, and then moved.
   *
   * @param x to the right, in mm
   * @param y down
   */
  private record Pose(double x, double y, double scale) {

    static final Pose AS_IT_IS = new Pose(0, 0, 1);

    /** This, and then so much more. */
    Pose and(double moreX, double moreY, double larger) {
      return new Pose((1 + larger) * x + moreX, (1 + larger) * y + moreY, (1 + larger) * scale);
    }

    /** How far a place so far from the middle comes to lie from where another has it, at most. */
    double apart(Pose other, double half) {
      return Math.hypot(x - other.x, y - other.y) + Math.abs(scale - other.scale) * half;
    }
  }

  /**
   * How it fits so.
   *
   * @param facing how much of the edge runs along the other's, in mm
   * @param middle of the strip between them, in mm: ground, or a lap below zero
   * @param spread how much that differs from it on average
   */
  private record Laid(Pose pose, double facing, double middle, double spread) {

    /** The more, the better and the more evenly it fits. */
    double worth() {
      return facing * (1 - spread / REACH);
    }
  }

  /**
   * Two rasters and the size of their points.
   *
   * @param turned true if the one whose edges are followed is turned over, left for right
   */
  private record Raster(Bits mine, Bits other, double along, double across, boolean turned) {

    /**
     * The strip between the edge of one and the other's, straight out or in from a point.
     *
     * @return ground, or a lap below zero, in mm; not a number where there is none
     */
    double strip(double[] points, int at, double x, double y) {
      double outX = points[at + 2];
      double outY = points[at + 3];
      double point = Math.min(along, across);
      boolean covered = is(other, x - outX * point / 2, y - outY * point / 2);
      double sign = covered ? -1 : 1;
      double stride = Math.max(point, STRIDE);
      for (double far = point / 2; far <= REACH; far += stride) {
        double by = sign * far;
        if (is(other, x + outX * by, y + outY * by) != covered) {
          return sign * first(covered, x, y, outX * sign, outY * sign, far - stride, far);
        }
        // Where this film ends itself, or begins again, nothing is between its edge and the other.
        if (far > 2 * point
            && isMine(points[at] + outX * by, points[at + 1] + outY * by) != covered) {
          break;
        }
      }
      return Double.NaN;
    }

    /** Where between two places the other begins or ends, to a point. */
    private double first(
        boolean covered, double x, double y, double toX, double toY, double from, double to) {
      double point = Math.min(along, across);
      double far = to;
      while (far - point > Math.max(0, from)
          && is(other, x + toX * (far - point), y + toY * (far - point)) != covered) {
        far -= point;
      }
      return far - point / 2;
    }

    private boolean isMine(double x, double y) {
      return is(mine, turned ? mine.columns() * along - x : x, y);
    }

    private boolean is(Bits bits, double x, double y) {
      return x >= 0 && y >= 0 && bits.get((int) (x / along), (int) (y / across));
    }
  }

  private final Raster films;
  private final EdgePoints edge;
  private final EdgePoints other;
  private final double most;
  private final double larger;
  private final double length;
  private final double width;

  private EdgeFitting(Raster films, EdgePoints edge, EdgePoints other, double most, double larger) {
    this.films = films;
    this.edge = edge;
    this.other = other;
    this.most = most;
    this.larger = Math.min(LARGER, larger);
    this.length = films.mine.columns() * films.along;
    this.width = films.mine.rows() * films.across;
  }

  /**
   * Fits a film to another.
   *
   * @param along mm from one point of a row to the next
   * @param across mm from one row to the next
   * @param most how far it may be moved, along and across
   * @param larger how much larger or smaller it may be made
   * @return empty if one of them has no edges
   */
  static Optional<FilmFit> of(
      Bits one, Bits other, double along, double across, Length most, Share larger) {
    EdgePoints ofOne = EdgePoints.of(one, along, across);
    EdgePoints ofOther = EdgePoints.of(other, along, across);
    if (ofOne.count() == 0 || ofOther.count() == 0) {
      return Optional.empty();
    }
    // What both have in common is most of the one that has less.
    boolean first = ofOne.length() <= ofOther.length();
    Raster films = new Raster(first ? one : other, first ? other : one, along, across, false);
    EdgeFitting fitting =
        new EdgeFitting(
            films, first ? ofOne : ofOther, first ? ofOther : ofOne, most.mm(), larger.fraction());
    FilmFit fit = fitting.fit(fitting.turned());
    return Optional.of(first ? fit : fit.ofOther());
  }

  /** How it fits once it is turned over, left for right, and moved a little. */
  private Laid turned() {
    EdgeFitting turned =
        new EdgeFitting(
            new Raster(films.mine, films.other, films.along, films.across, true),
            edge.turned(length),
            other,
            most,
            larger);
    EdgePoints points = turned.edge.thinned(POINTS);
    return turned.followed(points, Pose.AS_IT_IS);
  }

  private FilmFit fit(Laid turned) {
    EdgePoints points = edge.thinned(POINTS);
    Laid now = laid(points, Pose.AS_IT_IS);
    Laid near = followed(points, Pose.AS_IT_IS);
    Laid best = isWithin(near.pose) ? near : now;
    // Of edges that run along each other all over there is no more to be found elsewhere.
    if (best.worth() * AS_WELL < edge.length()) {
      List<Laid> first = followed(FIRST_POINTS, searched(), LAID);
      for (Laid some : followed(SOME_POINTS, first.stream().map(Laid::pose).toList(), 1)) {
        Laid there = followed(points, some.pose);
        if (isWithin(there.pose) && there.worth() > AS_WELL * best.worth()) {
          best = there;
        }
      }
    }
    return new FilmFit(
        new Length(edge.length()),
        new Length(now.facing),
        new Length(best.facing),
        new Length(best.pose.x),
        new Length(-best.pose.y),
        new Share(best.pose.scale),
        new Length(now.spread),
        new Length(best.spread),
        new Length(-best.middle),
        new Length(turned.facing),
        new Length(turned.spread));
  }

  /** What it is worth; of what fits alike the nearer one is more likely. */
  private double likely(Laid laid) {
    return laid.worth() * (1 - UNLIKELY * far(laid));
  }

  private double far(Laid laid) {
    return laid.pose.apart(Pose.AS_IT_IS, half());
  }

  /** True if it may lie so; what is followed goes on beyond what is searched. */
  private boolean isWithin(Pose pose) {
    return Math.max(Math.abs(pose.x), Math.abs(pose.y)) <= most + STILL
        && (Math.abs(pose.scale - 1) - larger) * half() <= STILL;
  }

  /** Where most of its edges come to lie near edges of the other that face them. */
  private List<Pose> searched() {
    double sizeStep = Math.max(SIZE_STEP / half(), larger / STEPS);
    int sizes = (int) Math.ceil(larger / sizeStep);
    EdgePoints few = edge.thinned(FEW_POINTS);
    EdgePoints others = other.thinned(OTHER_POINTS);
    // Further off it shares no place with the other.
    double far = Math.min(most, Math.max(length, width));
    double step = Math.max(STEP, far / STEPS);
    int moves = (int) Math.ceil(far / step);
    int side = 2 * moves + 1;
    List<Voted> all = new ArrayList<>();
    for (int size = -sizes; size <= sizes; size++) {
      GivenUp.ifAsked();
      double scale = 1 + Math.max(-larger, Math.min(larger, size * sizeStep));
      int[] votes = votes(few, others, scale, moves, step);
      for (int y = 0; y < side; y++) {
        for (int x = 0; x < side; x++) {
          Pose pose = new Pose((x - moves) * step, (y - moves) * step, scale);
          double unlikely = UNLIKELY_VOTES * pose.apart(Pose.AS_IT_IS, half());
          all.add(new Voted(pose, around(votes, side, x, y) * (1 - unlikely)));
        }
      }
    }
    // Neighbours vote alike: each of them is followed to the same place.
    List<Pose> best = new ArrayList<>();
    all.sort(Comparator.comparingDouble(voted -> -voted.votes));
    for (int i = 0; i < all.size() && best.size() < FOLLOWED; i++) {
      Pose next = all.get(i).pose;
      if (best.stream().allMatch(pose -> pose.apart(next, half()) > 1.1 * step)) {
        best.add(next);
      }
    }
    return best;
  }

  /** How many points of an edge a move brings near the other's edges; for less if it is far. */
  private record Voted(Pose pose, double votes) {}

  /**
   * Each point votes for all moves that bring it to an edge of the other that faces it, once each
   * (Ballard 1981).
   *
   * @return by moves down, and of them to the right, a step apart
   */
  private int[] votes(EdgePoints few, EdgePoints others, double scale, int moves, double step) {
    int side = 2 * moves + 1;
    int[] votes = new int[side * side];
    int[] voted = new int[side * side];
    double[] points = few.all();
    double[] to = others.all();
    double far = (moves + 0.5) * step;
    for (int i = 0; i < points.length; i += EdgePoints.EACH) {
      double x = length / 2 + (points[i] - length / 2) * scale;
      double y = width / 2 + (points[i + 1] - width / 2) * scale;
      for (int j = 0; j < to.length; j += EdgePoints.EACH) {
        double right = to[j] - x;
        double down = to[j + 1] - y;
        double faces = points[i + 2] * to[j + 2] + points[i + 3] * to[j + 3];
        int column = (int) Math.floor((right + far) / step);
        int row = (int) Math.floor((down + far) / step);
        boolean near = column >= 0 && row >= 0 && column < side && row < side;
        if (near && faces < FACES) {
          int cell = row * side + column;
          if (voted[cell] != i + 1) {
            voted[cell] = i + 1;
            votes[cell]++;
          }
        }
      }
    }
    return votes;
  }

  /** With those beside it: a lap lies between the edges. */
  private static int around(int[] votes, int side, int x, int y) {
    int sum = 0;
    for (int row = Math.max(0, y - 1); row <= Math.min(side - 1, y + 1); row++) {
      for (int column = Math.max(0, x - 1); column <= Math.min(side - 1, x + 1); column++) {
        sum += votes[row * side + column];
      }
    }
    return sum;
  }

  private double x(double x, Pose pose) {
    return length / 2 + (x - length / 2) * pose.scale + pose.x;
  }

  private double y(double y, Pose pose) {
    return width / 2 + (y - width / 2) * pose.scale + pose.y;
  }

  /** The strips of all points, as it lies. */
  private double[] strips(EdgePoints points, Pose pose) {
    double[] all = points.all();
    double[] strips = new double[points.count()];
    for (int i = 0; i < strips.length; i++) {
      int at = i * EdgePoints.EACH;
      strips[i] = films.strip(all, at, x(all[at], pose), y(all[at + 1], pose));
    }
    return strips;
  }

  private Laid laid(EdgePoints points, Pose pose) {
    return laid(points, pose, strips(points, pose));
  }

  private static Laid laid(EdgePoints points, Pose pose, double[] strips) {
    double facing = 0;
    for (int i = 0; i < strips.length; i++) {
      facing += Double.isNaN(strips[i]) ? 0 : points.all()[(i + 1) * EdgePoints.EACH - 1];
    }
    double[] known = Arrays.stream(strips).filter(s -> !Double.isNaN(s)).sorted().toArray();
    double middle = known.length == 0 ? 0 : known[known.length / 2];
    double spread = Arrays.stream(known).map(s -> Math.abs(s - middle)).average().orElse(REACH);
    return new Laid(pose, facing, middle, spread);
  }

  /** Moves it until it fits, and makes it larger or smaller only if it fits clearly better so. */
  private Laid followed(EdgePoints points, Pose from) {
    Pose moved = followed(points, from, false);
    Laid one = laid(points, moved);
    if (larger == 0) {
      return one;
    }
    Laid other = laid(points, followed(points, moved, true));
    // One that was made larger already only has to be made so as fits best.
    double least = moved.scale == 1 ? CLEARLY : 1;
    boolean clearly = other.facing * one.spread > least * other.spread * one.facing;
    return clearly && isWithin(other.pose) ? other : one;
  }

  /** The best of those that come of some poses, by so many points; none if all stray too far. */
  private List<Laid> followed(int points, List<Pose> poses, int best) {
    EdgePoints few = edge.thinned(points);
    List<Laid> all = new ArrayList<>();
    for (Pose pose : poses) {
      GivenUp.ifAsked();
      Laid laid = laid(few, followed(few, pose, false));
      if (isWithin(laid.pose)) {
        all.add(laid);
      }
    }
    all.sort(Comparator.comparingDouble(laid -> -likely(laid)));
    return all.subList(0, Math.min(best, all.size()));
  }

  private Pose followed(EdgePoints points, Pose from, boolean size) {
    Pose before = from;
    // What is far from the others' strip counts at first: it may be what lies off the other way.
    double stray = REACH;
    Pose after = step(points, from, size, stray);
    while (stray > STRAY_LEAST || after.apart(before, half()) > STILL && stray > GIVEN_UP) {
      stray /= 2;
      before = after;
      after = step(points, before, size, stray);
    }
    return after;
  }

  private double half() {
    return Math.max(length, width) / 2;
  }

  private Pose step(EdgePoints points, Pose pose, boolean size, double stray) {
    double[] strips = strips(points, pose);
    double[] all = points.all();
    Laid laid = laid(points, pose, strips);
    Moments moments = new Moments();
    for (int i = 0; i < strips.length; i++) {
      int at = i * EdgePoints.EACH;
      if (Math.abs(strips[i] - laid.middle)
          <= Math.max(STRAY * laid.spread, Math.max(STRAY_LEAST, stray))) {
        double out = (x(all[at], pose) - length / 2) * all[at + 2];
        out += (y(all[at + 1], pose) - width / 2) * all[at + 3];
        moments.add(all[at + 4], all[at + 2], all[at + 3], out, strips[i]);
      }
    }
    return moments.moved(pose, size, half());
  }

  /** Weighted sums for least squares, about their means: a strip of one width all round is free. */
  private static final class Moments {

    private static final int X = 0;
    private static final int Y = 1;
    private static final int SIZE = 2;
    private static final int STRIP = 3;
    private static final int ALL = 4;

    private double weight;
    private final double[] sums = new double[ALL];
    private final double[][] products = new double[ALL][ALL];

    void add(double w, double... values) {
      weight += w;
      for (int i = 0; i < ALL; i++) {
        sums[i] += w * values[i];
        for (int j = 0; j <= i; j++) {
          products[i][j] += w * values[i] * values[j];
        }
      }
    }

    private double about(int i, int j) {
      double product = products[Math.max(i, j)][Math.min(i, j)];
      return (product - sums[i] * sums[j] / weight) / weight;
    }

    Pose moved(Pose pose, boolean size, double half) {
      if (weight == 0) {
        return pose;
      }
      double larger = 0;
      if (size) {
        double[] of = solved(about(X, SIZE), about(Y, SIZE));
        double left = about(SIZE, SIZE) - of[X] * about(X, SIZE) - of[Y] * about(Y, SIZE);
        double strip = about(SIZE, STRIP) - of[X] * about(X, STRIP) - of[Y] * about(Y, STRIP);
        larger = left / half / half < ONE_WAY ? 0 : strip / left;
      }
      double[] by =
          solved(
              about(X, STRIP) - larger * about(X, SIZE), about(Y, STRIP) - larger * about(Y, SIZE));
      return pose.and(by[X], by[Y], larger);
    }

    /** Solves for a move, the ways left out of which the edges say nothing. */
    private double[] solved(double x, double y) {
      double a = about(X, X);
      double b = about(X, Y);
      double c = about(Y, Y);
      double middle = (a + c) / 2;
      double apart = Math.hypot((a - c) / 2, b);
      double angle = Math.atan2(2 * b, a - c) / 2;
      double[] solved = new double[2];
      for (double way : new double[] {middle + apart, middle - apart}) {
        if (way >= ONE_WAY) {
          double along = Math.cos(angle) * x + Math.sin(angle) * y;
          solved[X] += Math.cos(angle) * along / way;
          solved[Y] += Math.sin(angle) * along / way;
        }
        angle += Math.PI / 2;
      }
      return solved;
    }
  }
}

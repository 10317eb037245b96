package strikeoff.artwork;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.document.GivenUp;
import strikeoff.plan.FilmFit;
import strikeoff.units.Angle;
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
  static final double REACH = Widths.WIDEST;

  /**
   * Nothing is taken for a drawing of less than half its size, whatever a policy's limits allow.
   */
  private static final double LARGER = 0.5;

  /** Nor for one that was turned by more degrees: small turns alone add up. */
  private static final double SKEWED = 15;

  /** What votes lead to is laid on few points, so many of those on more, and the best on most. */
  private static final int FIRST_POINTS = 120;

  private static final int LAID = 5;
  private static final int SOME_POINTS = 400;
  private static final int POINTS = 1500;

  /** A film that is moved by less, in mm, lies. */
  private static final double STILL = 0.005;

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

  /**
   * How it fits so.
   *
   * @param facing how much of the edge runs along the other's, in mm
   * @param middle of the strip between them, in mm: ground, or a lap below zero
   * @param spread how much that differs from it on average
   * @param half how much half of it differs from it at most, or half a point if that is more: that
   *     tells edges that were drawn to each other from those which only pass by
   */
  private record Laid(FilmPose pose, double facing, double middle, double spread, double half) {

    /** The more, the better and the more evenly it fits. */
    double worth() {
      return facing * (1 - spread / REACH);
    }

    /**
     * How many times as well it fits as another, by how much of the edge runs along the other's and
     * how even the strip is. Where half of the edge is no evener, what strays is: a part that was
     * trapped more widely, some of which any size or turn takes up.
     *
     * @param point of the films, in mm: of what strays by less than half of it nothing is known
     */
    double timesAsWell(Laid than, double point) {
      double halves = than.half / half;
      double evener = Math.max(point / 2, than.spread) / Math.max(point / 2, spread);
      return facing / than.facing * (halves > AS_WELL ? Math.max(evener, halves) : halves);
    }
  }

  private final EdgeStrips films;
  private final EdgePoints edge;
  private final EdgePoints other;
  private final PoseBounds bounds;
  private final double most;
  private final double larger;
  private final double skewed;
  private final double length;
  private final double width;

  private EdgeFitting(EdgeStrips films, EdgePoints edge, EdgePoints other, PoseBounds bounds) {
    this.films = films;
    this.edge = edge;
    this.other = other;
    this.bounds = bounds;
    this.most = bounds.moved().mm();
    this.larger = Math.min(LARGER, bounds.larger().fraction());
    this.skewed = Math.toRadians(Math.min(SKEWED, bounds.skewed().degrees()));
    this.length = films.mine().columns() * films.along();
    this.width = films.mine().rows() * films.across();
  }

  /**
   * Fits a film to another.
   *
   * @param along mm from one point of a row to the next
   * @param across mm from one row to the next
   * @param bounds how far it may be moved, made larger or turned
   * @param edges of films that were fitted before
   * @return empty if one of them has no edges
   */
  static Optional<FilmFit> of(
      Bits one, Bits other, double along, double across, PoseBounds bounds, KnownEdges edges) {
    EdgePoints ofOne = edges.of(one, along, across);
    EdgePoints ofOther = edges.of(other, along, across);
    if (ofOne.count() == 0 || ofOther.count() == 0) {
      return Optional.empty();
    }
    // What both have in common is most of the one that has less.
    boolean first = ofOne.length() <= ofOther.length();
    EdgeStrips films =
        new EdgeStrips(first ? one : other, first ? other : one, along, across, false, false);
    EdgeFitting fitting =
        new EdgeFitting(films, first ? ofOne : ofOther, first ? ofOther : ofOne, bounds);
    FilmFit fit = fitting.fit();
    return Optional.of(first ? fit : fit.ofOther());
  }

  /**
   * How it fits once it is turned where its page lies: one that would have to be moved besides lies
   * off, as halves that are nearly alike do.
   */
  private FilmFit.Turned turned(EdgePoints points, boolean leftRight, boolean topBottom) {
    EdgeFitting turned =
        new EdgeFitting(
            new EdgeStrips(
                films.mine(), films.other(), films.along(), films.across(), leftRight, topBottom),
            points.turned(length, width, leftRight, topBottom),
            other,
            bounds);
    Laid laid = turned.laid(turned.edge, FilmPose.AS_IT_IS);
    return new FilmFit.Turned(
        new Length(laid.facing), new Length(laid.spread), new Length(laid.half));
  }

  private FilmFit fit() {
    EdgePoints points = edge.thinned(POINTS);
    Laid now = laid(points, FilmPose.AS_IT_IS);
    Laid near = followed(points, FilmPose.AS_IT_IS);
    Laid best = isWithin(near.pose) ? near : now;
    double elsewhere = 0;
    // Of edges that run along each other all over there is no more to be found elsewhere.
    if (now.worth() * AS_WELL < edge.length()) {
      EdgeVotes votes = new EdgeVotes(edge, other, length, width, most, larger, skewed);
      List<Laid> all = followed(FIRST_POINTS, votes.best());
      List<FilmPose> first = all.stream().limit(LAID).map(Laid::pose).toList();
      for (Laid some : followed(SOME_POINTS, first).stream().limit(1).toList()) {
        Laid there = uprightIfAsWell(points, followed(points, some.pose));
        if (isWithin(there.pose) && there.worth() > AS_WELL * best.worth()) {
          best = there;
        }
      }
      FilmPose found = best.pose;
      elsewhere =
          all.stream()
              .filter(laid -> apart(laid.pose, found) > REACH)
              .mapToDouble(Laid::worth)
              .max()
              .orElse(0);
    }
    return new FilmFit(
        new Length(areas(points)),
        new Length(now.facing),
        new Length(best.facing),
        new Length(best.pose.x()),
        new Length(-best.pose.y()),
        new Share(best.pose.scale()),
        new Angle(-Math.toDegrees(best.pose.turn())),
        new Length(now.spread),
        new Length(best.spread),
        new Length(now.half),
        new Length(best.half),
        new Length(-best.middle),
        new Length(elsewhere),
        turned(points, true, false),
        turned(points, false, true),
        turned(points, true, true));
  }

  /**
   * How long the edges of areas are: a film's lines, and gaps as fine, have edges that nothing is
   * drawn along. All of its edges where it has no others.
   */
  private double areas(EdgePoints points) {
    double[] all = points.all();
    double length = 0;
    for (int i = 0; i < all.length; i += EdgePoints.EACH) {
      length += films.isOfArea(all, i) ? all[i + EdgePoints.EACH - 1] : 0;
    }
    return length == 0 ? edge.length() : length;
  }

  /** Neither turned nor made larger where that fits about as well: what is round says neither. */
  private Laid uprightIfAsWell(EdgePoints points, Laid laid) {
    FilmPose pose = laid.pose;
    if (pose.scale() == 1 && pose.turn() == 0) {
      return laid;
    }
    double[] there = new double[FilmPose.LAID];
    double[] middle = edge.middle();
    pose.lay(middle, 0, length, width, there);
    FilmPose moved = FilmPose.AS_IT_IS.and(there[0] - middle[0], there[1] - middle[1], 0, 0);
    Laid upright = followed(points, moved);
    return isWithin(upright.pose) && laid.timesAsWell(upright, point()) <= CLEARLY ? upright : laid;
  }

  /** How far the middle of its edge comes to lie from where another pose has it, in mm. */
  private double apart(FilmPose one, FilmPose another) {
    double[] middle = edge.middle();
    double[] here = new double[FilmPose.LAID];
    double[] there = new double[FilmPose.LAID];
    one.lay(middle, 0, length, width, here);
    another.lay(middle, 0, length, width, there);
    return Math.hypot(here[0] - there[0], here[1] - there[1]);
  }

  /** What it is worth; of what fits alike the nearer one is more likely. */
  private double likely(Laid laid) {
    return laid.worth() * (1 - UNLIKELY * far(laid));
  }

  private double far(Laid laid) {
    return laid.pose.apart(FilmPose.AS_IT_IS, half());
  }

  /** True if it may lie so; what is followed goes on beyond what is searched. */
  private boolean isWithin(FilmPose pose) {
    return Math.max(Math.abs(pose.x()), Math.abs(pose.y())) <= most + STILL
        && (Math.abs(pose.scale() - 1) - larger) * half() <= STILL
        && (Math.abs(pose.turn()) - skewed) * half() <= STILL;
  }

  /** The strips of all points, as it lies. */
  private double[] strips(EdgePoints points, FilmPose pose) {
    double[] all = points.all();
    double[] strips = new double[points.count()];
    double[] there = new double[FilmPose.LAID];
    for (int i = 0; i < strips.length; i++) {
      int at = i * EdgePoints.EACH;
      pose.lay(all, at, length, width, there);
      strips[i] = films.strip(all, at, there);
    }
    return strips;
  }

  private Laid laid(EdgePoints points, FilmPose pose) {
    return laid(points, pose, strips(points, pose));
  }

  private Laid laid(EdgePoints points, FilmPose pose, double[] strips) {
    double facing = 0;
    for (int i = 0; i < strips.length; i++) {
      facing += Double.isNaN(strips[i]) ? 0 : points.all()[(i + 1) * EdgePoints.EACH - 1];
    }
    double[] known = Arrays.stream(strips).filter(s -> !Double.isNaN(s)).sorted().toArray();
    double middle = known.length == 0 ? 0 : known[known.length / 2];
    double[] strays = Arrays.stream(known).map(s -> Math.abs(s - middle)).sorted().toArray();
    double spread = Arrays.stream(strays).average().orElse(REACH);
    double half = strays.length == 0 ? REACH : strays[strays.length / 2];
    return new Laid(pose, facing, middle, spread, Math.max(point() / 2, half));
  }

  private double point() {
    return Math.min(films.along(), films.across());
  }

  /** Moves it until it fits, and turns it or makes it larger only if it fits clearly better so. */
  private Laid followed(EdgePoints points, FilmPose from) {
    FilmPose moved = followed(points, from, false, false);
    Laid one = laid(points, moved);
    Laid turned = better(points, one, false, true, moved.turn() != 0);
    Laid sized = better(points, one, true, false, moved.scale() != 1);
    Laid either = likelier(sized, turned);
    Laid best = better(points, either, true, true, false);
    // Edges that strayed too far at first count by now.
    return better(points, best, best.pose.scale() != 1, best.pose.turn() != 0, true);
  }

  /** The one that fits better; of two that fit about as well the nearer one. */
  private Laid likelier(Laid one, Laid other) {
    double times = one.timesAsWell(other, point());
    boolean alike = times <= AS_WELL && times * AS_WELL >= 1;
    return (alike ? far(one) <= far(other) : times > 1) ? one : other;
  }

  /**
   * Laid with more freedom, if it fits clearly better then.
   *
   * @param already true if it was turned or made larger: then it only has to be laid so as fits
   *     best
   */
  private Laid better(EdgePoints points, Laid laid, boolean size, boolean turn, boolean already) {
    if (!size && !turn || size && larger == 0 || turn && skewed == 0) {
      return laid;
    }
    Laid other = laid(points, followed(points, laid.pose, size, turn));
    boolean better =
        already ? other.worth() > laid.worth() : other.timesAsWell(laid, point()) > CLEARLY;
    return better && isWithin(other.pose) ? other : laid;
  }

  /**
   * Those that come of some poses, by so many points, the likely ones first; none strays too far.
   */
  private List<Laid> followed(int points, List<FilmPose> poses) {
    EdgePoints few = edge.thinned(points);
    List<Laid> all = new ArrayList<>();
    for (FilmPose pose : poses) {
      GivenUp.ifAsked();
      Laid laid = laid(few, followed(few, pose, false, false));
      if (isWithin(laid.pose)) {
        all.add(laid);
      }
    }
    all.sort(Comparator.comparingDouble(laid -> -likely(laid)));
    return all;
  }

  private FilmPose followed(EdgePoints points, FilmPose from, boolean size, boolean turn) {
    FilmPose before = from;
    // What is far from the others' strip counts at first: it may be what lies off the other way.
    double stray = REACH;
    FilmPose after = step(points, from, size, turn, stray);
    while (stray > STRAY_LEAST || after.apart(before, half()) > STILL && stray > GIVEN_UP) {
      stray /= 2;
      before = after;
      after = step(points, before, size, turn, stray);
    }
    return after;
  }

  private double half() {
    return Math.max(length, width) / 2;
  }

  private FilmPose step(
      EdgePoints points, FilmPose pose, boolean size, boolean turn, double stray) {
    double[] strips = strips(points, pose);
    double[] all = points.all();
    Laid laid = laid(points, pose, strips);
    EdgeMoments moments = new EdgeMoments();
    double[] there = new double[FilmPose.LAID];
    for (int i = 0; i < strips.length; i++) {
      int at = i * EdgePoints.EACH;
      if (Math.abs(strips[i] - laid.middle)
          <= Math.max(STRAY * laid.half, Math.max(STRAY_LEAST, stray))) {
        pose.lay(all, at, length, width, there);
        double right = there[0] - length / 2;
        double down = there[1] - width / 2;
        moments.add(all[at + 4], right, down, there[2], there[3], strips[i]);
      }
    }
    return moments.moved(pose, size, turn);
  }
}

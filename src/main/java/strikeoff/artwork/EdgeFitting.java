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
  static final double REACH = Widths.WIDEST;

  /**
   * Nothing is taken for a drawing of less than half its size, whatever a policy's limits allow.
   */
  private static final double LARGER = 0.5;

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
   */
  private record Laid(FilmPose pose, double facing, double middle, double spread) {

    /** The more, the better and the more evenly it fits. */
    double worth() {
      return facing * (1 - spread / REACH);
    }
  }

  private final EdgeStrips films;
  private final EdgePoints edge;
  private final EdgePoints other;
  private final double most;
  private final double larger;
  private final double length;
  private final double width;

  private EdgeFitting(
      EdgeStrips films, EdgePoints edge, EdgePoints other, double most, double larger) {
    this.films = films;
    this.edge = edge;
    this.other = other;
    this.most = most;
    this.larger = Math.min(LARGER, larger);
    this.length = films.mine().columns() * films.along();
    this.width = films.mine().rows() * films.across();
  }

  /**
   * Fits a film to another.
   *
   * @param along mm from one point of a row to the next
   * @param across mm from one row to the next
   * @param most how far it may be moved, along and across
   * @param larger how much larger or smaller it may be made
   * @param edges of films that were fitted before
   * @return empty if one of them has no edges
   */
  static Optional<FilmFit> of(
      Bits one,
      Bits other,
      double along,
      double across,
      Length most,
      Share larger,
      KnownEdges edges) {
    EdgePoints ofOne = edges.of(one, along, across);
    EdgePoints ofOther = edges.of(other, along, across);
    if (ofOne.count() == 0 || ofOther.count() == 0) {
      return Optional.empty();
    }
    // What both have in common is most of the one that has less.
    boolean first = ofOne.length() <= ofOther.length();
    EdgeStrips films =
        new EdgeStrips(first ? one : other, first ? other : one, along, across, false);
    EdgeFitting fitting =
        new EdgeFitting(
            films, first ? ofOne : ofOther, first ? ofOther : ofOne, most.mm(), larger.fraction());
    FilmFit fit = fitting.fit(fitting.turned());
    return Optional.of(first ? fit : fit.ofOther());
  }

  /**
   * How it fits once it is turned over, left for right, where its page lies: one that would have to
   * be moved besides lies off, as halves that are nearly alike do.
   */
  private Laid turned() {
    EdgeFitting turned =
        new EdgeFitting(
            new EdgeStrips(films.mine(), films.other(), films.along(), films.across(), true),
            edge.turned(length),
            other,
            most,
            larger);
    return turned.laid(turned.edge.thinned(POINTS), FilmPose.AS_IT_IS);
  }

  private FilmFit fit(Laid turned) {
    EdgePoints points = edge.thinned(POINTS);
    Laid now = laid(points, FilmPose.AS_IT_IS);
    Laid near = followed(points, FilmPose.AS_IT_IS);
    Laid best = isWithin(near.pose) ? near : now;
    // Of edges that run along each other all over there is no more to be found elsewhere.
    if (best.worth() * AS_WELL < edge.length()) {
      EdgeVotes votes = new EdgeVotes(edge, other, length, width, most, larger);
      List<Laid> first = followed(FIRST_POINTS, votes.best(), LAID);
      for (Laid some : followed(SOME_POINTS, first.stream().map(Laid::pose).toList(), 1)) {
        Laid there = followed(points, some.pose);
        if (isWithin(there.pose) && there.worth() > AS_WELL * best.worth()) {
          best = there;
        }
      }
    }
    return new FilmFit(
        new Length(areas(points)),
        new Length(now.facing),
        new Length(best.facing),
        new Length(best.pose.x()),
        new Length(-best.pose.y()),
        new Share(best.pose.scale()),
        new Length(now.spread),
        new Length(best.spread),
        new Length(-best.middle),
        new Length(turned.facing),
        new Length(turned.spread));
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
        && (Math.abs(pose.scale() - 1) - larger) * half() <= STILL;
  }

  private double x(double x, FilmPose pose) {
    return length / 2 + (x - length / 2) * pose.scale() + pose.x();
  }

  private double y(double y, FilmPose pose) {
    return width / 2 + (y - width / 2) * pose.scale() + pose.y();
  }

  /** The strips of all points, as it lies. */
  private double[] strips(EdgePoints points, FilmPose pose) {
    double[] all = points.all();
    double[] strips = new double[points.count()];
    for (int i = 0; i < strips.length; i++) {
      int at = i * EdgePoints.EACH;
      strips[i] = films.strip(all, at, x(all[at], pose), y(all[at + 1], pose));
    }
    return strips;
  }

  private Laid laid(EdgePoints points, FilmPose pose) {
    return laid(points, pose, strips(points, pose));
  }

  private static Laid laid(EdgePoints points, FilmPose pose, double[] strips) {
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
  private Laid followed(EdgePoints points, FilmPose from) {
    FilmPose moved = followed(points, from, false);
    Laid one = laid(points, moved);
    if (larger == 0) {
      return one;
    }
    Laid other = laid(points, followed(points, moved, true));
    // One that was made larger already only has to be made so as fits best.
    double least = moved.scale() == 1 ? CLEARLY : 1;
    boolean clearly = other.facing * one.spread > least * other.spread * one.facing;
    return clearly && isWithin(other.pose) ? other : one;
  }

  /** The best of those that come of some poses, by so many points; none if all stray too far. */
  private List<Laid> followed(int points, List<FilmPose> poses, int best) {
    EdgePoints few = edge.thinned(points);
    List<Laid> all = new ArrayList<>();
    for (FilmPose pose : poses) {
      GivenUp.ifAsked();
      Laid laid = laid(few, followed(few, pose, false));
      if (isWithin(laid.pose)) {
        all.add(laid);
      }
    }
    all.sort(Comparator.comparingDouble(laid -> -likely(laid)));
    return all.subList(0, Math.min(best, all.size()));
  }

  private FilmPose followed(EdgePoints points, FilmPose from, boolean size) {
    FilmPose before = from;
    // What is far from the others' strip counts at first: it may be what lies off the other way.
    double stray = REACH;
    FilmPose after = step(points, from, size, stray);
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

  private FilmPose step(EdgePoints points, FilmPose pose, boolean size, double stray) {
    double[] strips = strips(points, pose);
    double[] all = points.all();
    Laid laid = laid(points, pose, strips);
    EdgeMoments moments = new EdgeMoments();
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
}

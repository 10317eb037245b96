package strikeoff.artwork;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import strikeoff.document.GivenUp;

/**
 * Looks for where a film may lie on another: points of its edge vote for all that brings them to
 * edges of the other that face them.
 *
 * @param edge of the film
 * @param other edge of the other one
 * @param length of the films, in mm
 * @param width of them, in mm
 * @param most how far it may be moved, along and across, in mm
 * @param larger how much larger or smaller it may be made
 * @param skewed how far it may be turned, in radians
 */
record EdgeVotes(
    EdgePoints edge,
    EdgePoints other,
    double length,
    double width,
    double most,
    double larger,
    double skewed) {

  /** Steps of the search, in mm; what lies between is followed from one of them. */
  private static final double STEP = 2;

  /** Steps of size and of turns, by how far the end of the longer side moves. */
  private static final double END_STEP = 3;

  /**
   * Steps either way, and coarser ones where a policy's limits ask for more: no search is endless.
   */
  private static final int STEPS = 50;

  /** As many points vote, for places of so many points of the other edge. */
  private static final int FEW_POINTS = 300;

  private static final int OTHER_POINTS = 1500;

  /** So many of the places that they vote for are told. */
  private static final int FOLLOWED = 60;

  /** Two edges face each other if their ways out are so much against each other, as a cosine. */
  private static final double FACES = -0.9;

  /** So much fewer count for each millimetre: on a dense drawing all that is far off gets many. */
  private static final double UNLIKELY_VOTES = 0.01;

  /** Where most of its edges come to lie near edges of the other that face them. */
  List<FilmPose> best() {
    double half = Math.max(length, width) / 2;
    EdgePoints few = edge.thinned(FEW_POINTS);
    EdgePoints others = other.thinned(OTHER_POINTS);
    // Further off it shares no place with the other.
    double far = Math.min(most, Math.max(length, width));
    double step = Math.max(STEP, far / STEPS);
    int moves = (int) Math.ceil(far / step);
    int side = 2 * moves + 1;
    List<Voted> all = new ArrayList<>();
    for (FilmPose pose : poses(half)) {
      GivenUp.ifAsked();
      int[] votes = votes(few, others, pose, moves, step);
      for (int y = 0; y < side; y++) {
        for (int x = 0; x < side; x++) {
          FilmPose moved = pose.and((x - moves) * step, (y - moves) * step, 0, 0);
          double unlikely = UNLIKELY_VOTES * moved.apart(FilmPose.AS_IT_IS, half);
          all.add(new Voted(moved, around(votes, side, x, y) * (1 - unlikely)));
        }
      }
    }
    // Neighbours vote alike: each of them is followed to the same place.
    List<FilmPose> best = new ArrayList<>();
    all.sort(Comparator.comparingDouble(voted -> -voted.votes));
    for (int i = 0; i < all.size() && best.size() < FOLLOWED; i++) {
      FilmPose next = all.get(i).pose;
      if (best.stream().allMatch(pose -> pose.apart(next, half) > 1.1 * step)) {
        best.add(next);
      }
    }
    return best;
  }

  /** Larger or smaller, or turned: one fault at a time. */
  private List<FilmPose> poses(double half) {
    List<FilmPose> poses = new ArrayList<>();
    poses.add(FilmPose.AS_IT_IS);
    for (double size : steps(larger, half)) {
      poses.add(FilmPose.AS_IT_IS.and(0, 0, size, 0));
    }
    for (double turn : steps(skewed, half)) {
      poses.add(FilmPose.AS_IT_IS.and(0, 0, 0, turn));
    }
    return poses;
  }

  /** Up to so much either way. */
  private static double[] steps(double most, double half) {
    double step = Math.max(END_STEP / half, most / STEPS);
    int steps = (int) Math.ceil(most / step);
    return IntStream.rangeClosed(-steps, steps)
        .filter(i -> i != 0)
        .mapToDouble(i -> Math.max(-most, Math.min(most, i * step)))
        .toArray();
  }

  /** How many points of an edge a move brings near the other's edges; for less if it is far. */
  private record Voted(FilmPose pose, double votes) {}

  /**
   * Each point votes for all moves that bring it to an edge of the other that faces it, once each
   * (Ballard 1981).
   *
   * @return by moves down, and of them to the right, a step apart
   */
  private int[] votes(EdgePoints few, EdgePoints others, FilmPose pose, int moves, double step) {
    int side = 2 * moves + 1;
    int[] votes = new int[side * side];
    int[] voted = new int[side * side];
    double[] points = few.all();
    double[] to = others.all();
    double far = (moves + 0.5) * step;
    double[] at = new double[FilmPose.LAID];
    for (int i = 0; i < points.length; i += EdgePoints.EACH) {
      pose.lay(points, i, length, width, at);
      for (int j = 0; j < to.length; j += EdgePoints.EACH) {
        double right = to[j] - at[0];
        double down = to[j + 1] - at[1];
        double faces = at[2] * to[j + 2] + at[3] * to[j + 3];
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
}

package strikeoff.artwork;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
 */
record EdgeVotes(
    EdgePoints edge, EdgePoints other, double length, double width, double most, double larger) {

  /** Steps of the search, in mm; what lies between is followed from one of them. */
  private static final double STEP = 2;

  /** Steps of size, by how far the end of the longer side moves. */
  private static final double SIZE_STEP = 3;

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
    double sizeStep = Math.max(SIZE_STEP / half, larger / STEPS);
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
          FilmPose pose = new FilmPose((x - moves) * step, (y - moves) * step, scale);
          double unlikely = UNLIKELY_VOTES * pose.apart(FilmPose.AS_IT_IS, half);
          all.add(new Voted(pose, around(votes, side, x, y) * (1 - unlikely)));
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

  /** How many points of an edge a move brings near the other's edges; for less if it is far. */
  private record Voted(FilmPose pose, double votes) {}

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
}

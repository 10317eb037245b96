package strikeoff.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.quadtree.Quadtree;
import strikeoff.layout.FilmUnder;
import strikeoff.layout.Footprint;
import strikeoff.layout.Tube;

/**
 * What of a step that several people print is planned so far, found again by where it lies on the
 * cloth.
 */
final class Jobs {

  private final Tube tube;
  private final Quadtree films = new Quadtree();
  private final Map<Integer, Job> lastAt = new HashMap<>();
  private Quadtree frames = new Quadtree();

  Jobs(Tube tube) {
    this.tube = tube;
  }

  /** All that was planned is done; no frame is in anybody's way. */
  void allDone() {
    frames = new Quadtree();
  }

  void add(Job job) {
    insert(films, job.footprint().image(), job);
    insert(frames, job.footprint().frame(), job);
    lastAt.put(job.footprint().placement().id(), job);
  }

  /** The films of other colours that a frame will lie on. */
  List<Job> under(Footprint footprint) {
    List<Job> under = new ArrayList<>();
    for (Job job : near(films, footprint.frame())) {
      if (job.footprint().separation() != footprint.separation()
          && !isIn(under, job)
          && FilmUnder.lies(job.footprint(), footprint.frame(), tube)) {
        under.add(job);
      }
    }
    return under;
  }

  /** The films of its own colour that a frame will lie on. */
  List<Job> neighbours(Footprint footprint) {
    List<Job> beside = new ArrayList<>();
    for (Job job : near(films, footprint.frame())) {
      if (job.footprint().separation() == footprint.separation()
          && job.footprint().placement().id() != footprint.placement().id()
          && !isIn(beside, job)
          && FilmUnder.lies(job.footprint(), footprint.frame(), tube)) {
        beside.add(job);
      }
    }
    return beside;
  }

  /** Frames of the same stretch that would lie in the way. */
  List<Job> inTheWay(Footprint footprint) {
    List<Job> meet = new ArrayList<>();
    for (Job job : near(frames, footprint.frame())) {
      if (tube.overlaps(job.footprint().frame(), footprint.frame())) {
        meet.add(job);
      }
    }
    return meet;
  }

  /** The colour before it at its place, and the last one of what it is set from. */
  List<Job> before(Footprint footprint) {
    List<Job> before = new ArrayList<>();
    Job own = lastAt.get(footprint.placement().id());
    if (own != null) {
      before.add(own);
    }
    OptionalInt anchor = footprint.placement().anchor();
    if (anchor.isPresent() && lastAt.containsKey(anchor.getAsInt())) {
      before.add(lastAt.get(anchor.getAsInt()));
    }
    return before;
  }

  private void insert(Quadtree index, Geometry shape, Job job) {
    for (Envelope bounds : tube.bounds(shape.getEnvelopeInternal())) {
      index.insert(bounds, job);
    }
  }

  /** What may meet a shape; twice what lies across a tube's seam. */
  private List<Job> near(Quadtree index, Geometry shape) {
    List<Job> near = new ArrayList<>();
    for (Envelope bounds : tube.bounds(shape.getEnvelopeInternal())) {
      for (Object item : index.query(bounds)) {
        near.add((Job) item);
      }
    }
    return near;
  }

  private static boolean isIn(List<Job> jobs, Job job) {
    for (Job known : jobs) {
      if (known == job) {
        return true;
      }
    }
    return false;
  }
}

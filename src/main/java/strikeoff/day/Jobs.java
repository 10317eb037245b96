package strikeoff.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import strikeoff.layout.Footprint;
import strikeoff.layout.FrameMeetings;

/** What of a step that several people print is planned so far, each of its prints once. */
final class Jobs {

  private final FrameMeetings meetings;
  private final Map<Footprint, Job> films = new IdentityHashMap<>();
  private final Map<Footprint, Job> frames = new IdentityHashMap<>();
  private final Map<Integer, Job> lastAt = new HashMap<>();

  Jobs(FrameMeetings meetings) {
    this.meetings = meetings;
  }

  /** All that was planned is done; no frame is in anybody's way. */
  void allDone() {
    frames.clear();
  }

  void add(Job job) {
    films.put(job.footprint(), job);
    frames.put(job.footprint(), job);
    lastAt.put(job.footprint().placement().id(), job);
  }

  /** The films of other colours that a frame will lie on. */
  List<Job> under(Footprint footprint) {
    List<Job> under = new ArrayList<>();
    for (Footprint film : meetings.under(footprint, films)) {
      if (film.separation() != footprint.separation()) {
        under.add(films.get(film));
      }
    }
    return under;
  }

  /** The films of its own colour that a frame will lie on. */
  List<Job> neighbours(Footprint footprint) {
    List<Job> beside = new ArrayList<>();
    for (Footprint film : meetings.under(footprint, films)) {
      if (film.separation() == footprint.separation()
          && film.placement().id() != footprint.placement().id()) {
        beside.add(films.get(film));
      }
    }
    return beside;
  }

  /** Frames of the same stretch that would lie in the way. */
  List<Job> inTheWay(Footprint footprint) {
    List<Job> meet = new ArrayList<>();
    for (Footprint frame : meetings.inTheWay(footprint, frames)) {
      meet.add(frames.get(frame));
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
}

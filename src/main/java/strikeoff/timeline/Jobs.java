package strikeoff.timeline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;
import strikeoff.layout.Footprint;
import strikeoff.layout.Placement;
import strikeoff.layout.Tube;
import strikeoff.plan.Step;
import strikeoff.timeline.Passes.Pass;
import strikeoff.timeline.Sets.Motif;

/**
 * What several people print on one stretch without the cloth being moved: the passes of a step
 * behind one another, each person's share in its order. Whoever is done with one pass goes on to
 * the next, as soon as what lies under the frame there, and what it is set from, is done.
 */
final class Jobs {

  /** A frame on more films than this is waited for: then the next pass begins when all are done. */
  private static final int MOST_UNDER = 64;

  private final Step.Print step;
  private final Tube tube;
  private final List<String> people;
  private final Map<String, Deque<Job>> byPerson = new LinkedHashMap<>();
  private final Map<Integer, Job> lastAt = new HashMap<>();
  private final Map<String, String> pasteIn = new HashMap<>();
  private final Map<String, Integer> colours;
  private final Quadtree films = new Quadtree();
  private int stations;
  private int waits;

  /**
   * @param colours how many colours the arrangements before each one have
   * @param waits how often a colour of the step has dried so far
   */
  Jobs(Step.Print step, Tube tube, Map<String, Integer> colours, int waits) {
    this.step = step;
    this.tube = tube;
    this.colours = colours;
    this.waits = waits;
    this.people = people(step);
    people.forEach(person -> byPerson.put(person, new ArrayDeque<>()));
  }

  static List<String> people(Step.Print step) {
    List<String> people = new ArrayList<>();
    step.by().ifPresent(people::add);
    people.addAll(step.also());
    return people;
  }

  Map<String, Deque<Job>> byPerson() {
    return byPerson;
  }

  /** How often a colour has dried once all is done. */
  int waits() {
    return waits;
  }

  /**
   * Adds a pass behind the others; colours, or stations, go on round the people.
   *
   * @return false, with nothing added, if it can begin only when all others are done: a screen
   *     would hold another paste, or a frame lies on too many films
   */
  boolean add(Pass pass) {
    if (!screensServe(pass)) {
      return false;
    }
    Map<Footprint, List<Job>> under = new HashMap<>();
    for (Motif motif : pass.set().motifs()) {
      for (Footprint footprint : colours(pass, motif)) {
        List<Job> films = earlierPasses(footprint);
        if (films.size() > MOST_UNDER) {
          return false;
        }
        under.put(footprint, films);
      }
    }
    List<Job> added = new ArrayList<>();
    List<Motif> order = Printing.order(step, pass);
    boolean byStation = step.order() == Step.Order.BY_STATION;
    int first = colours.get(pass.set().motifs().get(0).placement().arrangement());
    int outer = byStation ? order.size() : pass.endColour() - pass.firstColour();
    int inner = byStation ? pass.endColour() - pass.firstColour() : order.size();
    for (int i = 0; i < outer; i++) {
      int turn = byStation ? stations++ : first + pass.firstColour() + i;
      String person = people.get(turn % people.size());
      for (int j = 0; j < inner; j++) {
        Motif motif = order.get(byStation ? i : j);
        int colour = byStation ? j : i;
        Footprint footprint = motif.colours().get(pass.firstColour() + colour);
        List<Job> after = under.get(footprint);
        Job before = lastAt.get(motif.placement().id());
        if (before != null && !after.contains(before)) {
          after.add(before);
        }
        Job job = new Job(footprint, person, pass.set().number(), waits + colour, after);
        byPerson.get(person).add(job);
        lastAt.put(motif.placement().id(), job);
        pasteIn.put(footprint.screen().name(), footprint.paste().name());
        added.add(job);
      }
    }
    for (Job job : added) {
      for (Envelope bounds : bounds(job.footprint().image().getEnvelopeInternal())) {
        films.insert(bounds, job);
      }
    }
    waits += pass.endColour() - pass.firstColour();
    return true;
  }

  private static List<Footprint> colours(Pass pass, Motif motif) {
    return motif.colours().subList(pass.firstColour(), pass.endColour());
  }

  private boolean screensServe(Pass pass) {
    for (Motif motif : pass.set().motifs()) {
      for (Footprint footprint : colours(pass, motif)) {
        String paste = pasteIn.get(footprint.screen().name());
        if (paste != null && !paste.equals(footprint.paste().name())) {
          return false;
        }
      }
    }
    return true;
  }

  /** What of the passes before it lies under its frame, and the last colour of its anchor. */
  private List<Job> earlierPasses(Footprint footprint) {
    List<Job> under = new ArrayList<>();
    for (Envelope bounds : bounds(footprint.frame().getEnvelopeInternal())) {
      films.query(
          bounds,
          item -> {
            Job film = (Job) item;
            boolean counts =
                under.size() <= MOST_UNDER
                    && !under.contains(film)
                    && tube.overlaps(film.footprint().image(), footprint.frame());
            if (counts) {
              under.add(film);
            }
          });
    }
    Placement placement = footprint.placement();
    Job anchor = placement.anchor().isPresent() ? lastAt.get(placement.anchor().getAsInt()) : null;
    if (anchor != null && !under.contains(anchor)) {
      under.add(anchor);
    }
    return under;
  }

  private List<Envelope> bounds(Envelope shape) {
    return tube.bounds(shape);
  }
}

package strikeoff.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BiFunction;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.quadtree.Quadtree;
import strikeoff.document.GivenUp;
import strikeoff.layout.FilmUnder;
import strikeoff.layout.Tube;
import strikeoff.units.Area;

/**
 * Finds every frame that is laid on a film before that is surely frame-safe.
 *
 * <p>A spatial index holds only those films that may still be wet: they come in when their frame is
 * lifted and leave when even slow drying is over, so that the work for one impression depends on
 * how much lies wet near it, not on how much was printed before.
 */
final class ContactFinder {

  private static final Comparator<Impression> IN_ORDER = Comparator.comparingInt(Impression::id);

  private final List<Contact> contacts = new ArrayList<>();
  private final Tube tube;
  private final int most;
  private final BiFunction<Impression, Impression, Reached> safe;
  private final Quadtree wet = new Quadtree();
  private final PriorityQueue<Wet> leaving =
      new PriorityQueue<>(
          Comparator.comparingLong((Wet w) -> w.print.film().frameSafe().latest().seconds())
              .thenComparingInt(w -> w.print.id()));

  /** A film that may still be wet; the index finds it again by its identity. */
  private static final class Wet {
    final Impression print;

    Wet(Impression print) {
      this.print = print;
    }
  }

  /**
   * @param most contacts after which it stops looking
   * @param safe when the earlier film would be frame-safe if the later frame were waited with
   */
  ContactFinder(Tube tube, int most, BiFunction<Impression, Impression, Reached> safe) {
    this.tube = tube;
    this.safe = safe;
    this.most = most;
  }

  /** What was found so far, in order of laying. */
  List<Contact> contacts() {
    return contacts;
  }

  /** The impressions are laid one by one, in order. */
  void lay(Impression later) {
    GivenUp.ifAsked();
    dry(later.laid());
    Impression last = null;
    for (Impression earlier : near(later.footprint().frame())) {
      if (contacts.size() >= most) {
        return;
      }
      if (earlier != last) { // else found on both sides of a tube's seam
        between(earlier, later).ifPresent(contacts::add);
      }
      last = earlier;
    }
    Wet film = new Wet(later);
    for (Envelope bounds : bounds(later)) {
      wet.insert(bounds, film);
    }
    leaving.add(film);
  }

  /** Takes out what is dry by now. */
  private void dry(Moment now) {
    while (!leaving.isEmpty()
        && leaving.peek().print.film().frameSafe().latest().compareTo(now) <= 0) {
      Wet dry = leaving.poll();
      for (Envelope bounds : bounds(dry.print)) {
        wet.remove(bounds, dry);
      }
    }
  }

  private List<Impression> near(Geometry frame) {
    List<Impression> found = new ArrayList<>();
    for (Envelope bounds : tube.bounds(frame.getEnvelopeInternal())) {
      wet.query(bounds, item -> found.add(((Wet) item).print));
    }
    found.sort(IN_ORDER);
    return found;
  }

  private List<Envelope> bounds(Impression impression) {
    return tube.bounds(impression.footprint().image().getEnvelopeInternal());
  }

  /**
   * The contact of two impressions, if the later frame lies on the earlier film while it is wet. By
   * its separation's film there may be none of it in that part of the image.
   */
  private Optional<Contact> between(Impression earlier, Impression later) {
    if (earlier.film().frameSafe().latest().compareTo(later.laid()) <= 0
        || earlier.lifted().compareTo(later.laid()) > 0) {
      return Optional.empty();
    }
    Geometry frame = later.footprint().frame();
    if (!tube.overlaps(frame, earlier.footprint().image())) {
      return Optional.empty();
    }
    Optional<Area> printed = FilmUnder.of(earlier.footprint(), frame, tube);
    if (printed.filter(FilmUnder::isNothing).isPresent()) {
      return Optional.empty();
    }
    Area area = tube.overlap(frame, earlier.footprint().image());
    return Optional.of(new Contact(earlier, later, area, printed, safe.apply(earlier, later)));
  }
}

package strikeoff.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import strikeoff.document.GivenUp;
import strikeoff.layout.FilmUnder;
import strikeoff.layout.Footprint;
import strikeoff.layout.FrameMeetings;
import strikeoff.layout.Layout;
import strikeoff.units.Area;

/**
 * Finds every frame that is laid on a film before that is surely frame-safe. By its separation's
 * film there may be none of it in that part of its image.
 *
 * <p>Of each image it holds only those films that may still be wet: they leave when even slow
 * drying is over, so that the work for one impression depends on how much lies near it, not on how
 * much was printed before.
 */
final class ContactFinder {

  private static final Comparator<Impression> IN_ORDER = Comparator.comparingInt(Impression::id);

  private final List<Contact> contacts = new ArrayList<>();
  private final Layout layout;
  private final FrameMeetings meetings;
  private final int most;
  private final BiFunction<Impression, Impression, Reached> safe;
  private final Map<Footprint, List<Impression>> wet = new IdentityHashMap<>();

  /**
   * @param safe when the earlier film would be frame-safe if the later frame were waited with
   */
  ContactFinder(Beforehand known, BiFunction<Impression, Impression, Reached> safe) {
    this.layout = known.layout();
    this.meetings = known.meetings();
    this.most = known.effort().contacts();
    this.safe = safe;
  }

  /** What was found so far, in order of laying. */
  List<Contact> contacts() {
    return contacts;
  }

  /** The impressions are laid one by one, in order; after the most contacts it stops looking. */
  void lay(Impression later) {
    GivenUp.ifAsked();
    if (contacts.size() >= most) {
      return;
    }
    for (Impression earlier : wetUnder(later)) {
      if (contacts.size() >= most) {
        return;
      }
      if (earlier.lifted().compareTo(later.laid()) <= 0) {
        contacts.add(contact(earlier, later));
      }
    }
    wet.computeIfAbsent(later.footprint(), f -> new ArrayList<>(1)).add(later);
  }

  private List<Impression> wetUnder(Impression later) {
    List<Impression> under = new ArrayList<>();
    for (Footprint film : meetings.under(later.footprint(), wet)) {
      List<Impression> own = wet.get(film);
      own.removeIf(one -> one.film().frameSafe().latest().compareTo(later.laid()) <= 0);
      if (own.isEmpty()) {
        wet.remove(film);
      }
      under.addAll(own);
    }
    under.sort(IN_ORDER);
    return under;
  }

  private Contact contact(Impression earlier, Impression later) {
    Footprint film = earlier.footprint();
    Optional<Area> printed = FilmUnder.of(film, later.footprint().frame(), layout.tube());
    Area area = layout.tube().overlap(later.footprint().frame(), film.image());
    return new Contact(earlier, later, area, printed, safe.apply(earlier, later));
  }
}

package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Draught;
import strikeoff.plan.Step;

/**
 * Moved air over the cloth: a fan stands by itself, a hair-dryer takes somebody's hands. One cloth
 * dries at a time, so nobody ever waits for either piece; but for the hands.
 */
final class Blowing {

  private final Daybook book;
  private final Shared shared;
  private final Step step;
  private final Optional<Resource.Kind> kind;
  private final Optional<String> person;

  /**
   * @param person who holds a hair-dryer
   */
  Blowing(Daybook book, Shared shared, Step step, Draught air, String person) {
    this.book = book;
    this.shared = shared;
    this.step = step;
    this.kind =
        switch (air.by()) {
          case FAN -> Optional.of(Resource.Kind.FAN);
          case HAIR_DRYER -> Optional.of(Resource.Kind.HAIR_DRYER);
          case STILL, STATED -> Optional.empty();
        };
    this.person = air.by() == Draught.By.HAIR_DRYER ? Optional.of(person) : Optional.empty();
  }

  /** When the air begins to move; until then the cloth waits for whoever is to move it. */
  long start() {
    List<Resource> cloth = List.of(Resource.CLOTH);
    long free = book.start(cloth);
    long ready = book.start(held());
    if (ready > free) {
      Entry wait = Entry.of(step, Task.Kind.WAIT, new Doing.ForPerson(person.orElseThrow()));
      book.add(wait, cloth, free, ready - free);
      book.heldUp().by(Resource.person(person.orElseThrow()));
    }
    return ready;
  }

  /** The cloth dries, and what blows is taken; nothing if it takes no time. */
  void dry(Doing cause, long seconds) {
    if (seconds <= 0) {
      return;
    }
    Entry plain = Entry.of(step, Task.Kind.WAIT, cause);
    Entry entry = person.map(plain::by).orElse(plain);
    if (kind.isPresent()) {
      shared.book(entry, held(), kind.get(), seconds);
    } else {
      book.add(entry, held(), seconds);
    }
  }

  private List<Resource> held() {
    List<Resource> held = new ArrayList<>(List.of(Resource.CLOTH));
    person.map(Resource::person).ifPresent(held::add);
    return held;
  }
}

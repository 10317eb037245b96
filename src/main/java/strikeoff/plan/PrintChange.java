package strikeoff.plan;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.Span;

/** A print step like another one, but for what is said here. */
public final class PrintChange {

  private final PrintStep like;
  private int number;
  private boolean everyOther;
  private Span pause;
  private Wait dryBetweenColours;
  private Wait beforeMoving;
  private Wait dryBetweenPasses;
  private Until dryBetweenNeighbours;
  private Optional<String> by;
  private List<String> also;
  private Optional<String> washes;
  private PlanPath path;

  PrintChange(PrintStep like) {
    this.like = like;
    number = like.number();
    everyOther = like.everyOther();
    pause = like.pause();
    dryBetweenColours = like.dryBetweenColours();
    beforeMoving = like.beforeMoving();
    dryBetweenPasses = like.dryBetweenPasses();
    dryBetweenNeighbours = like.dryBetweenNeighbours();
    by = like.by();
    also = like.also();
    washes = like.washes();
    path = like.path();
  }

  /** At another place of the run, from 1. */
  PrintChange at(int place) {
    number = place;
    path = Step.path(place);
    return this;
  }

  /**
   * Printed by others.
   *
   * @param people who; none for the first of the crew
   */
  public PrintChange by(List<String> people) {
    by = people.stream().findFirst();
    also = people.stream().skip(1).toList();
    return this;
  }

  /** Its screens washed out by somebody. */
  PrintChange washedBy(String person) {
    washes = Optional.of(person);
    return this;
  }

  /** Every other placement first. */
  public PrintChange everyOther() {
    everyOther = true;
    return this;
  }

  /** A wait after each impression. */
  public PrintChange pause(Span lasts) {
    pause = lasts;
    return this;
  }

  /** A wait after each colour. */
  public PrintChange dryBetweenColours(Wait wait) {
    dryBetweenColours = wait;
    return this;
  }

  /** A wait before the cloth moves on. */
  public PrintChange beforeMoving(Wait wait) {
    beforeMoving = wait;
    return this;
  }

  /** A wait between every other placement and those between them. */
  public PrintChange dryBetweenPasses(Wait wait) {
    dryBetweenPasses = wait;
    return this;
  }

  /** A wait for prints of one colour that lie under the next frame. */
  public PrintChange dryBetweenNeighbours(Until until) {
    dryBetweenNeighbours = until;
    return this;
  }

  /** The step with all of that. */
  public PrintStep made() {
    return new PrintStep(
        number,
        like.arrangements(),
        like.only(),
        like.separations(),
        like.order(),
        everyOther,
        pause,
        dryBetweenColours,
        beforeMoving,
        by,
        also,
        washes,
        dryBetweenPasses,
        like.washBetweenColours(),
        dryBetweenNeighbours,
        like.numbers(),
        like.air(),
        like.begins(),
        path);
  }
}

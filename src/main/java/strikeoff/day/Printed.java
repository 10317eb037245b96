package strikeoff.day;

import java.util.Optional;
import strikeoff.drying.FilmNeed;
import strikeoff.layout.Footprint;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintStep;

/**
 * An impression as the simulation leaves it, before it is known when its film will dry.
 *
 * @param run the impressions with which it was waited for
 * @param impressionsBefore how many impressions the step had before it
 * @param passesBefore how often it has let a pass dry before the placements between
 * @param begins second at which the frame is fetched
 * @param laid second at which the frame touches the cloth
 * @param lifted second at which the film begins to dry
 */
public record Printed(
    int id,
    PrintStep step,
    int set,
    Footprint footprint,
    String person,
    ColourRun run,
    int impressionsBefore,
    int passesBefore,
    long begins,
    long laid,
    long lifted,
    FilmNeed need) {

  /** Which wait of its step lies between an earlier impression and this; none of another step's. */
  public Optional<Doing.Wait> waitAfter(Printed earlier) {
    if (earlier.step != step) {
      return Optional.empty();
    }
    if (footprint.separation() != earlier.footprint.separation()) {
      return Optional.of(Doing.Wait.BETWEEN_COLOURS);
    }
    if (passesBefore > earlier.passesBefore) {
      return Optional.of(Doing.Wait.BETWEEN_PASSES);
    }
    return Optional.of(step.mindsNeighbours() ? Doing.Wait.BETWEEN_NEIGHBOURS : Doing.Wait.PAUSE);
  }

  /**
   * What would move the air in a longer wait after an earlier impression. People who print side by
   * side leave it on for as long as they print; a drying step that is put in has none.
   */
  Optional<Draught> airAfter(Printed earlier) {
    return waitAfter(earlier).flatMap(wait -> own(wait).or(step::air));
  }

  private Optional<Draught> own(Doing.Wait wait) {
    return switch (wait) {
      case BETWEEN_COLOURS -> step.dryBetweenColours().air();
      case BETWEEN_PASSES -> step.dryBetweenPasses().air();
      case PAUSE, BETWEEN_NEIGHBOURS ->
          step.beside() ? step.dryBetweenColours().air() : Optional.empty();
      case BEFORE_MOVING -> step.beforeMoving().air();
    };
  }
}

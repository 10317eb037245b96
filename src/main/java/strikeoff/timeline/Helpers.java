package strikeoff.timeline;

import java.util.List;
import java.util.Optional;
import strikeoff.layout.Footprint;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;

/** Who lends a hand where a frame is too long for one person to lay. */
final class Helpers {

  private final List<String> crew;
  private final double longest;

  /**
   * @param longest side of a frame in mm that one person lays
   */
  Helpers(PrintPlan plan, double longest) {
    this.crew = plan.crew().names();
    this.longest = longest;
  }

  /** The first other person of the crew if the frame needs two; empty if there is nobody else. */
  Optional<String> of(Footprint footprint, String person) {
    return needsTwo(footprint.screen())
        ? crew.stream().filter(name -> !name.equals(person)).findFirst()
        : Optional.empty();
  }

  boolean needsTwo(Screen screen) {
    return Math.max(screen.frameLength().mm(), screen.frameWidth().mm()) > longest;
  }
}

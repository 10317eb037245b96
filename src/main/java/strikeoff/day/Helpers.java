package strikeoff.day;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;
import strikeoff.layout.Footprint;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;

/** Who lends a hand where a frame is too long for one person to lay. */
final class Helpers {

  private final List<String> crew;
  private final Map<String, Screen> screens;
  private final double longest;

  /**
   * @param longest side of a frame in mm that one person lays
   */
  Helpers(PrintPlan plan, double longest) {
    this.crew = plan.crew().names();
    this.screens = plan.screens();
    this.longest = longest;
  }

  /**
   * Whoever else is free first if the frame needs two; empty if there is nobody else.
   *
   * @param named who prints the step besides; none for anybody of the crew
   */
  Optional<String> of(
      Footprint footprint, String person, List<String> named, ToLongFunction<Resource> freeAt) {
    return needsTwo(footprint.screen())
        ? (named.isEmpty() ? crew : named)
            .stream()
                .filter(name -> !name.equals(person))
                .min(Comparator.comparingLong(name -> freeAt.applyAsLong(Resource.person(name))))
        : Optional.empty();
  }

  /** True if one of the designs has a frame that takes two people to lay. */
  boolean anyNeedsTwo(List<Design> designs) {
    return designs.stream()
        .flatMap(d -> d.separations().stream())
        .anyMatch(s -> needsTwo(screens.get(s.screen())));
  }

  private boolean needsTwo(Screen screen) {
    return Math.max(screen.frameLength().mm(), screen.frameWidth().mm()) > longest;
  }
}

package strikeoff.policy;

import java.util.List;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * What a reactive group of dyes needs to be fixed, and how long its pastes live.
 *
 * @param name the chemical name of the group
 * @param aliases short forms that a plan may use, such as DCT
 * @param coolest of a soak or a batch
 * @param warmest of a soak or a batch
 * @param shortestSoak at {@code coolest}
 * @param shortestBatch at {@code coolest}
 * @param shortestSteam in saturated steam
 * @param longestSteam in saturated steam
 * @param lifeWithAlkali of a paste at room temperature once it holds its alkali
 * @param lifeWithoutAlkali of a paste at room temperature without alkali
 * @param lifeWithoutAlkaliCold the same, kept cold
 * @param lifeWithAlkaliCold with alkali, kept cold
 */
public record ReactiveGroup(
    String name,
    List<String> aliases,
    Temperature coolest,
    Temperature warmest,
    Span shortestSoak,
    Span shortestBatch,
    Span shortestSteam,
    Span longestSteam,
    Span lifeWithAlkali,
    Span lifeWithAlkaliCold,
    Span lifeWithoutAlkali,
    Span lifeWithoutAlkaliCold,
    String source) {

  public ReactiveGroup {
    aliases = List.copyOf(aliases);
  }
}

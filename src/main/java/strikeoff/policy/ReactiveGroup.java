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
 * @param soak stated time of a soak after the print has dried
 * @param batch stated time of a batch that is kept damp; colder than its temperature the group
 *     reacts badly, however long it lies
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
    Stated soak,
    Stated batch,
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

  /**
   * A time that sources give for one way of fixing.
   *
   * @param pale for pale and middle shades
   * @param deep for deep ones
   * @param at the temperature that it holds for
   */
  public record Stated(Span pale, Span deep, Temperature at) {

    public Span forShade(boolean isDeep) {
      return isDeep ? deep : pale;
    }
  }
}

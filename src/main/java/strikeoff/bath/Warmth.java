package strikeoff.bath;

import java.util.List;
import strikeoff.units.Range;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * The temperature and the time that dye has in a soak or a batch, against what the reactive groups
 * on the cloth need.
 *
 * @param step number of the fix step
 * @param how soak or batch
 * @param dyes the dye pastes on the cloth
 * @param coolest temperature that all groups react at
 * @param coolestGroup the group that asks for it
 * @param warmest temperature that all groups stand
 * @param warmestGroup the group that asks for it
 * @param coldBy how many degrees the step is colder than {@code coolest}; negative if warmer
 * @param hotBy how many degrees it is warmer than {@code warmest}; negative if cooler
 * @param lasts how long the dye has
 * @param neededMinutes how long the slowest group needs at this temperature: its stated time at its
 *     coolest temperature, carried over by Arrhenius' law within the range of activation energies
 * @param neededGroup the group that needs longest
 * @param timeKnown false if it is so cold that Arrhenius' law may not be carried over so far
 */
public record Warmth(
    int step,
    String how,
    List<String> dyes,
    Temperature temperature,
    Temperature coolest,
    String coolestGroup,
    Temperature warmest,
    String warmestGroup,
    double coldBy,
    double hotBy,
    Span lasts,
    Range neededMinutes,
    String neededGroup,
    boolean timeKnown) {

  public Warmth {
    dyes = List.copyOf(dyes);
  }

  public Temperature degreesCold() {
    return new Temperature(coldBy);
  }

  public Temperature degreesHot() {
    return new Temperature(hotBy);
  }

  /** The longest estimate, in whole minutes. */
  public Span neededAtMost() {
    return new Span(neededMinutes.high()).wholeMinutesUp();
  }

  /** What is missing to the longest estimate, in whole minutes; zero if nothing. */
  public Span minutesMore() {
    return new Span(Math.max(0, neededMinutes.high() - lasts.minutes())).wholeMinutesUp();
  }
}

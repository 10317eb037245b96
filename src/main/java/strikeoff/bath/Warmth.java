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
 * @param coldBy how many degrees the step is colder than the slowest group bears on the cloth,
 *     however long it lies; negative if warmer
 * @param bears that temperature
 * @param hotBy how many degrees it is warmer than {@code warmest}; negative if cooler
 * @param lasts how long the dye has
 * @param neededMinutes how long the slowest paste needs this way at this temperature until nearly
 *     all that can be fixed is fixed
 * @param neededGroup the group that needs longest
 * @param timeKnown false if it is so cold that no time can be given
 * @param last true if no other fix step follows before the cloth is rinsed
 * @param windows the groups with the temperatures that each asks for, in words
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
    Temperature bears,
    double hotBy,
    Span lasts,
    Range neededMinutes,
    String neededGroup,
    boolean timeKnown,
    boolean last,
    List<Window> windows) {

  /** Between which temperatures a group is fixed so. */
  public record Window(String group, Temperature coolest, Temperature warmest) {}

  public Warmth {
    dyes = List.copyOf(dyes);
    windows = List.copyOf(windows);
  }

  /** False if no temperature serves all groups on the cloth. */
  public boolean windowsMeet() {
    return coolest.celsius() <= warmest.celsius();
  }
}

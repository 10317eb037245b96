package strikeoff.paste;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.timeline.Impression;
import strikeoff.units.Range;

/**
 * When a screen is filled with paste: at its first impression, on each new day, and when it takes
 * another paste. A bead of paste must lie along the blade for the last pull to print, and stays
 * there.
 */
final class Fillings {

  private Fillings() {}

  /** Grams that the filling before an impression costs, by impression id. */
  static Map<Integer, Range> of(List<Impression> impressions, Policy policy) {
    Range perCm =
        new Range(
            policy.limit("paste/bead-least").amount(),
            policy.limit("paste/bead-usual").amount(),
            policy.limit("paste/bead-most").amount());
    Map<String, Impression> lastOn = new HashMap<>();
    Map<Integer, Range> fillings = new LinkedHashMap<>();
    for (Impression impression : impressions) {
      Screen screen = impression.footprint().screen();
      Impression last = lastOn.put(screen.name(), impression);
      if (last == null || emptied(last, impression)) {
        fillings.put(impression.id(), perCm.times(screen.imageWidth().cm()));
      }
    }
    return fillings;
  }

  private static boolean emptied(Impression last, Impression next) {
    return !last.footprint().paste().name().equals(next.footprint().paste().name())
        || last.laid().day() != next.laid().day();
  }
}

package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.timeline.Remedy.How;

/** Sorts contacts by the place of the run where a longer wait would clear them. */
final class Causes {

  private Causes() {}

  /**
   * One place where a wait is too short.
   *
   * @param how a wait between colours or passes, a pause between impressions, or a drying step
   * @param step the later print step; what is written there holds for all its colours, so they are
   *     one cause
   */
  record Cause(How how, int step) {}

  /** A contact with how often a wait of its cause lies between its two impressions. */
  record Pair(Contact contact, int waitsBetween) {

    boolean certain() {
      return contact.certain();
    }

    boolean likely() {
      return contact.likely();
    }
  }

  /**
   * Contacts by cause, in the order of laying. Films that never dry are left out: they have a cause
   * of their own.
   */
  static Map<Cause, List<Pair>> of(Timeline.Day day) {
    Map<Cause, List<Pair>> causes = new LinkedHashMap<>();
    for (Contact contact : day.contacts()) {
      if (contact.earlier().film().frameSafe().latest().compareTo(Reached.NEVER) >= 0) {
        continue;
      }
      Printed earlier = day.run().printed().get(contact.earlier().id());
      Printed later = day.run().printed().get(contact.later().id());
      int waits = later.waitsBefore() - earlier.waitsBefore();
      Cause cause;
      int between = 1;
      if (earlier.step() != later.step()) {
        cause = new Cause(How.DRY_STEP, later.step().number());
      } else if (waits > 0) {
        cause = new Cause(How.DRY_BETWEEN_COLOURS, later.step().number());
        between = waits;
      } else if (later.passesBefore() > earlier.passesBefore()) {
        cause = new Cause(How.DRY_BETWEEN_PASSES, later.step().number());
      } else {
        cause = new Cause(How.PAUSE, later.step().number());
        between = later.impressionsBefore() - earlier.impressionsBefore();
      }
      causes
          .computeIfAbsent(cause, c -> new ArrayList<>())
          .add(new Pair(contact, Math.max(1, between)));
    }
    return causes;
  }

  /** A colour as people say it. */
  static String colour(Impression impression) {
    return impression.footprint().paste().name()
        + " through "
        + impression.footprint().screen().name();
  }
}

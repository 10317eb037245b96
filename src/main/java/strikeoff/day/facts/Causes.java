package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Contact;
import strikeoff.day.DayRun;
import strikeoff.day.Impression;
import strikeoff.day.Printed;
import strikeoff.day.Workshop;
import strikeoff.day.facts.Remedy.How;

/** Sorts contacts by the place of the run where a longer wait would clear them. */
public final class Causes {

  private Causes() {}

  /**
   * One place where a wait is too short.
   *
   * @param how a wait between colours or passes, a pause between impressions, or a drying step
   * @param step the later print step; what is written there holds for all its colours, so they are
   *     one cause
   */
  public record Cause(How how, int step) {}

  /**
   * A contact with how often a wait of its cause lies between its two impressions.
   *
   * @param there minutes that a longer wait comes on top of: between colours what the film last
   *     lifted under the later colour's frames had, between passes the time from one to the other,
   *     before a step the time the cloth lay idle
   */
  public record Pair(Contact contact, int waitsBetween, double there) {

    public boolean likely() {
      return contact.likely();
    }
  }

  /**
   * Contacts by cause, in the order of laying. Films that never dry are left out: they have a cause
   * of their own.
   */
  public static Map<Cause, List<Pair>> of(DayRun day) {
    Map<Cause, List<Pair>> causes = new LinkedHashMap<>();
    for (Contact contact : day.contacts()) {
      if (contact.safe().never()) {
        continue;
      }
      Printed earlier = day.run().printed().get(contact.earlier().id());
      Printed later = day.run().printed().get(contact.later().id());
      Cause cause = between(earlier, later);
      int waits =
          switch (cause.how()) {
            case DRY_BETWEEN_COLOURS -> waits(day.run().printed(), earlier, later);
            case DRY_BETWEEN_PASSES -> later.passesBefore() - earlier.passesBefore();
            case PAUSE -> later.impressionsBefore() - earlier.impressionsBefore();
            default -> 1;
          };
      causes
          .computeIfAbsent(cause, c -> new ArrayList<>())
          .add(new Pair(contact, Math.max(1, waits), there(day, cause, earlier, later)));
    }
    return causes;
  }

  /** How often a colour is let dry from one impression to another, as the step is written. */
  private static int waits(List<Printed> printed, Printed earlier, Printed later) {
    boolean together = later.step().beside();
    int waits = 0;
    for (int i = earlier.id() + 1; i <= later.id(); i++) {
      Printed between = printed.get(i);
      boolean counts =
          !together || between.footprint().placement().id() == later.footprint().placement().id();
      if (counts && between.run().first() == i && between.run().liesOnAny(printed)) {
        waits++;
      }
    }
    return waits;
  }

  /** From the last lift of a pass to the beginning of the next one, in seconds. */
  private static long betweenPasses(List<Printed> printed, Printed later) {
    int first = later.id();
    while (printed.get(first - 1).passesBefore() == later.passesBefore()) {
      first--;
    }
    return printed.get(first).begins() - printed.get(first - 1).lifted();
  }

  private static double there(DayRun day, Cause cause, Printed earlier, Printed later) {
    long seconds =
        switch (cause.how()) {
          case DRY_BETWEEN_COLOURS -> later.run().dried(day.run().printed());
          case DRY_BETWEEN_PASSES -> betweenPasses(day.run().printed(), later);
          // A move may lie between two prints, and a pause runs beside it.
          case PAUSE ->
              !later.step().beside() && later.id() == earlier.id() + 1
                  ? later.begins() - earlier.lifted()
                  : Workshop.seconds(later.step().pause());
          case DRY_STEP -> day.run().idle().getOrDefault(cause.step(), 0L);
          default -> 0;
        };
    return seconds / 60.0;
  }

  private static Cause between(Printed earlier, Printed later) {
    How how =
        later
            .waitAfter(earlier)
            .map(
                wait ->
                    switch (wait) {
                      case BETWEEN_COLOURS -> How.DRY_BETWEEN_COLOURS;
                      case BETWEEN_PASSES -> How.DRY_BETWEEN_PASSES;
                      case PAUSE -> How.PAUSE;
                      case BETWEEN_NEIGHBOURS -> How.DRY_BETWEEN_NEIGHBOURS;
                      case BEFORE_MOVING -> How.BEFORE_MOVING;
                    })
            .orElse(How.DRY_STEP);
    return new Cause(how, later.step().number());
  }

  /** A colour as people say it. */
  static String colour(Impression impression) {
    return impression.footprint().paste().name()
        + " through "
        + impression.footprint().screen().name();
  }
}

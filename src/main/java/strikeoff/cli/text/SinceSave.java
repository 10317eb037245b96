package strikeoff.cli.text;

import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import strikeoff.report.compare.Change;
import strikeoff.report.compare.PlanChange;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;

/**
 * What came of a plan when it was last checked, and when that was.
 *
 * @param at in the time of the room
 */
public record SinceSave(Outcome outcome, LocalTime at) {

  private static final String BODY = "    ";

  /** Now, to the second. */
  public static LocalTime now() {
    return LocalTime.now().truncatedTo(ChronoUnit.SECONDS);
  }

  /** As {@code 09:05:00}, also at a full minute. */
  public static String text(LocalTime time) {
    return String.format(
        Locale.ROOT, "%02d:%02d:%02d", time.getHour(), time.getMinute(), time.getSecond());
  }

  /**
   * What changed since then, line by line.
   *
   * @param now what came of the plan now
   */
  public List<String> of(Outcome now, Ink ink, int width) {
    PlanChange change = PlanChange.of(now.file(), Optional.of(outcome), Optional.of(now));
    String since = "  since " + text(at) + ": ";
    if (change.same()) {
      return List.of(since + "nothing changed");
    }
    List<String> lines = new ArrayList<>();
    String remark = change.remark().isEmpty() ? "" : ". " + change.remark();
    lines.addAll(
        Plain.wrap(
            since,
            BODY,
            "mended "
                + PlanChange.count(change.mended())
                + ", new "
                + PlanChange.count(change.fresh())
                + ", left "
                + PlanChange.count(change.left())
                + remark,
            width));
    change.mended().forEach(found -> lines.add(line("mended", found, ink)));
    change.fresh().forEach(found -> lines.add(line("new", found, ink)));
    for (Change figure : change.figures()) {
      String by = figure.difference().isEmpty() ? "" : " (" + figure.difference() + ")";
      lines.addAll(
          Plain.wrap(
              BODY,
              BODY + "  ",
              figure.name() + ": " + figure.before() + " \u2192 " + figure.after() + by,
              width));
    }
    return lines;
  }

  private static String line(String fate, Found found, Ink ink) {
    String severity = found.severity().text().toUpperCase(Locale.ROOT);
    return BODY
        + ink.bold(fate)
        + " ".repeat(8 - fate.length())
        + ink.of(found.severity(), severity)
        + " ".repeat(8 - severity.length())
        + Plain.line(found.rule());
  }
}

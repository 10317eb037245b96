package strikeoff.plan.yaml;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.plan.Dates;
import strikeoff.plan.Hours;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.ValueKinds;

/** Reads when the room is open, and on which dates. */
final class HoursPart {

  /** Years of four digits that anybody plans for. */
  private static final int FIRST_YEAR = 1900;

  private static final int LAST_YEAR = 2999;

  private static final Pattern OPEN =
      Pattern.compile("(\\d{1,2})(?::(\\d{2}))?\\s*(?:-|–|to)\\s*(\\d{1,2})(?::(\\d{2}))?");
  private final Draft draft;

  HoursPart(Draft draft) {
    this.draft = draft;
  }

  Hours hours(Fields root) {
    Hours.Day standIn = new Hours.Day(540, 1020);
    Expected<Hours.Day> day =
        ValueKinds.scalar("opening hours such as 09:00-17:00", standIn, HoursPart::day);
    List<Hours.Day> days =
        draft
            .assumptions()
            .orWords(
                root,
                "hours",
                ValueKinds.oneOrMore(day),
                draft.assumptions().standard().hours(),
                "opening hours");
    return new Hours(days.isEmpty() ? List.of(standIn) : days, root.path().key("hours"));
  }

  /** The same hours on the dates that a plan gives. */
  Hours dated(Hours hours, Fields root) {
    Expected<LocalDate> date =
        ValueKinds.scalar("a date such as 2027-03-06", LocalDate.EPOCH, HoursPart::date);
    Dates dates = new Dates(root.optional("start on", date), root.optional("finish by", date));
    Optional<LocalDate> start = dates.startOn();
    if (start.isPresent() && dates.finishBy().filter(start.get()::isAfter).isPresent()) {
      root.item("finish by")
          .ifPresent(
              item ->
                  draft
                      .reading()
                      .problems()
                      .add(
                          item.node().at(),
                          item.path(),
                          "this is before `start on`, "
                              + start.get()
                              + ": nothing is done by then"));
    }
    return new Hours(hours.days(), dates, hours.path());
  }

  /** Year, month and day as ISO 8601 writes them; no other order is the same everywhere. */
  private static Parsed<LocalDate> date(String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      return date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR
          ? Parsed.refused(
              "a year from "
                  + FIRST_YEAR
                  + " to "
                  + LAST_YEAR
                  + " was expected, not "
                  + date.getYear())
          : Parsed.value(date);
    } catch (DateTimeParseException e) {
      return Parsed.refused(
          "a date such as 2027-03-06, year, month and day, was expected; "
              + Script.quoted(text)
              + " is none");
    }
  }

  /** Stretches of work with breaks between them. */
  private static Parsed<Hours.Day> day(String text) {
    String words = "opening hours such as 09:00-17:00 were expected; " + Script.quoted(text);
    List<Hours.Break> breaks = new ArrayList<>();
    int opens = -1;
    int closes = -1;
    for (String stretch : text.split(",", -1)) {
      Matcher m = OPEN.matcher(stretch.strip());
      if (!m.matches()) {
        return Parsed.refused(words + " are none");
      }
      int from = minutes(m.group(1), m.group(2));
      int to = minutes(m.group(3), m.group(4));
      if (from < 0 || to < 0) {
        return Parsed.refused(words + " hold a time that no clock shows");
      }
      if (from >= to) {
        return Parsed.refused(words + " close before they open");
      }
      if (closes >= from) {
        return Parsed.refused(
            words
                + " leave no break before "
                + stretch.strip()
                + "; write the stretches of a day in order, with the breaks between them left out");
      }
      if (closes >= 0) {
        breaks.add(new Hours.Break(closes, from));
      }
      opens = opens < 0 ? from : opens;
      closes = to;
    }
    return Parsed.value(new Hours.Day(opens, closes, breaks));
  }

  private static int minutes(String hours, String minutes) {
    int h = Integer.parseInt(hours);
    int m = minutes == null ? 0 : Integer.parseInt(minutes);
    return m > 59 || h * 60 + m > 24 * 60 ? -1 : h * 60 + m;
  }
}

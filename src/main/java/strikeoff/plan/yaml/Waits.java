package strikeoff.plan.yaml;

import java.util.Arrays;
import java.util.List;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Script;
import strikeoff.units.Span;
import strikeoff.units.Spelling;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Values;

/** Reads how long something dries: {@code 40 min}, or {@code until lift-safe}. */
final class Waits {

  private static final String WORDS =
      "a time such as 40 min, or until frame-safe, lift-safe or fix-safe,";
  private static final String UNTIL = "until ";
  private static final List<String> STATES =
      Arrays.stream(Dryness.values()).map(Dryness::text).toList();

  private Waits() {}

  static Expected<Until> until() {
    return Values.scalar(WORDS, Until.NO_WAIT, Waits::parse);
  }

  private static Parsed<Until> parse(String text) {
    boolean until = text.startsWith(UNTIL);
    String rest = until ? text.substring(UNTIL.length()).strip() : text;
    for (Dryness d : Dryness.values()) {
      if (d.text().equals(rest)) {
        return Parsed.value(new Until.State(d));
      }
    }
    if (rest.equals("overnight")) {
      return Parsed.refused(
          WORDS + " was expected; give the night as 12 h, or make “end of day” a step of its own");
    }
    boolean word = !rest.isEmpty() && Character.isLetter(rest.charAt(0));
    if (until || word) {
      return Parsed.refused(
          WORDS
              + " was expected; "
              + Script.quoted(rest)
              + " is not known"
              + Spelling.didYouMean(rest, STATES));
    }
    return Quantities.parse(text, Span.class).map(Until.Time::new);
  }
}

package strikeoff.plan.yaml;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Script;
import strikeoff.units.Span;
import strikeoff.units.Spelling;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;

/**
 * Reads how long something dries: {@code 40 min}, or {@code until lift-safe}; and a wait in moved
 * air: {@code {for: 40 min, air: fan}}, or {@code {until: lift-safe, air: fan}}.
 */
final class Waits {

  private static final String WORDS =
      "a time such as 40 min, or until frame-safe, lift-safe or fix-safe,";
  private static final String UNTIL = "until ";
  private static final List<String> STATES =
      Arrays.stream(Dryness.values()).map(Dryness::text).toList();

  private static final Expected<Until> STATE =
      ValueKinds.word(
          "frame-safe, lift-safe or fix-safe",
          Arrays.stream(Dryness.values())
              .collect(
                  Collectors.toMap(
                      Dryness::text, Until.State::new, (a, b) -> a, LinkedHashMap::new)));

  private final RoomPart room;

  Waits(RoomPart room) {
    this.room = room;
  }

  /** A wait in the room's air as a plain value, or in other air as a mapping. */
  Expected<Wait> orPlain() {
    Expected<Until> plain = until();
    return new Expected<>() {
      @Override
      public String words() {
        return plain.words();
      }

      @Override
      public Wait standIn() {
        return Wait.NONE;
      }

      @Override
      public Optional<Wait> read(Item item, Reading reading) {
        return item.node() instanceof Node.Mapping
            ? Optional.of(aired(Fields.of(item, "a wait", reading)))
            : plain.read(item, reading).map(Wait::of);
      }
    };
  }

  private Wait aired(Fields f) {
    Until until;
    if (f.has("until")) {
      until = f.required("until", STATE);
      if (f.has("for")) {
        f.wrong("for", "a wait has either a time or a state to wait for; leave one of them out");
      }
    } else {
      until = f.required("for", QuantityKinds.quantity(Span.class).map(Until.Time::new));
    }
    Wait wait = new Wait(until, f.optional("air", room.draught(f, "air")));
    f.done();
    return wait;
  }

  static Expected<Until> until() {
    return ValueKinds.scalar(WORDS, Until.NO_WAIT, Waits::parse);
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

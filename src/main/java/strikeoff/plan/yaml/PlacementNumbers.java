package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;

/** Reads numbers of placements: {@code 7}, {@code 1-6, 8-14}, or a list of such; from 1. */
final class PlacementNumbers {

  private static final String WORDS = "numbers such as 7 or 1-6, 8-14";
  private static final Pattern RANGE =
      Pattern.compile("(\\d{1,6})(?:\\s*(?:-|–|to)\\s*(\\d{1,6}))?");

  private PlacementNumbers() {}

  /** The same, or {@code all}, which is told as no numbers. */
  static Expected<List<Integer>> orAll(int most) {
    Expected<List<Integer>> numbers = list(most);
    return new Expected<>() {
      @Override
      public String words() {
        return "all, or " + WORDS;
      }

      @Override
      public List<Integer> standIn() {
        return List.of();
      }

      @Override
      public Optional<List<Integer>> read(Item item, Reading reading) {
        return item.node() instanceof Node.Scalar s && s.text().equals("all")
            ? Optional.of(List.of())
            : numbers.read(item, reading);
      }
    };
  }

  /**
   * @param most how many numbers at most
   */
  static Expected<List<Integer>> list(int most) {
    Expected<List<List<Integer>>> parts =
        ValueKinds.oneOrMore(ValueKinds.scalar(WORDS, List.of(), text -> parse(text, most)));
    return new Expected<>() {
      @Override
      public String words() {
        return WORDS;
      }

      @Override
      public List<Integer> standIn() {
        return List.of();
      }

      @Override
      public Optional<List<Integer>> read(Item item, Reading reading) {
        Optional<List<List<Integer>>> read = parts.read(item, reading);
        if (read.isEmpty()) {
          return Optional.empty();
        }
        Set<Integer> numbers = new LinkedHashSet<>();
        for (List<Integer> part : read.get()) {
          for (int n : part) {
            if (!numbers.add(n)) {
              reading.wrong(item, "number " + n + " is named twice");
              return Optional.empty();
            }
          }
          if (numbers.size() > most) {
            reading.wrong(item, "these are more than " + most + " numbers");
            return Optional.empty();
          }
        }
        return Optional.of(List.copyOf(numbers));
      }
    };
  }

  private static Parsed<List<Integer>> parse(String text, int most) {
    List<Integer> numbers = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      Matcher m = RANGE.matcher(part.strip());
      if (!m.matches()) {
        return Parsed.refused(
            WORDS + " were expected; " + Script.quoted(part.strip()) + " is not one");
      }
      int from = Integer.parseInt(m.group(1));
      int to = m.group(2) == null ? from : Integer.parseInt(m.group(2));
      if (from < 1 || to < from) {
        return Parsed.refused(
            Script.quoted(part.strip())
                + " counts from "
                + from
                + " to "
                + to
                + "; numbers begin at 1 and rise");
      }
      if (to - from >= most || numbers.size() > most) {
        return Parsed.refused("these are more than " + most + " numbers");
      }
      for (int n = from; n <= to; n++) {
        numbers.add(n);
      }
    }
    return Parsed.value(numbers);
  }
}

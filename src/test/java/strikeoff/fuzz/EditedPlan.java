package strikeoff.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A demo plan with edits that the input chooses: lines left out, doubled and moved, values changed
 * for others of any plan, numbers for odd ones. Nearly all of them are still YAML, and many still
 * are plans, so this reaches the derivations and the rules where {@link WholeCheck} seldom does.
 */
public final class EditedPlan {

  private static final int MOST_EDITS = 12;

  private static final List<List<String>> PLANS = plans();

  private static final List<String> VALUES =
      PLANS.stream()
          .flatMap(List::stream)
          .map(EditedPlan::value)
          .filter(value -> !value.isBlank())
          .distinct()
          .sorted()
          .toList();

  /** Numbers at which arithmetic turns over. */
  private static final List<String> ODD =
      List.of("0", "1", "-1", "0.001", "1e-9", "99999", "1e9", "1e308", "0.5", "3", "17", "10000");

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  private EditedPlan() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] input) {
    Expectations.checked(String.join("\n", edited(input)).getBytes(StandardCharsets.UTF_8));
  }

  /** The plan that an input stands for. */
  static List<String> edited(byte[] input) {
    Choices choices = new Choices(input);
    List<String> lines = new ArrayList<>(PLANS.get(choices.below(PLANS.size())));
    for (int edits = 0; edits < MOST_EDITS && choices.left() && !lines.isEmpty(); edits++) {
      int at = choices.below(lines.size());
      String line = lines.get(at);
      switch (choices.below(6)) {
        case 0 -> lines.remove(at);
        case 1 -> lines.add(at, line);
        case 2 -> lines.add(choices.below(lines.size()), lines.remove(at));
        case 3 -> lines.set(at, withValue(line, VALUES.get(choices.below(VALUES.size()))));
        case 4 -> lines.set(at, withNumber(line, choices.below(4), odd(choices)));
        default -> lines.set(at, lines.get(choices.below(lines.size())));
      }
    }
    return lines;
  }

  private static String odd(Choices choices) {
    return choices.below(2) == 0
        ? ODD.get(choices.below(ODD.size()))
        : String.format(Locale.ROOT, "%d.%d", choices.below(256), choices.below(100));
  }

  private static String value(String line) {
    int colon = line.indexOf(": ");
    return colon < 0 ? "" : line.substring(colon + 2);
  }

  private static String withValue(String line, String value) {
    int colon = line.indexOf(": ");
    return colon < 0 ? line : line.substring(0, colon + 2) + value;
  }

  /** The n-th number of a line changed for another. */
  private static String withNumber(String line, int which, String number) {
    Matcher found = NUMBER.matcher(line);
    for (int i = 0; found.find(); i++) {
      if (i == which) {
        return line.substring(0, found.start()) + number + line.substring(found.end());
      }
    }
    return line;
  }

  private static List<List<String>> plans() {
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      List<List<String>> plans = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        if (lines.stream().anyMatch(line -> line.startsWith("plan:"))) {
          plans.add(lines);
        }
      }
      return plans;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Choices taken from the input, two bytes each, so that a small change stays a small change. */
  private static final class Choices {
    private final byte[] input;
    private int next;

    Choices(byte[] input) {
      this.input = input;
    }

    boolean left() {
      return next < input.length;
    }

    int below(int bound) {
      int high = next < input.length ? input[next++] & 0xff : 0;
      int low = next < input.length ? input[next++] & 0xff : 0;
      return (high << 8 | low) % bound;
    }
  }
}

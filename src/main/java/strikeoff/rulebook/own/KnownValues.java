package strikeoff.rulebook.own;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is known of facts' values beside their types, by the list {@code values.txt}.
 *
 * @param kinds of the words that a value takes, by {@code Fact value}
 * @param most the most that a figure can be, in base units
 * @param told the names by which a value is told, where its own would tell something else
 * @param meanings what else holds wherever something is asked
 */
record KnownValues(
    Map<String, Kind> kinds,
    Map<String, Double> most,
    Map<String, String> told,
    List<Meaning> meanings) {

  /**
   * @param asked the beginning of a constraint, or the whole of it
   * @param holds a constraint that holds with it
   */
  record Meaning(String fact, String asked, String holds) {}

  private static final String LIST = "values.txt";
  private static final Pattern MEANS = Pattern.compile("(\\S+) (.+) means (.+)");
  private static final Pattern MOST = Pattern.compile("(\\S+) (\\S+) at most (\\S+)");
  private static final Pattern TOLD = Pattern.compile("(\\S+) (\\S+) told as (\\S+)");
  private static final Pattern WORDS = Pattern.compile("(\\S+) (\\S+) (\\S+)");

  private static final KnownValues SHIPPED = shipped();

  static KnownValues list() {
    return SHIPPED;
  }

  private static KnownValues shipped() {
    try (InputStream in = KnownValues.class.getResourceAsStream(LIST)) {
      if (in == null) {
        throw new IllegalStateException("no " + LIST + " on the class path");
      }
      return of(new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static KnownValues of(List<String> lines) {
    Map<String, Kind> kinds = new HashMap<>();
    Map<String, Double> most = new HashMap<>();
    Map<String, String> told = new HashMap<>();
    List<Meaning> meanings = new ArrayList<>();
    for (String line : lines) {
      Matcher means = MEANS.matcher(line);
      Matcher bound = MOST.matcher(line);
      Matcher tells = TOLD.matcher(line);
      Matcher words = WORDS.matcher(line);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      if (means.matches()) {
        meanings.add(new Meaning(simple(means.group(1)), means.group(2), means.group(3)));
      } else if (bound.matches()) {
        most.put(simple(bound.group(1)) + " " + bound.group(2), Double.parseDouble(bound.group(3)));
      } else if (tells.matches()) {
        told.put(simple(tells.group(1)) + " " + tells.group(2), tells.group(3));
      } else if (words.matches()) {
        kinds.put(
            simple(words.group(1)) + " " + words.group(2),
            Kind.of(words.group(3)).orElseThrow(() -> new IllegalStateException(line)));
      } else {
        throw new IllegalStateException(LIST + ": " + line);
      }
    }
    return new KnownValues(kinds, most, told, meanings);
  }

  /** Facts are told apart by their own names, and called by their packages to be found. */
  private static String simple(String fact) {
    return fact.substring(fact.lastIndexOf('.') + 1);
  }

  /** The kind of words that a text of a fact takes. */
  Kind kind(Class<?> fact, String value) {
    return Optional.ofNullable(kinds.get(fact.getSimpleName() + " " + value))
        .orElseGet(() -> kinds.getOrDefault("* " + value, Kind.NAME));
  }

  /** The name by which a message tells a value. */
  String told(Class<?> fact, String value) {
    return Optional.ofNullable(told.get(fact.getSimpleName() + " " + value))
        .orElseGet(() -> told.getOrDefault("* " + value, value));
  }

  Optional<Double> most(Class<?> fact, String value) {
    return Optional.ofNullable(most.get(fact.getSimpleName() + " " + value));
  }

  /** What holds as well where a constraint holds. */
  List<String> with(Class<?> fact, String constraint) {
    return meanings.stream()
        .filter(m -> m.fact().equals(fact.getSimpleName()))
        .filter(
            m ->
                constraint.equals(m.asked())
                    || constraint.startsWith(m.asked() + " ==")
                    || constraint.startsWith(m.asked() + " contains"))
        .map(Meaning::holds)
        .toList();
  }
}

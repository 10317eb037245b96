package strikeoff.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * A value of a JSON document and where it stands. Every accessor ends with {@link Unfit} where the
 * document holds something else.
 */
record Tree(JsonNode node, String path) {

  /** Thirty thousand years: beyond any day's clock, and far within what a day's number holds. */
  private static final long MOST_SECONDS = 1_000_000_000_000L;

  /** Grams or percent that nothing on a table comes near. */
  private static final double MOST = 1e15;

  /** The document isn't of the format. */
  static final class Unfit extends RuntimeException {
    private static final long serialVersionUID = 1;

    Unfit(String message) {
      super(message);
    }
  }

  private Unfit unfit(String expected) {
    return new Unfit((path.isEmpty() ? "" : path + ": ") + expected + " was expected" + found());
  }

  /** Ends with what was expected here and why. */
  Unfit unfit(String expected, String why) {
    return new Unfit(path + ": " + expected + " was expected, " + why);
  }

  private String found() {
    String kind =
        switch (node.getNodeType()) {
          case ARRAY -> "a list";
          case OBJECT -> "an object";
          case BOOLEAN -> "yes or no";
          case NULL -> "null";
          case NUMBER -> "another number";
          case STRING -> "a text";
          default -> "";
        };
    return kind.isEmpty() ? "" : "; this is " + kind;
  }

  Tree at(String key) {
    if (!node.isObject()) {
      throw unfit("an object");
    }
    if (!node.has(key)) {
      throw new Unfit((path.isEmpty() ? "" : path + ": ") + "“" + key + "” is missing");
    }
    return new Tree(node.get(key), path.isEmpty() ? key : path + "." + key);
  }

  <T> Optional<T> perhaps(String key, Function<Tree, T> read) {
    return node.has(key) ? Optional.of(read.apply(at(key))) : Optional.empty();
  }

  String text() {
    if (!node.isTextual()) {
      throw unfit("a text");
    }
    return node.textValue();
  }

  boolean truth() {
    if (!node.isBoolean()) {
      throw unfit("true or false");
    }
    return node.booleanValue();
  }

  /** Not below the number where counting begins. */
  int count(int from) {
    return (int) whole(from, Integer.MAX_VALUE);
  }

  /** Of work or waiting. */
  long seconds() {
    return whole(0, MOST_SECONDS);
  }

  /** On the print days' clock, which may begin on the day before. */
  long clock() {
    return whole(-MOST_SECONDS, MOST_SECONDS);
  }

  private long whole(long from, long to) {
    if (!node.isNumber()
        || !isFinite()
        || !node.canConvertToExactIntegral()
        || !node.canConvertToLong()
        || node.longValue() < from
        || node.longValue() > to) {
      throw unfit("a whole number from " + from + " to " + to);
    }
    return node.longValue();
  }

  /** A number of the size that results have; a text of digits may stand for one without end. */
  double number() {
    if (!node.isNumber() || !isFinite() || node.doubleValue() < 0) {
      throw unfit("a number from 0 to " + (long) MOST);
    }
    return node.doubleValue();
  }

  /** The same from some number on. */
  double number(int least) {
    double number = number();
    if (number < least) {
      throw unfit("a number from " + least + " to " + (long) MOST);
    }
    return number;
  }

  private boolean isFinite() {
    return Math.abs(node.doubleValue()) <= MOST;
  }

  /** A number that is null where it is without bound. */
  double number(String key) {
    return at(key).node().isNull() ? Double.POSITIVE_INFINITY : at(key).number();
  }

  /** A text of this form. */
  String text(Pattern form, String expected) {
    if (!form.matcher(text()).matches()) {
      throw unfit(expected, "not another text");
    }
    return node.textValue();
  }

  <T> T word(Map<String, T> words) {
    T value = words.get(text());
    if (value == null) {
      throw unfit("one of " + String.join(", ", words.keySet()), "not another text");
    }
    return value;
  }

  <T> List<T> list(Function<Tree, T> read) {
    if (!node.isArray()) {
      throw unfit("a list");
    }
    List<T> items = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      items.add(read.apply(new Tree(node.get(i), path + "[" + i + "]")));
    }
    return items;
  }

  <T> Map<String, T> each(Function<Tree, T> read) {
    if (!node.isObject()) {
      throw unfit("an object");
    }
    Map<String, T> entries = new LinkedHashMap<>();
    node.properties().forEach(e -> entries.put(e.getKey(), read.apply(at(e.getKey()))));
    return entries;
  }
}

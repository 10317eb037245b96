package strikeoff.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value of a JSON document and where it stands. Every accessor ends with {@link Unfit} where the
 * document holds something else.
 */
record Tree(JsonNode node, String path) {

  /** The document isn't of the format. */
  static final class Unfit extends RuntimeException {
    private static final long serialVersionUID = 1;

    Unfit(String message) {
      super(message);
    }
  }

  private Unfit unfit(String expected) {
    return new Unfit((path.isEmpty() ? "" : path + ": ") + expected + " was expected");
  }

  boolean has(String key) {
    return node.isObject() && node.hasNonNull(key);
  }

  Tree at(String key) {
    if (!has(key)) {
      throw unfit("“" + key + "”");
    }
    return new Tree(node.get(key), path.isEmpty() ? key : path + "." + key);
  }

  <T> Optional<T> perhaps(String key, Function<Tree, T> read) {
    return has(key) ? Optional.of(read.apply(at(key))) : Optional.empty();
  }

  String text() {
    if (!node.isTextual()) {
      throw unfit("a text");
    }
    return node.textValue();
  }

  int count() {
    if (!node.canConvertToExactIntegral() || !node.canConvertToInt() || node.intValue() < 0) {
      throw unfit("a whole number");
    }
    return node.intValue();
  }

  long seconds() {
    if (!node.canConvertToExactIntegral() || !node.canConvertToLong()) {
      throw unfit("a whole number");
    }
    return node.longValue();
  }

  double number() {
    if (!node.isNumber()) {
      throw unfit("a number");
    }
    return node.doubleValue();
  }

  /** A number that is null where it is without bound. */
  double number(String key) {
    return has(key) ? at(key).number() : Double.POSITIVE_INFINITY;
  }

  <T> T word(Map<String, T> words) {
    T value = words.get(text());
    if (value == null) {
      throw unfit("one of " + String.join(", ", words.keySet()));
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

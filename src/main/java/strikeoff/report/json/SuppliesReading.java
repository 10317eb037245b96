package strikeoff.report.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.day.Moment;
import strikeoff.report.outcome.Supplies;

/** Reads back what is to be bought and weighed. */
final class SuppliesReading {

  private static final Map<String, String> KINDS = words(Supplies.KINDS);

  private static final Map<String, String> RECIPES = words(Supplies.RECIPES);

  private SuppliesReading() {}

  private static Map<String, String> words(List<String> all) {
    Map<String, String> words = new LinkedHashMap<>();
    all.forEach(word -> words.put(word, word));
    return words;
  }

  static Supplies of(Tree tree) {
    return new Supplies(
        tree.at("buy").list(SuppliesReading::bought),
        tree.at("weigh").list(SuppliesReading::weighed));
  }

  private static Supplies.Bought bought(Tree tree) {
    return new Supplies.Bought(
        tree.at("name").text(),
        tree.perhaps("substance", Tree::text),
        tree.perhaps("paste", Tree::text),
        tree.number("lowGrams"),
        tree.number("grams"),
        tree.number("highGrams"),
        tree.number("buyGrams"));
  }

  private static Supplies.Weighed weighed(Tree tree) {
    return new Supplies.Weighed(
        tree.at("kind").word(KINDS),
        tree.at("name").text(),
        tree.perhaps("step", s -> OptionalInt.of(s.count(1))).orElse(OptionalInt.empty()),
        tree.perhaps("startSeconds", s -> new Moment(s.clock())),
        tree.node().has("grams") ? Optional.of(tree.number("grams")) : Optional.empty(),
        tree.at("recipe").word(RECIPES),
        tree.at("parts").list(SuppliesReading::line));
  }

  private static Supplies.Line line(Tree tree) {
    return new Supplies.Line(
        tree.at("name").text(),
        tree.at("substance").text(),
        tree.number("lowGrams"),
        tree.number("grams"),
        tree.number("highGrams"));
  }
}

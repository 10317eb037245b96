package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.Reading;

/** Reads lists of mappings, such as separations and steps. */
final class Lists {

  private Lists() {}

  /**
   * At least one; each is decoded by {@code each}, which reports its own mistakes.
   *
   * @param signs keys by which a mapping without a dash is known as one of them, so that its own
   *     mistakes can be told as well
   */
  static <T> Expected<List<T>> of(String what, Function<Item, T> each, String... signs) {
    return new Expected<>() {
      @Override
      public String words() {
        return "a list, each line " + what + ",";
      }

      @Override
      public List<T> standIn() {
        return List.of();
      }

      @Override
      public Optional<List<T>> read(Item item, Reading reading) {
        if (!(item.node() instanceof Node.Sequence list) || list.items().isEmpty()) {
          Set<String> keys =
              item.node() instanceof Node.Mapping m ? m.entries().keySet() : Set.of();
          String found = item.node() instanceof Node.Sequence ? "an empty one" : item.node().kind();
          reading.wrong(
              item,
              words()
                  + " was expected, and "
                  + found
                  + " stands here"
                  + (item.node() instanceof Node.Mapping ? "; begin each with “- ”" : ""));
          return Stream.of(signs).anyMatch(keys::contains)
              ? Optional.of(List.of(each.apply(item)))
              : Optional.empty();
        }
        List<T> values = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
          Node node = list.items().get(i);
          values.add(each.apply(new Item(node, item.path().item(i), node.at())));
        }
        return Optional.of(values);
      }
    };
  }
}

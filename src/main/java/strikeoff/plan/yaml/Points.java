package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.units.Length;
import strikeoff.units.Pair;
import strikeoff.units.Quantities;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;

/** Reads places on the cloth: {@code 12 cm, 5 cm}, or a list of two. */
final class Points {

  private static final String WORDS = "a place such as 12 cm, 5 cm (along the cloth, then across)";
  private static final Pair ORIGIN = new Pair(new Length(0), new Length(0));

  private Points() {}

  /** One place. */
  static Expected<Pair> place() {
    Expected<Pair> written = ValueKinds.scalar(WORDS, ORIGIN, Pair::place);
    return new Expected<>() {
      @Override
      public String words() {
        return WORDS;
      }

      @Override
      public Pair standIn() {
        return ORIGIN;
      }

      @Override
      public Optional<Pair> read(Item item, Reading reading) {
        return isPair(item.node()) ? pair(item, reading) : written.read(item, reading);
      }
    };
  }

  /** Several places, or one. */
  static Expected<List<Pair>> places() {
    return new Expected<>() {
      @Override
      public String words() {
        return WORDS + ", or a list of such,";
      }

      @Override
      public List<Pair> standIn() {
        return List.of(ORIGIN);
      }

      @Override
      public Optional<List<Pair>> read(Item item, Reading reading) {
        // [12 cm, 5 cm] is one place, since YAML takes the comma for its own.
        return isPair(item.node())
            ? pair(item, reading).map(List::of)
            : ValueKinds.oneOrMore(place()).read(item, reading);
      }
    };
  }

  private static boolean isPair(Node node) {
    return node instanceof Node.Sequence s
        && s.items().size() == 2
        && s.items().stream()
            .allMatch(n -> n instanceof Node.Scalar one && !one.text().contains(","));
  }

  private static Optional<Pair> pair(Item item, Reading reading) {
    List<Node> two = ((Node.Sequence) item.node()).items();
    List<Length> lengths = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Item one = new Item(two.get(i), item.path().item(i), two.get(i).at());
      ValueKinds.scalar(
              Quantities.expected(Length.class),
              new Length(0),
              t -> Quantities.parseSigned(t, Length.class))
          .read(one, reading)
          .ifPresent(lengths::add);
    }
    return lengths.size() == 2
        ? Optional.of(new Pair(lengths.get(0), lengths.get(1)))
        : Optional.empty();
  }
}

package strikeoff.rulebook.own;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What a value is compared with. */
sealed interface Than {

  Object of(Object fact, Function<Thing, Object> others);

  default Set<Thing> things() {
    return Set.of();
  }

  String text();

  /** A figure in base units, a word, yes or no. */
  record Figure(Object figure) implements Than {

    @Override
    public Object of(Object fact, Function<Thing, Object> others) {
      return figure;
    }

    /** As the files of the vocabulary write it. */
    @Override
    public String text() {
      return figure instanceof Double number
          ? new BigDecimal(number.toString()).toPlainString()
          : figure instanceof String word
              ? '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"'
              : figure.toString();
    }
  }

  /**
   * Another value.
   *
   * @param other whose; empty for one of the same fact
   * @param times how many times it
   * @param more how much more than that, in base units
   */
  record OfThing(Optional<Thing> other, Value value, double times, double more) implements Than {

    @Override
    public Object of(Object fact, Function<Thing, Object> others) {
      Object found = value.of(other.map(others).orElse(fact));
      return found instanceof Double number ? (Object) (number * times + more) : found;
    }

    @Override
    public Set<Thing> things() {
      return other.map(Set::of).orElse(Set.of());
    }

    @Override
    public String text() {
      return value.access()
          + other.map(o -> " of " + o.number()).orElse(" of its own")
          + " times "
          + times
          + " and "
          + more;
    }
  }
}

package strikeoff.units;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading a quantity: the value, or words for the person who wrote it.
 *
 * @param <T> what was to be read
 */
public sealed interface Parsed<T> {

  /**
   * A value.
   *
   * @param note what had to be taken for granted, for example which cup; empty if nothing
   * @param written the units it was written in; none for what has a choice of none, and for nothing
   */
  record Value<T>(T value, Optional<String> note, List<WrittenIn> written) implements Parsed<T> {

    public Value {
      written = List.copyOf(written);
    }
  }

  /**
   * Not a value.
   *
   * @param message what was expected and what was found
   */
  record Refused<T>(String message) implements Parsed<T> {}

  static <T> Parsed<T> value(T value) {
    return new Value<>(value, Optional.empty(), List.of());
  }

  static <T> Parsed<T> refused(String message) {
    return new Refused<>(message);
  }

  /** The same with another value; a refusal stays one. */
  default <U> Parsed<U> map(Function<? super T, ? extends U> change) {
    if (this instanceof Value<T> v) {
      return new Value<>(change.apply(v.value()), v.note(), v.written());
    }
    return refused(((Refused<T>) this).message());
  }

  /** The value, if there is one. */
  default Optional<T> toOptional() {
    return this instanceof Value<T> v ? Optional.of(v.value()) : Optional.empty();
  }
}

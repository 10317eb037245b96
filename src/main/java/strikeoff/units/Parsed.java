package strikeoff.units;

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
   */
  record Value<T>(T value, Optional<String> note) implements Parsed<T> {}

  /**
   * Not a value.
   *
   * @param message what was expected and what was found
   */
  record Refused<T>(String message) implements Parsed<T> {}

  static <T> Parsed<T> value(T value) {
    return new Value<>(value, Optional.empty());
  }

  static <T> Parsed<T> refused(String message) {
    return new Refused<>(message);
  }

  /** The same with another value; a refusal stays one. */
  default <U> Parsed<U> map(Function<? super T, ? extends U> change) {
    if (this instanceof Value<T> v) {
      return new Value<>(change.apply(v.value()), v.note());
    }
    return refused(((Refused<T>) this).message());
  }

  /** The value, if there is one. */
  default Optional<T> toOptional() {
    return this instanceof Value<T> v ? Optional.of(v.value()) : Optional.empty();
  }
}

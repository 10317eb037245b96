package strikeoff.yaml;

import java.util.Optional;
import java.util.function.Function;

/**
 * What belongs at a place: how it is read, and how a writer is told of it.
 *
 * @param <T> what it becomes
 */
public interface Expected<T> {

  /** As {@code a length such as 40 cm}; goes before “was expected”. */
  String words();

  /**
   * Taken for a value that could not be read, so that reading can go on to the next mistake. A plan
   * with any mistake is refused, so nobody computes with it.
   */
  T standIn();

  /** The value, or empty with the reason reported. */
  Optional<T> read(Item item, Reading reading);

  /** The same, changed. */
  default <U> Expected<U> map(Function<? super T, ? extends U> change) {
    Expected<T> plain = this;
    return new Expected<>() {
      @Override
      public String words() {
        return plain.words();
      }

      @Override
      public U standIn() {
        return change.apply(plain.standIn());
      }

      @Override
      public Optional<U> read(Item item, Reading reading) {
        return plain.read(item, reading).map(change);
      }
    };
  }
}

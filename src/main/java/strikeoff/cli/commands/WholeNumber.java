package strikeoff.cli.commands;

import java.util.OptionalInt;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads a whole number that an option takes.
 *
 * @param least the least that is taken
 * @param most the most that is taken
 */
record WholeNumber(int least, int most) implements ITypeConverter<Integer> {

  /** More than anybody waits for, counts or reads, of whatever it is. */
  static final WholeNumber FROM_ONE = new WholeNumber(1, 1_000_000_000);

  @Override
  public Integer convert(String written) {
    return read(written)
        .orElseThrow(
            () ->
                new TypeConversionException(
                    expected() + " was expected; “" + written + "” is none"));
  }

  /** As {@code a whole number from 1 to 100}. */
  String expected() {
    return "a whole number from " + least + " to " + most;
  }

  /** Empty if it isn't one. */
  OptionalInt read(String written) {
    if (!written.matches("\\+?0*[0-9]{1,10}")) {
      return OptionalInt.empty();
    }
    long number = Long.parseLong(written);
    return number < least || number > most ? OptionalInt.empty() : OptionalInt.of((int) number);
  }
}

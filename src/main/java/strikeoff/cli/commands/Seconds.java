package strikeoff.cli.commands;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time in seconds that an option takes: a thread that is waited for 0 ms never ends. */
final class Seconds implements ITypeConverter<Double> {

  private static final double LEAST = 0.1;
  private static final double MOST = 1e6;

  @Override
  public Double convert(String written) {
    // The platform's own reading knows hexadecimal numbers, NaN and letters for types.
    double seconds =
        written.matches("\\+?[0-9]{1,9}(\\.[0-9]{1,9})?") ? Double.parseDouble(written) : 0;
    if (seconds < LEAST || seconds > MOST) {
      throw new TypeConversionException(
          "a number of seconds from 0.1 to 1000000 was expected; “" + written + "” is none");
    }
    return seconds;
  }
}

package strikeoff.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import strikeoff.units.Spelling;

/**
 * A format and where it goes.
 *
 * @param file empty for standard output
 */
record Output(Format format, Optional<String> file) {

  /** Reads {@code json} or {@code json=FILE}. */
  static final class Converter implements ITypeConverter<Output> {
    @Override
    public Output convert(String written) {
      int sign = written.indexOf('=');
      String word = sign < 0 ? written : written.substring(0, sign);
      List<String> known = new ArrayList<>();
      for (Format format : Format.values()) {
        known.add(format.word());
        if (format.word().equals(word)) {
          return new Output(format, file(written, sign));
        }
      }
      throw new TypeConversionException(
          "no format is called “"
              + word
              + "”"
              + Spelling.didYouMean(word, known)
              + "; there are "
              + String.join(", ", known));
    }

    private static Optional<String> file(String written, int sign) {
      if (sign < 0) {
        return Optional.empty();
      }
      String file = written.substring(sign + 1);
      if (file.isBlank()) {
        throw new TypeConversionException("a file belongs behind “" + written + "”");
      }
      return Optional.of(file);
    }
  }
}

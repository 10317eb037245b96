package strikeoff.cli.files;

import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A format and where it goes.
 *
 * @param file empty for standard output
 */
public record Output(String format, Optional<String> file) {

  static final String TEXT = "text";

  /** The page of a proposed run. */
  public static final String RUN_PAGE = "page";

  /** True for what is told plan by plan, for people. */
  boolean isText() {
    return format.equals(TEXT);
  }

  /** Reads {@code json} or {@code json=FILE}. */
  public static final class Converter implements ITypeConverter<Output> {
    @Override
    public Output convert(String written) {
      int sign = written.indexOf('=');
      if (sign < 0) {
        return new Output(written, Optional.empty());
      }
      String file = written.substring(sign + 1);
      if (file.isBlank()) {
        throw new TypeConversionException("a file belongs behind “" + written + "”");
      }
      return new Output(written.substring(0, sign), Optional.of(file));
    }
  }
}

package strikeoff.cli.commands;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import strikeoff.document.Bounds;

/** How much of something a plan may have, as {@code --bound} has it. */
record BoundGiven(String name, int most) {

  /** Reads {@code kib=2048}. */
  static final class Converter implements ITypeConverter<BoundGiven> {
    @Override
    public BoundGiven convert(String written) {
      int sign = written.indexOf('=');
      if (sign < 1) {
        throw new TypeConversionException(
            "a bound such as kib=2048 was expected; “" + written + "” is none");
      }
      String name = written.substring(0, sign);
      WholeNumber range = new WholeNumber(1, most(name));
      return new BoundGiven(
          name,
          range
              .read(written.substring(sign + 1))
              .orElseThrow(
                  () ->
                      new TypeConversionException(
                          "behind “"
                              + name
                              + "=”, "
                              + range.expected()
                              + " was expected; “"
                              + written.substring(sign + 1)
                              + "” is none")));
    }

    private static int most(String name) {
      try {
        return Bounds.most(name);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }
}

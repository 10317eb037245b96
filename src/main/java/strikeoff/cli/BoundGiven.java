package strikeoff.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import strikeoff.plan.Bounds;
import strikeoff.units.Spelling;

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
      if (!Bounds.names().contains(name)) {
        String near = Spelling.didYouMean(name, Bounds.names());
        throw new TypeConversionException(
            "nothing is bounded by the name “"
                + name
                + "”"
                + (near.isEmpty() ? "; there are " + String.join(", ", Bounds.names()) : near));
      }
      WholeNumber range = new WholeNumber(1, Bounds.most(name));
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
  }
}

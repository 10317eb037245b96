package strikeoff.cli.commands;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import strikeoff.report.outcome.Part;

/** Reads {@code 2/7}. */
final class PartConverter implements ITypeConverter<Part> {
  @Override
  public Part convert(String written) {
    return Part.parse(written)
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "a part such as 2/7 was expected, from 1/7 to 7/7; “" + written + "” is none"));
  }
}

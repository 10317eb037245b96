package strikeoff.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import strikeoff.report.outcome.Shard;

/** Reads {@code 2/7}. */
final class ShardConverter implements ITypeConverter<Shard> {
  @Override
  public Shard convert(String written) {
    return Shard.parse(written)
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "a part such as 2/7 was expected, from 1/7 to 7/7; “" + written + "” is none"));
  }
}

package strikeoff.cli.commands;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads what somebody wrote behind an option that is there or not. */
final class YesOrNo implements ITypeConverter<Boolean> {
  @Override
  public Boolean convert(String written) {
    return switch (written) {
      case "true" -> true;
      case "false" -> false;
      default ->
          throw new TypeConversionException(
              "nothing belongs behind it; “" + written + "” stands there");
    };
  }
}

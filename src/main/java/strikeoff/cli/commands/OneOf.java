package strikeoff.cli.commands;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import strikeoff.units.Spelling;

/** Reads one of a few words, in small letters as help and completion show them, or in capitals. */
record OneOf<E extends Enum<E>>(Class<E> type) implements ITypeConverter<E>, Iterable<String> {

  @Override
  public E convert(String written) {
    String word = written.toLowerCase(Locale.ROOT);
    for (E value : type.getEnumConstants()) {
      if (word(value).equals(word)) {
        return value;
      }
    }
    throw new TypeConversionException(
        "there are "
            + String.join(", ", words())
            + ", and no “"
            + written
            + "”"
            + Spelling.didYouMean(written, words()));
  }

  @Override
  public Iterator<String> iterator() {
    return words().iterator();
  }

  private List<String> words() {
    return Stream.of(type.getEnumConstants()).map(OneOf::word).toList();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}

package strikeoff.yaml;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/** The kinds of values that documents hold. */
public final class ValueKinds {

  private static final String OPENING = "“”„‘’‚«»‹›";
  private static final String CLOSING = "”“’‘«»‹›";

  private ValueKinds() {}

  /** Text of a bounded length, in one line or several. */
  public static Expected<String> text(String words, int longest) {
    return scalar(words, "", text -> ofLength(text, longest));
  }

  /** The text, unless it is longer than it may be. */
  public static Parsed<String> ofLength(String text, int longest) {
    return text.length() > longest
        ? Parsed.refused("this is longer than the " + longest + " letters it may have")
        : Parsed.value(text);
  }

  /** {@code yes} or {@code no}. */
  public static Expected<Boolean> yesNo() {
    return scalar(
        "yes or no",
        false,
        text ->
            switch (text) {
              case "yes", "Yes", "true" -> Parsed.value(true);
              case "no", "No", "false" -> Parsed.value(false);
              default ->
                  Parsed.refused(
                      "yes or no was expected; "
                          + Script.quoted(text)
                          + " is neither"
                          + Optional.ofNullable(ANSWERS.get(text.toLowerCase(Locale.ROOT)))
                              .map(a -> "; did you mean " + a + "?")
                              .orElse(""));
            });
  }

  private static final Map<String, String> ANSWERS =
      Map.ofEntries(
          Map.entry("yes", "yes"),
          Map.entry("y", "yes"),
          Map.entry("true", "yes"),
          Map.entry("on", "yes"),
          Map.entry("1", "yes"),
          Map.entry("no", "no"),
          Map.entry("n", "no"),
          Map.entry("false", "no"),
          Map.entry("off", "no"),
          Map.entry("0", "no"),
          Map.entry("none", "no"));

  /** One of a few words. */
  public static <T> Expected<T> word(String words, Map<String, T> known) {
    return scalar(
        words,
        known.values().iterator().next(),
        text -> {
          T found = known.get(text);
          return found != null
              ? Parsed.value(found)
              : Parsed.refused(
                  words
                      + " was expected; "
                      + Script.quoted(text)
                      + " is not known"
                      + Spelling.didYouMean(text, known.keySet()));
        });
  }

  /** The name of something that the document defines elsewhere, in {@code section}. */
  public static Expected<String> nameIn(String what, String section, Collection<String> known) {
    Expected<String> name =
        scalar(
            what,
            "",
            text -> known.contains(text) ? Parsed.value(text) : noSuch(text, section, known));
    return new Expected<>() {
      @Override
      public String words() {
        return name.words();
      }

      @Override
      public String standIn() {
        return name.standIn();
      }

      @Override
      public Optional<String> read(Item item, Reading reading) {
        // It may stand in a part that could not be read.
        if (reading.mayBeNamed()
            && item.node() instanceof Node.Scalar s
            && !known.contains(s.text())) {
          reading.problems().doubtful();
          return Optional.empty();
        }
        return name.read(item, reading);
      }
    };
  }

  private static Parsed<String> noSuch(String text, String section, Collection<String> known) {
    String meant = Spelling.didYouMean(text, known);
    String rest =
        !meant.isEmpty()
            ? meant
            : known.isEmpty() || known.size() > 12 ? "" : "; there are " + String.join(", ", known);
    return Parsed.refused("no " + section + " is called " + Script.quoted(text) + rest);
  }

  /** A whole number. */
  public static Expected<Integer> count(String words, int least, int most) {
    return scalar(
        words,
        Math.max(1, least),
        text -> {
          if (!text.matches("[-+]?\\d{1,18}")) {
            return Parsed.refused(words + " was expected; " + Script.quoted(text) + " is not one");
          }
          long value = Long.parseLong(text);
          if (value < least) {
            return Parsed.refused(
                words + " was expected, at least " + least + "; this is " + value);
          }
          return value > most
              ? Parsed.refused(words + " was expected, at most " + most + "; this is " + value)
              : Parsed.value((int) value);
        });
  }

  /** A list of at least one; a single value stands for a list of one. */
  public static <T> Expected<List<T>> oneOrMore(Expected<T> each) {
    return new Expected<>() {
      @Override
      public String words() {
        return each.words() + ", or a list of such,";
      }

      @Override
      public List<T> standIn() {
        return List.of();
      }

      @Override
      public Optional<List<T>> read(Item item, Reading reading) {
        if (item.node() instanceof Node.Mapping m && bare(m)) {
          reading.wrong(
              item,
              words()
                  + " was expected; write a list in square brackets: ["
                  + String.join(", ", m.entries().keySet())
                  + "]");
          return Optional.empty();
        }
        if (!(item.node() instanceof Node.Sequence list)) {
          return each.read(item, reading).map(List::of);
        }
        if (list.items().isEmpty()) {
          reading.wrong(item, words() + " was expected, and the list is empty");
          return Optional.empty();
        }
        List<T> values = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
          Item child = item.child(list.items().get(i), i);
          if (child.node() instanceof Node.Nothing) {
            reading.wrong(child, each.words() + " was expected, and nothing stands here");
          } else {
            each.read(child, reading).ifPresent(values::add);
          }
        }
        return values.size() == list.items().size() ? Optional.of(values) : Optional.empty();
      }
    };
  }

  /** Words in braces without any values. */
  private static boolean bare(Node.Mapping mapping) {
    return mapping.entries().size() > 1
        && mapping.entries().values().stream().allMatch(e -> e.value() instanceof Node.Nothing);
  }

  /** A single value read by a function that gives words where it cannot. */
  public static <T> Expected<T> scalar(String words, T standIn, Function<String, Parsed<T>> parse) {
    return measured(words, () -> standIn, parse);
  }

  /** The same with a stand-in that is made only where it is needed. */
  static <T> Expected<T> measured(
      String words, Supplier<T> standIn, Function<String, Parsed<T>> parse) {
    return new Expected<>() {
      @Override
      public String words() {
        return words;
      }

      @Override
      public T standIn() {
        return standIn.get();
      }

      @Override
      public Optional<T> read(Item item, Reading reading) {
        if (!(item.node() instanceof Node.Scalar s)) {
          reading.wrong(item, words + " was expected, and " + item.node().kind() + " stands here");
          return Optional.empty();
        }
        Parsed<T> parsed = parse.apply(s.text());
        if (parsed instanceof Parsed.Value<T> v) {
          v.note().ifPresent(n -> reading.note(item, n));
          reading.written(item, v.written());
          return Optional.of(v.value());
        }
        Optional<T> unquoted = printedQuotes(s.text()).flatMap(t -> parse.apply(t).toOptional());
        reading.wrong(
            item,
            unquoted.isPresent()
                ? "printed quotation marks stand here; write straight ones: \""
                    + printedQuotes(s.text()).get()
                    + "\""
                : ((Parsed.Refused<T>) parsed).message());
        return unquoted;
      }
    };
  }

  /** What stands in quotation marks as word processors set them, which YAML takes for letters. */
  static Optional<String> printedQuotes(String text) {
    int last = text.length() - 1;
    return last > 1
            && OPENING.indexOf(text.charAt(0)) >= 0
            && CLOSING.indexOf(text.charAt(last)) >= 0
        ? Optional.of(text.substring(1, last))
        : Optional.empty();
  }
}

package strikeoff.yaml;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import strikeoff.units.Mass;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Quantity;
import strikeoff.units.Script;
import strikeoff.units.Share;
import strikeoff.units.Spelling;
import strikeoff.units.Temperature;

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

  /** A quantity of zero or more; temperatures and angles may lie below zero. */
  public static <Q extends Quantity> Expected<Q> quantity(Class<Q> type) {
    return measured(
        Quantities.expected(type),
        () -> Quantities.parse(example(type), type).toOptional().orElseThrow(),
        text -> Quantities.parse(text, type));
  }

  /** A quantity that may lie below zero, as a place before the start. */
  public static <Q extends Quantity> Expected<Q> signed(Class<Q> type) {
    Expected<Q> plain = quantity(type);
    return measured(plain.words(), plain::standIn, text -> Quantities.parseSigned(text, type));
  }

  /** A quantity above zero. */
  public static <Q extends Quantity> Expected<Q> aboveZero(Class<Q> type) {
    Expected<Q> plain = quantity(type);
    return measured(
        plain.words(),
        plain::standIn,
        text -> {
          Parsed<Q> parsed = Quantities.parse(text, type);
          return parsed.toOptional().filter(q -> q.base() <= 0).isPresent()
              ? Parsed.refused(plain.words() + " was expected, more than nothing")
              : parsed;
        });
  }

  /** A share of a whole, at most all of it. */
  public static Expected<Share> shareOfWhole() {
    return atMost(Share.class, new Share(1), "more than the whole");
  }

  /**
   * A temperature within bounds.
   *
   * @param bounds what they are the bounds of
   */
  public static Expected<Temperature> between(Temperature least, Temperature most, String bounds) {
    Expected<Temperature> plain = quantity(Temperature.class);
    return measured(
        plain.words(),
        plain::standIn,
        text -> {
          Parsed<Temperature> parsed = Quantities.parse(text, Temperature.class);
          return parsed
                  .toOptional()
                  .filter(t -> t.compareTo(least) < 0 || t.compareTo(most) > 0)
                  .isPresent()
              ? Parsed.refused(
                  Script.quoted(text) + " is beyond " + bounds + ", " + least + " to " + most)
              : parsed;
        });
  }

  private static <Q extends Quantity> Expected<Q> atMost(Class<Q> type, Q most, String else_) {
    Expected<Q> plain = quantity(type);
    return measured(
        plain.words(),
        plain::standIn,
        text -> {
          Parsed<Q> parsed = Quantities.parse(text, type);
          return parsed.toOptional().filter(q -> q.base() > most.base() + 1e-12).isPresent()
              ? Parsed.refused(
                  Script.quoted(text)
                      + " is "
                      + else_
                      + "; at most "
                      + most.text()
                      + " is possible")
              : parsed;
        });
  }

  /** A share above nothing and at most the whole. */
  public static Expected<Share> above0UpToWhole() {
    Expected<Share> whole = shareOfWhole();
    return new Expected<>() {
      @Override
      public String words() {
        return whole.words();
      }

      @Override
      public Share standIn() {
        return whole.standIn();
      }

      @Override
      public Optional<Share> read(Item item, Reading reading) {
        Optional<Share> share = whole.read(item, reading);
        if (share.isPresent() && share.get().fraction() <= 0) {
          reading.wrong(item, words() + " was expected, more than nothing");
          return Optional.empty();
        }
        return share;
      }
    };
  }

  /** A mass or a volume, as recipes give either. */
  public static Expected<Quantity> amount() {
    return scalar(
        "a mass such as 90 g or a volume such as 500 ml",
        new Mass(1),
        text -> {
          Parsed<Quantity> parsed = Quantities.parseAmount(text);
          return parsed.toOptional().filter(q -> q.base() <= 0).isPresent()
              ? Parsed.refused("an amount of more than nothing was expected")
              : parsed;
        });
  }

  /** A size such as {@code 54 x 74 cm}, both above zero. */
  public static Expected<Pair> size() {
    return measured(
        "a size such as 54 x 74 cm",
        () -> Pair.size("1 x 1 cm").toOptional().orElseThrow(),
        text -> {
          Parsed<Pair> parsed = Pair.size(text);
          return parsed
                  .toOptional()
                  .filter(p -> p.along().mm() <= 0 || p.across().mm() <= 0)
                  .isPresent()
              ? Parsed.refused("a size such as 54 x 74 cm was expected, more than nothing each way")
              : parsed;
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
  private static <T> Expected<T> measured(
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

  private static String example(Class<? extends Quantity> type) {
    String words = Quantities.expected(type);
    return words.substring(words.indexOf("such as ") + "such as ".length());
  }
}

package strikeoff.yaml;

import java.util.Optional;
import strikeoff.units.Mass;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Quantity;
import strikeoff.units.Script;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/** The kinds of quantities that documents hold, each with the bounds that it may lie in. */
public final class QuantityKinds {

  private QuantityKinds() {}

  /** A quantity of zero or more; temperatures and angles may lie below zero. */
  public static <Q extends Quantity> Expected<Q> quantity(Class<Q> type) {
    return ValueKinds.measured(
        Quantities.expected(type),
        () -> Quantities.parse(example(type), type).toOptional().orElseThrow(),
        text -> Quantities.parse(text, type));
  }

  /** A quantity that may lie below zero, as a place before the start. */
  public static <Q extends Quantity> Expected<Q> signed(Class<Q> type) {
    Expected<Q> plain = quantity(type);
    return ValueKinds.measured(
        plain.words(), plain::standIn, text -> Quantities.parseSigned(text, type));
  }

  /** A quantity above zero. */
  public static <Q extends Quantity> Expected<Q> aboveZero(Class<Q> type) {
    Expected<Q> plain = quantity(type);
    return ValueKinds.measured(
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
    return ValueKinds.measured(
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
    return ValueKinds.measured(
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
    return ValueKinds.scalar(
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
    return ValueKinds.measured(
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

  private static String example(Class<? extends Quantity> type) {
    String words = Quantities.expected(type);
    return words.substring(words.indexOf("such as ") + "such as ".length());
  }
}

package strikeoff.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.policy.Limit;
import strikeoff.units.Measures;
import strikeoff.units.PerKilogram;
import strikeoff.units.Quantity;

/**
 * Turns a rule's template and the facts it reported into words: the one place that does.
 *
 * <p>A placeholder names a record component or a method without parameters of one of the facts, the
 * first one that has it: {@code {shortfall}}. Dots lead on into the value: {@code {later.screen}}.
 * {@code {limit}} is the first policy limit among the facts, {@code {limit2}} the second one.
 *
 * <p>{@code {pastes:is|are}} stands for the first word if there is one of them and for the second
 * one if there are more or none: a list, or a number.
 *
 * <p>{@code {limit.inKilogram} in {a kilogram}} tells of grams in a kilogram, or of ounces in a
 * pound; with {@code {limit.ofKilogram}} the number stands alone. {@code {g for each gram}} follows
 * a ratio of masses.
 */
public final class Words {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");

  private static final Pattern AGREEMENT = Pattern.compile("([^:]+):([^|]*)\\|([^|]*)");

  private static final Pattern LIMIT =
      Pattern.compile("limit([2-9]?)(\\.inKilogram|\\.ofKilogram)?");

  /** Words that go with figures of what a kilogram of paste holds, by the units of masses. */
  private static final Map<String, Function<Measures, String>> FIXED =
      Map.of("a kilogram", PerKilogram::whole, "g for each gram", PerKilogram::forEach);

  private Words() {}

  /**
   * Fills a template.
   *
   * @param facts the judged one first
   * @throws IllegalArgumentException if a placeholder names nothing in the facts: a fault of the
   *     tool
   */
  public static String fill(String template, List<?> facts, Measures units) {
    return fill(template, placeholder -> word(placeholder, facts, units));
  }

  private static String fill(String template, UnaryOperator<String> words) {
    Matcher places = PLACEHOLDER.matcher(template);
    StringBuilder filled = new StringBuilder();
    while (places.find()) {
      places.appendReplacement(filled, Matcher.quoteReplacement(words.apply(places.group(1))));
    }
    return places.appendTail(filled).toString();
  }

  /**
   * Fills a template that tells a finding. A value that reads like the limit it missed says by its
   * side: {@code just over 21 days}, where 21 days are the most.
   *
   * @param facts the judged one first
   * @throws IllegalArgumentException as {@link #fill}
   */
  public static String tell(String template, List<?> facts, Measures units) {
    return placeholders(template).stream().noneMatch(Words::isLimit)
        ? fill(template, facts, units)
        : fill(template, placeholder -> beside(placeholder, facts, units));
  }

  private static String beside(String placeholder, List<?> facts, Measures units) {
    String word = word(placeholder, facts, units);
    if (AGREEMENT.matcher(placeholder).matches()
        || FIXED.containsKey(placeholder)
        || isLimit(placeholder)
        || !(value(placeholder, facts, units) instanceof Quantity told)) {
      return word;
    }
    for (Object fact : facts) {
      if (fact instanceof Limit limit
          && limit.value().text(units).equals(word)
          && Math.abs(told.base() - limit.amount()) > 1e-9 * Math.abs(limit.amount())) {
        return (told.base() > limit.amount() ? "just over " : "just under ") + word;
      }
    }
    return word;
  }

  /** The placeholders of a template, in their order, without brackets. */
  public static List<String> placeholders(String template) {
    return PLACEHOLDER.matcher(template).results().map(m -> m.group(1)).toList();
  }

  /** A template without them. */
  public static String withoutPlaceholders(String template) {
    return PLACEHOLDER.matcher(template).replaceAll("");
  }

  /**
   * Tells whether facts of these types can fill a placeholder, as far as declared types show.
   *
   * @param types of the facts in the order they are reported
   */
  public static boolean canFill(String placeholder, List<Class<?>> types) {
    if (FIXED.containsKey(placeholder)) {
      return true;
    }
    Matcher agreement = AGREEMENT.matcher(placeholder);
    if (agreement.matches()) {
      return canFill(agreement.group(1), types);
    }
    Matcher limit = LIMIT.matcher(placeholder);
    if (limit.matches()) {
      return types.stream().filter(t -> t == Limit.class).count() > nth(limit);
    }
    String first = FactValues.firstName(placeholder);
    return types.stream()
        .filter(t -> t != Limit.class && FactValues.has(t, first))
        .findFirst()
        .map(t -> FactValues.canFollow(t, placeholder))
        .orElse(false);
  }

  private static String word(String placeholder, List<?> facts, Measures units) {
    if (FIXED.containsKey(placeholder)) {
      return FIXED.get(placeholder).apply(units);
    }
    Matcher agreement = AGREEMENT.matcher(placeholder);
    if (agreement.matches()) {
      String name = agreement.group(1);
      return agreement.group(Spoken.isOne(value(name, facts, units), name) ? 2 : 3);
    }
    Matcher limit = LIMIT.matcher(placeholder);
    if (limit.matches()) {
      List<Limit> limits = new ArrayList<>();
      for (Object fact : facts) {
        if (fact instanceof Limit given) {
          limits.add(given);
        }
      }
      if (limits.size() > nth(limit)) {
        return told(limits.get(nth(limit)).value(), limit.group(2), units);
      }
      throw new IllegalArgumentException("{" + placeholder + "}: the rule gave no such limit");
    }
    return Spoken.text(value(placeholder, facts, units), FactValues.lastName(placeholder), units);
  }

  /**
   * @param held null for a limit as it is; for grams in a kilogram, whether with its unit or not
   */
  private static String told(Quantity limit, String held, Measures units) {
    if (held == null) {
      return limit.text(units);
    }
    return held.equals(".inKilogram")
        ? PerKilogram.text(limit.base(), units)
        : PerKilogram.number(limit.base(), units);
  }

  static boolean isLimit(String placeholder) {
    return LIMIT.matcher(placeholder).matches();
  }

  static Object value(String placeholder, List<?> facts, Measures units) {
    String first = FactValues.firstName(placeholder);
    Optional<?> holder =
        facts.stream()
            .filter(f -> !(f instanceof Limit) && FactValues.has(f.getClass(), first))
            .findFirst();
    if (holder.isEmpty()) {
      throw new IllegalArgumentException("{" + placeholder + "}: no fact given has it");
    }
    return FactValues.follow(holder.get(), placeholder, units);
  }

  private static int nth(Matcher limit) {
    return limit.group(1).isEmpty() ? 0 : Integer.parseInt(limit.group(1)) - 1;
  }
}

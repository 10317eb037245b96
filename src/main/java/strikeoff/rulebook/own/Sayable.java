package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.evidence.Evidence;
import strikeoff.findings.Words;
import strikeoff.policy.Limit;
import strikeoff.units.Measures;

/**
 * What an own rule's message may say: the values of the facts that it found, as SENTENCES.md lists
 * them. Built-in rules lead on into a value; from there anything that the program holds could be
 * called, which is nothing for a text. Where a rule found two things of a kind, {@code
 * {otherScreen}} is a value of the second one.
 */
public final class Sayable {

  private static final Pattern NAME = Pattern.compile("[a-z][A-Za-z0-9]*");
  private static final Pattern OTHER = Pattern.compile("\\{other([A-Z][^{}]*)}");

  private static final Pattern PLAIN = Pattern.compile("\\{([a-z][A-Za-z0-9]*)}");

  /** A brace that is one, or a placeholder. */
  private static final Pattern BRACES = Pattern.compile("\\{\\{|\\{[^{}]*}|}}");

  /** A limit's value is said by the rule's number of it. */
  private static final Pattern LIMIT = Pattern.compile("limit([2-9]?)");

  /** What is told beside facts. */
  private static final Set<Class<?>> TOLD = Set.of(Counted.class, Total.class);

  private static final ClassValue<Set<String>> NAMES =
      new ClassValue<>() {
        @Override
        protected Set<String> computeValue(Class<?> type) {
          return Set.copyOf(AskableValues.sayable(type));
        }
      };

  private Sayable() {}

  /**
   * True if a placeholder names a value of one of some facts.
   *
   * @param types theirs, in their order
   */
  static boolean canSay(String placeholder, List<Class<?>> types) {
    String name = named(placeholder);
    if (!NAME.matcher(name).matches()) {
      return false;
    }
    Matcher limit = LIMIT.matcher(name);
    if (limit.matches()) {
      int nth = limit.group(1).isEmpty() ? 1 : Integer.parseInt(limit.group(1));
      return types.stream().filter(type -> type == Limit.class).count() >= nth;
    }
    if (types.stream().anyMatch(type -> has(type, name))) {
      return true;
    }
    Matcher other = OTHER.matcher("{" + name + "}");
    return other.matches() && second(types, Function.identity(), small(other.group(1))).isPresent();
  }

  private static boolean has(Class<?> type, String name) {
    return (Evidence.class.isAssignableFrom(type) || TOLD.contains(type))
        && NAMES.get(type).contains(name);
  }

  /** The second of a type among those that have a value. */
  private static <T> Optional<T> second(
      List<T> all, Function<T, Class<?>> type, String placeholder) {
    List<Class<?>> first = new ArrayList<>();
    for (T one : all) {
      if (has(type.apply(one), named(placeholder))) {
        if (first.contains(type.apply(one))) {
          return Optional.of(one);
        }
        first.add(type.apply(one));
      }
    }
    return Optional.empty();
  }

  /** Words that agree with a value, and the side to which it is rounded, are how it is said. */
  private static String named(String placeholder) {
    return placeholder.replaceFirst(":.*", "").replaceFirst("\\.rounded(Up|Down)$", "");
  }

  private static String small(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  /** The names of all values of some facts. */
  static List<String> names(List<Class<?>> types) {
    Set<String> names = new TreeSet<>();
    types.stream()
        .filter(type -> type != Limit.class)
        .forEach(type -> names.addAll(NAMES.get(type)));
    return List.copyOf(names);
  }

  /**
   * A template with the values of facts in it.
   *
   * @param facts what the rule found, in its order
   */
  public static String told(String template, List<?> facts, Measures units) {
    // What stands between two braces that are braces has nothing to do with one another.
    StringBuilder told = new StringBuilder();
    Matcher literal = BRACES.matcher(template);
    int from = 0;
    while (literal.find()) {
      if (!isLiteral(literal.group())) {
        continue;
      }
      told.append(filled(template.substring(from, literal.start()), facts, units));
      told.append(literal.group().charAt(0));
      from = literal.end();
    }
    return told.append(filled(template.substring(from), facts, units)).toString();
  }

  /** A text that has no values, with its braces as they are read. */
  static String braces(String text) {
    return BRACES
        .matcher(text)
        .replaceAll(
            brace ->
                Matcher.quoteReplacement(
                    isLiteral(brace.group()) ? brace.group().substring(1) : brace.group()));
  }

  private static boolean isLiteral(String braces) {
    return braces.equals("{{") || braces.equals("}}");
  }

  /** A text without the braces that are braces. */
  static String withoutLiteral(String text) {
    return BRACES
        .matcher(text)
        .replaceAll(
            brace -> isLiteral(brace.group()) ? "" : Matcher.quoteReplacement(brace.group()));
  }

  private static String filled(String template, List<?> facts, Measures units) {
    Matcher other = OTHER.matcher(template);
    StringBuilder told = new StringBuilder();
    int from = 0;
    while (other.find()) {
      String name = small(other.group(1));
      Optional<?> second = second(List.<Object>copyOf(facts), Object::getClass, name);
      if (second.isPresent()) {
        told.append(first(template.substring(from, other.start()), facts, units));
        told.append(first("{" + name + "}", List.of(second.get()), units));
        from = other.end();
      }
    }
    return told.append(first(template.substring(from), facts, units)).toString();
  }

  /** Each value of the first fact that has it. */
  private static String first(String template, List<?> facts, Measures units) {
    String told =
        PLAIN
            .matcher(template)
            .replaceAll(
                name ->
                    facts.stream()
                        .map(Object::getClass)
                        .filter(type -> has(type, name.group(1)))
                        .findFirst()
                        .map(type -> "{" + KnownValues.list().told(type, name.group(1)) + "}")
                        .orElse(name.group()));
    return Words.fill(told, facts, units);
  }
}

package strikeoff.rulebook.own;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import strikeoff.findings.Words;
import strikeoff.plan.Evidence;

/**
 * What an own rule's message may say: the values of the facts that it found, as SENTENCES.md lists
 * them. Built-in rules lead on into a value; from there anything that the program holds could be
 * called, which is nothing for a text.
 */
public final class Sayable {

  private static final Pattern NAME = Pattern.compile("[a-z][A-Za-z0-9]*");

  /** A limit's value is said by the rule's number of it. */
  private static final Pattern LIMIT = Pattern.compile("limit[2-9]?");

  private static final ClassValue<Set<String>> NAMES =
      new ClassValue<>() {
        @Override
        protected Set<String> computeValue(Class<?> type) {
          return Set.copyOf(ComparedValues.sayable(type));
        }
      };

  private Sayable() {}

  /** True for what stands in braces as a single name. */
  public static boolean isName(String placeholder) {
    return NAME.matcher(named(placeholder)).matches();
  }

  /** True if a fact of this type has the value that a placeholder names. */
  static boolean has(Class<?> type, String placeholder) {
    return Evidence.class.isAssignableFrom(type) && NAMES.get(type).contains(named(placeholder));
  }

  /** Words that agree with a value, and the side to which it is rounded, are how it is said. */
  private static String named(String placeholder) {
    return placeholder.replaceFirst(":.*", "").replaceFirst("\\.rounded(Up|Down)$", "");
  }

  /** The names of all values of some facts. */
  static List<String> names(List<Class<?>> types) {
    Set<String> names = new TreeSet<>();
    types.forEach(type -> names.addAll(NAMES.get(type)));
    return List.copyOf(names);
  }

  /**
   * Holds templates to what may be said.
   *
   * @throws IllegalArgumentException if a placeholder is none of the facts' values
   */
  public static void asked(List<String> templates, List<?> facts) {
    for (String template : templates) {
      for (String name : Words.placeholders(template)) {
        boolean said =
            LIMIT.matcher(named(name)).matches()
                || facts.stream().anyMatch(fact -> has(fact.getClass(), name));
        if (!said) {
          throw new IllegalArgumentException("{" + name + "}: no fact given has such a value");
        }
      }
    }
  }
}

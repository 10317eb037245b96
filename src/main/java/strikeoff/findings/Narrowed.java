package strikeoff.findings;

import java.util.ArrayList;
import java.util.List;
import strikeoff.units.Phrase;

/**
 * That a user asked for some rules only: what they find nothing of, nobody has looked for.
 *
 * @param only rules and families that were asked for; empty for all
 * @param skip rules and families that were not
 * @param leftOut ids of the rules that didn't judge, in order
 * @param of how many rules there are
 */
public record Narrowed(List<String> only, List<String> skip, List<String> leftOut, int of) {

  public Narrowed {
    only = List.copyOf(only);
    skip = List.copyOf(skip);
    leftOut = List.copyOf(leftOut);
  }

  /** Which of these rules are left out. */
  public static Narrowed of(List<String> only, List<String> skip, List<String> rules) {
    List<String> leftOut =
        rules.stream()
            .filter(rule -> !(only.isEmpty() || isNamed(only, rule)) || isNamed(skip, rule))
            .sorted()
            .toList();
    return new Narrowed(only, skip, leftOut, rules.size());
  }

  private static boolean isNamed(List<String> names, String rule) {
    return names.contains(rule) || names.contains(rule.substring(0, rule.indexOf('/')));
  }

  public boolean asks(String rule) {
    return !leftOut.contains(rule);
  }

  /** True if nothing is left to judge by. */
  public boolean isNothing() {
    return leftOut.size() == of;
  }

  /** As {@code only 12 of 230 rules judged}. */
  public String counted() {
    return "only " + (of - leftOut.size()) + " of " + of + " rules judged";
  }

  /** In one sentence, without its full stop. */
  public String text() {
    List<String> asked = new ArrayList<>();
    if (!only.isEmpty()) {
      asked.add("only " + Phrase.list(only));
    }
    if (!skip.isEmpty()) {
      asked.add("without " + Phrase.list(skip));
    }
    return Phrase.capital(counted())
        + " ("
        + String.join(", ", asked)
        + "): what the others find nobody has looked for";
  }
}

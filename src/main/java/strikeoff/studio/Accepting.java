package strikeoff.studio;

import java.util.List;
import java.util.Set;

/**
 * Which findings a plan may accept.
 *
 * @param all true for every rule's
 * @param rules otherwise these rules'
 */
public record Accepting(boolean all, Set<String> rules) {

  public static final Accepting ALL = new Accepting(true, Set.of());

  public Accepting {
    rules = Set.copyOf(rules);
  }

  static Accepting only(List<String> rules) {
    return new Accepting(false, Set.copyOf(rules));
  }

  boolean allows(String rule) {
    return all || rules.contains(rule);
  }
}

package strikeoff.plan.yaml;

import strikeoff.plan.Bounds;
import strikeoff.policy.Policy;
import strikeoff.yaml.Item;
import strikeoff.yaml.Reading;

/**
 * What the decoders of one plan share.
 *
 * @param names what the plan defines, faulty or not, so that one mistake isn't told twice
 */
record Draft(Policy policy, Bounds bounds, Reading reading, Assumptions assumptions, Names names) {

  /** The last part of a path: the name under which something stands in its section. */
  static String name(Item item, String section) {
    return item.path().text().substring(section.length() + 1);
  }
}

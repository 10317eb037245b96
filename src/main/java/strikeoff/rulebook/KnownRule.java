package strikeoff.rulebook;

import java.util.function.Supplier;
import org.drools.model.Rule;
import strikeoff.findings.RuleInfo;

/** A rule that can be linked once facts ask for it. */
final class KnownRule {

  private final String id;
  private final NeededFacts asked;
  private final boolean usual;
  private final Supplier<Rule> model;
  private final Supplier<RuleInfo> words;
  private RuleInfo info;

  /**
   * @param id {@code family/fault}
   * @param usual whether plans as they should be have facts for it, so that it is linked ahead
   * @param model makes its model, which costs some classes; may be called more than once
   * @param words reads what it says of itself
   */
  KnownRule(
      String id, NeededFacts asked, boolean usual, Supplier<Rule> model, Supplier<RuleInfo> words) {
    this.id = id;
    this.asked = asked;
    this.usual = usual;
    this.model = model;
    this.words = words;
  }

  /**
   * A rule whose model is made.
   *
   * @throws IllegalStateException if it breaks the form that all rules have
   */
  static KnownRule of(Rule rule) {
    RuleInfo info = RuleText.of(rule);
    return new KnownRule(info.id(), NeededFacts.by(rule), true, () -> rule, () -> info);
  }

  String id() {
    return id;
  }

  NeededFacts asked() {
    return asked;
  }

  boolean usual() {
    return usual;
  }

  Rule model() {
    return model.get();
  }

  /** What it says of itself, read once. */
  synchronized RuleInfo info() {
    if (info == null) {
      info = words.get();
    }
    return info;
  }
}

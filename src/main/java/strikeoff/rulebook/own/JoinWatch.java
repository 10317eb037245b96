package strikeoff.rulebook.own;

import java.util.List;
import java.util.Optional;
import org.drools.model.AccumulatePattern;
import org.drools.model.Condition;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.constraints.AbstractSingleConstraint;
import org.drools.model.constraints.ReactivitySpecs;
import org.drools.model.constraints.SingleConstraint1;
import org.drools.model.constraints.SingleConstraint2;
import org.drools.model.patterns.PatternImpl;

/**
 * Gives each pattern of own rules one more constraint, the last and always true, that counts what
 * the pattern let through and asks whether to go on. The engine joins patterns that constrain
 * nothing in loops of its own, which nothing else can leave.
 */
final class JoinWatch {

  private final String rule;
  private int patterns;

  private JoinWatch(String rule) {
    this.rule = rule;
  }

  static void over(Model model) {
    for (Rule rule : model.getRules()) {
      new JoinWatch(rule.getName()).conditions(rule.getView().getSubConditions(), Optional.empty());
    }
    for (Query query : model.getQueries()) {
      new JoinWatch(query.getName())
          .conditions(query.getView().getSubConditions(), Optional.empty());
    }
  }

  /**
   * @param before a fact that patterns before these have found
   * @return a fact that is known after them
   */
  private Optional<Variable<?>> conditions(
      List<Condition> conditions, Optional<Variable<?>> before) {
    Optional<Variable<?>> known = before;
    for (Condition condition : conditions) {
      if (condition instanceof PatternImpl<?> pattern) {
        watch(pattern, known);
        known = Optional.of(pattern.getPatternVariable());
      } else if (condition instanceof AccumulatePattern<?> accumulate) {
        conditions(List.of(accumulate.getCondition()), known);
      } else {
        Optional<Variable<?>> inside = conditions(condition.getSubConditions(), known);
        known = condition.getType() == Condition.Type.AND ? inside : known;
      }
    }
    return known;
  }

  private <T> void watch(PatternImpl<T> pattern, Optional<Variable<?>> before) {
    String id = "watch " + rule + " " + patterns++;
    String watched = rule;
    Variable<T> variable = pattern.getPatternVariable();
    AbstractSingleConstraint watch =
        before.isEmpty()
            ? new SingleConstraint1<>(id, variable, fact -> RuleThread.found(watched))
            : new SingleConstraint2<>(
                id, variable, before.get(), (fact, earlier) -> RuleThread.found(watched));
    if (pattern.getPatternClassMetadata() != null) {
      // Listens to no property: a change that no condition of the rule reads must not fire it
      // again.
      watch.setReactivitySpecs(new ReactivitySpecs(pattern.getPatternClassMetadata()));
    }
    pattern.addConstraint(watch);
  }
}

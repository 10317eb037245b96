package strikeoff.rulebook;

import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drools.model.AlphaIndex;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Declaration;
import org.drools.model.Index;
import org.drools.model.Pattern;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;
import org.drools.model.Variable;
import strikeoff.policy.Limit;

/**
 * Which facts a rule asks for, by the names of their classes.
 *
 * @param needed without a fact of each of these it can't fire
 * @param read facts of other classes make no difference to it
 * @param limits names of the limits among them; others make no difference to it
 * @param everything true if it may read any fact, whatever {@code read} says
 */
record NeededFacts(
    List<String> needed, List<String> read, List<String> limits, boolean everything) {

  NeededFacts {
    needed = List.copyOf(needed);
    read = List.copyOf(read);
    limits = List.copyOf(limits);
  }

  /** What a rule's conditions ask for. */
  static NeededFacts by(Rule rule) {
    Walk walk = new Walk();
    walk.all(rule.getView().getSubConditions(), true);
    return new NeededFacts(
        List.copyOf(walk.needed),
        List.copyOf(walk.read),
        List.copyOf(walk.limits),
        walk.everything);
  }

  /**
   * True if the rule could fire.
   *
   * @param there classes of the facts that are there
   */
  boolean answered(Set<String> there) {
    return there.containsAll(needed);
  }

  /** A walk over conditions. What it doesn't know may read everything and needs nothing. */
  private static final class Walk {
    final Set<String> needed = new TreeSet<>();
    final Set<String> read = new TreeSet<>();
    final Set<String> limits = new TreeSet<>();
    boolean everything;

    void all(Iterable<Condition> conditions, boolean must) {
      conditions.forEach(condition -> one(condition, must));
    }

    private void one(Condition condition, boolean must) {
      switch (condition.getType()) {
        case PATTERN -> pattern((Pattern<?>) condition, must);
        case AND, EXISTS -> all(condition.getSubConditions(), must);
        case NOT, OR -> all(condition.getSubConditions(), false);
        case CONSEQUENCE, EVAL -> {}
        default -> everything = true;
      }
    }

    private void pattern(Pattern<?> pattern, boolean must) {
      Variable<?> variable = pattern.getPatternVariable();
      if (variable instanceof Declaration<?> declaration && declaration.getSource() != null) {
        return; // What is taken out of another fact is no fact itself.
      }
      Class<?> type = variable.getType();
      if (!Modifier.isFinal(type.getModifiers())) {
        everything = true;
        return;
      }
      read.add(type.getName());
      if (type == Limit.class) {
        Optional<String> name = limit(pattern.getConstraint());
        name.ifPresent(limits::add);
        everything |= name.isEmpty();
      }
      if (must) {
        needed.add(type.getName());
      }
    }

    /** The name of the only limit that all of a constraint's parts let through. */
    private static Optional<String> limit(Constraint constraint) {
      return constraint instanceof SingleConstraint single
              && single.getIndex() instanceof AlphaIndex<?, ?> index
              && index.getConstraintType() == Index.ConstraintType.EQUAL
              && index.getRightValue() instanceof String name
          ? Optional.of(name)
          : constraint.getType() == Constraint.Type.SINGLE
                  || constraint.getType() == Constraint.Type.OR
              ? Optional.empty()
              : constraint.getChildren().stream().flatMap(part -> limit(part).stream()).findFirst();
    }
  }
}

package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drools.core.base.accumulators.CountAccumulateFunction;
import org.drools.core.base.accumulators.SumAccumulateFunction;
import org.drools.model.DSL;
import org.drools.model.Drools;
import org.drools.model.Global;
import org.drools.model.PatternDSL;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Rule;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.consequences.ConsequenceBuilder;
import org.drools.modelcompiler.consequence.DroolsImpl;
import strikeoff.described.WholePlan;
import strikeoff.evidence.Evidence;
import strikeoff.policy.Limit;
import strikeoff.rulebook.Reporter;

/**
 * Makes what the engine runs of a rule's conditions, by the engine's own words for it: nothing is
 * written out or compiled. Each pattern ends with a condition that is always true, which counts
 * what the pattern let through and asks whether to go on: the engine joins patterns that constrain
 * nothing in loops of its own, which nothing else can leave.
 */
final class EngineRule {

  /** Beyond that a condition compares with more than anybody can follow. */
  static final int MOST_OTHERS = 2;

  private final String id;
  private final int way;
  private final Map<Thing, Variable<?>> variables = new HashMap<>();
  private final List<RuleItemBuilder<?>> items = new ArrayList<>();
  private Optional<Variable<?>> before = Optional.empty();
  private final List<Variable<?>> numbers = new ArrayList<>();
  private final List<Function<Object, Object>> tallies = new ArrayList<>();
  private int conditions;

  private EngineRule(String id, int way) {
    this.id = id;
    this.way = way;
  }

  /**
   * @param id the rule's
   * @param way which of its alternatives, from 1
   * @param unnamed what each plan has and the conditions speak of besides
   */
  static Rule of(String id, int way, List<Thing> unnamed, List<Clause> clauses) {
    EngineRule rule = new EngineRule(id, way);
    List<Variable<?>> told = new ArrayList<>();
    List<Variable<?>> besides = new ArrayList<>();
    for (Thing thing : unnamed) {
      besides.add(rule.found(thing, named(thing)));
    }
    for (Clause clause : clauses) {
      rule.clause(clause);
      if (clause.finds()) {
        told.add(rule.variables.get(clause.thing()));
      }
    }
    if (told.isEmpty()) {
      told.add(rule.found(new Thing(Integer.MIN_VALUE, WholePlan.class, ""), List.of()));
    }
    told.addAll(besides);
    told.addAll(rule.numbers);
    String family = "rules." + id.substring(0, id.indexOf('/'));
    Global<Reporter> reporter = DSL.globalOf(Reporter.class, family, Reporter.GLOBAL);
    rule.items.add(new Report(reporter, told, rule.tallies));
    return PatternDSL.rule(family, way == 1 ? id : id + " " + way)
        .build(rule.items.toArray(RuleItemBuilder[]::new));
  }

  /** Of limits there are many, and the name tells which. */
  private static List<Asked> named(Thing thing) {
    return thing.type() == Limit.class
        ? List.of(
            new Asked.Compared(
                AskableValues.at(Limit.class, "name"), How.IS, new Than.Figure(thing.opening())))
        : List.of();
  }

  private void clause(Clause clause) {
    Clause.Form form = clause.form();
    if (form instanceof Clause.Some) {
      found(clause.thing(), clause.asked());
    } else if (form instanceof Clause.None) {
      items.add(DSL.not(pattern(fresh(clause.type()), clause.asked())));
    } else if (form instanceof Clause.Count count) {
      counted(clause, count);
    } else if (form instanceof Clause.Sum sum) {
      summed(clause, sum);
    } else if (form instanceof Clause.Extreme extreme) {
      extreme(clause, extreme);
    } else if (form instanceof Clause.Every every) {
      items.add(DSL.exists(pattern(fresh(clause.type()), clause.asked())));
      List<Asked> against = new ArrayList<>(clause.asked());
      against.add(new Asked.Not(every.all()));
      items.add(DSL.not(pattern(fresh(clause.type()), against)));
    }
  }

  private static <T> Variable<T> fresh(Class<T> type) {
    return DSL.declarationOf(type);
  }

  private Variable<?> found(Thing thing, List<Asked> asked) {
    Variable<?> variable = fresh(thing.type());
    items.add(pattern(variable, asked));
    variables.put(thing, variable);
    before = Optional.of(variable);
    return variable;
  }

  private void counted(Clause clause, Clause.Count count) {
    Variable<Long> number = fresh(Long.class);
    items.add(
        DSL.accumulate(
            pattern(fresh(clause.type()), clause.asked()),
            DSL.accFunction(CountAccumulateFunction::new).as(number)));
    items.add(
        PatternDSL.pattern(number)
            .expr(next(), found -> count.how().holds((double) found, count.number(), Kind.NUMBER)));
    numbers.add(number);
    tallies.add(found -> new Counted(((Long) found).intValue()));
  }

  private void summed(Clause clause, Clause.Sum sum) {
    Variable<Double> amount = fresh(Double.class);
    Variable<Double> whole = fresh(Double.class);
    items.add(
        DSL.accumulate(
            pattern(fresh(clause.type()), clause.asked())
                .bind(amount, fact -> (Double) sum.value().of(fact)),
            DSL.accFunction(SumAccumulateFunction::new, amount).as(whole)));
    items.add(
        PatternDSL.pattern(whole)
            .expr(next(), found -> sum.how().holds(found, sum.amount(), sum.kind())));
    numbers.add(whole);
    tallies.add(found -> new Total(sum.kind().amount((Double) found)));
  }

  private void extreme(Clause clause, Clause.Extreme extreme) {
    List<Asked> asked = new ArrayList<>(extreme.among());
    asked.addAll(clause.asked());
    found(clause.thing(), asked);
    How beaten = extreme.greatest() ? How.MORE : How.LESS;
    List<Asked> better = new ArrayList<>(extreme.among());
    better.add(
        new Asked.Compared(
            extreme.value(),
            beaten,
            new Than.OfThing(Optional.of(clause.thing()), extreme.value(), 1, 0)));
    items.add(DSL.not(pattern(fresh(clause.type()), better)));
  }

  /** By this name the engine knows a condition: two of one name are one to it. */
  private String next() {
    conditions++;
    return id + " " + way + "." + conditions;
  }

  private <T> PatternDef<T> pattern(Variable<T> variable, List<Asked> asked) {
    PatternDef<T> pattern = PatternDSL.pattern(variable);
    for (Asked one : asked) {
      List<Thing> things = List.copyOf(one.things());
      List<Variable<?>> others = new ArrayList<>();
      things.forEach(thing -> others.add(variables.get(thing)));
      switch (things.size()) {
        case 0 -> pattern.expr(next(), fact -> holds(one, fact, things));
        case 1 -> pattern.expr(next(), others.get(0), (fact, a) -> holds(one, fact, things, a));
        default ->
            pattern.expr(
                next(),
                others.get(0),
                others.get(1),
                (fact, a, b) -> holds(one, fact, things, a, b));
      }
    }
    String rule = id;
    return before.isEmpty()
        ? pattern.expr(next(), fact -> RuleThread.found(rule))
        : pattern.expr(next(), before.get(), (fact, earlier) -> RuleThread.found(rule));
  }

  private static boolean holds(Asked asked, Object fact, List<Thing> things, Object... found) {
    RuleThread.ask();
    Function<Thing, Object> others = thing -> found[things.indexOf(thing)];
    return asked.holds(fact, others);
  }

  /** Reports what was found: the first is what is judged. */
  private static final class Report extends ConsequenceBuilder.AbstractValidBuilder<Report> {

    /**
     * @param tallies what the last of them are told as
     */
    Report(
        Global<Reporter> reporter, List<Variable<?>> told, List<Function<Object, Object>> tallies) {
      super(declarations(reporter, told));
      usingDrools = true;
      block =
          values -> {
            // The engine, the reporter, and the facts.
            org.kie.api.definition.rule.Rule rule =
                ((DroolsImpl) (Drools) values[0]).asKnowledgeHelper().getRule();
            Object[] further = Arrays.copyOfRange(values, 3, values.length);
            int first = further.length - tallies.size();
            for (int i = 0; i < tallies.size(); i++) {
              further[first + i] = tallies.get(i).apply(further[first + i]);
            }
            ((Reporter) values[1]).report(rule, (Evidence) values[2], further);
          };
    }

    private static Variable<?>[] declarations(Global<Reporter> reporter, List<Variable<?>> told) {
      List<Variable<?>> all = new ArrayList<>();
      all.add(reporter);
      all.addAll(told);
      return all.toArray(Variable[]::new);
    }
  }
}

package strikeoff.rulebook;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.DSL;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.StatelessKieSession;
import strikeoff.policy.Limit;
import strikeoff.rulebook.Reporter.Report;

/** Some rules, linked to judge facts together. May be shared between threads. */
final class LinkedRules {

  private final List<NeededFacts> asked;
  private final Set<String> read;
  private final Set<String> limits;
  private final boolean everything;
  private final KieBase base;

  private LinkedRules(List<KnownRule> rules, KieBase base) {
    this.asked = rules.stream().map(KnownRule::asked).toList();
    this.read = new HashSet<>();
    this.limits = new HashSet<>();
    for (NeededFacts one : asked) {
      read.addAll(one.read());
      limits.addAll(one.limits());
    }
    this.everything = asked.stream().anyMatch(NeededFacts::everything);
    this.base = base;
  }

  static LinkedRules of(List<KnownRule> rules) {
    Map<String, ModelImpl> packages = new TreeMap<>();
    for (KnownRule known : rules) {
      Rule rule = known.model();
      packages.computeIfAbsent(rule.getPackage(), LinkedRules::empty).addRule(rule);
    }
    KieBase base =
        KieBaseBuilder.createKieBaseFromModel(
            List.copyOf(packages.values()),
            RuleBaseFactory.newKnowledgeBaseConfiguration(),
            UnchangingFacts.FACTS);
    return new LinkedRules(rules, base);
  }

  /**
   * The model that the generator wrote can't stand here: it makes all its rules when it is made.
   */
  private static ModelImpl empty(String name) {
    return new ModelImpl(name).addGlobal(DSL.globalOf(Reporter.class, name, Reporter.GLOBAL));
  }

  /** True if any of them could fire. */
  boolean answered(Set<String> there) {
    return asked.stream().anyMatch(a -> a.answered(there));
  }

  /** Lets them judge those of the facts that they read. */
  List<Report> fire(List<?> facts) {
    Reporter reporter = new Reporter();
    StatelessKieSession session = base.newStatelessKieSession();
    session.setGlobal(Reporter.GLOBAL, reporter);
    session.execute(everything ? facts : facts.stream().filter(this::isRead).toList());
    return reporter.reports();
  }

  private boolean isRead(Object fact) {
    return fact instanceof Limit limit
        ? limits.contains(limit.name())
        : read.contains(fact.getClass().getName());
  }
}

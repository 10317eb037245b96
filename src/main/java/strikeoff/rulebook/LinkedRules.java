package strikeoff.rulebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.runtime.StatelessKieSession;
import strikeoff.rulebook.Reporter.Report;

/** Some rules, linked to judge facts together. May be shared between threads. */
final class LinkedRules {

  private final List<Asked> asked;
  private final Set<String> read;
  private final boolean everything;
  private final KieBase base;

  private LinkedRules(List<KnownRule> rules, KieBase base) {
    this.asked = rules.stream().map(KnownRule::asked).distinct().toList();
    this.read = new HashSet<>();
    asked.forEach(a -> read.addAll(a.read()));
    this.everything = asked.stream().anyMatch(Asked::everything);
    this.base = base;
  }

  static LinkedRules of(List<KnownRule> rules) {
    Map<String, List<Rule>> packages = new TreeMap<>();
    for (KnownRule known : rules) {
      Rule rule = known.model();
      packages.computeIfAbsent(rule.getPackage(), p -> new ArrayList<>()).add(rule);
    }
    List<Model> models = new ArrayList<>();
    packages.forEach((name, some) -> models.add(new RulesOfPackage(name, some)));
    KieBase base =
        KieBaseBuilder.createKieBaseFromModel(
            models, KieServices.get().newKieBaseConfiguration(), Unchanging.FACTS);
    return new LinkedRules(rules, base);
  }

  /** True if any of them could fire. */
  boolean answered(Set<String> there) {
    return asked.stream().anyMatch(a -> a.answered(there));
  }

  /** Lets them judge those of the facts that they read. */
  List<Report> fire(List<?> facts) {
    Reporter reporter = new Reporter();
    StatelessKieSession session = base.newStatelessKieSession();
    session.setGlobal(RulesOfPackage.REPORTER, reporter);
    session.execute(
        everything
            ? facts
            : facts.stream().filter(fact -> read.contains(fact.getClass().getName())).toList());
    return reporter.reports();
  }
}

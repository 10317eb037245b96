package strikeoff.rulebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.DSL;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import strikeoff.findings.FailedRule;
import strikeoff.findings.RuleInfo;
import strikeoff.plan.Evidence;
import strikeoff.rulebook.Reporter.Report;
import strikeoff.rulebook.own.OwnRule;
import strikeoff.rulebook.own.OwnRules;

/**
 * A studio's own rules at work. Nobody has tested them as the built-in ones are tested, so they
 * have an engine of their own, a time to be done in, and a bound to how often they fire.
 */
final class OwnBook {

  /** All rules together have so many times as long on a plan as one of them. */
  private static final int TOGETHER = 3;

  private final OwnRules rules;
  private final Map<String, RuleInfo> infos;
  private final long millis;

  /** Rules that didn't end on some plan: a thread can't be forced to, so they aren't run again. */
  private final Map<String, String> ended = new ConcurrentHashMap<>();

  private final Map<Set<String>, KieBase> bases = new ConcurrentHashMap<>();

  private OwnBook(OwnRules rules, Map<String, RuleInfo> infos, long millis) {
    this.rules = rules;
    this.infos = infos;
    this.millis = millis;
  }

  static OwnBook of(OwnRules rules, long millis) {
    Map<String, RuleInfo> infos = new TreeMap<>();
    rules.rules().forEach(rule -> infos.put(rule.id(), rule.info()));
    return new OwnBook(rules, new LinkedHashMap<>(infos), millis);
  }

  OwnRules rules() {
    return rules;
  }

  Map<String, RuleInfo> infos() {
    return infos;
  }

  /** What came of one plan. */
  record Outcome(List<Report> reports, List<FailedRule> failedRules) {}

  Outcome judge(List<?> facts) {
    Map<String, String> failed = new TreeMap<>(ended);
    long from = System.nanoTime();
    while (true) {
      WatchedRun run = WatchedRun.of(base(failed.keySet()), facts, millis);
      if (run.failure().isEmpty()) {
        return outcome(run.reports(), failed);
      }
      List<String> tried = infos.keySet().stream().filter(id -> !failed.containsKey(id)).toList();
      if (run.culprit().isPresent()) {
        blame(run.culprit().get(), run, failed);
      } else if (tried.size() == 1) {
        blame(tried.get(0), run, failed);
      } else {
        return oneByOne(facts, failed, from);
      }
      if (millisSince(from) > millis) {
        // Of many that fail one after the other, those that don't have their turn too.
        return oneByOne(facts, failed, from);
      }
    }
  }

  private static long millisSince(long nanos) {
    return (System.nanoTime() - nanos) / 1_000_000;
  }

  /**
   * Slow, but only rules that fail in their conditions lead here: the engine doesn't say which.
   *
   * @param from when the first was begun
   */
  private Outcome oneByOne(List<?> facts, Map<String, String> failed, long from) {
    List<Report> reports = new ArrayList<>();
    for (String id : infos.keySet()) {
      if (failed.containsKey(id)) {
        continue;
      }
      long left = TOGETHER * millis - millisSince(from);
      if (left <= 0) {
        failed.put(id, together(id));
        continue;
      }
      WatchedRun run =
          WatchedRun.of(
              base(r -> OwnRules.idOf(r.getName()).equals(id)), facts, Math.min(millis, left));
      if (run.failure().isEmpty()) {
        reports.addAll(run.reports());
      } else if (run.late() && left < millis) {
        failed.put(id, together(id));
      } else {
        blame(id, run, failed);
      }
    }
    return outcome(reports, failed);
  }

  private String together(String id) {
    return "it was not judged: all own rules together have "
        + TOGETHER * millis / 1000.0
        + " s for a plan"
        + place(id);
  }

  private String place(String id) {
    return rule(id).map(own -> " (" + own.file() + ":" + own.line() + ")").orElse("");
  }

  private void blame(String id, WatchedRun run, Map<String, String> failed) {
    String what = run.failure().orElseThrow() + place(id);
    failed.put(id, what);
    if (run.endless()) {
      ended.put(id, what);
      bases.keySet().removeIf(without -> !without.containsAll(ended.keySet()));
    }
  }

  private static Outcome outcome(List<Report> reports, Map<String, String> failed) {
    List<FailedRule> failedRules = new ArrayList<>();
    failed.forEach((id, what) -> failedRules.add(new FailedRule(id, what)));
    return new Outcome(once(reports), failedRules);
  }

  /** Two things of a kind that meet a rule either way round are told once. */
  private static List<Report> once(List<Report> reports) {
    Set<List<Object>> told = new HashSet<>();
    List<Report> once = new ArrayList<>();
    for (Report report : reports) {
      Set<Object> facts = Collections.newSetFromMap(new IdentityHashMap<>());
      facts.add(report.judged());
      report.further().stream().filter(Evidence.class::isInstance).forEach(facts::add);
      if (told.add(List.of(report.ruleId(), facts))) {
        once.add(report);
      }
    }
    return once;
  }

  private KieBase base(Set<String> without) {
    return bases.computeIfAbsent(
        new LinkedHashSet<>(without), out -> base(r -> !out.contains(OwnRules.idOf(r.getName()))));
  }

  private KieBase base(Predicate<Rule> wanted) {
    return linked(rules.models().stream().filter(wanted).toList());
  }

  /** The engine with some rules. */
  static KieBase linked(List<Rule> rules) {
    Map<String, ModelImpl> packages = new TreeMap<>();
    for (Rule rule : rules) {
      packages
          .computeIfAbsent(
              rule.getPackage(),
              name ->
                  new ModelImpl(name)
                      .addGlobal(DSL.globalOf(Reporter.class, name, Reporter.GLOBAL)))
          .addRule(rule);
    }
    return KieBaseBuilder.createKieBaseFromModel(
        List.copyOf(packages.values()),
        RuleBaseFactory.newKnowledgeBaseConfiguration(),
        UnchangingFacts.FACTS);
  }

  Optional<OwnRule> rule(String id) {
    return rules.rule(id);
  }
}

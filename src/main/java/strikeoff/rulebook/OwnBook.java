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
import strikeoff.evidence.Evidence;
import strikeoff.findings.FailedRule;
import strikeoff.findings.RuleInfo;
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
    Time time = new Time();
    while (time.spent() <= millis) {
      WatchedRun run = time.run(base(failed.keySet()), facts, millis);
      if (run.failure().isEmpty()) {
        return outcome(run.reports(), failed);
      }
      List<String> tried = infos.keySet().stream().filter(id -> !failed.containsKey(id)).toList();
      if (run.culprit().isPresent()) {
        blame(run.culprit().get(), run, failed);
      } else if (tried.size() == 1) {
        blame(tried.get(0), run, failed);
      } else {
        break;
      }
    }
    return oneByOne(facts, failed, time);
  }

  /** What the runs of one plan took, none of them more than it may. */
  private static final class Time {

    private long nanos;

    private WatchedRun run(KieBase base, List<?> facts, long millis) {
      long from = System.nanoTime();
      WatchedRun run = WatchedRun.of(base, facts, millis);
      nanos += Math.min(System.nanoTime() - from, millis * 1_000_000);
      return run;
    }

    /** In milliseconds. */
    private long spent() {
      return nanos / 1_000_000;
    }
  }

  /**
   * Slow, but only rules that fail in their conditions, or many that fail, lead here: the engine
   * doesn't say which. Those that end soon go first, so that no other takes their time.
   */
  private Outcome oneByOne(List<?> facts, Map<String, String> failed, Time time) {
    List<Report> reports = new ArrayList<>();
    List<String> left =
        new ArrayList<>(infos.keySet().stream().filter(id -> !failed.containsKey(id)).toList());
    long soon = time.spent() + millis;
    for (String id : List.copyOf(left)) {
      if (time.spent() < soon) {
        WatchedRun run = time.run(alone(id), facts, Math.max(1, millis / 10));
        if (!run.late()) {
          left.remove(id);
          take(id, run, reports, failed);
        }
      }
    }
    for (String id : left) {
      long most = Math.min(millis, TOGETHER * millis - time.spent());
      if (most <= 0) {
        failed.put(id, together(id));
        continue;
      }
      WatchedRun run = time.run(alone(id), facts, most);
      if (run.late() && most < millis) {
        failed.put(id, together(id));
      } else {
        take(id, run, reports, failed);
      }
    }
    return outcome(reports, failed);
  }

  private KieBase alone(String id) {
    return base((Rule rule) -> OwnRules.idOf(rule.getName()).equals(id));
  }

  private void take(String id, WatchedRun run, List<Report> reports, Map<String, String> failed) {
    if (run.failure().isEmpty()) {
      reports.addAll(run.reports());
    } else {
      blame(id, run, failed);
    }
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

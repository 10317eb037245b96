package strikeoff.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.drools.model.Model;
import strikeoff.document.GivenUp;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Uncertain;
import strikeoff.findings.Edits;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Reported;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Words;
import strikeoff.policy.Limit;
import strikeoff.rulebook.Reporter.Report;
import strikeoff.rulebook.Reporter.TooManyReports;
import strikeoff.rulebook.own.OwnRule;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleMistake;
import strikeoff.rulebook.own.RuleMistakes;
import strikeoff.rulebook.own.Sayable;
import strikeoff.units.Measures;

/**
 * The rules, ready to judge facts. May be shared between threads: each judgement has its own
 * session.
 */
public final class Rulebook {

  private final Map<String, KnownRule> known;
  private final Linking linking;
  private final Optional<OwnBook> own;

  private Rulebook(Map<String, KnownRule> known, Linking linking, Optional<OwnBook> own) {
    this.known = known;
    this.linking = linking;
    this.own = own;
  }

  /**
   * The rules that the build compiled.
   *
   * @throws IllegalStateException if the program was built wrong: a rule without its text, or with
   *     metadata missing
   */
  public static Rulebook builtIn() {
    return RulePack.read().map(Rulebook::ofKnown).orElseGet(() -> of(PackagedModel.load()));
  }

  static Rulebook of(List<Model> models) {
    return ofKnown(
        models.stream().flatMap(model -> model.getRules().stream()).map(KnownRule::of).toList());
  }

  private static Rulebook ofKnown(List<KnownRule> rules) {
    Map<String, KnownRule> known = new TreeMap<>();
    for (KnownRule rule : rules) {
      if (known.put(rule.id(), rule) != null) {
        throw new IllegalStateException("two rules are called " + rule.id());
      }
    }
    return new Rulebook(known, new Linking(List.copyOf(known.values())), Optional.empty());
  }

  /**
   * These rules and a studio's own ones beside them.
   *
   * @param seconds what the own ones may take for a plan
   * @throws RuleMistakes if one of them breaks the form that all rules have
   */
  public Rulebook with(OwnRules rules, double seconds) throws RuleMistakes {
    if (rules.rules().isEmpty()) {
      return this;
    }
    OwnBook book = OwnBook.of(rules, Math.round(seconds * 1000));
    for (OwnRule rule : rules.rules()) {
      if (known.containsKey(rule.id())) {
        throw new RuleMistakes(
            List.of(
                new RuleMistake(
                    rule.file(), rule.line(), "a built-in rule is called " + rule.id())));
      }
    }
    return new Rulebook(known, linking, Optional.of(book));
  }

  /** The studio's own rules among these. */
  public OwnRules own() {
    return own.map(OwnBook::rules).orElse(OwnRules.NONE);
  }

  /** Ids of all rules, in order. */
  public List<String> ids() {
    Set<String> all = new TreeSet<>(known.keySet());
    own.ifPresent(book -> all.addAll(book.infos().keySet()));
    return List.copyOf(all);
  }

  /** All rules, by id. */
  public List<RuleInfo> rules() {
    return ids().stream().map(id -> rule(id).orElseThrow()).toList();
  }

  public Optional<RuleInfo> rule(String id) {
    return own.map(book -> book.infos().get(id))
        .or(() -> Optional.ofNullable(known.get(id)).map(KnownRule::info));
  }

  /** Begins to link the rules beside other work, so that the first judgement need not wait. */
  public void prepare() {
    linking.prepare();
  }

  /** Lets every rule judge the facts, and tells figures in metric units. */
  public Judgement judge(List<?> facts) {
    return judge(facts, Measures.METRIC);
  }

  /**
   * Lets every rule judge the facts. A rule that fails takes no finding from the others.
   *
   * @param units to tell figures in
   */
  public Judgement judge(List<?> facts, Measures units) {
    Set<String> there = new HashSet<>();
    facts.forEach(fact -> there.add(fact.getClass().getName()));
    try {
      List<Report> reports = new ArrayList<>();
      for (LinkedRules linked : linking.answered(there)) {
        reports.addAll(linked.fire(facts));
      }
      return worded(reports, List.of(), facts, units);
    } catch (GivenUp e) {
      throw e;
    } catch (RuntimeException | StackOverflowError | TooManyReports e) {
      return oneByOne(facts, there, units);
    }
  }

  /** The same with a studio's own rules, and figures in metric units. */
  public Judgement judge(List<?> facts, List<?> forOwn) {
    return judge(facts, forOwn, Measures.METRIC);
  }

  /**
   * Lets every rule judge the facts, and a studio's own rules more of them. An own rule that fails,
   * or never ends, takes no finding from the others.
   *
   * @param units to tell figures in
   */
  public Judgement judge(List<?> facts, List<?> forOwn, Measures units) {
    Judgement builtIn = judge(facts, units);
    if (own.isEmpty()) {
      return builtIn;
    }
    List<Object> all = new ArrayList<>(facts);
    all.addAll(forOwn);
    OwnBook.Outcome outcome = own.get().judge(all);
    Judgement further = worded(outcome.reports(), outcome.failedRules(), all, units);
    List<Reported> reported = new ArrayList<>(builtIn.reported());
    reported.addAll(further.reported());
    List<FailedRule> failedRules = new ArrayList<>(builtIn.failedRules());
    failedRules.addAll(further.failedRules());
    return new Judgement(reported, failedRules);
  }

  /**
   * One failing rule ends a session, so here each rule has a session of its own. Slow, but only a
   * broken rule leads here.
   */
  private Judgement oneByOne(List<?> facts, Set<String> there, Measures units) {
    List<Report> reports = new ArrayList<>();
    List<FailedRule> failedRules = new ArrayList<>();
    for (KnownRule rule : known.values()) {
      if (rule.asked().answered(there)) {
        try {
          reports.addAll(LinkedRules.of(List.of(rule)).fire(facts));
        } catch (TooManyReports e) {
          failedRules.add(new FailedRule(rule.id(), e.getMessage()));
        } catch (RuntimeException | StackOverflowError e) {
          failedRules.add(new FailedRule(rule.id(), String.valueOf(rootOf(e))));
        }
      }
    }
    return worded(reports, failedRules, facts, units);
  }

  private Judgement worded(
      List<Report> reports, List<FailedRule> earlier, List<?> all, Measures units) {
    List<Reported> reported = new ArrayList<>();
    List<FailedRule> failedRules = new ArrayList<>(earlier);
    for (Report report : Gathering.of(reports, all)) {
      GivenUp.ifAsked();
      RuleInfo rule = counted(rule(report.ruleId()).orElseThrow(), report, all);
      List<Object> facts = new ArrayList<>();
      facts.add(report.judged());
      facts.addAll(report.further());
      List<Evidence> evidence = new ArrayList<>();
      for (Object fact : facts) {
        if (fact instanceof Evidence one) {
          evidence.add(one);
        }
      }
      try {
        boolean ofTheStudio = own.isPresent() && own.get().infos().containsKey(rule.id());
        String message =
            ofTheStudio
                ? Sayable.told(rule.message(), facts, units)
                : Words.tell(rule.message(), facts, units);
        String remedy =
            ofTheStudio
                ? Sayable.told(rule.remedy(), facts, units)
                : Words.fill(rule.remedy(), facts, units);
        reported.add(
            new Reported(
                rule,
                message,
                remedy,
                Edits.of(rule.mend(), facts, units),
                report.judged(),
                evidence));
      } catch (RuntimeException e) {
        failedRules.add(new FailedRule(rule.id(), String.valueOf(e.getMessage())));
      }
    }
    return new Judgement(
        reported,
        failedRules.stream()
            .distinct()
            .sorted(Comparator.comparing(FailedRule::rule).thenComparing(FailedRule::what))
            .toList());
  }

  /** The rule as it counts for what it found: by its chance, if it is graded. */
  private static RuleInfo counted(RuleInfo rule, Report report, List<?> facts) {
    return report.judged() instanceof Uncertain fact
        ? rule.at(fact.chance(), name -> limit(name, facts))
        : rule;
  }

  private static Limit limit(String name, List<?> facts) {
    for (Object fact : facts) {
      if (fact instanceof Limit limit && limit.name().equals(name)) {
        return limit;
      }
    }
    throw new IllegalStateException("no limit is called " + name);
  }

  static Throwable rootOf(Throwable thrown) {
    Throwable root = thrown;
    for (int deep = 0; root.getCause() != null && deep < 50; deep++) {
      root = root.getCause();
    }
    return root;
  }

  /**
   * What the rules say of some facts.
   *
   * @param failedRules rules that failed, by id
   */
  public record Judgement(List<Reported> reported, List<FailedRule> failedRules) {

    public Judgement {
      reported = List.copyOf(reported);
      failedRules = List.copyOf(failedRules);
    }
  }
}

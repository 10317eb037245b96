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
import strikeoff.findings.Reported;
import strikeoff.findings.RuleFault;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Words;
import strikeoff.plan.Evidence;
import strikeoff.plan.GivenUp;
import strikeoff.rulebook.Reporter.Report;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleMistakes;

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

  /** Lets every rule judge the facts. A rule that fails takes no finding from the others. */
  public Judgement judge(List<?> facts) {
    Set<String> there = new HashSet<>();
    facts.forEach(fact -> there.add(fact.getClass().getName()));
    try {
      List<Report> reports = new ArrayList<>();
      for (LinkedRules linked : linking.answered(there)) {
        reports.addAll(linked.fire(facts));
      }
      return worded(reports, List.of());
    } catch (GivenUp e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      return oneByOne(facts, there);
    }
  }

  /**
   * Lets every rule judge the facts, and a studio's own rules more of them. An own rule that fails,
   * or never ends, takes no finding from the others.
   */
  public Judgement judge(List<?> facts, List<?> forOwn) {
    Judgement builtIn = judge(facts);
    if (own.isEmpty()) {
      return builtIn;
    }
    List<Object> all = new ArrayList<>(facts);
    all.addAll(forOwn);
    OwnBook.Outcome outcome = own.get().judge(all);
    Judgement further = worded(outcome.reports(), outcome.faults());
    List<Reported> reported = new ArrayList<>(builtIn.reported());
    reported.addAll(further.reported());
    List<RuleFault> faults = new ArrayList<>(builtIn.faults());
    faults.addAll(further.faults());
    return new Judgement(reported, faults);
  }

  /**
   * One failing rule ends a session, so here each rule has a session of its own. Slow, but only a
   * broken rule leads here.
   */
  private Judgement oneByOne(List<?> facts, Set<String> there) {
    List<Report> reports = new ArrayList<>();
    List<RuleFault> faults = new ArrayList<>();
    for (KnownRule rule : known.values()) {
      if (rule.asked().answered(there)) {
        try {
          reports.addAll(LinkedRules.of(List.of(rule)).fire(facts));
        } catch (RuntimeException | StackOverflowError e) {
          faults.add(new RuleFault(rule.id(), String.valueOf(rootOf(e))));
        }
      }
    }
    return worded(reports, faults);
  }

  private Judgement worded(List<Report> reports, List<RuleFault> earlier) {
    List<Reported> reported = new ArrayList<>();
    List<RuleFault> faults = new ArrayList<>(earlier);
    for (Report report : reports) {
      GivenUp.ifAsked();
      RuleInfo rule = rule(report.rule().getName()).orElseThrow();
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
        String message = Words.fill(rule.message(), facts);
        String remedy = Words.fill(rule.remedy(), facts);
        reported.add(new Reported(rule, message, remedy, report.judged(), evidence));
      } catch (RuntimeException e) {
        faults.add(new RuleFault(rule.id(), String.valueOf(e.getMessage())));
      }
    }
    return new Judgement(
        reported,
        faults.stream()
            .distinct()
            .sorted(Comparator.comparing(RuleFault::rule).thenComparing(RuleFault::what))
            .toList());
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
   * @param faults rules that failed, by id
   */
  public record Judgement(List<Reported> reported, List<RuleFault> faults) {

    public Judgement {
      reported = List.copyOf(reported);
      faults = List.copyOf(faults);
    }
  }
}

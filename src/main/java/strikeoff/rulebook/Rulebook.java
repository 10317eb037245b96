package strikeoff.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.StatelessKieSession;
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

  private final List<Model> models;
  private final Map<String, RuleInfo> infos;
  private final FutureTask<KieBase> base;
  private final Optional<OwnBook> own;

  private Rulebook(
      List<Model> models,
      Map<String, RuleInfo> infos,
      FutureTask<KieBase> base,
      Optional<OwnBook> own) {
    this.models = models;
    this.infos = infos;
    this.base = base;
    this.own = own;
  }

  /**
   * The rules that the build compiled.
   *
   * @throws IllegalStateException if the program was built wrong: a rule without its text, or with
   *     metadata missing
   */
  public static Rulebook builtIn() {
    return of(PackagedModel.load());
  }

  static Rulebook of(List<Model> models) {
    Map<String, RuleInfo> infos = new TreeMap<>();
    for (Model model : models) {
      for (Rule rule : model.getRules()) {
        RuleInfo info = RuleText.of(rule);
        if (infos.put(info.id(), info) != null) {
          throw new IllegalStateException("two rules are called " + info.id());
        }
      }
    }
    return new Rulebook(
        List.copyOf(models),
        new LinkedHashMap<>(infos),
        new FutureTask<>(() -> KieBaseBuilder.createKieBaseFromModel(models)),
        Optional.empty());
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
    Map<String, RuleInfo> all = new TreeMap<>(infos);
    all.putAll(book.infos());
    return new Rulebook(models, new LinkedHashMap<>(all), base, Optional.of(book));
  }

  /** The studio's own rules among these. */
  public OwnRules own() {
    return own.map(OwnBook::rules).orElse(OwnRules.NONE);
  }

  /** All rules, by id. */
  public List<RuleInfo> rules() {
    return List.copyOf(infos.values());
  }

  public Optional<RuleInfo> rule(String id) {
    return Optional.ofNullable(infos.get(id));
  }

  /** Begins to link the rules beside other work, so that the first judgement need not wait. */
  public void prepare() {
    Thread linking = new Thread(base, "link rules");
    linking.setDaemon(true);
    linking.start();
  }

  private KieBase base() {
    base.run();
    try {
      return base.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the rules can't be linked", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the rules were linked", e);
    }
  }

  /** Lets every rule judge the facts. A rule that fails takes no finding from the others. */
  public Judgement judge(List<?> facts) {
    try {
      return worded(fire(base(), facts), List.of());
    } catch (GivenUp e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      return oneByOne(facts);
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
  private Judgement oneByOne(List<?> facts) {
    List<Report> reports = new ArrayList<>();
    List<RuleFault> faults = new ArrayList<>();
    for (Model model : models) {
      for (Rule rule : model.getRules()) {
        try {
          reports.addAll(
              fire(
                  KieBaseBuilder.createKieBaseFromModel(new SomeRules(model, List.of(rule))),
                  facts));
        } catch (RuntimeException | StackOverflowError e) {
          faults.add(new RuleFault(rule.getName(), String.valueOf(rootOf(e))));
        }
      }
    }
    return worded(reports, faults);
  }

  private static List<Report> fire(KieBase base, List<?> facts) {
    Reporter reporter = new Reporter();
    StatelessKieSession session = base.newStatelessKieSession();
    session.setGlobal("reporter", reporter);
    session.execute(facts);
    return reporter.reports();
  }

  private Judgement worded(List<Report> reports, List<RuleFault> earlier) {
    List<Reported> reported = new ArrayList<>();
    List<RuleFault> faults = new ArrayList<>(earlier);
    for (Report report : reports) {
      GivenUp.ifAsked();
      RuleInfo rule = infos.get(report.rule().getName());
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

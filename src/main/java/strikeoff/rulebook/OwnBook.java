package strikeoff.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.Rule.Attribute;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import strikeoff.findings.FailedRule;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Words;
import strikeoff.rulebook.Reporter.Report;
import strikeoff.rulebook.own.OwnRule;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleMistake;
import strikeoff.rulebook.own.RuleMistakes;
import strikeoff.rulebook.own.Sayable;

/**
 * A studio's own rules at work. Nobody has tested them as the built-in ones are tested, so they
 * have an engine of their own, a time to be done in, and a bound to how often they fire.
 */
final class OwnBook {

  private static final Map<String, Attribute<?>> SILENCING =
      new TreeMap<>(
          Map.of(
              "enabled", Attribute.ENABLED,
              "agenda-group", Attribute.AGENDA_GROUP,
              "activation-group", Attribute.ACTIVATION_GROUP,
              "ruleflow-group", Attribute.RULEFLOW_GROUP,
              "duration", Attribute.DURATION,
              "timer", Attribute.TIMER,
              "calendars", Attribute.CALENDARS,
              "date-effective", Attribute.DATE_EFFECTIVE,
              "date-expires", Attribute.DATE_EXPIRES));

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

  static OwnBook of(OwnRules rules, long millis) throws RuleMistakes {
    Map<String, RuleInfo> infos = new TreeMap<>();
    List<RuleMistake> mistakes = new ArrayList<>();
    for (Model model : rules.models()) {
      for (Rule rule : model.getRules()) {
        OwnRule own = rules.rule(rule.getName()).orElse(null);
        if (own == null) {
          mistakes.add(
              new RuleMistake(
                  rule.getPackage().replace('.', '/'),
                  0,
                  "the rule “" + rule.getName() + "” is none of those that stand in the files"));
          continue;
        }
        silenced(rule)
            .map(
                what ->
                    new RuleMistake(
                        own.file(),
                        own.line(),
                        "“"
                            + what
                            + "” can keep a rule silent; every rule is judged once for each plan"))
            .ifPresent(mistakes::add);
        try {
          RuleInfo info = RuleText.of(rule, id -> own.limits());
          infos.put(info.id(), info);
          unsayable(info)
              .map(what -> new RuleMistake(own.file(), own.line(), what))
              .ifPresent(mistakes::add);
        } catch (IllegalStateException e) {
          mistakes.add(new RuleMistake(own.file(), own.line(), String.valueOf(e.getMessage())));
        }
      }
    }
    if (!mistakes.isEmpty()) {
      throw new RuleMistakes(mistakes);
    }
    return new OwnBook(rules, new LinkedHashMap<>(infos), millis);
  }

  /** A message names values of its facts; it doesn't lead on into them. */
  private static Optional<String> unsayable(RuleInfo info) {
    return Stream.of(info.message(), info.remedy())
        .flatMap(text -> Words.placeholders(text).stream())
        .filter(name -> !Sayable.isName(name))
        .findFirst()
        .map(
            name ->
                "{"
                    + name
                    + "} can't be said; in braces stands the name of a value of a fact, in one"
                    + " word");
  }

  /** What would keep a rule from firing without a word, so that a gate lets the plan pass. */
  private static Optional<String> silenced(Rule rule) {
    return SILENCING.entrySet().stream()
        .filter(
            attribute ->
                !Objects.deepEquals(
                    rule.getAttribute(attribute.getValue()),
                    attribute.getValue().getDefaultValue()))
        .map(Map.Entry::getKey)
        .findFirst();
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
    while (true) {
      WatchedRun run = WatchedRun.of(base(failed.keySet()), facts, millis);
      if (run.failure().isEmpty()) {
        return outcome(run.reports(), failed);
      }
      List<String> tried = infos.keySet().stream().filter(id -> !failed.containsKey(id)).toList();
      if (run.culprit().isEmpty() && tried.size() != 1) {
        return oneByOne(facts, failed);
      }
      blame(run.culprit().orElseGet(() -> tried.get(0)), run, failed);
    }
  }

  /**
   * Slow, but only a rule that fails in its conditions leads here: the engine doesn't say which.
   */
  private Outcome oneByOne(List<?> facts, Map<String, String> failed) {
    List<Report> reports = new ArrayList<>();
    for (String id : infos.keySet()) {
      if (!failed.containsKey(id)) {
        WatchedRun run = WatchedRun.of(base(r -> r.getName().equals(id)), facts, millis);
        if (run.failure().isEmpty()) {
          reports.addAll(run.reports());
        } else {
          blame(id, run, failed);
        }
      }
    }
    return outcome(reports, failed);
  }

  private void blame(String id, WatchedRun run, Map<String, String> failed) {
    String what =
        run.failure().orElseThrow()
            + rule(id).map(own -> " (" + own.file() + ":" + own.line() + ")").orElse("");
    failed.put(id, what);
    if (run.endless()) {
      ended.put(id, what);
    }
  }

  private static Outcome outcome(List<Report> reports, Map<String, String> failed) {
    List<FailedRule> failedRules = new ArrayList<>();
    failed.forEach((id, what) -> failedRules.add(new FailedRule(id, what)));
    return new Outcome(reports, failedRules);
  }

  private KieBase base(Set<String> without) {
    return bases.computeIfAbsent(
        new LinkedHashSet<>(without), out -> base(r -> !out.contains(r.getName())));
  }

  private KieBase base(Predicate<Rule> wanted) {
    List<Model> models = new ArrayList<>();
    rules.models().forEach(model -> models.add(cutDown(model, wanted)));
    return KieBaseBuilder.createKieBaseFromModel(models);
  }

  private static Model cutDown(Model whole, Predicate<Rule> wanted) {
    ModelImpl some =
        new ModelImpl(whole.getName())
            .withRules(whole.getRules().stream().filter(wanted).toList())
            .withGlobals(whole.getGlobals())
            .withQueries(whole.getQueries());
    whole.getTypeMetaDatas().forEach(some::addTypeMetaData);
    return some;
  }

  Optional<OwnRule> rule(String id) {
    return rules.rule(id);
  }
}

package strikeoff.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.globalOf;
import static org.drools.model.DSL.not;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.or;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.drools.model.Drools;
import org.drools.model.Global;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.modelcompiler.consequence.DroolsImpl;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.Example;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.findings.Reported;
import strikeoff.findings.RuleInfo;
import strikeoff.policy.Limit;
import strikeoff.rulebook.Reporter.Report;
import strikeoff.rulebook.Rulebook.Judgement;

/** Rules are linked when facts ask for them, and say the same as if all had been linked at once. */
class LinkingTest {

  private static final String PACKAGE = "rules.trial";

  private static final Global<Reporter> REPORTER = globalOf(Reporter.class, PACKAGE, "reporter");

  /** Facts of four kinds. */
  public record Lay(PlanPath path) implements Evidence {}

  public record Gap(PlanPath path) implements Evidence {}

  public record Film(PlanPath path) implements Evidence {}

  public record Seam(PlanPath path) implements Evidence {}

  private static final PlanPath PATH = new PlanPath("run[0]");

  private final Set<String> made = new HashSet<>();

  private final Linking linking =
      new Linking(
          List.of(
              known("trial/lay", true, Lay.class),
              known("trial/gap", false, Gap.class),
              known("trial/film", false, Film.class),
              known("trial/seam", false, Seam.class)));

  @Test
  void whatNoFactAsksForIsNotLinked() {
    assertThat(said(new Lay(PATH))).containsExactly("trial/lay");
    assertThat(said(new Gap(PATH), new Lay(PATH)))
        .containsExactlyInAnyOrder("trial/lay", "trial/gap");
    assertThat(made).containsExactlyInAnyOrder("trial/lay", "trial/gap");
  }

  @Test
  void theSecondTimeAllThatAreLeftAreLinked() {
    said(new Gap(PATH));
    assertThat(said(new Film(PATH))).containsExactly("trial/film");
    assertThat(made).contains("trial/seam");
    assertThat(said(new Seam(PATH), new Gap(PATH), new Film(PATH), new Lay(PATH))).hasSize(4);
  }

  @Test
  void noFactsAskForNothing() {
    assertThat(said()).isEmpty();
    assertThat(made).containsOnly("trial/lay");
  }

  @Test
  void severalThreadsMayAskAtOnce() throws Exception {
    List<Evidence> facts = List.of(new Lay(PATH), new Gap(PATH), new Film(PATH), new Seam(PATH));
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Callable<List<String>>> asked = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        Evidence one = facts.get(i % facts.size());
        asked.add(() -> said(one));
      }
      int i = 0;
      for (Future<List<String>> each : threads.invokeAll(asked)) {
        String fact = facts.get(i++ % facts.size()).getClass().getSimpleName();
        assertThat(each.get()).containsExactly("trial/" + fact.toLowerCase(Locale.ROOT));
      }
    } finally {
      threads.shutdown();
    }
  }

  @Test
  void aRuleNeedsWhatMustBeThereAndReadsTheRest() {
    Variable<Gap> gap = declarationOf(Gap.class);
    Variable<Film> film = declarationOf(Film.class);
    Variable<Lay> lay = declarationOf(Lay.class);
    Rule rule =
        rule(PACKAGE, "trial/three")
            .build(
                pattern(gap),
                not(pattern(film)),
                or(pattern(lay), pattern(declarationOf(Seam.class))),
                on(gap).execute(g -> {}));
    NeededFacts asked = NeededFacts.by(rule);
    assertThat(asked.needed()).containsExactly(Gap.class.getName());
    assertThat(asked.read())
        .containsExactlyInAnyOrder(
            Gap.class.getName(), Film.class.getName(), Lay.class.getName(), Seam.class.getName());
    assertThat(asked.everything()).isFalse();
  }

  @Test
  void aRuleOverAnInterfaceMayReadAnythingAndIsNeverLeftOut() {
    Variable<Evidence> any = declarationOf(Evidence.class);
    NeededFacts asked =
        NeededFacts.by(rule(PACKAGE, "trial/any").build(pattern(any), on(any).execute(g -> {})));
    assertThat(asked.everything()).isTrue();
    assertThat(asked.answered(Set.of())).isTrue();
  }

  @Test
  void aRuleReadsTheLimitsThatItsConditionsNameAndAnyIfOneNamesNone() {
    Map<String, NeededFacts> asked = new HashMap<>();
    PackagedModel.load()
        .forEach(model -> model.getRules().forEach(r -> asked.put(r.getName(), NeededFacts.by(r))));
    assertThat(asked.get("paste/over-mixed").limits())
        .containsExactly("paste/kept-for-later", "paste/over-mixed", "paste/usual-pot");
    Variable<Limit> any = declarationOf(Limit.class);
    NeededFacts unnamed =
        NeededFacts.by(rule(PACKAGE, "trial/limit").build(pattern(any), on(any).execute(g -> {})));
    assertThat(unnamed.everything()).isTrue();
  }

  /** The generator's own list is the reference: what it makes, in its words. */
  @Test
  void thePackHoldsEveryRuleAsTheGeneratorMadeIt() {
    List<Rule> all =
        PackagedModel.load().stream().flatMap(model -> model.getRules().stream()).toList();
    List<KnownRule> packed = RulePack.read().orElseThrow();
    assertThat(packed).extracting(KnownRule::id).doesNotHaveDuplicates().hasSameSizeAs(all);
    for (Rule rule : all) {
      KnownRule known =
          packed.stream().filter(k -> k.id().equals(rule.getName())).findFirst().orElseThrow();
      assertThat(known.info()).isEqualTo(RuleText.of(rule));
      assertThat(known.model().getName()).isEqualTo(rule.getName());
      assertThat(known.asked()).isEqualTo(NeededFacts.by(rule));
      assertThat(known.asked().everything()).as(rule.getName() + " reads everything").isFalse();
    }
    assertThat(packed).anyMatch(KnownRule::usual).anyMatch(rule -> !rule.usual());
  }

  /** Each rule's example and its twin, all facts judged by all rules linked at once. */
  @Test
  void lateLinkedRulesFindWhatAllTogetherFind() {
    Rulebook all = Rulebook.of(PackagedModel.load());
    Rulebook late = Rulebook.builtIn();
    Checker checker = Checker.builtIn();
    int found = 0;
    for (RuleInfo rule : late.rules()) {
      Example example = Example.packaged(rule.id());
      Checker under = checker.of(example);
      for (String text : List.of(example.firingText(), example.twinText())) {
        Checked.Judged judged = (Checked.Judged) under.check(rule.id(), text);
        List<Object> facts = judged.facts().forRules();
        List<String> expected = told(all.judge(facts));
        assertThat(told(late.judge(facts))).as(rule.id()).isEqualTo(expected);
        assertThat(told(Rulebook.builtIn().judge(facts))).as(rule.id()).isEqualTo(expected);
        found += expected.size();
      }
    }
    assertThat(found).isGreaterThan(late.rules().size());
  }

  private static List<String> told(Judgement judgement) {
    assertThat(judgement.failedRules()).isEmpty();
    List<String> told = new ArrayList<>();
    for (Reported one : judgement.reported()) {
      told.add(one.rule().id() + one.judged().path() + one.message() + one.remedy());
    }
    told.sort(null);
    return told;
  }

  private List<String> said(Evidence... facts) {
    Set<String> there = new HashSet<>();
    for (Evidence fact : facts) {
      there.add(fact.getClass().getName());
    }
    List<String> said = new ArrayList<>();
    for (LinkedRules linked : linking.answered(there)) {
      for (Report report : linked.fire(List.of(facts))) {
        said.add(report.rule().getName());
      }
    }
    return said;
  }

  private <T extends Evidence> KnownRule known(String id, boolean usual, Class<T> type) {
    Variable<T> fact = declarationOf(type);
    Rule rule =
        rule(PACKAGE, id)
            .build(
                pattern(fact),
                on(fact, REPORTER)
                    .execute(
                        (Drools drools, T found, Reporter reporter) ->
                            reporter.report(((DroolsImpl) drools).getRule(), found)));
    return new KnownRule(
        id,
        NeededFacts.by(rule),
        usual,
        () -> {
          synchronized (made) {
            made.add(id);
          }
          return rule;
        },
        () -> {
          throw new AssertionError("nobody asks for words here");
        });
  }
}

package strikeoff.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.globalOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.drools.model.Drools;
import org.drools.model.Global;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.functions.Predicate1;
import org.drools.modelcompiler.consequence.DroolsImpl;
import org.junit.jupiter.api.Test;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Reported;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.rulebook.Rulebook.Judgement;
import strikeoff.rulebook.own.OwnRule;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleMistakes;

/** How a studio's own rules are run, with rules that do what no sentence can. */
class OwnBookRunsTest {

  private static final Global<Reporter> REPORTER =
      globalOf(Reporter.class, "rules.bench", "reporter");

  /** A fact for the rules made here. */
  public record Gap(int mm, PlanPath path) implements Evidence {}

  private static Gap gap(int mm) {
    return new Gap(mm, new PlanPath("placements"));
  }

  /** What a rule of these tests does when it has found a gap. */
  private interface Then {
    void run(Drools drools, Gap gap, Reporter reporter);
  }

  private static final Then REPORT =
      (drools, gap, reporter) -> reporter.report(((DroolsImpl) drools).getRule(), gap);

  private static Rule made(String id, Predicate1<Gap> condition, Then then) {
    Variable<Gap> gap = declarationOf(Gap.class);
    return rule("rules.bench", id)
        .build(pattern(gap).expr(condition), on(gap, REPORTER).execute(then::run));
  }

  private static OwnRules own(Rule... rules) {
    List<OwnRule> texts = new ArrayList<>();
    for (Rule one : rules) {
      RuleInfo info =
          new RuleInfo(
              one.getName(),
              Severity.RISK,
              "s",
              "b",
              "gap of {mm} mm",
              "r",
              "from memory",
              List.of());
      texts.add(new OwnRule(info, "rules/bench/own.dslr", 7, List.of()));
    }
    return new OwnRules(texts, List.of(rules));
  }

  private static Rulebook book(double seconds, Rule... rules) throws RuleMistakes {
    return Rulebook.of(List.of()).with(own(rules), seconds);
  }

  private static final Rule SOUND = made("bench/sound", gap -> gap.mm() > 1, REPORT);

  @Test
  void aFindingKeepsTheFactsThatItRestsOnAndNotTheValuesBesides() throws RuleMistakes {
    Gap other = gap(9);
    Rule both =
        made(
            "bench/both",
            gap -> gap.mm() == 2,
            (drools, gap, reporter) ->
                reporter.report(((DroolsImpl) drools).getRule(), gap, other, "a word"));
    assertThat(book(5, both).judge(List.of(gap(2)), List.of()).reported())
        .singleElement()
        .satisfies(found -> assertThat(found.judged()).isEqualTo(gap(2)))
        .satisfies(found -> assertThat(found.evidence()).containsExactly(gap(2), other));
  }

  @Test
  void theOwnRulesSeeWhatTheBuiltInOnesSeeAndMore() throws RuleMistakes {
    Judgement judgement = book(5, SOUND).judge(List.of(gap(2)), List.of(gap(3), gap(1)));
    assertThat(judgement.reported())
        .extracting(Reported::message)
        .containsExactlyInAnyOrder("gap of 2 mm", "gap of 3 mm");
    assertThat(judgement.failedRules()).isEmpty();
  }

  @Test
  void ownRulesStandInTheirPlaceAmongTheBuiltInOnes() throws RuleMistakes {
    Rulebook book = Rulebook.builtIn().with(own(SOUND), 5);
    assertThat(book.rules()).extracting(r -> r.id()).isSorted().contains("bench/sound");
    assertThat(book.rules()).hasSize(Rulebook.builtIn().rules().size() + 1);
    assertThat(book.rule("bench/sound").orElseThrow().summary()).isEqualTo("s");
    assertThat(book.own().rules()).extracting(OwnRule::id).containsExactly("bench/sound");
    assertThat(book.judge(List.of(gap(2))).reported()).as("built-in rules alone").isEmpty();
  }

  @Test
  void withoutOwnRulesTheBookIsAsItWas() throws RuleMistakes {
    Rulebook book = Rulebook.of(List.of());
    assertThat(book.with(OwnRules.NONE, 5)).isSameAs(book);
    assertThat(book.own()).isEqualTo(OwnRules.NONE);
    assertThat(book.judge(List.of(gap(2)), List.of(gap(3))).reported()).isEmpty();
  }

  /** Forty rules of 0.1 s each would take four seconds, and each is well within its own 0.3 s. */
  @Test
  void manySlowRulesHaveABoundTogether() throws RuleMistakes {
    List<Rule> slow = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      slow.add(
          made(
              "bench/slow-" + (char) ('a' + i / 26) + (char) ('a' + i % 26),
              gap -> {
                Thread.sleep(100);
                return true;
              },
              REPORT));
    }
    long from = System.nanoTime();
    Judgement judgement = book(0.3, slow.toArray(Rule[]::new)).judge(List.of(), List.of(gap(2)));
    assertThat((System.nanoTime() - from) / 1e9).isLessThan(3);
    assertThat(judgement.reported()).isNotEmpty();
    assertThat(judgement.failedRules())
        .contains(
            new FailedRule(
                "bench/slow-bn",
                "it was not judged: all own rules together have 0.9 s for a plan"
                    + " (rules/bench/own.dslr:7)"));
    assertThat(judgement.failedRules().size() + judgement.reported().size()).isEqualTo(40);
  }

  @Test
  void aFaultNamesTheRuleAndItsDeepestCauseInOneLine() throws RuleMistakes {
    Judgement judgement =
        book(
                5,
                SOUND,
                made(
                    "bench/breaks",
                    gap -> true,
                    (drools, gap, reporter) -> {
                      throw new IllegalStateException(
                          "outer", new IllegalArgumentException("no mesh\nsecond line"));
                    }))
            .judge(List.of(), List.of(gap(2)));
    assertThat(judgement.reported()).hasSize(1);
    assertThat(judgement.failedRules())
        .containsExactly(
            new FailedRule(
                "bench/breaks",
                "java.lang.IllegalArgumentException: no mesh (rules/bench/own.dslr:7)"));
  }

  @Test
  void aRuleThatFailsOnOnePlanIsTriedOnTheNext() throws RuleMistakes {
    AtomicInteger tries = new AtomicInteger();
    Rulebook book =
        book(
            5,
            SOUND,
            made(
                "bench/breaks-once",
                gap -> true,
                (drools, gap, reporter) -> {
                  if (tries.incrementAndGet() == 1) {
                    throw new IllegalStateException("no");
                  }
                  REPORT.run(drools, gap, reporter);
                }));
    assertThat(book.judge(List.of(), List.of(gap(2))).failedRules()).hasSize(1);
    Judgement second = book.judge(List.of(), List.of(gap(2)));
    assertThat(second.failedRules()).isEmpty();
    assertThat(second.reported()).hasSize(2);
  }

  @Test
  void whatFailsInItsConditionIsFoundByTryingEachAlone() throws RuleMistakes {
    Judgement judgement =
        book(
                5,
                SOUND,
                made(
                    "bench/breaks",
                    gap -> {
                      throw new IllegalStateException("too deep");
                    },
                    REPORT),
                made("bench/wide", gap -> gap.mm() > 10, REPORT))
            .judge(List.of(), List.of(gap(20)));
    assertThat(judgement.reported())
        .extracting(r -> r.rule().id())
        .containsExactlyInAnyOrder("bench/sound", "bench/wide");
    assertThat(judgement.failedRules())
        .extracting(FailedRule::rule)
        .containsExactly("bench/breaks");
  }

  @Test
  void aRuleMayFireAsOftenAsThereAreFindingsToReadAndNotRoundAndRound() throws RuleMistakes {
    Rule often = made("bench/often", gap -> true, (drools, gap, reporter) -> {});
    Rulebook book = book(60, often, made("bench/first", gap -> gap.mm() > 90, REPORT));
    assertThat(book.judge(List.of(), numbered(50_000)).failedRules()).isEmpty();
    assertThat(book.judge(List.of(), numbered(50_001)).failedRules())
        .containsExactly(
            new FailedRule(
                "bench/often",
                "it fired more than 50000 times; it isn't run again (rules/bench/own.dslr:7)"));
    assertThat(book.judge(List.of(), List.of(gap(99))).reported())
        .as("the others still are")
        .hasSize(1);
    assertThat(book.judge(List.of(), List.of(gap(99))).failedRules())
        .extracting(FailedRule::rule)
        .containsExactly("bench/often");
  }

  @Test
  void manyRulesThatEachFireOftenGoNotRound() throws RuleMistakes {
    Then nothing = (drools, gap, reporter) -> {};
    Rulebook book =
        book(60, made("bench/one", gap -> true, nothing), made("bench/two", gap -> true, nothing));
    // 80,000 firings in all.
    assertThat(book.judge(List.of(), numbered(40_000)).failedRules()).isEmpty();
  }

  /** Facts that differ, since the engine may take equal ones for one. */
  private static List<Gap> numbered(int count) {
    List<Gap> gaps = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      gaps.add(new Gap(2, new PlanPath("placements[" + i + "]")));
    }
    return gaps;
  }

  @Test
  void whoeverLooksAtThreadsSeesWhichRuleFires() throws RuleMistakes {
    List<String> seen = Collections.synchronizedList(new ArrayList<>());
    Rule looks =
        made(
            "bench/looks",
            gap -> seen.add(Thread.currentThread().getName()),
            (drools, gap, reporter) -> seen.add(Thread.currentThread().getName()));
    book(5, looks).judge(List.of(), List.of(gap(2)));
    assertThat(seen).containsExactly("own rules", "own rule bench/looks");
  }

  @Test
  void aRuleThatIsInterruptedAtTheEndOfItsTimeIsToldWithThatTime() throws RuleMistakes {
    Rule sleeps =
        made(
            "bench/sleeps",
            gap -> gap.mm() > 1,
            (drools, gap, reporter) -> {
              try {
                Thread.sleep(60_000);
              } catch (InterruptedException e) {
                throw new IllegalStateException(e);
              }
            });
    Rulebook book = book(0.3, SOUND, sleeps);
    Judgement judgement = book.judge(List.of(), List.of(gap(2)));
    assertThat(judgement.reported()).hasSize(1);
    assertThat(judgement.failedRules())
        .containsExactly(
            new FailedRule(
                "bench/sleeps",
                "it had not ended after 0.3 s; it isn't run again (rules/bench/own.dslr:7)"));
    assertThat(book.judge(List.of(), List.of(gap(2))).failedRules()).hasSize(1);
  }

  @Test
  void aRunThatIsInterruptedSaysSoAndStaysInterrupted() {
    // It can't be over before it is waited for, as nobody counts this down but its end.
    CountDownLatch never = new CountDownLatch(1);
    Rule waits =
        made(
            "bench/waits",
            gap -> gap.mm() > 1,
            (drools, gap, reporter) -> {
              try {
                never.await();
              } catch (InterruptedException e) {
                throw new IllegalStateException(e);
              }
            });
    Thread.currentThread().interrupt();
    WatchedRun run = WatchedRun.of(OwnBook.linked(own(waits).models()), List.of(gap(2)), 60_000);
    assertThat(Thread.interrupted()).isTrue();
    assertThat(run.failure()).contains("the run was interrupted");
    assertThat(run.endless()).isFalse();
  }
}

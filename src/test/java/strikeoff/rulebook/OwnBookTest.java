package strikeoff.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.IntStream;
import org.drools.modelcompiler.KieBaseBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kie.api.KieBase;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Reported;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.rulebook.Rulebook.Judgement;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleCache;
import strikeoff.rulebook.own.RuleFile;
import strikeoff.rulebook.own.RuleMistake;
import strikeoff.rulebook.own.RuleMistakes;

/** Rules that nobody has tested must not take a batch with them. */
public class OwnBookTest {

  /** A fact for the rules made here. */
  public record Gap(int mm, PlanPath path) implements Evidence {

    /** Never comes back. */
    public boolean endless() {
      while (true) {
        Thread.onSpinWait();
      }
    }

    public boolean broken() {
      throw new IllegalStateException("too deep");
    }
  }

  private static final List<Gap> FACTS = List.of(new Gap(4, new PlanPath("placements")));

  private static String rule(String name, String condition, String consequence) {
    return """
        rule "bench/%s"
            @severity("risk")
            @summary("s")
            @because("b.")
            @message("gap of {mm} mm.")
            @remedy("r.")
            @source("common practice, no source")
        when
            %s
        then
            %s
        end
        """
        .formatted(name, condition, consequence);
  }

  private static final String REPORT = "reporter.report(drools.getRule(), $gap);";
  private static final String GAP = "$gap : OwnBookTest.Gap(mm > 1)";

  private static Rulebook book(String... rules) throws RuleMistakes {
    return Rulebook.builtIn()
        .with(OwnRules.of(List.of(file(String.join("", rules))), RuleCache.NONE), 1.5);
  }

  private static RuleFile file(String rules) {
    String head =
        """
        package rules.bench
        import strikeoff.rulebook.OwnBookTest
        global strikeoff.rulebook.Reporter reporter
        """;
    return new RuleFile("rules/bench/own.drl", "bench", head + rules);
  }

  @Test
  void anOwnRuleReportsLikeABuiltInOne() throws RuleMistakes {
    Rulebook book = book(rule("sound", GAP, REPORT));
    assertThat(book.rule("bench/sound")).isPresent();
    assertThat(book.rules()).hasSizeGreaterThan(100);
    assertThat(book.judge(List.of(), FACTS).reported())
        .extracting(Reported::message)
        .containsExactly("gap of 4 mm.");
  }

  @Test
  void aRuleThatThrowsOrLoopsTakesNoFindingFromTheOthers() throws RuleMistakes {
    Rulebook book =
        book(
            rule("sound", GAP, REPORT),
            rule("breaks-in-condition", "$gap : OwnBookTest.Gap(broken())", REPORT),
            rule("breaks-in-consequence", GAP, "throw new IllegalStateException(\"no\");"),
            rule("goes-round", "$o : Object()", "insert(new Object());"),
            rule("never-ends", GAP, "while (true) { Math.abs(1); }"));
    Judgement judgement = book.judge(List.of(), FACTS);
    assertThat(judgement.reported()).extracting(Reported::message).containsExactly("gap of 4 mm.");
    assertThat(judgement.failedRules())
        .extracting(FailedRule::rule)
        .containsExactly(
            "bench/breaks-in-condition",
            "bench/breaks-in-consequence",
            "bench/goes-round",
            "bench/never-ends");
    long before = System.nanoTime();
    Judgement second = book.judge(List.of(), FACTS);
    assertThat(second.failedRules()).extracting(FailedRule::rule).contains("bench/never-ends");
    assertThat(second.reported()).hasSize(1);
    assertThat((System.nanoTime() - before) / 1e9)
        .as("a rule that once looped isn't waited for again")
        .isLessThan(1.4);
  }

  @Test
  void aConditionThatNeverEndsIsFoundToo() throws RuleMistakes {
    Rulebook book =
        book(
            rule("sound", GAP, REPORT),
            rule("never-ends", "$gap : OwnBookTest.Gap(endless())", REPORT));
    Judgement judgement = book.judge(List.of(), FACTS);
    assertThat(judgement.reported()).hasSize(1);
    assertThat(judgement.failedRules())
        .extracting(FailedRule::rule)
        .containsExactly("bench/never-ends");
  }

  /** Fifty facts joined five times are 300 million combinations, which no memory holds. */
  @Test
  void aRuleThatJoinsEverythingEndsAndIsNamed() throws RuleMistakes {
    List<Gap> many =
        IntStream.range(0, 50).mapToObj(i -> new Gap(i + 2, new PlanPath("placements"))).toList();
    String any = "OwnBookTest.Gap()\n";
    Rulebook book =
        book(
            rule("sound", "$gap : OwnBookTest.Gap(mm == 4)", REPORT),
            rule("joins-all", "$gap : OwnBookTest.Gap()\n" + any.repeat(4), REPORT),
            rule(
                "joins-none",
                "$gap : OwnBookTest.Gap()\n" + any.repeat(4) + "not OwnBookTest.Gap()",
                REPORT),
            rule(
                "sums-all",
                "$gap : OwnBookTest.Gap()\n"
                    + "accumulate(OwnBookTest.Gap() and "
                    + "OwnBookTest.Gap() and ".repeat(4)
                    + "OwnBookTest.Gap(); $n : count(1))",
                REPORT));
    long before = System.nanoTime();
    Judgement judgement = book.judge(List.of(), many);
    assertThat((System.nanoTime() - before) / 1e9)
        .as("three times 1.5 s, and room for a busy machine")
        .isLessThan(30);
    assertThat(judgement.reported()).extracting(Reported::message).containsExactly("gap of 4 mm.");
    assertThat(judgement.failedRules())
        .extracting(FailedRule::rule)
        .containsExactly("bench/joins-all", "bench/joins-none", "bench/sums-all");
    assertThat(judgement.failedRules().get(0).what())
        .isEqualTo(
            "its conditions find more than 1000000 combinations of facts; it isn't run again"
                + " (rules/bench/own.drl:16)");
    assertThat(threads()).as("none runs on").isEmpty();
  }

  /** As many as two hundred things compared in pairs give, which is no mistake. */
  @Test
  void aRuleThatComparesAllPairsIsLeftAlone() throws RuleMistakes {
    List<Gap> many =
        IntStream.range(0, 200).mapToObj(i -> new Gap(i, new PlanPath("placements"))).toList();
    Rulebook book =
        book(rule("pairs", "$gap : OwnBookTest.Gap()\nOwnBookTest.Gap(mm == $gap.mm + 1)", REPORT));
    Judgement judgement = book.judge(List.of(), many);
    assertThat(judgement.failedRules()).isEmpty();
    assertThat(judgement.reported()).hasSize(199);
  }

  @Test
  void aLoopInARuleEndsWithItsThread() throws RuleMistakes {
    Rulebook book =
        book(
            rule("sound", GAP, REPORT),
            rule("spins", GAP, "while (true) { }"),
            rule(
                "spins-and-catches",
                GAP,
                "while (true) { try { Math.abs(1); } " + "catch (Throwable t) { continue; } }"),
            rule(
                "reports-on",
                GAP,
                "for (int i = 0; i >= 0; i++) { reporter.report(drools.getRule(), $gap); }"));
    Judgement judgement = book.judge(List.of(), FACTS);
    assertThat(judgement.reported()).extracting(Reported::message).containsExactly("gap of 4 mm.");
    assertThat(judgement.failedRules())
        .containsExactly(
            new FailedRule(
                "bench/reports-on",
                "it reported more than 50000 times; it isn't run again (rules/bench/own.drl:40)"),
            new FailedRule(
                "bench/spins",
                "it had not ended after 1.5 s; it isn't run again (rules/bench/own.drl:16)"),
            new FailedRule(
                "bench/spins-and-catches",
                "it had not ended after 1.5 s; it isn't run again (rules/bench/own.drl:28)"));
    assertThat(threads()).as("none runs on").isEmpty();
  }

  private static List<String> threads() {
    return Thread.getAllStackTraces().keySet().stream()
        .map(Thread::getName)
        .filter(name -> name.matches("own rule bench/(joins|sums|spins|reports).*|own rules"))
        .toList();
  }

  /** What is watched must change nothing else: a change that no condition reads fires no rule. */
  @Test
  void aWatchedPatternListensToNothingMore() throws RuleMistakes {
    String declared = "declare Seen\n  of : String\n  times : int\nend\n";
    String head = declared + rule("sees", GAP, "insert(new Seen(\"a\", 0));");
    String counts =
        "$seen : Seen(of == \"a\")\n    $gap : OwnBookTest.Gap(mm > 1)\n    Seen(of == \"a\")";
    Rulebook book =
        book(
            head
                + rule(
                    "counts",
                    counts,
                    "modify($seen) { setTimes($seen.getTimes() + 1); }\n" + REPORT));
    Judgement judgement = book.judge(List.of(), FACTS);
    assertThat(judgement.failedRules()).isEmpty();
    assertThat(judgement.reported()).hasSize(1);
  }

  @Test
  void aRuleThatTakesAllMemoryIsNotTriedAgain() throws RuleMistakes {
    Rulebook book =
        book(
            rule("sound", GAP, REPORT),
            rule("takes-all", GAP, "throw new OutOfMemoryError(\"Java heap space\");"));
    for (int plan = 1; plan <= 2; plan++) {
      Judgement judgement = book.judge(List.of(), FACTS);
      assertThat(judgement.reported()).hasSize(1);
      assertThat(judgement.failedRules())
          .containsExactly(
              new FailedRule(
                  "bench/takes-all",
                  "it needs more memory than there is; it isn't run again"
                      + " (rules/bench/own.drl:16)"));
    }
  }

  @Test
  void aRunThatFailsLeavesNoSessionBehind() throws RuleMistakes {
    OwnRules own =
        OwnRules.of(
            List.of(file(rule("breaks", GAP, "throw new OutOfMemoryError(\"all of it\");"))),
            RuleCache.NONE);
    KieBase base = KieBaseBuilder.createKieBaseFromModel(own.models());
    assertThat(WatchedRun.of(base, FACTS, 20_000).failure()).isPresent();
    assertThat(base.getKieSessions()).as("what a session holds is held as long").isEmpty();
  }

  @Test
  void theOnlyRuleThatNeverEndsIsWaitedForOnce() throws RuleMistakes {
    Rulebook book = book(rule("never-ends", "$gap : OwnBookTest.Gap(endless())", REPORT));
    long before = System.nanoTime();
    assertThat(book.judge(List.of(), FACTS).failedRules()).hasSize(1);
    assertThat((System.nanoTime() - before) / 1e9)
        .as("1.5 s and what starting takes, not twice that")
        .isLessThan(2.9);
  }

  @Test
  void aReportOfNothingIsTheRulesFault() throws RuleMistakes {
    Rulebook book =
        book(
            rule("sound", GAP, REPORT),
            rule("of-nothing", GAP, "reporter.report(drools.getRule(), null);"));
    Judgement judgement = book.judge(List.of(), FACTS);
    assertThat(judgement.reported()).hasSize(1);
    assertThat(judgement.failedRules())
        .extracting(FailedRule::rule)
        .containsExactly("bench/of-nothing");
    assertThat(judgement.failedRules().get(0).toString()).contains("a report names no fact");
  }

  @Test
  void aMistakeInDrlHasItsFileAndLine() {
    RuleMistakes wrong =
        catchThrowableOfType(
            RuleMistakes.class,
            () -> book(rule("typo", "$gap : OwnBookTest.Gap(mmm > 1)", REPORT)));
    assertThat(wrong.all()).isNotEmpty();
    RuleMistake first = wrong.all().get(0);
    assertThat(first.file()).isEqualTo("rules/bench/own.drl");
    assertThat(first.line()).isEqualTo(12);
    assertThat(first.message()).contains("mmm");
  }

  @Test
  void theFormOfPlainRulesIsHeld() {
    RuleMistakes wrong =
        catchThrowableOfType(
            RuleMistakes.class,
            () ->
                OwnRules.of(
                    List.of(
                        new RuleFile(
                            "rules/bench/own.drl",
                            "bench",
                            "package other\nrule \"Odd\"\nwhen\nthen\nend\n")),
                    RuleCache.NONE));
    assertThat(wrong.all())
        .extracting(RuleMistake::text)
        .contains(
            "rules/bench/own.drl:1: “package rules.bench” was expected at the top",
            "rules/bench/own.drl:2: the rule has no @severity(\"…\")");
  }

  /** A rule that never fires says nothing, and a gate takes that for a plan without faults. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          enabled false                 | enabled
          agenda-group "later"          | agenda-group
          activation-group "one"        | activation-group
          timer(int: 1s 1s)             | timer
          date-expires "01-jan-2020"    | date-expires
          date-effective "01-jan-2090"  | date-effective
          """)
  void whatKeepsARuleSilentIsRefused(String attribute, String told) throws RuleMistakes {
    String sound = rule("sound", GAP, REPORT);
    assertThat(book(sound.replace("when", "    no-loop\n    salience 3\nwhen")).rule("bench/sound"))
        .isPresent();
    RuleMistakes wrong =
        catchThrowableOfType(
            RuleMistakes.class, () -> book(sound.replace("when", "    " + attribute + "\nwhen")));
    assertThat(wrong).isNotNull();
    assertThat(wrong.all())
        .extracting(RuleMistake::text)
        .containsExactly(
            "rules/bench/own.drl:4: “"
                + told
                + "” can keep a rule silent; every rule is judged once for each plan");
  }
}

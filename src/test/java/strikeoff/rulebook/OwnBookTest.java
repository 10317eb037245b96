package strikeoff.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Reported;
import strikeoff.rulebook.Rulebook.Judgement;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleFile;
import strikeoff.rulebook.own.RuleMistake;
import strikeoff.rulebook.own.RuleMistakes;
import strikeoff.rulebook.own.Vocabulary;

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

    public boolean mute() {
      throw new Mute();
    }

    public boolean large() {
      throw new OutOfMemoryError("Java heap space");
    }
  }

  /** Has nothing to say for itself, and throws when asked. */
  private static final class Mute extends RuntimeException {
    private static final long serialVersionUID = 1;

    @Override
    public String toString() {
      throw this;
    }
  }

  private static final Vocabulary WORDS =
      Vocabulary.of(
          """
          [condition][rulebook.OwnBookTest$Gap]there is a gap=Gap()
          [condition][rulebook.OwnBookTest$Gap]- wider than {number} mm=mm > {number}
          """);

  private static final List<Gap> FACTS = List.of(new Gap(4, new PlanPath("placements")));

  private static String rule(String name, String... conditions) {
    return """
        rule "%s"
        when
        %s
        then
          say risk: gap of {mm} mm.
          because: b.
          mend: r.
        end
        """
        .formatted(name.replace('-', ' '), String.join("\n", conditions));
  }

  private static final String GAP = "there is a gap wider than 1 mm";

  private static OwnRules rules(String... rules) throws RuleMistakes {
    RuleFile file = new RuleFile("rules/bench/own.dslr", "bench", String.join("", rules));
    return OwnRules.of(List.of(file), WORDS);
  }

  private static Rulebook book(String... rules) throws RuleMistakes {
    return Rulebook.builtIn().with(rules(rules), 1.5);
  }

  private static List<Gap> gaps(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> new Gap(i + 2, new PlanPath("placements[" + i + "]")))
        .toList();
  }

  @Test
  void anOwnRuleReportsLikeABuiltInOne() throws RuleMistakes {
    Rulebook book = book(rule("sound", GAP));
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
            rule("sound", GAP),
            rule("breaks", "there is a gap whose broken is yes"),
            rule("is-mute", "there is a gap whose mute is yes"),
            rule("never-ends", "there is a gap whose endless is yes"));
    Judgement judgement = book.judge(List.of(), FACTS);
    assertThat(judgement.reported()).extracting(Reported::message).containsExactly("gap of 4 mm.");
    assertThat(judgement.failedRules())
        .containsExactly(
            new FailedRule(
                "bench/breaks",
                "java.lang.IllegalStateException: too deep (rules/bench/own.dslr:9)"),
            new FailedRule("bench/is-mute", "it failed with a Mute (rules/bench/own.dslr:17)"),
            new FailedRule(
                "bench/never-ends",
                "it had not ended after 1.5 s; it isn't run again (rules/bench/own.dslr:25)"));
    long before = System.nanoTime();
    Judgement second = book.judge(List.of(), FACTS);
    assertThat(second.failedRules()).extracting(FailedRule::rule).contains("bench/never-ends");
    assertThat(second.reported()).hasSize(1);
    assertThat((System.nanoTime() - before) / 1e9)
        .as("a rule that once looped isn't waited for again")
        .isLessThan(1.4);
  }

  /** Fifty facts joined five times are 300 million combinations, which no memory holds. */
  @Test
  void aRuleThatJoinsEverythingEndsAndIsNamed() throws RuleMistakes {
    String[] any = {
      "there is a gap", "there is a gap", "there is a gap", "there is a gap", "there is a gap"
    };
    String joined = String.join("\n", any);
    OwnRules joining =
        rules(
            rule("sound", "there is a gap whose mm is 4"),
            rule("joins-all", any),
            rule("joins-none", joined, "it is not so that there is a gap wider than 900 mm"),
            rule("sums-all", joined, "the mm of all gaps add up to more than 3"));
    // They end by what they find, also where a busy machine takes its time.
    Rulebook book = Rulebook.builtIn().with(joining, 30);
    long before = System.nanoTime();
    Judgement judgement = book.judge(List.of(), gaps(50));
    assertThat((System.nanoTime() - before) / 1e9)
        .as("three times a second or two, and room for a busy machine")
        .isLessThan(60);
    assertThat(judgement.reported()).extracting(Reported::message).containsExactly("gap of 4 mm.");
    assertThat(judgement.failedRules())
        .extracting(FailedRule::rule)
        .containsExactly("bench/joins-all", "bench/joins-none", "bench/sums-all");
    assertThat(judgement.failedRules().get(0).what())
        .isEqualTo(
            "its conditions find more than 1000000 combinations of facts; it isn't run again"
                + " (rules/bench/own.dslr:9)");
    assertThat(threads()).as("none runs on").isEmpty();
  }

  /** What finds nothing is bounded by its time alone. */
  @Test
  void aRuleThatComparesForTooLongEndsWithItsThread() throws RuleMistakes {
    Rulebook book =
        book(
            rule("sound", "there is a gap whose mm is 4"),
            rule(
                "seeks-long",
                "there is a gap",
                "there is another gap",
                "there is another gap whose mm is more than 100 times the mm of the first gap"
                    + " and whose mm is less than 5"));
    Judgement judgement = book.judge(List.of(), gaps(990));
    assertThat(judgement.reported()).hasSize(1);
    assertThat(judgement.failedRules())
        .containsExactly(
            new FailedRule(
                "bench/seeks-long",
                "it had not ended after 1.5 s; it isn't run again (rules/bench/own.dslr:9)"));
    assertThat(threads()).as("none runs on").isEmpty();
  }

  private static List<String> threads() {
    return Thread.getAllStackTraces().keySet().stream()
        .map(Thread::getName)
        .filter(name -> name.matches("own rule bench/(joins|sums|seeks).*|own rules"))
        .toList();
  }

  /** As many as two hundred things compared in pairs give, which is no mistake. */
  @Test
  void aRuleThatComparesAllPairsIsLeftAlone() throws RuleMistakes {
    Rulebook book =
        book(
            rule(
                "pairs",
                "there is a gap",
                "there is another gap whose mm is 1 more than the mm of the first gap"));
    Judgement judgement = book.judge(List.of(), gaps(200));
    assertThat(judgement.failedRules()).isEmpty();
    assertThat(judgement.reported()).hasSize(199);
  }

  @Test
  void twoThingsThatMeetARuleEitherWayRoundAreToldOnce() throws RuleMistakes {
    Rulebook book =
        book(rule("pairs", "there is a gap", "there is another gap whose mm is less than 4"));
    // 2 and 3 with each other either way; 4, 5 with 2 and with 3.
    assertThat(book.judge(List.of(), gaps(4)).reported()).hasSize(1 + 2 * 2);
  }

  @Test
  void aRuleThatFindsMoreThanAnybodyReadsIsNotRunAgain() throws RuleMistakes {
    Rulebook book = Rulebook.builtIn().with(rules(rule("all", "there is a gap")), 60);
    assertThat(book.judge(List.of(), gaps(50_000)).reported()).hasSize(50_000);
    for (int plan = 1; plan <= 2; plan++) {
      Judgement judgement = book.judge(List.of(), gaps(50_001));
      assertThat(judgement.reported()).isEmpty();
      assertThat(judgement.failedRules())
          .singleElement()
          .satisfies(f -> assertThat(f.rule()).isEqualTo("bench/all"))
          .satisfies(f -> assertThat(f.what()).contains("more than 50000 times"));
    }
  }

  @Test
  void aRuleThatTakesAllMemoryIsNotTriedAgain() throws RuleMistakes {
    Rulebook book =
        book(rule("sound", GAP), rule("takes-all", "there is a gap whose large is yes"));
    for (int plan = 1; plan <= 2; plan++) {
      Judgement judgement = book.judge(List.of(), FACTS);
      assertThat(judgement.reported()).hasSize(1);
      assertThat(judgement.failedRules())
          .containsExactly(
              new FailedRule(
                  "bench/takes-all",
                  "it needs more memory than there is; it isn't run again"
                      + " (rules/bench/own.dslr:9)"));
    }
  }

  @Test
  void aRunThatFailsLeavesNoSessionBehind() throws RuleMistakes {
    KieBase base =
        OwnBook.linked(rules(rule("takes-all", "there is a gap whose large is yes")).models());
    assertThat(WatchedRun.of(base, FACTS, 20_000).failure()).isPresent();
    assertThat(base.getKieSessions()).as("what a session holds is held as long").isEmpty();
  }

  @Test
  void theOnlyRuleThatNeverEndsIsWaitedForOnce() throws RuleMistakes {
    Rulebook book = book(rule("never-ends", "there is a gap whose endless is yes"));
    long before = System.nanoTime();
    assertThat(book.judge(List.of(), FACTS).failedRules()).hasSize(1);
    assertThat((System.nanoTime() - before) / 1e9)
        .as("1.5 s and what starting takes, not twice that")
        .isLessThan(2.9);
  }

  /** Anything that the program holds could be called from there. */
  @Test
  void aMessageSaysValuesOfItsFactsAndNothingBeyondThem() {
    for (String gap : List.of("path.text", "mm.", "getClass", "path", "hashCode", "related")) {
      RuleMistakes wrong =
          catchThrowableOfType(
              RuleMistakes.class, () -> rules(rule("sound", GAP).replace("{mm}", "{" + gap + "}")));
      assertThat(wrong.all())
          .extracting(RuleMistake::text)
          .singleElement()
          .asString()
          .startsWith("rules/bench/own.dslr:5: {" + gap + "} names no value");
    }
  }

  @Test
  void wordsMayAgreeWithAValue() throws RuleMistakes {
    Judgement judgement =
        book(rule("sound", GAP).replace("gap of {mm} mm.", "{mm} mm {mm:is|are} too much."))
            .judge(List.of(), FACTS);
    assertThat(judgement.failedRules()).isEmpty();
    assertThat(judgement.reported())
        .singleElement()
        .satisfies(r -> assertThat(r.message()).isEqualTo("4 mm are too much."));
  }
}

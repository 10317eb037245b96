package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files of rules in sentences, as far as the compiler's door. */
class SentenceFileTest {

  private static final Vocabulary WORDS = Vocabulary.shipped();

  private static final String LATE =
      """
      # for the loft

      rule "late finish"
      when
        the day ends later than 16:30
          - with more than 2 lays
        there is a screen called “reeds”;
      then
        say Stop: Day {day} ends at {endsClock},
          and the loft is locked at 17:00.
        because: Paste that dries in a screen overnight stays there.
        mend: End the day earlier.
      end
      """;

  private final List<RuleMistake> mistakes = new ArrayList<>();

  @BeforeEach
  void clear() {
    mistakes.clear();
  }

  private SentenceFile read(String text) {
    return SentenceFile.of(new RuleFile("rules/house/loft.dslr", "house", text), WORDS, mistakes);
  }

  private List<String> told(String text) {
    read(text);
    return mistakes.stream()
        .sorted(RuleMistake.ORDER)
        .map(m -> m.text().replace("rules/house/loft.dslr", ""))
        .toList();
  }

  @Test
  void sentencesBecomeTheRuleThatAProgrammerWouldWrite() {
    SentenceFile file = read(LATE);
    assertThat(mistakes).isEmpty();
    assertThat(file.source().drl().replace(".0", ""))
        .isEqualTo(
            """
            package rules.house
            import strikeoff.described.DayWorked
            import strikeoff.described.ScreenUsed
            import strikeoff.described.WholePlan
            global strikeoff.rulebook.Reporter reporter
            rule "house/late-finish"
              @severity("stop")
              @summary("Late finish")
              @because("Paste that dries in a screen overnight stays there.")
              @message("Day {day} ends at {endsClock}, and the loft is locked at 17:00.")
              @remedy("End the day earlier.")
              @source("a rule of the studio's own, in rules/house/loft.dslr")
            when
              $fact0 : DayWorked(endsAt() > 990, lays > 2)
              $fact1 : ScreenUsed(screen == "reeds")
            then
              reporter.report(drools.getRule(), $fact0, $fact1);
            end
            """);
  }

  @Test
  void everyLineOfTheMadeRuleBelongsToTheRulesHead() {
    SentenceFile file = read(LATE);
    // 5 lines of heading, then 13 of the rule, which begins in line 3.
    assertThat(file.source().lines()).hasSize(18);
    assertThat(file.source().lines().subList(0, 5)).containsOnly(1);
    assertThat(file.source().lines().subList(5, 18)).containsOnly(3);
  }

  @Test
  void aRuleIsShownAsItStandsInItsFile() {
    SentenceFile file = read(LATE + LATE.replace("late finish", "later still"));
    assertThat(mistakes).isEmpty();
    OwnRule second = file.rules().get(1);
    assertThat(second.id()).isEqualTo("house/later-still");
    // The first text has 13 lines, and the rule begins in the third.
    assertThat(second.line()).isEqualTo(16);
    assertThat(second.text()).hasSize(11).startsWith("rule \"later still\"").endsWith("end");
  }

  @Test
  void whatMayBeSaidBesidesIsSaidInTheWritersWords() {
    String drl =
        read(LATE.replace("end\n", "summary: nobody locks up\nsource: the caretaker\nend\n"))
            .source()
            .drl();
    assertThat(mistakes).isEmpty();
    assertThat(drl).contains("@summary(\"nobody locks up\")", "@source(\"the caretaker\")");
  }

  @Test
  void aRuleOfWhatIsMissingReportsThePlanAsAWhole() {
    String drl =
        read("""
                rule no reeds
                when:
                  there is no screen called reeds
                then:
                  say advice: “{title}” has {lays} lays and no reeds.
                  because: b.
                  mend: m.
                end
                """)
            .source()
            .drl();
    assertThat(mistakes).isEmpty();
    assertThat(drl)
        .contains(
            """
            when
              not ScreenUsed(screen == "reeds")
              $plan : WholePlan()
            then
              reporter.report(drools.getRule(), $plan);
            """);
  }

  @Test
  void quotesInWhatIsSaidStayInside() {
    assertThat(read(LATE.replace("the loft is", "the \"loft\" is")).source().drl())
        .contains("and the \\\"loft\\\" is locked");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          rule "late finish"     | rule ""             | :3: “rule a few words” was expected; this is “rule ""”
          rule "late finish"     | rule "4 5"          | :3: a rule's name is a few words of the letters a to z; this one is “4 5”
          the day ends later than 16:30 | - of glass   | :5: a line that begins with “-” says more about the line before it
          - with more than 2 lays | - of glass         | :6: “of glass” is no sentence that is known here; the nearest is “
          say Stop: Day          | paint: Day          | :9: “paint: Day {day} ends at {endsClock},” is nothing a rule can do; the nearest is “
          because: Paste         | say stop: Paste     | :11: this is said a second time; a rule says each thing once
          because: Paste         | but: Paste          | :3: the rule doesn't say why it matters: “because: …” belongs after “then”
          mend: End the day earlier. | mend:           | :3: the rule doesn't say what to do about it: “mend: …” belongs after “then”
          End the day earlier    | End at {endsClok}   | :12: {endsClok} names no value of what the rule found; did you mean “endsClock”?
          say Stop: Day {day}    | say Stop: Day {xyz} | :9: {xyz} names no value of what the rule found; there are
          say Stop:              | say Shout:          | :9: “say stop: …”, “say risk: …” or “say advice: …” was expected; “Shout” is none of them
          """)
  void aSlipIsToldAtItsLine(String old, String fresh, String told) {
    String text = LATE.replace(old, fresh);
    assertThat(text).isNotEqualTo(LATE);
    assertThat(told(text)).anySatisfy(line -> assertThat(line).startsWith(told));
  }

  @Test
  void aRuleWithoutASentenceFindsNothing() {
    assertThat(
            told(
                """
                rule empty
                when
                then
                  say risk: r.
                  because: b.
                  mend: m.
                end
                """))
        .containsExactly(":1: the rule has no sentence after “when”");
  }

  @Test
  void anEndThatIsMissingIsToldWhereItShouldStand() {
    assertThat(told(LATE.replace("end\n", "") + LATE))
        // The second rule begins in line 15: 12 lines without the end, then two before its head.
        .containsExactly(":15: the rule before this one has no “end”");
    mistakes.clear();
    assertThat(told(LATE.replace("end\n", ""))).containsExactly(":12: the last rule has no “end”");
  }

  @Test
  void aRuleWithoutThenIsToldAtItsEnd() {
    assertThat(told("rule nothing said\nwhen\n  there is a screen\nend\n"))
        .containsExactly(":4: the rule has no “then”");
  }

  @Test
  void aFileOfCommentsHasNoRule() {
    assertThat(told("# nothing\n// yet\n\n")).containsExactly(": no rule is in this file");
  }

  @Test
  void textBetweenRulesIsToldAndTheRulesAreStillRead() {
    assertThat(told("the loft\n" + LATE))
        .containsExactly(":1: “rule a few words” was expected; this is “the loft”");
    mistakes.clear();
    assertThat(read("the loft\n" + LATE).rules()).hasSize(1);
  }

  @Test
  void afterASentenceThatIsNotUnderstoodNoValueIsAskedAfter() {
    // Whether {endsClock} is there can't be known, so one mistake is told and not two.
    assertThat(told(LATE.replace("the day ends later", "the day stops later"))).hasSize(1);
  }

  @Test
  void whatIsSaidMoreOfALineThatIsNotUnderstoodBelongsToNoLineBeforeIt() {
    String text =
        """
        rule two
        when
          there is a screen
          the day stops later than 16:30
            - with more than 2 lays
          there is a paste
            - of glass
        then
          say risk: r.
          because: b.
          mend: m.
        end
        """;
    assertThat(told(text))
        .hasSize(2)
        .satisfies(all -> assertThat(all.get(0)).startsWith(":4: “the day stops"))
        .satisfies(all -> assertThat(all.get(1)).startsWith(":7: “of glass”"));
  }
}

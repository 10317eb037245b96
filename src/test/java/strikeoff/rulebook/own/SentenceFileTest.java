package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.units.Measures;

/** Files of rules in sentences. */
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
  void sentencesBecomeARule() {
    SentenceFile file = read(LATE);
    assertThat(mistakes).isEmpty();
    assertThat(file.rules())
        .extracting(OwnRule::info)
        .containsExactly(
            new RuleInfo(
                "house/late-finish",
                Severity.STOP,
                "Late finish",
                "Paste that dries in a screen overnight stays there.",
                "Day {day} ends at {endsClock}, and the loft is locked at 17:00.",
                "End the day earlier.",
                "a rule of the studio's own, in rules/house/loft.dslr",
                List.of()));
    assertThat(file.read())
        .singleElement()
        .extracting(rule -> rule.models().get(0))
        .satisfies(rule -> assertThat(rule.getName()).isEqualTo("house/late-finish"))
        .satisfies(rule -> assertThat(rule.getPackage()).isEqualTo("rules.house"));
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
    RuleInfo info =
        read(LATE.replace("end\n", "summary: nobody locks up\nsource: the caretaker\nend\n"))
            .rules()
            .get(0)
            .info();
    assertThat(mistakes).isEmpty();
    assertThat(info.summary()).isEqualTo("nobody locks up");
    assertThat(info.source()).isEqualTo("the caretaker");
  }

  @Test
  void aRuleOfWhatIsMissingSpeaksOfThePlanAsAWhole() {
    read(
        """
        rule no reeds
        when:
          there is no screen called reeds
        then:
          say advice: “{title}” has {lays} lays and no reeds.
          because: b.
          mend: m.
        end
        """);
    assertThat(mistakes).isEmpty();
  }

  @Test
  void quotesInWhatIsSaidStayAsTheyAre() {
    assertThat(read(LATE.replace("the loft is", "the \"loft\" is")).rules().get(0).info().message())
        .contains("and the \"loft\" is locked");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          rule "late finish"     | rule ""             | :3: “rule a few words” was expected; this is “rule ""”
          rule "late finish"     | rule "größe"        | :3: a rule's name becomes its id: a few words of the letters a to z and figures; this one is “größe”
          rule "late finish"     | rule "../../x"      | :3: a rule's name becomes its id: a few words of the letters a to z and figures; this one is “../../x”
          because: Paste         | because: {day} Paste | :11: only “say” and “mend” tell values; this is told of the rule, whatever it finds. A brace itself
          End the day earlier    | End {{ the} day     | :12: a brace has no partner here; a brace itself is written twice, {{ or }}
          the day ends later than 16:30 | - of glass   | :5: a line that begins with “-” says more about the line before it
          - with more than 2 lays | - of glass         | :6: “of glass” is no sentence that is known here; the nearest is “
          say Stop: Day          | paint: Day          | :9: “paint: Day {day} ends at {endsClock},” is nothing a rule can do; the nearest is “
          because: Paste         | say stop: Paste     | :11: this is said a second time, first in line 9; a rule says each thing once
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
  void figuresMakeNamesOfTheirOwn() {
    String second = LATE.replace("late finish", "Week 2 - late");
    assertThat(read(LATE.replace("late finish", "week 1") + second).rules())
        .extracting(OwnRule::id)
        .containsExactly("house/week-1", "house/week-2-late");
    assertThat(mistakes).isEmpty();
  }

  @Test
  void aRuleWithoutANameIsToldOnceAndReadToItsEnd() {
    assertThat(told(LATE.replace("late finish", "").replace("{endsClock}", "{endsClok}")))
        .containsExactly(
            ":3: “rule a few words” was expected; this is “rule \"\"”",
            ":9: {endsClok} names no value of what the rule found; did you mean “endsClock”?");
  }

  @Test
  void bracesThatNothingCouldFillAreToldBesideALineThatIsNotUnderstood() {
    String text = LATE.replace("the day ends later", "the day stops later");
    assertThat(told(text.replace("{day}", "{dayz}")))
        .hasSize(2)
        .satisfies(
            all ->
                assertThat(all.get(1))
                    .startsWith(":9: {dayz} names no value of anything that a rule can find"));
  }

  @Test
  void aBraceItselfIsWrittenTwice() {
    RuleInfo info =
        read(LATE.replace("Day {day}", "{{Day}} {day}").replace("because: Paste", "because: {{1}}"))
            .rules()
            .get(0)
            .info();
    assertThat(mistakes).isEmpty();
    assertThat(info.because()).startsWith("{1} that dries");
    assertThat(Sayable.told("{{{day}}} of {{x}}", List.of(new Lay(3)), Measures.METRIC))
        .isEqualTo("{3} of {x}");
  }

  /** A fact for the test. */
  public record Lay(int day, PlanPath path) implements Evidence {
    Lay(int day) {
      this(day, PlanPath.ROOT);
    }
  }

  @Test
  void theLastWordOfWhatIsSaidMayBeEnd() {
    assertThat(read(LATE.replace("at 17:00.", "at the\n    end")).rules().get(0).info().message())
        .endsWith("is locked at the end");
    assertThat(mistakes).isEmpty();
  }

  @Test
  void whatAWordProcessorTypesIsTaken() {
    String typed =
        LATE.replace("  - with", "  – with")
            .replace("rule \"late finish\"", "rule “late finish“")
            .replace("called “reeds”", "called „reeds“")
            .replace("later than", "later\u00a0than")
            .replace("say Stop:", "say\u00a0Stop:");
    assertThat(read(typed).rules().get(0).id()).isEqualTo("house/late-finish");
    assertThat(mistakes).isEmpty();
    assertThat(Typed.condition("• the cloth isn’t called ‘a b’, «c» or \"d\""))
        .isEqualTo("- the cloth isn't called “a b”, “c” or “d”");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u0000", "\u202E", "\u200B"})
  void whatNobodySeesIsTold(String sign) {
    assertThat(told(LATE.replace("Day {day}", "Day" + sign + " {day}")))
        .containsExactly(
            String.format(
                Locale.ROOT,
                ":9:16: the invisible character U+%04X stands here; delete it",
                (int) sign.charAt(0)));
  }

  @Test
  void whatIsSaidHasALength() {
    assertThat(told(LATE.replace("Paste that", "x".repeat(2000))))
        .singleElement()
        .asString()
        .startsWith(":11: what a rule says has at most 1000 letters");
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

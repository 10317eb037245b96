package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.described.ScreenUsed;
import strikeoff.units.Parsed;

/** Sentences that a studio adds, in Drools' notation for such mappings. */
class SentenceTest {

  private static final Sentence PRESS =
      Sentence.of(
          "- between {length} and {length2} for {name}",
          ScreenUsed.class,
          "frameLength.base() > {length}, frameLength.base() < {length2}, designs contains {name}");

  private static String read(Sentence sentence, String text) {
    return sentence.read(text).orElseThrow().toOptional().orElseThrow().replace(".0", "");
  }

  @Test
  void gapsAreFilledInTheirOrder() {
    assertThat(PRESS.gaps()).containsExactly("length", "length2", "name");
    assertThat(read(PRESS, "between 30 cm and  0.5 m for “the bench”"))
        .isEqualTo(
            "frameLength.base() > 300, frameLength.base() < 500, designs contains \"the bench\"");
    assertThat(read(PRESS, "BETWEEN 30 cm And 0.5 m for bench")).contains("\"bench\"");
  }

  @Test
  void aTextThatIsNotWhollyTheSentenceIsNone() {
    assertThat(PRESS.read("between 30 cm and 50 cm for bench at noon")).isEmpty();
    assertThat(PRESS.read("it is between 30 cm and 50 cm for bench")).isEmpty();
    assertThat(PRESS.read("between30 cm and 50 cm for bench")).isEmpty();
  }

  @Test
  void aQuantityHasFourWordsAtMostSoThatTheNextSentenceIsNotTakenForIt() {
    Sentence frame = Sentence.of("longer than {length}", ScreenUsed.class, "x > {length}");
    assertThat(frame.read("longer than 1 yd 2 ft")).as("four words").isPresent();
    assertThat(frame.read("longer than 1 yd 2 ft 3 in")).as("six words").isEmpty();
  }

  @Test
  void whatIsWrongInAGapIsToldWithTheSentence() {
    Parsed<String> read = PRESS.read("between 30 cm and 50 g for bench").orElseThrow();
    assertThat(((Parsed.Refused<String>) read).message())
        .isEqualTo(
            "in “between 30 cm and 50 g for bench”, a length such as 40 cm was expected; “50 g” is"
                + " a mass; the sentence is “between {length} and {length2} for {name}”");
  }

  @Test
  void theDashIsWrittenBeforeTheSentenceAndIsNoPartOfIt() {
    assertThat(PRESS.isMore()).isTrue();
    assertThat(PRESS.said()).startsWith("between");
    assertThat(PRESS.example()).isEqualTo("between 40 cm and 40 cm for “a name”");
    Sentence opening = Sentence.of("there is a screen", ScreenUsed.class, "ScreenUsed()");
    assertThat(opening.isMore()).isFalse();
    assertThat(opening.said()).isEqualTo("there is a screen");
    assertThat(read(opening, "there is a screen")).isEqualTo("ScreenUsed()");
  }

  @Test
  void aGapOfNoKnownKindIsRefused() {
    assertThatThrownBy(() -> Sentence.of("of {smell}", ScreenUsed.class, "x"))
        .hasMessage("no gap is called {smell}");
  }

  @Test
  void aStudiosSentencesStandBesideTheShippedOnes() {
    List<RuleMistake> mistakes = new ArrayList<>();
    Vocabulary shipped = Vocabulary.shipped();
    Vocabulary more =
        shipped.with(
            List.of(
                new RuleFile(
                    "rules/house/words.dsl",
                    "house",
                    """
                    # the press by the window

                    [condition][described.ScreenUsed]- for the little press=frameLength.base() < 300
                    [condition][described.ScreenUsed]a screen lies about=ScreenUsed()
                    [condition][described.Smell]- that smells=true
                    [when] it rains = true
                    [condition][described.ScreenUsed]- of {smell}=true
                    """),
                new RuleFile("rules/house/late.dslr", "house", "no vocabulary")),
            mistakes);
    assertThat(more.more(ScreenUsed.class)).hasSize(shipped.more(ScreenUsed.class).size() + 1);
    assertThat(more.openings()).hasSize(shipped.openings().size() + 1);
    assertThat(mistakes)
        .extracting(RuleMistake::text)
        .containsExactly(
            "rules/house/words.dsl:5: no fact is called described.Smell",
            "rules/house/words.dsl:6: “[condition][fact]sentence=condition” was expected: [when]"
                + " it rains = true",
            "rules/house/words.dsl:7: no gap is called {smell}");
    assertThat(
            Condition.read("a screen lies about for the little press", more)
                .toOptional()
                .orElseThrow()
                .drl("$s"))
        .isEqualTo("$s : ScreenUsed(frameLength.base() < 300)");
  }

  @Test
  void theNearestSentenceIsThatWithFewestOtherLettersForItsLength() {
    Vocabulary words = new Vocabulary(List.of());
    // 2 of 4 letters differ against 3 of 9.
    assertThat(words.nearest("wetfilm", List.of("wet", "wet films", "dry"))).isEqualTo("wet films");
    assertThat(
            words.nearest(
                "longer than 7 cm", List.of("wider than {length}", "longer than {length}")))
        .isEqualTo("longer than {length}");
    assertThat(words.nearest("Dry", List.of("wet", "dry")))
        .as("case is no letter")
        .isEqualTo("dry");
    assertThat(words.nearest("", List.of(""))).isEmpty();
    assertThat(words.nearest("wet", List.of("wat", "wit")))
        .as("the first of equals")
        .isEqualTo("wat");
  }

  @Test
  void everythingThatCanBeSaidInOneLineIsAnOpeningAloneOrWithMore() {
    Vocabulary words =
        new Vocabulary(
            List.of(
                Sentence.of("there is a screen", ScreenUsed.class, "ScreenUsed()"),
                Sentence.of("- without a squeegee", ScreenUsed.class, "x"),
                Sentence.of("- that is old", ScreenUsed.class, "x")));
    assertThat(words.all())
        .containsExactly(
            "there is a screen",
            "there is a screen without a squeegee",
            "there is a screen that is old");
  }

  @Test
  void mistakesAreToldOnceByFileAndDownIt() {
    RuleMistake late = new RuleMistake("b.drl", 12, "x");
    RuleMistake early = new RuleMistake("b.drl", 2, "x");
    RuleMistake whole = new RuleMistake("b.drl", 0, "x");
    RuleMistake other = new RuleMistake("a.drl", 30, "y");
    RuleMistakes all = new RuleMistakes(List.of(late, early, other, whole, early));
    assertThat(all.all()).containsExactly(other, whole, early, late);
    assertThat(whole.text()).isEqualTo("b.drl: x");
    assertThat(early.text()).isEqualTo("b.drl:2: x");
    assertThat(all.getMessage()).contains("a.drl:30: y", "b.drl:12: x");
  }
}

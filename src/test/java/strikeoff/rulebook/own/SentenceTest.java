package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.described.ScreenUsed;

/** Sentences as the files of the vocabulary hold them. */
class SentenceTest {

  private static final Sentence PRESS =
      Sentence.of(
          "- between {length} and {length2} for {name}",
          ScreenUsed.class,
          "frameLength.base() > {length}, frameLength.base() < {length2}, designs contains {name}");

  private static List<Sentence.Match> matches(Sentence sentence, String text) {
    Tokens line = Tokens.of(text);
    return sentence.at(line, 0).stream().filter(m -> m.end() == line.size()).toList();
  }

  private static String read(Sentence sentence, String text) {
    Sentence.Match match = matches(sentence, text).get(0);
    assertThat(match.refused()).isEqualTo(-1);
    return String.join(", ", Asked.texts(sentence.filled(match, new Things()::only)))
        .replace(".0", "");
  }

  @Test
  void gapsAreFilledInTheirOrder() {
    assertThat(read(PRESS, "between 30 cm and  0.5 m for “the bench”"))
        .isEqualTo(
            "frameLength.base > 300, frameLength.base < 500, designs contains \"the bench\"");
    assertThat(read(PRESS, "BETWEEN 30 cm And 0.5 m for bench")).contains("\"bench\"");
  }

  @Test
  void aTextThatIsNotWhollyTheSentenceIsNone() {
    assertThat(matches(PRESS, "between 30 cm and 50 cm for bench at noon")).isEmpty();
    assertThat(matches(PRESS, "it is between 30 cm and 50 cm for bench")).isEmpty();
    assertThat(matches(PRESS, "between30 cm and 50 cm for bench")).isEmpty();
    assertThat(matches(PRESS, "between 30 cm, and 50 cm for bench")).isEmpty();
  }

  @Test
  void aQuantityHasFourWordsAtMostSoThatTheNextSentenceIsNotTakenForIt() {
    Sentence frame =
        Sentence.of("longer than {length}", ScreenUsed.class, "frameLength > {length}");
    assertThat(matches(frame, "longer than 1 yd 2 ft")).as("four words").isNotEmpty();
    assertThat(matches(frame, "longer than 1 yd 2 ft 3 in")).as("six words").isEmpty();
  }

  @Test
  void whatIsWrongInAGapIsToldWhereItStands() {
    Sentence.Match match = matches(PRESS, "between 30 cm and 50 g for bench").get(0);
    assertThat(match.refused()).isEqualTo(4);
    assertThat(match.why()).isEqualTo("a length such as 40 cm was expected; “50 g” is a mass");
  }

  @Test
  void theDashIsWrittenBeforeTheSentenceAndIsNoPartOfIt() {
    assertThat(PRESS.isMore()).isTrue();
    assertThat(PRESS.said()).startsWith("between");
    assertThat(PRESS.example()).isEqualTo("between 40 cm and 40 cm for “a name”");
    Sentence opening = Sentence.of("there is a screen", ScreenUsed.class, "ScreenUsed()");
    assertThat(opening.isMore()).isFalse();
    assertThat(opening.said()).isEqualTo("there is a screen");
    assertThat(read(opening, "there is a screen")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [condition][described.Smell]- that smells=smell == true | no fact is called described.Smell
          [when] it rains = true | “[condition][fact]sentence=condition” was expected: [when] it rains = true
          [condition][described.ScreenUsed]- of {smell}=mesh > {smell} | no gap is called {smell}
          [condition][described.ScreenUsed]- of {length}=mesh > {mesh} | no gap and no value is called {mesh}
          [condition][described.ScreenUsed]- of {length}=smell > {length} | ScreenUsed has no value called smell
          [condition][described.ScreenUsed]- of {length}=mesh | “value > {gap}” was expected: mesh
          """)
  void aLineThatMeansNothingIsRefused(String line, String why) {
    assertThatThrownBy(() -> Vocabulary.of(line)).hasMessage(why);
  }

  @Test
  void aThingIsNamedOnceAndInNumbers() {
    Vocabulary words =
        Vocabulary.of(
            """
            [condition][described.ScreenUsed]there is a screen=ScreenUsed()
            [condition][described.StepTaken]there is a wash=StepTaken(kind == "wash")
            [condition][described.ArrangementPlaced]there is a series=ArrangementPlaced(kind == "series")
            [condition][described.PasteMixed]there is a paste of paint=PasteMixed(paint == true)
            """);
    assertThat(words.nouns())
        .extracting(noun -> noun.many().words())
        .containsExactly("screens", "washes", "series", "pastes of paint");
  }

  @Test
  void theNearestSentenceIsThatWithFewestOtherLettersForItsLength() {
    Vocabulary words = Vocabulary.of("");
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
        Vocabulary.of(
            """
            [condition][described.ScreenUsed]there is a screen=ScreenUsed()
            [condition][described.ScreenUsed]- without a squeegee=squeegeeStated == false
            [condition][described.ScreenUsed]- that is fine=mesh > 61
            """);
    assertThat(words.all())
        .containsExactly(
            "there is a screen",
            "there is a screen without a squeegee",
            "there is a screen that is fine",
            "there are more than {number} screens");
  }

  @Test
  void mistakesAreToldOnceByFileAndDownIt() {
    RuleMistake late = new RuleMistake("b.dslr", 12, "x");
    RuleMistake early = new RuleMistake("b.dslr", 2, "x");
    RuleMistake whole = new RuleMistake("b.dslr", 0, "x");
    RuleMistake other = new RuleMistake("a.dslr", 30, "y");
    RuleMistakes all = new RuleMistakes(List.of(late, early, other, whole, early));
    assertThat(all.all()).containsExactly(other, whole, early, late);
    assertThat(whole.text()).isEqualTo("b.dslr: x");
    assertThat(early.text()).isEqualTo("b.dslr:2: x");
    assertThat(all.getMessage()).contains("a.dslr:30: y", "b.dslr:12: x");
  }
}

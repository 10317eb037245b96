package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.described.ScreenUsed;
import strikeoff.units.Parsed;

/** Sentences of a teacher as the engine compares them; lengths in millimetres, times in minutes. */
class ConditionTest {

  private static final Vocabulary WORDS = Vocabulary.shipped();

  private static String drl(String line) {
    Parsed<Condition> read = Condition.read(line, WORDS);
    assertThat(read).as(line).isInstanceOf(Parsed.Value.class);
    return read.toOptional().orElseThrow().drl("$f");
  }

  private static String refusal(String line) {
    Parsed<Condition> read = Condition.read(line, WORDS);
    assertThat(read).as(line).isInstanceOf(Parsed.Refused.class);
    return ((Parsed.Refused<Condition>) read).message();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          there is a screen | $f : ScreenUsed()
          there is a screen with a mesh finer than 61 per cm | $f : ScreenUsed(mesh.perCm > 61)
          There Is A Screen  with a MESH finer than 61 per cm | $f : ScreenUsed(mesh.perCm > 61)
          there is a screen with a mesh finer than 61 per cm and with a frame longer than 60 cm | $f : ScreenUsed(mesh.perCm > 61, frameLength.base() > 600)
          there is a screen with a mesh finer than 61 per cm, and with a frame longer than 60 cm | $f : ScreenUsed(mesh.perCm > 61, frameLength.base() > 600)
          there is a screen, with a mesh finer than 61 per cm, with a frame longer than 60 cm | $f : ScreenUsed(mesh.perCm > 61, frameLength.base() > 600)
          there is a screen called reeds | $f : ScreenUsed(screen == "reeds")
          there is a screen called “late reeds” and without a squeegee stated | $f : ScreenUsed(screen == "late reeds", squeegeeStated == false)
          there is no paste called “rust” | not PasteMixed(paste == "rust")
          there is no arrangement | not ArrangementPlaced()
          the day ends later than 16:30 | $f : DayWorked(endsAt() > 990)
          the day ends later than 16:30 and with more than 2 lays | $f : DayWorked(endsAt() > 990, lays > 2)
          there is a screen whose frame length is more than 60 cm | $f : ScreenUsed(frameLength().base() > 600)
          there is a screen whose designs include “reeds” and whose mesh is at most 43/cm | $f : ScreenUsed(designs contains "reeds", mesh().base() <= 43)
          """)
  void aSentenceIsAComparison(String line, String drl) {
    assertThat(drl(line).replace(".0", "")).isEqualTo(drl);
  }

  @Test
  void whatIsSaidOfTheAbsentIsSaidOfNothing() {
    Condition none =
        Condition.read("there is no screen called reeds", WORDS).toOptional().orElseThrow();
    assertThat(none.absent()).isTrue();
    assertThat(none.type()).isEqualTo(ScreenUsed.class);
    assertThat(none.constraints()).containsExactly("screen == \"reeds\"");
    assertThat(Condition.read("there is a screen called reeds", WORDS).toOptional().orElseThrow())
        .isEqualTo(new Condition(ScreenUsed.class, none.constraints(), false));
  }

  @Test
  void aSentenceOfThreeHundredLettersIsReadAndALongerOneIsNot() {
    String start = "there is a screen called “";
    // The closing quote is the last letter.
    String longest = start + "x".repeat(300 - start.length() - 1) + "”";
    assertThat(longest).hasSize(300);
    assertThat(drl(longest)).contains("x".repeat(200));
    assertThat(refusal(longest.replace("“x", "“xx")))
        .isEqualTo("a sentence has at most 300 letters");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          there is a scren | “there is a scren” is no sentence that is known here; the nearest is “there is a screen”
          there is no scren | “there is no scren” is no sentence that is known here; the nearest is “there is a screen”
          there is a screen of glass and without a squeegee stated | “of glass and without a squeegee stated” is no sentence that is known here; the nearest is “without a squeegee stated”
          there is a screen with a frame longer than 60 g | in “with a frame longer than 60 g”, a length such as 40 cm was expected; “60 g” is a mass; the sentence is “with a frame longer than {length}”
          there is a screen without a squeegee stated and caled reeds | “caled reeds” is no sentence that is known here; the nearest is “called {screen}”
          there is a screen whose frame lenght is 4 cm | nothing here is called “frame lenght”; did you mean “frame length”?
          the day ends later than 25:10 | in “the day ends later than 25:10”, a time of day such as 16:00 was expected; “25:10” is none; the sentence is “the day ends later than {clock}”
          """)
  void whatIsNotUnderstoodIsToldWithTheNearestSentence(String line, String told) {
    assertThat(refusal(line)).isEqualTo(told);
  }

  @Test
  void moreIsSaidOfAFactInAnyNumberOfParts() {
    Parsed<List<String>> more =
        Condition.more(
            "with a frame longer than 60 cm and with a frame wider than 50 cm, called reeds",
            ScreenUsed.class,
            WORDS);
    assertThat(more.toOptional().orElseThrow())
        .extracting(c -> c.replace(".0", ""))
        .containsExactly(
            "frameLength.base() > 600", "frameWidth.base() > 500", "screen == \"reeds\"");
    assertThat(Condition.more("", ScreenUsed.class, WORDS).toOptional().orElseThrow()).isEmpty();
    assertThat(Condition.more("and ", ScreenUsed.class, WORDS).toOptional().orElseThrow())
        .isEmpty();
  }
}

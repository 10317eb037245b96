package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.described.ScreenUsed;
import strikeoff.units.Parsed;

/** Sentences of a teacher as the engine compares them; lengths in millimetres, times in minutes. */
class ClauseTest {

  private static final Vocabulary WORDS = Vocabulary.shipped();

  /** What a line asks for that says no “either”. */
  static Clause clause(String line) {
    Parsed<List<Clause>> read = LineReader.read(line, WORDS, new Things());
    assertThat(read).as(line).isInstanceOf(Parsed.Value.class);
    assertThat(read.toOptional().orElseThrow()).hasSize(1);
    return read.toOptional().orElseThrow().get(0);
  }

  private static String asked(String line) {
    Clause clause = clause(line);
    return (clause.form() instanceof Clause.None ? "no " : "")
        + clause.type().getSimpleName()
        + "("
        + String.join(", ", clause.constraints())
        + ")";
  }

  private static String refusal(String line) {
    Parsed<List<Clause>> read = LineReader.read(line, WORDS, new Things());
    assertThat(read).as(line).isInstanceOf(Parsed.Refused.class);
    return ((Parsed.Refused<List<Clause>>) read).message();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          there is a screen | ScreenUsed()
          there is a screen with a mesh finer than 61 per cm | ScreenUsed(mesh.perCm > 61)
          There Is A Screen  with a MESH finer than 61 per cm | ScreenUsed(mesh.perCm > 61)
          there is a screen with a mesh finer than 61 per cm and with a frame longer than 60 cm | ScreenUsed(mesh.perCm > 61, frameLength.base > 600)
          there is a screen with a mesh finer than 61 per cm, and with a frame longer than 60 cm | ScreenUsed(mesh.perCm > 61, frameLength.base > 600)
          there is a screen, with a mesh finer than 61 per cm, with a frame longer than 60 cm | ScreenUsed(mesh.perCm > 61, frameLength.base > 600)
          there is a screen called reeds | ScreenUsed(screen == "reeds")
          there is a screen called “late reeds” and without a squeegee stated | ScreenUsed(screen == "late reeds", squeegeeStated == false)
          there is no paste called “rust” | no PasteMixed(paste == "rust")
          there is no arrangement | no ArrangementPlaced()
          the day ends later than 16:30 | DayWorked(endsAt > 990)
          the day ends later than 16:30 and with more than 2 lays | DayWorked(endsAt > 990, lays > 2)
          there is a screen whose frame length is more than 60 cm | ScreenUsed(frameLength.base > 600)
          there is a screen whose designs include “reeds” and whose mesh is at most 43/cm | ScreenUsed(designs contains "reeds", mesh.base <= 43)
          """)
  void aSentenceIsAComparison(String line, String asked) {
    assertThat(asked(line).replace(".0", "")).isEqualTo(asked);
  }

  @Test
  void whatIsSaidOfTheAbsentIsSaidOfNothing() {
    Clause none = clause("there is no screen called reeds");
    assertThat(none.form()).isEqualTo(new Clause.None());
    assertThat(none.finds()).isFalse();
    assertThat(none.type()).isEqualTo(ScreenUsed.class);
    assertThat(none.constraints()).containsExactly("screen == \"reeds\"");
    assertThat(clause("there is a screen called reeds").finds()).isTrue();
  }

  @Test
  void aSentenceOfThreeHundredLettersIsReadAndALongerOneIsNot() {
    String start = "there is a screen called “";
    // The closing quote is the last letter.
    String longest = start + "x".repeat(300 - start.length() - 1) + "”";
    assertThat(longest).hasSize(300);
    assertThat(asked(longest)).contains("x".repeat(200));
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
    assertThat(
            more("with a frame longer than 60 cm and with a frame wider than 50 cm, called reeds"))
        .extracting(c -> c.replace(".0", ""))
        .containsExactly("frameLength.base > 600", "frameWidth.base > 500", "screen == \"reeds\"");
    assertThat(more("")).isEmpty();
    assertThat(more("and ")).isEmpty();
  }

  private static List<String> more(String text) {
    return Asked.texts(
        LineReader.more(text, ScreenUsed.class, WORDS, new Things()).toOptional().orElseThrow());
  }
}

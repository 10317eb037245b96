package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Medium;
import strikeoff.units.Length;
import strikeoff.units.Parsed;
import strikeoff.units.Range;
import strikeoff.units.Span;

/** What can be asked of any value of a fact, whatever the fact is. */
class AskableValuesTest {

  /** A thing with a name, as screens and pastes are. */
  public record Named(String name, int size) {}

  /** A thing whose first value is no name. */
  public record Sized(int size, String name) {}

  /** A fact with a value of each kind. */
  public record Every(
      String screen,
      boolean turned,
      int copies,
      double factor,
      Range guess,
      Length framePitch,
      Medium medium,
      Named design,
      Sized sized,
      List<String> pastes,
      List<Integer> numbers,
      PlanPath path)
      implements Evidence {

    /** A value that is worked out. */
    public Span wait40() {
      return new Span(40);
    }

    public Length beyond(Length other) {
      return other;
    }

    public static int made() {
      return 1;
    }
  }

  private static final Vocabulary NONE = Vocabulary.of("");

  private static Parsed<List<Asked>> parsed(String text) {
    return LineReader.more(text, Every.class, NONE, new Things());
  }

  private static String read(String text) {
    return String.join(", ", Asked.texts(parsed(text).toOptional().orElseThrow()));
  }

  private static String refusal(String text) {
    return ((Parsed.Refused<List<Asked>>) parsed(text)).message();
  }

  @Test
  void everyValueThatCanBeComparedHasWords() {
    assertThat(AskableValues.of(Every.class).keySet())
        .containsExactly(
            "copies",
            "design",
            "factor",
            "frame pitch",
            "guess",
            "medium",
            "pastes",
            "screen",
            "turned",
            "wait40");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          whose screen is “reeds”            | screen == "reeds"
          whose screen is not reeds          | screen != "reeds"
          whose turned is yes                | turned == true
          whose turned is not yes            | turned != true
          whose copies is more than 6        | copies > 6
          whose copies is less than 6        | copies < 6
          whose copies is at least 6         | copies >= 6
          whose copies is at most 6          | copies <= 6
          whose copies is 6                  | copies == 6
          whose copies is not 6              | copies != 6
          whose factor is less than 1.5      | factor < 1.5
          whose guess is at least 3          | guess.best >= 3
          whose frame pitch is less than 30 cm | framePitch.base < 300
          Whose Frame  Pitch IS Less  Than 30 cm | framePitch.base < 300
          whose wait40 is more than 1 h      | wait40.base > 60
          whose medium is “dye paste”        | medium.text == "dye paste"
          whose design is “reeds”            | design.name == "reeds"
          whose pastes include “rust”        | pastes contains "rust"
          whose pastes do not include “rust” | pastes not contains "rust"
          """)
  void eachIsComparedAsItsKindAllows(String text, String asked) {
    assertThat(read(text).replaceAll("\\.0$", "")).isEqualTo(asked);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          whose screen is more than “reeds” | “screen” can't be asked so; write “whose screen is “small fine””
          whose screen is at most reeds     | “screen” can't be asked so; write “whose screen is “small fine””
          whose turned is less than yes     | “turned” can't be asked so; write “whose turned is yes”
          whose screen include “reeds”      | “screen” can't be asked so; write “whose screen is “small fine””
          whose copies include 6            | “copies” can't be asked so; write “whose copies is more than 6”
          whose pastes is “rust”            | “pastes” can't be asked so; write “whose pastes include “rust””
          whose pastes is not “rust”        | “pastes” can't be asked so; write “whose pastes include “rust””
          whose skreen is “reeds”           | nothing here is called “skreen”; did you mean “screen”?
          whose smell is “reeds”            | nothing here is called “smell”; there are copies, design, factor, frame pitch, guess, medium, pastes, screen, turned, wait40
          whose copies is more than 6 cm    | a plain number such as 20 was expected; “6 cm” is a length
          """)
  void whatMakesNoSenseIsToldWithWhatWould(String text, String told) {
    assertThat(refusal(text)).isEqualTo(told);
  }

  @Test
  void aNameEndsWithItsQuoteAndWhatFollowsIsAnotherSentence() {
    assertThat(read("whose screen is “reeds” and whose copies is 6"))
        .isEqualTo("screen == \"reeds\", copies == 6.0");
    assertThat(refusal("whose screen is late reeds")).startsWith("“reeds” is no sentence");
  }

  @Test
  void anotherFormIsNoneOfThese() {
    assertThat(refusal("with a mesh finer than 61 per cm")).contains("is no sentence");
    assertThat(refusal("whose copies")).contains("the nearest is “whose copies is more than 6”");
  }

  @Test
  void examplesOfAFactCanAllBeRead() {
    List<String> examples = DescriptionReader.examples(Every.class);
    assertThat(examples)
        .hasSize(10)
        .contains(
            "whose copies is more than 6",
            "whose pastes include “rust”",
            "whose screen is “small fine”",
            "whose turned is yes",
            "whose frame pitch is more than 40 cm");
    assertThat(examples).allSatisfy(example -> assertThat(read(example)).isNotEmpty());
    assertThat(DescriptionReader.examples(Named.class)).as("no fact").isEmpty();
  }
}

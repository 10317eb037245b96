package strikeoff.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody most likely meant, and when nobody can tell. */
class SpellingTest {

  private static final List<String> KNOWN =
      List.of("cm", "pitch", "placements", "dye", "paste", "fabric", "fixing bath", "squeegee");

  @ParameterizedTest
  @CsvSource({
    "pich, pitch", // dropped
    "pittch, pitch", // doubled
    "pitsh, pitch", // changed
    "ptich, pitch", // swapped
    "ipthc, pitch|none", // two swaps are more than a third of five letters
    "PITCH, pitch", // case
    "fixing-bath, fixing bath", // hyphens for spaces
    "fixing_bath, fixing bath",
    "squegee, squeegee",
    "sqeuegee, squeegee",
    "place, placements", // begun
    "pas, paste",
    "dyestuffs, dye",
    "placementsofmotifs, placements", // run on
    "reactive dye, dye", // a word of several
    "cn, cm"
  })
  void theNearestWord(String written, String meant) {
    if (meant.endsWith("|none")) {
      assertThat(Spelling.nearest(written, KNOWN)).isEmpty();
    } else {
      assertThat(Spelling.nearest(written, KNOWN)).hasValue(meant);
    }
  }

  @Test
  void whatIsFarFromEverythingMeansNothing() {
    assertThat(Spelling.nearest("wavelength", KNOWN)).isEmpty();
    assertThat(Spelling.nearest("", KNOWN)).isEmpty();
    assertThat(Spelling.nearest("--", KNOWN)).isEmpty();
    assertThat(Spelling.nearest("pa", List.of("paste"))).isEmpty();
    assertThat(Spelling.nearest("cmabcdef", List.of("cm"))).isEmpty();
    // dye stands in dyeing, but not as a word of its own.
    assertThat(Spelling.nearest("over dyeing", List.of("dye"))).isEmpty();
  }

  @Test
  void oneLetterTellsNothingOfAnother() {
    assertThat(Spelling.nearest("x", List.of("y"))).isEmpty();
    assertThat(Spelling.nearest("m", List.of("cm"))).hasValue("cm");
  }

  @Test
  void theNearerOfTwoWins() {
    assertThat(Spelling.nearest("masks", List.of("mash", "mask"))).hasValue("mask");
    assertThat(Spelling.nearest("masks", List.of("mask", "mash"))).hasValue("mask");
  }

  @Test
  void noPatienceForEndlessWords() {
    String longest = "a".repeat(60);
    assertThat(Spelling.nearest(longest, List.of(longest))).hasValue(longest);
    assertThat(Spelling.nearest(longest + "a", List.of(longest))).isEmpty();
  }

  @Test
  void asksInWords() {
    assertThat(Spelling.didYouMean("pich", KNOWN)).isEqualTo("; did you mean “pitch”?");
    assertThat(Spelling.didYouMean("wavelength", KNOWN)).isEmpty();
  }

  @Test
  void quotesForeignTextOnOneShortLine() {
    assertThat(Script.quoted("a\nb\u202ec\u2028")).isEqualTo("“a□b□c□”");
    assertThat(Script.quoted("x".repeat(40))).isEqualTo("“" + "x".repeat(40) + "”");
    assertThat(Script.quoted("x".repeat(41))).isEqualTo("“" + "x".repeat(40) + "…”");
  }
}

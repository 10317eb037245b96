package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Parsed;
import strikeoff.units.Span;

/** What stands in gaps, as the engine gets it: in the base units that OWN-RULES.md lists. */
class KindTest {

  private static Object read(Kind kind, String text) {
    return kind.read(text).toOptional().orElseThrow();
  }

  private static String refusal(Kind kind, String text) {
    return ((Parsed.Refused<Object>) kind.read(text)).message();
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          LENGTH,        40 cm,     400
          LENGTH,        1 in,      25.4
          LENGTH,        20 m,      20000
          AREA,          0.5 m²,    5000
          MASS,          0.09 kg,   90
          VOLUME,        500 ml,    0.5
          TIME,          1.5 h,     90
          TEMPERATURE,   212 °F,    100
          SHARE,         50 %,      0.5
          WEIGHT,        180 g/m²,  180
          CONCENTRATION, 38 g/L,    38
          MESH,          110/in,    43.307
          SPEED,         0.3 m/s,   0.3
          ANGLE,         90°,       90
          NUMBER,        6,         6
          CLOCK,         00:00,     0
          CLOCK,         9:05,      545
          CLOCK,         16:30,     990
          CLOCK,         23:59,     1439
          """)
  void quantitiesComeInBaseUnits(Kind kind, String text, double base) {
    assertThat((Double) read(kind, text)).isCloseTo(base, within(1e-3));
  }

  @Test
  void noFigureIsWrittenWithAPowerOfTen() {
    // Java writes 0.0005 as 5.0E-4.
    assertThat(new Than.Figure(read(Kind.SHARE, "0.05 %")).text())
        .doesNotContain("E")
        .startsWith("0.0005");
  }

  @Test
  void smallNumbersMayBeWords() {
    assertThat(read(Kind.NUMBER, "three")).isEqualTo(3.0);
    assertThat(read(Kind.NUMBER, "twelve")).isEqualTo(12.0);
    assertThat(refusal(Kind.NUMBER, "umpteen")).contains("number");
  }

  @ParameterizedTest
  @ValueSource(strings = {"16.30", "24:00", "12:60", "7", "noon", "116:00"})
  void aTimeOfDayHasTheFormThatClocksShow(String text) {
    assertThat(refusal(Kind.CLOCK, text))
        .isEqualTo("a time of day such as 16:00 was expected; “" + text + "” is none");
  }

  @Test
  void yesAndNoMayAlsoBeTrueAndFalse() {
    assertThat(read(Kind.ANSWER, "yes")).isEqualTo(true);
    assertThat(read(Kind.ANSWER, "true")).isEqualTo(true);
    assertThat(read(Kind.ANSWER, "no")).isEqualTo(false);
    assertThat(read(Kind.ANSWER, "false")).isEqualTo(false);
    assertThat(refusal(Kind.ANSWER, "maybe"))
        .isEqualTo("yes or no was expected; “maybe” is neither");
  }

  @Test
  void aNameIsTheSameWithAndWithoutQuotes() {
    assertThat(read(Kind.NAME, "“reeds”")).isEqualTo("reeds");
    assertThat(read(Kind.NAME, "\"reeds\"")).isEqualTo("reeds");
    assertThat(read(Kind.NAME, "reeds")).isEqualTo("reeds");
  }

  @Test
  void aNameCannotEndTheTextThatItStandsIn() {
    // Java's own escapes: a quote and a backslash each get a backslash before them.
    assertThat(new Than.Figure(read(Kind.NAME, "a\"b\\c")).text()).isEqualTo("\"a\\\"b\\\\c\"");
  }

  @Test
  void aGapIsCalledByItsKindWithANumberIfThereAreTwo() {
    assertThat(Kind.of("length")).contains(Kind.LENGTH);
    assertThat(Kind.of("length2")).contains(Kind.LENGTH);
    assertThat(Kind.of("lengthy")).isEmpty();
    assertThat(Kind.of("2length")).isEmpty();
  }

  @Test
  void aQuantityHasTheKindOfItsType() {
    assertThat(Kind.of(Length.class)).contains(Kind.LENGTH);
    assertThat(Kind.of(Span.class)).contains(Kind.TIME);
    assertThat(Kind.of(MeshCount.class)).contains(Kind.MESH);
    assertThat(Kind.of(String.class)).isEmpty();
  }

  @Test
  void everyExampleCanBeReadInItsOwnGap() {
    for (Kind kind : Kind.values()) {
      Tokens line = Tokens.of(kind.example());
      assertThat(kind.at(line, 0))
          .as(kind.example())
          .anySatisfy(
              read -> {
                assertThat(read.words()).isEqualTo(line.size());
                assertThat(read.value().toOptional()).isPresent();
              });
    }
  }
}

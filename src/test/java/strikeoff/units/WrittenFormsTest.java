package strikeoff.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the expressions for schemas match is what reading takes, and nothing else. */
class WrittenFormsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "40 cm",
        "40cm",
        "40 CM",
        "40 centimetres",
        "1 1/2 in",
        "1½ in",
        "½ in",
        ".5 cm",
        "+3 cm",
        "-3 cm",
        "5 ft 3 in",
        "1 m 20 cm",
        "80 µm",
        "80 μm",
        "40\u00a0cm",
        " 40  cm ",
        "40",
        "cm",
        "40 cn",
        "4 0 cm",
        "35 min",
        "40 cm wide",
        "1..5 cm",
        "1/ cm",
        ""
      })
  void lengths(String text) {
    isMatchedIfRead(text, Length.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"-5 °C", "−5 °C", "20° C", "20 ºC", "68 °F", "+20 C", "20 K", "20", "x"})
  void temperaturesMayLieBelowZero(String text) {
    isMatchedIfRead(text, Temperature.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"180 g/m²", "180 g / m2", "180 g/m^2", "180 gsm", "5 oz/yd²", "180 g/m", "180 g"})
  void massesPerArea(String text) {
    isMatchedIfRead(text, ArealMass.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1 sq yd", "1 sq  yd", "1 sqyd", "380 cm2", "380 cm^2", "380 cm"})
  void areas(String text) {
    isMatchedIfRead(text, Area.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"20", "20:1", "20 :1", "20:2", "-20", "20 x"})
  void ratios(String text) {
    isMatchedIfRead(text, Ratio.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"50 %", "50%", "50", "43 % 2 %", "1/2 %"})
  void sharesAddUpToNothing(String text) {
    isMatchedIfRead(text, Share.class);
  }

  private static void isMatchedIfRead(String text, Class<? extends Quantity> type) {
    boolean read = Quantities.parse(text, type) instanceof Parsed.Value<?>;
    assertThat(text.matches(WrittenForms.of(type))).as(text).isEqualTo(read);
  }

  @Test
  void whatIsMoreThanNothingHasADigitAboveZero() {
    String form = WrittenForms.aboveZero(Length.class);
    assertThat("0.5 cm").matches(form);
    assertThat("½ cm").matches(form);
    assertThat("0 cm").doesNotMatch(form);
    assertThat("0.00 cm").doesNotMatch(form);
    assertThat("-1 cm").doesNotMatch(form);
  }

  @Test
  void eitherSideOfZero() {
    assertThat("-3 cm").matches(WrittenForms.signed(Length.class));
    assertThat("−3 cm").matches(WrittenForms.signed(Length.class));
    assertThat("3 cm").matches(WrittenForms.signed(Length.class));
    assertThat("3 min").doesNotMatch(WrittenForms.signed(Length.class));
  }

  @ParameterizedTest
  @ValueSource(strings = {"15 g", "2 US cups", "1 lb 4 oz", "500 ml", "5 cm", "-15 g", "15"})
  void amountsAreMassesOrVolumes(String text) {
    boolean read = Quantities.parseAmount(text) instanceof Parsed.Value<?>;
    assertThat(text.matches(WrittenForms.amount())).as(text).isEqualTo(read);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "54 x 74 cm",
        "54cm×74cm",
        "54 X 74 cm",
        "1 1/2 x 2 in",
        "54 by 74 cm",
        "54 cm",
        "54 x 74",
        "54 x 74 min",
        "-54 x 74 cm"
      })
  void sizes(String text) {
    boolean read = Pair.size(text) instanceof Parsed.Value<?>;
    assertThat(text.matches(WrittenForms.size())).as(text).isEqualTo(read);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12 cm, -5 cm",
        "12, 5 cm",
        "12 cm; 5 cm",
        "12 cm;5 cm",
        "-12 cm, 0 cm",
        "12 cm 5 cm",
        "12 cm,",
        "12 cm, 5"
      })
  void places(String text) {
    boolean read = Pair.place(text) instanceof Parsed.Value<?>;
    assertThat(text.matches(WrittenForms.place())).as(text).isEqualTo(read);
  }
}

package strikeoff.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a printer reads quantities: the unit that the hand would choose, at each size's edge too. */
class TextTest {

  @ParameterizedTest
  @CsvSource({
    "0.08, 0.08 mm",
    "-0.08, -0.08 mm",
    "1, 1 mm",
    "2.54, 2.5 mm",
    "9.9, 9.9 mm",
    "10, 1 cm",
    "-10, -1 cm",
    "25.4, 2.5 cm",
    "900, 90 cm",
    "1000, 1 m",
    "-1000, -1 m",
    "1234, 123.4 cm",
    "2100, 2.1 m",
    "-2100, -2.1 m"
  })
  void lengths(double mm, String text) {
    assertThat(new Length(mm).text()).isEqualTo(text);
    assertThat(new Length(mm)).hasToString(text);
  }

  @Test
  void aPitchIsNeverRoundedUp() {
    // 20.5499 cm eleven times must not become 226.05 cm on a table of 226.04 cm.
    assertThat(new Length(205.4999).fineText(Measures.METRIC)).isEqualTo("20.549 cm");
    assertThat(new Length(205.5).fineText(Measures.METRIC)).isEqualTo("20.55 cm");
    // A hundred times 0.29 is a hair below 29 in doubles, which must not cost a hundredth.
    assertThat(new Length(0.29).fineText(Measures.METRIC)).isEqualTo("0.029 cm");
    assertThat(new Length(205).writtenText(Measures.METRIC)).isEqualTo("20.5 cm");
    assertThat(new Length(205.25).writtenText(Measures.METRIC)).isEqualTo("20.525 cm");
    assertThat(new Length(2100).writtenText(Measures.METRIC)).isEqualTo("2.1 m");
    assertThat(new Length(205.25 + 0.75 + 1e-9).writtenText(Measures.METRIC)).isEqualTo("20.6 cm");
  }

  @ParameterizedTest
  @CsvSource({
    "0.25, 0.3 g",
    "9.5, 9.5 g",
    "10, 10 g",
    "-10.4, -10 g",
    "10.4, 10 g",
    "999, 999 g",
    "1000, 1 kg",
    "-1250, -1.25 kg",
    "1250, 1.25 kg"
  })
  void masses(double grams, String text) {
    assertThat(new Mass(grams).text()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"0.25, 250 ml", "0.999, 999 ml", "1, 1 L", "-1, -1 L", "12.34, 12.3 L"})
  void volumes(double litres, String text) {
    assertThat(new Volume(litres).text()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"380, 380 cm²", "9999, 9999 cm²", "10000, 1 m²", "15500, 1.55 m²"})
  void areas(double squareCm, String text) {
    assertThat(new Area(squareCm).text()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0 min",
    "0.5, 30 s",
    "-0.5, -30 s",
    "1, 1 min",
    "-1, -1 min",
    "1.5, 1.5 min",
    "9.5, 9.5 min",
    "10, 10 min",
    "10.4, 10 min",
    "-10.4, -10 min",
    "119, 119 min",
    "-119, -119 min",
    "120, 2 h",
    "-150, -2 h 30 min",
    "150, 2 h 30 min",
    "2879, 47 h 59 min",
    "2880, 2 days",
    "5400, 3.8 days",
    "-2880, -2 days"
  })
  void times(double minutes, String text) {
    assertThat(new Span(minutes).text()).isEqualTo(text);
  }

  @Test
  void sumsAndScales() {
    assertThat(new Length(254).plus(new Length(46))).isEqualTo(new Length(300));
    assertThat(new Length(254).minus(new Length(54))).isEqualTo(new Length(200));
    assertThat(new Length(254).times(3)).isEqualTo(new Length(762));
    assertThat(new Length(2540).m()).isEqualTo(2.54);
    assertThat(new Length(1)).isLessThan(new Length(2));
    assertThat(new Mass(450).times(2)).isEqualTo(new Mass(900));
    assertThat(new Mass(450).kilograms()).isEqualTo(0.45);
    assertThat(new Mass(1)).isLessThan(new Mass(2));
    assertThat(new Volume(1.5).ml()).isEqualTo(1500);
    assertThat(new Volume(1)).isLessThan(new Volume(2));
    assertThat(Span.ofSeconds(90)).isEqualTo(new Span(1.5));
    assertThat(new Span(1.5).plus(new Span(2))).isEqualTo(new Span(3.5));
    assertThat(new Span(1.5).seconds()).isEqualTo(90);
    assertThat(new Span(1)).isLessThan(new Span(2));
    assertThat(new Share(0.35).percent()).isCloseTo(35, within(1e-12));
    assertThat(new Temperature(-5)).isLessThan(new Temperature(20));
    assertThat(new MeshCount(43)).isLessThan(new MeshCount(77));
  }

  @Test
  void aQuantityComesBackFromItsDimensionAndNumber() {
    assertThat(Quantities.parseAny("35 min").toOptional()).contains(new Span(35));
    assertThat(Quantities.parseAny("-5 °C").toOptional()).contains(new Temperature(-5));
    assertThat(Quantities.parseAny("pale").toOptional()).isEmpty();
    Length length = Length.ofCm(40);
    assertThat(Quantities.of(Quantities.dimension(length), length.base())).isEqualTo(length);
    assertThat(Quantities.expected(Length.class)).isEqualTo("a length such as 40 cm");
    assertThat(Numbers.fixed(2.5, 2)).isEqualTo("2.50");
    assertThat(Numbers.fixed(0.125, 2)).isEqualTo("0.13");
  }

  @Test
  void quantitiesOfOneKindHaveAnOrder() {
    assertThat(new Area(1)).isLessThan(new Area(2));
    assertThat(new ArealMass(150)).isLessThan(new ArealMass(180));
    assertThat(new Concentration(20)).isLessThan(new Concentration(38));
    assertThat(new AirSpeed(0.1)).isLessThan(new AirSpeed(0.3));
    assertThat(new Angle(-90)).isLessThan(new Angle(90));
    assertThat(new Share(0.35)).isLessThan(new Share(0.5));
    assertThat(new Ratio(1)).isLessThan(new Ratio(20));
  }

  @Test
  void aQuantityInASentenceIsItsText() {
    assertThat(new Area(380)).hasToString("380 cm²");
    assertThat(new ArealMass(180)).hasToString("180 g/m²");
    assertThat(new Concentration(38)).hasToString("38 g/L");
    assertThat(new AirSpeed(0.3)).hasToString("0.3 m/s");
    assertThat(new Angle(90)).hasToString("90°");
    assertThat(new Mass(90)).hasToString("90 g");
    assertThat(new MeshCount(43)).hasToString("43/cm");
    assertThat(new Ratio(20)).hasToString("20");
    assertThat(new Share(0.5)).hasToString("50 %");
    assertThat(new Span(35)).hasToString("35 min");
    assertThat(new Temperature(20)).hasToString("20 °C");
    assertThat(new Volume(0.5)).hasToString("500 ml");
  }

  @Test
  void whatNobodyMeasuresFinelyIsRounded() {
    assertThat(Ratio.toTenth(2.34)).isEqualTo(new Ratio(2.3));
    assertThat(Ratio.toTenth(-2.36)).isEqualTo(new Ratio(-2.4));
    assertThat(new Span(4.2).wholeMinutesUp()).isEqualTo(new Span(5));
    assertThat(new Span(5).wholeMinutesUp()).isEqualTo(new Span(5));
    // A sum of seconds that comes to five minutes and a hair is five minutes.
    assertThat(new Span(5 + 1e-12).wholeMinutesUp()).isEqualTo(new Span(5));
  }

  @Test
  void quarterTurnsLieSquare() {
    assertThat(new Angle(0).square()).isTrue();
    assertThat(new Angle(-270).square()).isTrue();
    assertThat(new Angle(45).square()).isFalse();
    assertThat(new Angle(90.5).square()).isFalse();
  }
}

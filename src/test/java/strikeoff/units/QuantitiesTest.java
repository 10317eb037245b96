package strikeoff.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sizes of units against NIST SP 811 appendix B, NIST Handbook 44 appendix C and the UCUM table,
 * whose codes stand beside each.
 */
class QuantitiesTest {

  @ParameterizedTest
  @CsvSource({
    "1 in, 25.4", // UCUM [in_i], exact
    "19 in, 482.6",
    "1 ft, 304.8", // [ft_i] = 12 in
    "1 yd, 914.4", // [yd_i] = 3 ft
    "1.5 yd, 1371.6",
    "80 µm, 0.08",
    "80 μm, 0.08",
    "80 um, 0.08",
    "5 ft 3 in, 1600.2",
    "2.1 m, 2100",
    "1 1/2 in, 38.1",
    "1½ in, 38.1",
    "40 CM, 400",
    "40cm, 400",
    "40 centimetres, 400",
    "1 inch, 25.4",
    "1 m 20 cm, 1200"
  })
  void lengthsAreExact(String text, double mm) {
    assertThat(read(text, Length.class).mm()).isEqualTo(mm);
  }

  @ParameterizedTest
  @CsvSource({
    "1 US gal, 3.785411784", // [gal_us] = 231 in³
    "2 US gal, 7.570823568",
    "1 imp gal, 4.54609", // [gal_br]
    "2 imp gal, 9.09218",
    "1 US quart, 0.946352946", // gal/4
    "1 US pint, 0.473176473", // gal/8
    "1 US cup, 0.2365882365", // [cup_us]
    "1 US fl oz, 0.0295735295625", // [foz_us]
    "1 US tbsp, 0.01478676478125", // [tbs_us]
    "1 US tsp, 0.00492892159375", // [tsp_us]
    "1 imp fl oz, 0.0284130625", // [foz_br] = gal/160
    "1 metric cup, 0.25", // kitchen use; from memory
    "1 metric tbsp, 0.015", // [tbs_m]
    "1 metric tsp, 0.005", // [tsp_m]
    "500 ml, 0.5",
    "20 L, 20",
    "20 litres, 20"
  })
  void volumesAreExact(String text, double litres) {
    assertThat(read(text, Volume.class).litres()).isCloseTo(litres, within(litres * 1e-14));
  }

  @ParameterizedTest
  @CsvSource({
    "1 lb, 453.59237", // [lb_av] = 7000 gr of 64.79891 mg
    "1 oz, 28.349523125", // lb/16
    "2 lb 4 oz, 1020.5828325",
    "90 g, 90",
    "1.2 kg, 1200"
  })
  void massesAreExact(String text, double grams) {
    assertThat(read(text, Mass.class).grams()).isCloseTo(grams, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "32 °F, 0", // UCUM degF: (F − 32)/1.8
    "68 °F, 20",
    "212 °F, 100",
    "70 °F, 21.111111111",
    "350 °F, 176.666666667",
    "302 °F, 150",
    "20 °C, 20",
    "20° C, 20",
    "20 C, 20",
    "-5 °C, -5",
    "−5 °C, -5"
  })
  void temperaturesFollowTheirZeros(String text, double celsius) {
    assertThat(read(text, Temperature.class).celsius()).isCloseTo(celsius, within(1e-9));
  }

  @Test
  void compoundUnitsFollowFromTheExactOnes() {
    // 28.349523125 g over 0.83612736 m²
    assertThat(read("1 oz/yd²", ArealMass.class).gramsPerSquareMetre())
        .isCloseTo(33.90574747488, within(1e-9));
    assertThat(read("5 oz/yd2", ArealMass.class).gramsPerSquareMetre())
        .isCloseTo(5 * 33.90574747488, within(1e-8));
    assertThat(read("1 oz/US gal", Concentration.class).gramsPerLitre())
        .isCloseTo(7.48915170731, within(1e-9));
    assertThat(read("180 g/m²", ArealMass.class)).isEqualTo(read("180 g / m2", ArealMass.class));
    assertThat(read("180 g/m^2", ArealMass.class)).isEqualTo(read("180 gsm", ArealMass.class));
    assertThat(read("38 g/L", Concentration.class).gramsPerLitre()).isEqualTo(38);
    assertThat(read("2 % w/v", Concentration.class).gramsPerLitre()).isEqualTo(20);
  }

  @ParameterizedTest
  @CsvSource({"110/in, 43.307", "156/in, 61.417", "230/in, 90.551", "305 /in, 120.079"})
  void meshCountsPerInch(String text, double perCm) {
    assertThat(read(text, MeshCount.class).perCm()).isCloseTo(perCm, within(1e-3));
  }

  @Test
  void timesAddUp() {
    assertThat(read("1 h 30 min", Span.class).minutes()).isEqualTo(90);
    assertThat(read("1h30min", Span.class).minutes()).isEqualTo(90);
    assertThat(read("1 min 30 s", Span.class).minutes()).isEqualTo(1.5);
    assertThat(read("90 s", Span.class).minutes()).isEqualTo(1.5);
    assertThat(read("2 days", Span.class).hours()).isEqualTo(48);
    assertThat(read("1 day 6 h", Span.class).hours()).isEqualTo(30);
  }

  @Test
  void restOfTheQuantities() {
    assertThat(read("50 %", Share.class).fraction()).isEqualTo(0.5);
    assertThat(read("50%", Share.class).fraction()).isEqualTo(0.5);
    assertThat(read("43/cm", MeshCount.class).perCm()).isEqualTo(43);
    assertThat(read("43T", MeshCount.class).perCm()).isEqualTo(43);
    assertThat(read("0.3 m/s", AirSpeed.class).metresPerSecond()).isEqualTo(0.3);
    assertThat(read("90°", Angle.class).degrees()).isEqualTo(90);
    assertThat(read("-90 deg", Angle.class).degrees()).isEqualTo(-90);
    assertThat(read("380 cm²", Area.class).squareCm()).isEqualTo(380);
    assertThat(read("1 sq yd", Area.class).squareMetres()).isCloseTo(0.83612736, within(1e-15));
    assertThat(read("20:1", Ratio.class).value()).isEqualTo(20);
    assertThat(read("20", Ratio.class).value()).isEqualTo(20);
    assertThat(read("1/2 US cup", Volume.class).litres()).isEqualTo(0.11829411825);
    assertThat(read("1 1/2 US cups", Volume.class)).isEqualTo(read("1.5 US cups", Volume.class));
    assertThat(read("⅓ US cup", Volume.class).litres()).isCloseTo(0.2365882365 / 3, within(1e-16));
  }

  @ParameterizedTest
  @ValueSource(strings = {"40\u00a0cm", "40\u2009cm", "40\u202fcm", "40\u2007cm", " 40  cm "})
  void anySpaceWillDo(String text) {
    assertThat(read(text, Length.class)).isEqualTo(Length.ofCm(40));
  }

  @Test
  void plainCupsAndGallonsAreTakenAsUsOnesAndSaidToBe() {
    Parsed<Volume> cups = Quantities.parse("2 cups", Volume.class);
    assertThat(cups)
        .isInstanceOfSatisfying(
            Parsed.Value.class,
            v -> assertThat(v.note()).hasValue("“cup” is taken as the US cup, 236.6 ml"));
    assertThat(read("2 cups", Volume.class).litres()).isEqualTo(0.473176473);
    assertThat(read("3 gallons", Volume.class).litres()).isCloseTo(11.356235352, within(1e-12));
    assertThat(((Parsed.Value<Volume>) Quantities.parse("3 US gal", Volume.class)).note())
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "35 min | a length such as 40 cm was expected; “35 min” is a time",
        "20 °C | a length such as 40 cm was expected; “20 °C” is a temperature",
        "40 | “40” has no unit; a length such as 40 cm was expected",
        "40 cn | “cn” is not a unit that is known; a length such as 40 cm was expected; did you mean cm?",
        "40 inchs | “inchs” is not a unit that is known; a length such as 40 cm was expected; did you mean in?",
        "40 frobs | “frobs” is not a unit that is known; a length such as 40 cm was expected",
        "1,5 cm | “1,5 cm” has a comma; write decimals with a point and thousands without a mark, such as “1.5 cm”",
        "-3 cm | “-3 cm” lies below zero; a length such as 40 cm was expected",
        "NaN | a length such as 40 cm was expected; “NaN” is not one",
        "Infinity cm | a length such as 40 cm was expected; “Infinity cm” is not one",
        "1e308 cm | “1e308 cm” is a power of ten; a length such as 40 cm was expected, written out",
        "5-6 cm | “5-6 cm” is a range; one value is needed, a length such as 40 cm",
        "wide | a length such as 40 cm was expected; “wide” is not one",
        "99999999999 m | “99999999999 m” is larger than any print room needs; a length such as 40 cm was expected",
        "1/0 cm | “1/0 cm” divides by zero; a length such as 40 cm was expected",
        "3 in 2 ft | “3 in 2 ft” cannot be read as one value; a length such as 40 cm was expected",
        "cm | “cm” has no number; a length such as 40 cm was expected",
        "min | a length such as 40 cm was expected; “min” is not one",
        "1 m 2 m | “1 m 2 m” cannot be read as one value; a length such as 40 cm was expected",
        "40 minuts | “minuts” is not a unit that is known; a length such as 40 cm was expected; did you mean min?"
      })
  void refusalsSayWhatWasExpected(String text, String message) {
    assertThat(Quantities.parse(text, Length.class)).isEqualTo(Parsed.refused(message));
  }

  @Test
  void degreesAloneAreNoTemperature() {
    assertThat(Quantities.parse("20°", Temperature.class))
        .isEqualTo(Parsed.refused("“20°” does not say which degrees; write °C or °F"));
    assertThat(Quantities.parse("-300 °C", Temperature.class))
        .isEqualTo(Parsed.refused("“-300 °C” lies below absolute zero, −273.15 °C"));
  }

  @Test
  void theEndsOfWhatIsReadAreRead() {
    assertThat(read("-273.15 °C", Temperature.class).celsius()).isEqualTo(-273.15);
    assertThat(read("1000 m", Length.class).m()).isEqualTo(1000);
    assertThat(Quantities.parse("1000.1 m", Length.class)).isInstanceOf(Parsed.Refused.class);
    assertThat(Quantities.parse("0 cm", Length.class).toOptional()).hasValue(new Length(0));
    assertThat(Quantities.parseSigned("-0 cm", Length.class).toOptional()).hasValue(new Length(0));
  }

  @Test
  void moreDigitsThanAWholeNumberHoldsAreStillRead() {
    assertThat(read("000000000000040.000000000000001 cm", Length.class).cm())
        .isCloseTo(40, within(1e-12));
  }

  @Test
  void endlessNumbersEndInWords() {
    String digits = "9".repeat(400);
    assertThat(Quantities.parse(digits + " cm", Length.class))
        .isEqualTo(
            Parsed.refused(
                "“"
                    + "9".repeat(40)
                    + "…” is too long to be read; a length such as 40 cm was expected"));
    assertThat(Quantities.parse("9".repeat(50) + " cm", Length.class).toOptional()).isEmpty();
  }

  @Test
  void recipesTakeMassesAndVolumes() {
    assertThat(Quantities.parseAmount("15 g").toOptional()).hasValue(new Mass(15));
    assertThat(Quantities.parseAmount("2 US cups").toOptional()).hasValue(new Volume(0.473176473));
    assertThat(Quantities.parseAmount("5 cm"))
        .isEqualTo(
            Parsed.refused(
                "a mass such as 90 g or a volume such as 500 ml was expected; “5 cm” is a length"));
  }

  @Test
  void sizesAndPlaces() {
    assertThat(Pair.size("54 x 74 cm").toOptional())
        .hasValue(new Pair(Length.ofCm(54), Length.ofCm(74)));
    assertThat(Pair.size("54cm×74cm").toOptional())
        .hasValue(new Pair(Length.ofCm(54), Length.ofCm(74)));
    assertThat(Pair.size("1 1/2 x 2 in").toOptional())
        .hasValue(new Pair(new Length(38.1), new Length(50.8)));
    assertThat(Pair.place("12 cm, -5 cm").toOptional())
        .hasValue(new Pair(Length.ofCm(12), Length.ofCm(-5)));
    assertThat(Pair.size("54 cm").toOptional()).isEmpty();
    assertThat(Pair.size("54 x 74 min"))
        .isEqualTo(Parsed.refused("a length such as 40 cm was expected; “54 min” is a time"));
  }

  private static <Q extends Quantity> Q read(String text, Class<Q> type) {
    Parsed<Q> parsed = Quantities.parse(text, type);
    assertThat(parsed).as(text).isInstanceOf(Parsed.Value.class);
    return parsed.toOptional().orElseThrow();
  }
}

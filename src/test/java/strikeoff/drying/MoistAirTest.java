package strikeoff.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistAirTest {

  /** IAPWS-IF97 Table 35, check value at 300 K. */
  @Test
  void saturationAgreesWithTheStandardsOwnCheckValue() {
    assertThat(MoistAir.saturation(300 - 273.15)).isCloseTo(3536.58941, withPercentage(1e-6));
    assertThat(MoistAir.saturation(500 - 273.15)).isCloseTo(2.63889776e6, withPercentage(1e-6));
  }

  /** ASHRAE Fundamentals 2017, chapter 1, Table 3. */
  @ParameterizedTest
  @CsvSource({"5, 872.6", "25, 3169.7", "50, 12351.3"})
  void saturationAgreesWithTheHandbookTable(double celsius, double pascal) {
    assertThat(MoistAir.saturation(celsius)).isCloseTo(pascal, withPercentage(0.03));
  }

  /** ASHRAE Fundamentals 2017, chapter 1, Table 2. */
  @ParameterizedTest
  @CsvSource({"5, 0.005425", "25, 0.020173", "50, 0.086863"})
  void saturatedAirHoldsWhatTheHandbookSays(double celsius, double ratio) {
    assertThat(MoistAir.humidityRatio(MoistAir.saturation(celsius)))
        .isCloseTo(ratio, withPercentage(1));
  }

  /** Computed outside the project from ASHRAE's equation 33. */
  @ParameterizedTest
  @CsvSource({"20, 0.50, 13.78", "25, 0.50, 17.89", "20, 0.65, 15.80", "30, 0.40, 20.06"})
  void wetBulbOfRoomAir(double celsius, double humidity, double wetBulb) {
    assertThat(MoistAir.wetBulb(celsius, humidity)).isCloseTo(wetBulb, offset(0.05));
  }

  /** ASHRAE Fundamentals 2017, chapter 1, example 1: 40 °C, wet bulb 20 °C, 14 % RH. */
  @Test
  void wetBulbOfTheHandbookExample() {
    assertThat(MoistAir.wetBulb(40, 0.14)).isCloseTo(20, offset(0.2));
  }

  /** Absolute humidity e/(461.5 T); 8.64 g/m³ at 20 °C and 50 %, 12.14 at 30 °C and 40 %. */
  @Test
  void vapourDensityOfRoomAir() {
    assertThat(MoistAir.vapourDensity(20, 1169.4) * 1000).isCloseTo(8.64, offset(0.01));
    assertThat(MoistAir.vapourDensity(30, 1698.4) * 1000).isCloseTo(12.14, offset(0.01));
  }

  /** FAO-56 form: 2501.0, 2453.8, 2442.0 and 2430.2 kJ/kg at 0, 20, 25 and 30 °C. */
  @Test
  void latentHeatFalls() {
    assertThat(MoistAir.latentHeat(20)).isCloseTo(2453.8, offset(0.1));
    assertThat(MoistAir.latentHeat(30)).isCloseTo(2430.2, offset(0.1));
  }

  /** ASHRAE Fundamentals 2017: 0.8443 m³ for each kg of dry air at 25 °C. */
  @Test
  void dryAirDensity() {
    assertThat(MoistAir.dryDensity(25, 0)).isCloseTo(1 / 0.8443, withPercentage(0.1));
  }
}

package strikeoff.day.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.day.PrintDay;
import strikeoff.plan.Medium;
import strikeoff.speech.DryingSpeech;

/** Forms of evaporation were checked from 5 to 45 °C and to 10 m/s; beyond that it is told. */
class DryingAirTest {

  private static PrintDay herons(int count) {
    return new PrintDay(Medium.DYE)
        .paste("blue")
        .design("heron", 30, 40, 2, "s1=blue")
        .series("herons", "heron", count, 60, 20)
        .print("herons");
  }

  private static List<DryingAir> told(PrintDay day) {
    return day.timeline().evidence().stream()
        .filter(DryingAir.class::isInstance)
        .map(DryingAir.class::cast)
        .filter(air -> air.films() > 0 && !air.tried())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 20, 45})
  void roomsThatPeoplePrintInAreTried(double celsius) {
    assertThat(told(herons(1).temperature(celsius))).isEmpty();
  }

  @Test
  void aColderOrHotterRoomIsReckonedAsTheLastThatWasTried() {
    assertThat(told(herons(2).temperature(50)))
        .singleElement()
        .satisfies(
            air -> {
              assertThat(air.stated().text()).isEqualTo("50 °C");
              assertThat(air.nearest().text()).isEqualTo("45 °C");
              assertThat(DryingSpeech.counted(air)).isEqualTo("2 films");
              assertThat(air.path().toString()).contains("room.temperature");
            });
    assertThat(told(herons(1).temperature(2)))
        .singleElement()
        .satisfies(
            air -> {
              assertThat(air.nearest().text()).isEqualTo("5 °C");
              assertThat(DryingSpeech.counted(air)).isEqualTo("1 film");
            });
  }

  @Test
  void aGaleInTheRoomOrInAWaitIsToldWhereItIsWritten() {
    assertThat(told(herons(1).blown(10).dry(PrintDay.minutes(5), 10.0))).isEmpty();
    assertThat(told(herons(1).blown(12)))
        .singleElement()
        .satisfies(
            air -> {
              assertThat(air.stated().text()).isEqualTo("12 m/s");
              assertThat(air.nearest().text()).isEqualTo("10 m/s");
              assertThat(air.path().toString()).contains("room.air");
            });
    assertThat(told(herons(1).dry(PrintDay.minutes(5), 11.0)))
        .singleElement()
        .satisfies(air -> assertThat(air.path().toString()).contains("run[1]"));
  }

  @Test
  void whatThePrinterMeasuredAsksNoForm() {
    PrintDay measured =
        new PrintDay(Medium.DYE)
            .temperature(50)
            .paste("blue", 10, 60)
            .paste("ink", 10)
            .design("heron", 30, 40, 2, "s1=blue", "s2=ink")
            .series("herons", "heron", 3, 60, 20)
            .print("herons");
    // blue is measured to both states, ink to the first one only
    assertThat(told(measured)).extracting(DryingAir::films).containsExactly(3);
    assertThat(
            told(
                new PrintDay(Medium.DYE)
                    .temperature(50)
                    .paste("blue", 10, 60)
                    .design("heron", 30, 40, 2, "s1=blue")
                    .series("herons", "heron", 3, 60, 20)
                    .print("herons")))
        .isEmpty();
  }
}

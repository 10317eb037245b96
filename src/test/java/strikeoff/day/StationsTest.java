package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strikeoff.plan.PrintPlan;

/** The curtains' table has three stations; six herons go over it in two sets. */
class StationsTest {

  /** Each heron takes rust, blue and ink; shells and reeds need no station. */
  @Test
  void eachHeronStandsOnTheStationOfItsPlaceInItsSet() throws IOException {
    Map<Integer, List<Impression>> stations = stations(DemoFile.of("estuary-curtains.yaml"));

    assertThat(stations.keySet()).containsExactly(1, 2, 3);
    assertThat(names(stations.get(1)))
        .containsExactly("herons 1", "herons 1", "herons 1", "herons 4", "herons 4", "herons 4");
    assertThat(names(stations.get(2)))
        .containsExactly("herons 2", "herons 2", "herons 2", "herons 5", "herons 5", "herons 5");
    assertThat(names(stations.get(3)))
        .containsExactly("herons 3", "herons 3", "herons 3", "herons 6", "herons 6", "herons 6");
  }

  /** Every other one is printed 1, 3, 2; the places on the table stay. */
  @Test
  void theOrderOfPrintingMovesNobody() throws IOException {
    List<String> lines =
        DemoFile.of("estuary-curtains.yaml").lines().stream()
            .map(l -> l.equals("  - print: herons") ? l + "\n    every other: yes" : l)
            .toList();

    Map<Integer, List<Impression>> stations = stations(new DemoFile(lines));

    assertThat(names(stations.get(2))).contains("herons 2", "herons 5").doesNotContain("herons 3");
    assertThat(stations.get(3).get(0).laid()).isLessThan(stations.get(2).get(0).laid());
  }

  @Test
  void withoutStationsNothingStandsOnOne() throws IOException {
    List<String> lines =
        DemoFile.of("estuary-curtains.yaml").lines().stream()
            .filter(l -> !l.strip().startsWith("stations:"))
            .toList();

    assertThat(stations(new DemoFile(lines))).isEmpty();
  }

  private static Map<Integer, List<Impression>> stations(DemoFile file) {
    PrintPlan plan = file.plan();
    return Stations.of(plan, file.timeline().impressions());
  }

  private static List<String> names(List<Impression> impressions) {
    return impressions.stream().map(i -> i.footprint().placement().name()).toList();
  }
}

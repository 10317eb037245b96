package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import strikeoff.plan.Arrangement.Lattice;

/**
 * The bounds leave room for a slow machine; looking at every pair would take minutes. 10,000
 * placements take about a tenth of a second when measured alone.
 */
class LayoutSizeTest {

  @Test
  void tenThousandPlacementsAreLaidAndCompared() {
    Layout layout =
        Assertions.assertTimeout(
            Duration.ofSeconds(20),
            () ->
                Sheet.open(20_000, 150)
                    .design("heron", 34, 52)
                    .design("shell", 4, 4)
                    .series("herons", "heron", 250, 70, 20, 50)
                    .fill(
                        "shells",
                        "shell",
                        Lattice.HALF_DROP,
                        new double[] {10, 22},
                        new double[] {0, 20_000, 0, 150},
                        1,
                        0,
                        "herons")
                    .seam("middle", 10_000, true)
                    .layout());
    assertThat(layout.placements()).hasSizeGreaterThan(9_000);
    assertThat(layout.evidence()).noneMatch(Overlap.class::isInstance);
  }

  @Test
  void everythingOnOnePlaceIsToldWithoutLookingAtEveryPair() {
    double[] corners = new double[20_000];
    Layout layout =
        Assertions.assertTimeout(
            Duration.ofSeconds(20),
            () ->
                Sheet.open(300, 150)
                    .design("shell", 4, 4)
                    .placed("heap", "shell", corners)
                    .layout());
    Overlap overlap =
        layout.evidence().stream()
            .filter(Overlap.class::isInstance)
            .map(Overlap.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(overlap.moreThanPairs()).isTrue();
    assertThat(overlap.marks()).hasSizeLessThanOrEqualTo(101);
  }
}

package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;

class BoundingBoxTest {

  // w·cosθ + h·sinθ by w·sinθ + h·cosθ for 400 × 250 mm.
  @ParameterizedTest
  @CsvSource({"30, 471.410, 416.506", "2, 408.481, 263.808", "90, 250, 400", "180, 400, 250"})
  void aTurnedDesignTakesTheRoomThatTrigonometrySays(double degrees, double length, double width) {
    Layout layout =
        Sheet.open(300, 100)
            .design("panel", 40, 25)
            .turned(degrees)
            .placed("one", "panel", 100, 20)
            .layout();
    Envelope box = layout.placements().get(0).outline().getEnvelopeInternal();
    assertThat(box.getWidth()).isCloseTo(length, within(1e-3));
    assertThat(box.getHeight()).isCloseTo(width, within(1e-3));
    assertThat(box.getMinX()).isCloseTo(1000, within(1e-9));
    assertThat(box.getMinY()).isCloseTo(200, within(1e-9));
  }
}

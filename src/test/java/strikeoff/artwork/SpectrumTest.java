package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SpectrumTest {

  private static final int SIZE = 16;

  /** By the sum that defines the transform, for each wave by itself, under von Hann's window. */
  private static double byDefinition(double[] tile, int along, int across) {
    double mean = 0;
    for (double value : tile) {
      mean += value / tile.length;
    }
    double re = 0;
    double im = 0;
    for (int y = 0; y < SIZE; y++) {
      for (int x = 0; x < SIZE; x++) {
        double window =
            Math.pow(Math.sin(Math.PI * (x + 0.5) / SIZE), 2)
                * Math.pow(Math.sin(Math.PI * (y + 0.5) / SIZE), 2);
        double turn = -2 * Math.PI * (along * x + across * y) / SIZE;
        re += (tile[y * SIZE + x] - mean) * window * Math.cos(turn);
        im += (tile[y * SIZE + x] - mean) * window * Math.sin(turn);
      }
    }
    return re * re + im * im;
  }

  @Test
  void isTheTransformByItsDefinitionInAllDirections() {
    double[] tile = new Random(12).doubles(SIZE * SIZE).toArray();
    Spectrum spectrum = Spectrum.of(tile, SIZE);
    for (int along = -SIZE; along <= SIZE; along++) {
      for (int across = -SIZE; across <= SIZE; across++) {
        assertThat(spectrum.power(along, across))
            .as(along + " along, " + across + " across")
            .isCloseTo(byDefinition(tile, along, across), within(1e-9));
      }
    }
  }
}

package strikeoff.artwork;

/**
 * How strongly a square of a picture repeats, by direction and frequency (Cooley and Tukey 1965).
 */
final class Spectrum {

  private final int size;
  private final double[] power;

  /**
   * @param tile rows of a square whose side is a power of two; fades out towards its edges, so that
   *     where it was cut counts for nothing
   */
  private Spectrum(int size, double[] power) {
    this.size = size;
    this.power = power;
  }

  static Spectrum of(double[] tile, int size) {
    double mean = 0;
    for (double value : tile) {
      mean += value / tile.length;
    }
    double[] real = new double[tile.length];
    double[] imaginary = new double[tile.length];
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        real[y * size + x] = (tile[y * size + x] - mean) * fade(x, size) * fade(y, size);
      }
    }
    for (int y = 0; y < size; y++) {
      transform(real, imaginary, y * size, 1, size);
    }
    for (int x = 0; x < size; x++) {
      transform(real, imaginary, x, size, size);
    }
    for (int i = 0; i < real.length; i++) {
      real[i] = real[i] * real[i] + imaginary[i] * imaginary[i];
    }
    return new Spectrum(size, real);
  }

  /** Von Hann's window. */
  private static double fade(int at, int size) {
    return 0.5 - 0.5 * Math.cos(2 * Math.PI * (at + 0.5) / size);
  }

  /**
   * Of a wave that goes so often through the square, along and across, either of them below zero.
   */
  double power(int along, int across) {
    return power[Math.floorMod(across, size) * size + Math.floorMod(along, size)];
  }

  private static void transform(double[] re, double[] im, int from, int step, int count) {
    for (int i = 1, j = 0; i < count; i++) {
      int bit = count >> 1;
      for (; (j & bit) != 0; bit >>= 1) {
        j ^= bit;
      }
      j ^= bit;
      if (i < j) {
        swap(re, from + i * step, from + j * step);
        swap(im, from + i * step, from + j * step);
      }
    }
    for (int length = 2; length <= count; length <<= 1) {
      double angle = -2 * Math.PI / length;
      for (int k = 0; k < length / 2; k++) {
        double cos = Math.cos(angle * k);
        double sin = Math.sin(angle * k);
        for (int i = k; i < count; i += length) {
          int a = from + i * step;
          int b = a + length / 2 * step;
          double r = re[b] * cos - im[b] * sin;
          double m = re[b] * sin + im[b] * cos;
          re[b] = re[a] - r;
          im[b] = im[a] - m;
          re[a] += r;
          im[a] += m;
        }
      }
    }
  }

  private static void swap(double[] values, int a, int b) {
    double value = values[a];
    values[a] = values[b];
    values[b] = value;
  }
}

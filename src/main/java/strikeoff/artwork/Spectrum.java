package strikeoff.artwork;

import java.util.stream.IntStream;

/**
 * How strongly a square of a picture repeats, by direction and frequency (Cooley and Tukey 1965).
 */
final class Spectrum {

  private final int size;

  /** By how often along, up to half of the side, and then by how often across. */
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
    double[] cosines = new double[size / 2];
    double[] sines = new double[size / 2];
    for (int k = 0; k < size / 2; k++) {
      cosines[k] = Math.cos(-2 * Math.PI / size * k);
      sines[k] = Math.sin(-2 * Math.PI / size * k);
    }
    double[] fades = IntStream.range(0, size).mapToDouble(at -> fade(at, size)).toArray();
    // Of real rows two go into one transform, and half of what comes out says the other half: what
    // is as often along the other way, turned about its middle (Cooley, Lewis and Welch 1970).
    int half = size / 2 + 1;
    double[] real = new double[half * size];
    double[] imaginary = new double[half * size];
    double[] re = new double[size];
    double[] im = new double[size];
    for (int y = 0; y < size; y += 2) {
      for (int x = 0; x < size; x++) {
        re[x] = (tile[y * size + x] - mean) * fades[x] * fades[y];
        im[x] = (tile[(y + 1) * size + x] - mean) * fades[x] * fades[y + 1];
      }
      transform(re, im, 0, cosines, sines);
      for (int x = 0; x < half; x++) {
        int other = (size - x) % size;
        real[x * size + y] = (re[x] + re[other]) / 2;
        imaginary[x * size + y] = (im[x] - im[other]) / 2;
        real[x * size + y + 1] = (im[x] + im[other]) / 2;
        imaginary[x * size + y + 1] = (re[other] - re[x]) / 2;
      }
    }
    for (int x = 0; x < half; x++) {
      transform(real, imaginary, x * size, cosines, sines);
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
    int x = Math.floorMod(along, size);
    return x > size / 2
        ? power[(size - x) * size + Math.floorMod(-across, size)]
        : power[x * size + Math.floorMod(across, size)];
  }

  /**
   * @param from where what is transformed begins
   * @param cosines of one half turn, in so many steps as there are in half a side
   */
  private static void transform(
      double[] re, double[] im, int from, double[] cosines, double[] sines) {
    int count = 2 * cosines.length;
    for (int i = 1, j = 0; i < count; i++) {
      int bit = count >> 1;
      for (; (j & bit) != 0; bit >>= 1) {
        j ^= bit;
      }
      j ^= bit;
      if (i < j) {
        swap(re, from + i, from + j);
        swap(im, from + i, from + j);
      }
    }
    for (int length = 2; length <= count; length <<= 1) {
      for (int k = 0; k < length / 2; k++) {
        double cos = cosines[k * (count / length)];
        double sin = sines[k * (count / length)];
        for (int i = k; i < count; i += length) {
          int a = from + i;
          int b = a + length / 2;
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

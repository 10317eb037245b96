package strikeoff.colour;

/**
 * The mean look of an area that several colours cover in part, as it is seen from so far that they
 * run together.
 *
 * <p>Demichel's equations give the share of every overlap if the colours fall independently of each
 * other; Neugebauer's add their reflectances by those shares, with Yule and Nielsen's factor for
 * light that spreads below the surface and comes out elsewhere (n = 1: none, which is Murray and
 * Davies' form). Colours that are cut to adjoin overlap less than that.
 */
final class Neugebauer {

  /** Overlaps double with each colour. */
  static final int MOST_COLOURS = 10;

  private Neugebauer() {}

  /**
   * Shares of all overlaps: entry k is what exactly those colours cover whose bits are set in k;
   * entry 0 stays bare.
   *
   * @param covers share that each colour covers
   * @throws IllegalArgumentException for a share outside 0 to 1, or more than {@link #MOST_COLOURS}
   */
  static double[] demichel(double... covers) {
    if (covers.length > MOST_COLOURS) {
      throw new IllegalArgumentException(covers.length + " colours");
    }
    double[] shares = new double[1 << covers.length];
    shares[0] = 1;
    for (int colour = 0; colour < covers.length; colour++) {
      double cover = covers[colour];
      if (!(cover >= 0 && cover <= 1)) {
        throw new IllegalArgumentException("no share: " + cover);
      }
      for (int overlap = 0; overlap < 1 << colour; overlap++) {
        shares[overlap | 1 << colour] = shares[overlap] * cover;
        shares[overlap] *= 1 - cover;
      }
    }
    return shares;
  }

  /**
   * Mean reflectance in one band.
   *
   * @param spread Yule and Nielsen's n, 1 or more
   * @param shares of the areas, adding up to 1
   * @param reflectances of the same areas
   */
  static double mean(double spread, double[] shares, double[] reflectances) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += shares[i] * Math.pow(reflectances[i], 1 / spread);
    }
    return Math.min(1, Math.pow(sum, spread));
  }
}

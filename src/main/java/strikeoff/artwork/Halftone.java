package strikeoff.artwork;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.GivenUp;

/**
 * Tells a halftone by its dots, which stand in a square grid at any angle and are too close for a
 * motif. Squares of about a centimetre are looked at where something goes on all over them; in a
 * halftone, most of what repeats there does so in two directions at right angles, alike in distance
 * and strength. Dots may touch, or be holes: their grid stays.
 */
final class Halftone {

  /** Grids of dots that are wider apart are motifs: 1.33 mm. */
  private static final double COARSEST = 7.5;

  /** Finer ones no screen of cloth holds, and few films. */
  static final double FINEST = 45;

  /** Slower changes than that are the picture's own tones. */
  private static final double SLOWEST = 1.5;

  /** A square's side: as many points, a power of two, as fit in; nearly so many mm. */
  private static final double SIDE = 11;

  private static final int SMALLEST_SIDE = 32;

  /** Points a millimetre that are enough; of closer ones, some are taken together. */
  private static final double PER_MM = 600 / 25.4;

  private static final int MOST_LOOKED_AT = 48;
  private static final int ENOUGH = 9;
  private static final int LEAST = 2;

  /** A square is cut into so many by so many, and something goes on in each of them. */
  private static final int PARTS = 8;

  private static final double LEAST_INK = 0.01;

  /** The two directions hold so much of all that repeats; dots of 5 % hold 0.18, of 50 % 0.6. */
  private static final double LEAST_SHARE = 0.12;

  /** The weaker of the two holds so much of the stronger. */
  private static final double ALIKE = 0.3;

  /** Lines that cross have sharper edges along themselves than over the corners. */
  private static final double OF_LINES = 0.12;

  private static final double MM_PER_CM = 10;

  private final Bits bits;
  private final int factor;
  private final int side;
  private final double alongCm;
  private final double acrossCm;

  /** A part's side in points, how many there are along, and what is known of each. */
  private final int part;

  private final int partsAlong;
  private final byte[] parts;

  private Halftone(Bits bits, int factor, int side, double along, double across) {
    this.bits = bits;
    this.factor = factor;
    this.side = side;
    this.alongCm = side * factor * along / MM_PER_CM;
    this.acrossCm = side * factor * across / MM_PER_CM;
    this.part = side * factor / PARTS;
    this.partsAlong = bits.columns() / part;
    this.parts = new byte[partsAlong * (bits.rows() / part)];
  }

  /**
   * The ruling of a picture's halftone, in dots a cm of the nearest rows.
   *
   * @param along mm from one point of a row to the next, on the cloth
   * @param across mm from one row to the next
   * @return empty if it has none
   */
  static Optional<Double> ruling(Bits bits, double along, double across) {
    double point = Math.max(along, across);
    int factor = (int) Math.max(1, Math.round(1 / point / PER_MM));
    int side = Integer.highestOneBit(Math.max(1, (int) (SIDE / point / factor)));
    return side < SMALLEST_SIDE || side * factor > Math.min(bits.columns(), bits.rows())
        ? Optional.empty()
        : new Halftone(bits, factor, side, along, across).ruling();
  }

  private Optional<Double> ruling() {
    int whole = side * factor;
    // Squares lie half over each other, since shades end where they like.
    int step = whole / 2;
    List<int[]> busy = new ArrayList<>();
    for (int y = 0; y + whole <= bits.rows(); y += step) {
      GivenUp.ifAsked();
      for (int x = 0; x + whole <= bits.columns(); x += step) {
        if (isBusy(x, y)) {
          busy.add(new int[] {x, y});
        }
      }
    }
    List<Double> rulings = new ArrayList<>();
    int stride = Math.max(1, (busy.size() + MOST_LOOKED_AT - 1) / MOST_LOOKED_AT);
    for (int i = 0; i < busy.size() && rulings.size() < ENOUGH; i += stride) {
      GivenUp.ifAsked();
      grid(tile(busy.get(i)[0], busy.get(i)[1])).ifPresent(rulings::add);
    }
    boolean small = bits.columns() < 2 * whole && bits.rows() < 2 * whole;
    if (rulings.size() < (small ? 1 : LEAST)) {
      return Optional.empty();
    }
    rulings.sort(null);
    double median = rulings.get(rulings.size() / 2);
    long agree = rulings.stream().filter(r -> Math.abs(r / median - 1) < 0.05).count();
    return agree * 2 > rulings.size() ? Optional.of(median) : Optional.empty();
  }

  /** True if each part of a square is neither bare nor full. */
  private boolean isBusy(int left, int top) {
    for (int y = 0; y < PARTS; y++) {
      for (int x = 0; x < PARTS; x++) {
        // Squares lie over each other, so that each part is asked for by four.
        int at = (top / part + y) * partsAlong + left / part + x;
        if (parts[at] == UNKNOWN) {
          parts[at] = isPartBusy(left + x * part, top + y * part) ? BUSY : EVEN;
        }
        if (parts[at] == EVEN) {
          return false;
        }
      }
    }
    return true;
  }

  private static final byte UNKNOWN = 0;
  private static final byte BUSY = 1;
  private static final byte EVEN = 2;

  private boolean isPartBusy(int left, int top) {
    int ink = 0;
    int all = 0;
    for (int row = top; row < top + part; row += factor) {
      ink += bits.count(left, left + part, row);
      all += part;
    }
    return ink >= all * LEAST_INK && ink <= all * (1 - LEAST_INK);
  }

  private double[] tile(int left, int top) {
    double[] tile = new double[side * side];
    for (int y = 0; y < side * factor; y++) {
      for (int x = bits.next(left, top + y, true); x < left + side * factor; ) {
        int end = Math.min(bits.next(x, top + y, false), left + side * factor);
        for (int i = x; i < end; i++) {
          tile[y / factor * side + (i - left) / factor]++;
        }
        x = bits.next(end, top + y, true);
      }
    }
    return tile;
  }

  private Optional<Double> grid(double[] tile) {
    Spectrum spectrum = Spectrum.of(tile, side);
    double all = 0;
    double strongest = 0;
    double slow = 0;
    int[] first = new int[2];
    for (int across = -side / 2; across < side / 2; across++) {
      for (int along = 0; along < side / 2; along++) {
        double often = often(along, across);
        double power = spectrum.power(along, across);
        if (often >= SLOWEST) {
          all += power;
        }
        if (often >= SLOWEST && often < COARSEST) {
          slow = Math.max(slow, power);
        } else if (often >= COARSEST && often <= FINEST && power > strongest) {
          strongest = power;
          first = new int[] {along, across};
        }
      }
    }
    if (strongest == 0 || slow > strongest) {
      return Optional.empty();
    }
    double[] one = peak(spectrum, first);
    // At right angles on the cloth, as often in a cm.
    int[] turned = {
      (int) Math.round(-one[1] / acrossCm * alongCm), (int) Math.round(one[0] / alongCm * acrossCm)
    };
    int[] second = highest(spectrum, turned);
    double[] other = peak(spectrum, second);
    double often = often(one[0], one[1]);
    double oftenOther = often(other[0], other[1]);
    double both = around(spectrum, first) + around(spectrum, second);
    boolean alike =
        spectrum.power(second[0], second[1]) >= ALIKE * strongest
            && Math.abs(often / oftenOther - 1) < 0.06
            && Math.abs(cosine(one, other)) < 0.1;
    boolean lines =
        around(spectrum, twice(one, one)) + around(spectrum, twice(other, other))
            > both * OF_LINES
                + 2 * around(spectrum, twice(one, other))
                + 2 * around(spectrum, twice(one, new double[] {-other[0], -other[1]}));
    return alike
            && both >= LEAST_SHARE * all
            && !isCrossed(new MeanCell(tile, side, factor * factor, one, other), lines)
        ? Optional.of((often + oftenOther) / 2)
        : Optional.empty();
  }

  /** What is too small to have a shape is told by its spectrum alone. */
  private static boolean isCrossed(MeanCell cell, boolean lines) {
    return cell.isCrossedByLines() || lines && !cell.isOfDiscs();
  }

  private static int[] twice(double[] one, double[] other) {
    return new int[] {(int) Math.round(one[0] + other[0]), (int) Math.round(one[1] + other[1])};
  }

  /** How often a cm. */
  private double often(double along, double across) {
    double x = along / alongCm;
    double y = across / acrossCm;
    // Asked for thousands of times: nothing here is so large or small that it needs hypot.
    return Math.sqrt(x * x + y * y);
  }

  private double cosine(double[] one, double[] other) {
    double product =
        one[0] * other[0] / alongCm / alongCm + one[1] * other[1] / acrossCm / acrossCm;
    return product / often(one[0], one[1]) / often(other[0], other[1]);
  }

  private static int[] highest(Spectrum spectrum, int[] near) {
    int[] highest = near;
    for (int y = -2; y <= 2; y++) {
      for (int x = -2; x <= 2; x++) {
        if (spectrum.power(near[0] + x, near[1] + y) > spectrum.power(highest[0], highest[1])) {
          highest = new int[] {near[0] + x, near[1] + y};
        }
      }
    }
    return highest;
  }

  private static double around(Spectrum spectrum, int[] at) {
    double sum = 0;
    for (int y = -1; y <= 1; y++) {
      for (int x = -1; x <= 1; x++) {
        sum += spectrum.power(at[0] + x, at[1] + y);
      }
    }
    return sum;
  }

  /** A peak's place between whole numbers: the centre of amplitudes around it. */
  private static double[] peak(Spectrum spectrum, int[] at) {
    double sum = 0;
    double x = 0;
    double y = 0;
    for (int j = -1; j <= 1; j++) {
      for (int i = -1; i <= 1; i++) {
        double power = spectrum.power(at[0] + i, at[1] + j);
        sum += power;
        x += i * power;
        y += j * power;
      }
    }
    return new double[] {at[0] + x / sum, at[1] + y / sum};
  }
}

package strikeoff.bath;

import strikeoff.chemistry.Carbonate;
import strikeoff.chemistry.SodaSolution;
import strikeoff.policy.Policy;
import strikeoff.units.Range;

/**
 * The alkali that dye finds while it is fixed.
 *
 * @param there false if there is none to speak of
 * @param kind where it comes from
 * @param soda anhydrous soda ash in the bath that brought it, g/L
 * @param mild baking soda in it, g/L
 * @param forWater soda that hard water may take up before the dye finds any, g/L
 * @param fromWater baking soda that hard water may bring, g/L
 * @param forCloth soda that the acid groups of the cloth turn into bicarbonate, g/L
 * @param forUsualCloth the same in the baths that the stated times hold for
 * @param celsius warmth of that bath, as near as the model of its pH goes
 */
record Alkali(
    boolean there,
    Kind kind,
    Range soda,
    Range mild,
    double forWater,
    double fromWater,
    Range forCloth,
    double forUsualCloth,
    double celsius) {

  /** Where the alkali comes from. */
  enum Kind {
    /** The paste, judged by its dose. */
    PASTE,
    /** Silicate liquid, at its own strength. */
    SILICATE,
    SODA
  }

  private static final Range NO = Range.exactly(0);

  /** Slower than that nobody can tell from not at all. */
  private static final double STANDSTILL = 1e-3;

  static final Alkali IN_PASTE = new Alkali(true, Kind.PASTE, NO, NO, 0, 0, NO, 0, 0);

  static final Alkali NONE = new Alkali(false, Kind.SODA, NO, NO, 0, 0, NO, 0, 0);

  /** Grams of baking soda that come of a gram of soda ash and acid. */
  private static final double MILD_OF_SODA = Carbonate.BICARBONATE / Carbonate.ANHYDROUS;

  /**
   * What a bath leaves in the cloth.
   *
   * @param cloth dry mass of the cloth in it, kg
   */
  static Alkali of(Liquor liquor, double celsius, double cloth, Policy policy) {
    if (liquor.silicateLitres().high() > 0) {
      return new Alkali(true, Kind.SILICATE, NO, NO, 0, 0, NO, 0, celsius);
    }
    if (!liquor.hasAlkali()) {
      return NONE;
    }
    Alkali alkali =
        new Alkali(
            true,
            Kind.SODA,
            liquor.sodaGramsPerLitre(),
            liquor.bicarbonateGramsPerLitre(),
            policy.fixing().sodaForWater().gramsPerLitre(),
            policy.fixing().bicarbonateInWater().gramsPerLitre(),
            forCloth(liquor.hasWater() ? cloth / liquor.litres().best() : 0, policy),
            forCloth(1 / policy.fixing().tightLiquorRatio().amount(), policy).best(),
            Math.max(SodaSolution.COLDEST, Math.min(SodaSolution.HOTTEST, celsius)));
    double pace = alkali.pace(policy.fixing().usualBath().gramsPerLitre()).best();
    boolean mildAlone = alkali.mild().high() > 0 && pace < policy.fixing().leastPace().value();
    return mildAlone ? NONE : alkali;
  }

  /**
   * @param perLitre kilograms of cloth in a litre of bath
   */
  private static Range forCloth(double perLitre, Policy policy) {
    Range groups =
        new Range(
            policy.fixing().acidOfClothLeast().value(),
            policy.fixing().acidOfClothUsual().value(),
            policy.fixing().acidOfClothMost().value());
    return groups.times(perLitre * Carbonate.ANHYDROUS / 1000);
  }

  boolean silicate() {
    return kind == Kind.SILICATE;
  }

  /**
   * How fast it lets dye bind, in proportion to a bath of the strength that the stated times hold
   * for: as the hydroxide in it, at most 1, since no source gives a shorter time. Salt is left out:
   * the times hold for baths with it and without. The water is soft at the best, of middle hardness
   * likely, very hard at the worst; it and the cloth turn soda into bicarbonate, which holds the pH
   * of a thin bath down. So they do in the baths that the times hold for.
   *
   * @param timed that strength, g/L of soda ash
   */
  Range pace(double timed) {
    if (kind != Kind.SODA || !there) {
      return Range.exactly(1);
    }
    double stated = usually(timed, mild(forUsualCloth), forUsualCloth);
    double low =
        hydroxide(
            soda.low() - forWater - forCloth.high(),
            mild.high() + fromWater + mild(forCloth.high()));
    double best = usually(soda.best(), mild.best() + mild(forCloth.best()), forCloth.best());
    double high = hydroxide(soda.high() - forCloth.low(), mild.low() + mild(forCloth.low()));
    return new Range(
        moves(Math.min(low, best) / stated),
        moves(best / stated),
        moves(Math.max(best, high) / stated));
  }

  /** In water of middle hardness. */
  private double usually(double sodaPerLitre, double mildPerLitre, double taken) {
    return hydroxide(sodaPerLitre - forWater / 2 - taken, mildPerLitre + fromWater / 2);
  }

  /** Baking soda that comes of soda ash and acid. */
  private static double mild(double soda) {
    return soda * MILD_OF_SODA;
  }

  private static double moves(double pace) {
    return Math.max(STANDSTILL, Math.min(1, pace));
  }

  /** In proportion; thinner than the model of the pH holds for, in proportion to the soda. */
  private double hydroxide(double sodaPerLitre, double mildPerLitre) {
    double soda = Math.max(0, sodaPerLitre);
    double least = SodaSolution.WEAKEST * 1.01 * Carbonate.ANHYDROUS;
    double most = SodaSolution.STRONGEST * 0.9 * Carbonate.ANHYDROUS;
    if (soda + mildPerLitre < least) {
      return Math.max(soda, 1e-6) / least * hydroxide(least, 0);
    }
    double scale = Math.min(1, most / (soda + mildPerLitre));
    return SodaSolution.ofGramsPerLitre(celsius, soda * scale, mildPerLitre * scale)
        .map(s -> Math.pow(10, s.pH()))
        .orElse(0.0);
  }
}

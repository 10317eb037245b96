package strikeoff.drying;

import strikeoff.drying.Evaporation.When;
import strikeoff.drying.FilmNeed.Amounts;
import strikeoff.plan.Cloth;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Limits;
import strikeoff.policy.Policy;
import strikeoff.units.Quantity;

/** A paste as it lies on the cloth, and the inputs that hold for its medium. */
final class Laid {

  private final Policy policy;
  private final Limits.Drying drying;
  private final boolean paint;
  private final double mass;
  private final double holds;
  private final double expected;
  private final double depositSpread;
  private final double activity;

  /**
   * @param holds water that a gram of the cloth takes from one face, g
   * @param expected paste that all pulls lay down, g/m²
   * @param weighed true if that was weighed on a strike-off rather than estimated
   */
  Laid(Policy policy, Cloth cloth, double holds, Paste paste, double expected, boolean weighed) {
    this.policy = policy;
    this.drying = policy.drying();
    this.paint = paste.medium() == Medium.PAINT;
    this.mass = cloth.mass().gramsPerSquareMetre();
    this.holds = holds;
    this.expected = expected;
    this.depositSpread =
        weighed ? drying.weighedDepositSpread().value() : drying.depositSpread().value();
    this.activity = asShare(ofMedium(drying.activityOfDye(), drying.activityOfPaint()));
  }

  /** Vapour pressure over it, as a share of that over pure water. */
  double activity() {
    return activity;
  }

  /** What it must lose on each of some days, or on those of the strike-off before them. */
  Amounts amounts(Days days, When when) {
    int all = Days.COUNT;
    Amounts amounts =
        new Amounts(
            days,
            activity,
            new double[all],
            new double[all],
            new double[all],
            new double[all],
            new double[all],
            new double[all],
            new double[all]);
    double pullSpread = drying.pullSpread().value();
    double water = ofMedium(drying.waterOfDye(), drying.waterOfPaint());
    double waterSpread = drying.waterSpread().fraction();
    double mobile = asShare(ofMedium(drying.mobileOfDye(), drying.mobileOfPaint()));
    double mobileSpread = drying.mobileSpread().value();
    double uptakeSpread = drying.uptakeSpread().value();
    double bend = drying.uptakeBend().value();
    double soakHours = ofMedium(drying.soakTimeOfDye(), drying.soakTimeOfPaint()) / 60;
    double soakSpread = drying.soakTimeSpread().value();
    double slowest = drying.skinSlowest().fraction();
    double liftMoisture = mass * drying.liftMoisture().fraction();
    double liftSpread = drying.liftMoistureSpread().value();
    double hand = mass * drying.handDry().fraction();
    Touched touched = new Touched();
    for (int day = 0; day < all; day++) {
      double deposit =
          expected
              * times(depositSpread, days.deviate(Unknown.DEPOSIT, day))
              * times(pullSpread, days.deviate(when.pull, day));
      double share = asShare(water + waterSpread * days.deviate(Unknown.WATER, day));
      double wet = deposit * share;
      double drawn = wet * logit(mobile, mobileSpread * days.deviate(Unknown.MOBILE, day));
      double full = holds * mass * times(uptakeSpread, days.deviate(Unknown.UPTAKE, day));
      amounts.water()[day] = wet;
      if (paint) {
        amounts.touchDry()[day] =
            touched.ofPaint(deposit * (1 - share), days.deviate(Unknown.TOUCH_DRY, day));
      } else {
        // What stands in the hollows is a part of what the cloth can hold from one face.
        double hollows = Math.min(full, touched.ofDye(share, days.deviate(Unknown.HOLLOWS, day)));
        amounts.touchDry()[day] = hollows;
        full -= hollows;
      }
      amounts.soaked()[day] = soaked(drawn, full, bend);
      amounts.soakHours()[day] =
          soakHours * times(soakSpread, days.deviate(Unknown.SOAK_TIME, day));
      double left = liftMoisture * times(liftSpread, days.deviate(Unknown.LIFT_DRY, day));
      amounts.lift()[day] = Math.max(0, wet - left);
      // The last water leaves the slower, the less of it there is.
      amounts.dryThrough()[day] =
          amounts.lift()[day] + left * Math.max(0, Math.log(Math.min(left, wet) / hand));
      // All rates between the slowest and the full one are equally likely.
      amounts.skin()[day] =
          paint ? slowest + (1 - slowest) * Days.below(days.deviate(Unknown.SKIN, day)) : 1;
    }
    return amounts;
  }

  /** Water that may be left on the cloth when a frame is laid on it, g/m². */
  private final class Touched {
    private final double solidsDensity = drying.densityOfSolids().gramsPerLitre() / 1000;
    private final double solid = drying.touchDryOfPaint().fraction();
    private final double solidSpread = drying.touchDrySpread().fraction();
    private final double hollows = drying.hollows().value();
    private final double hollowsSpread = drying.hollowsSpread().value();
    private final double density = policy.screens().densityDyePaste().gramsPerLitre() / 1000;

    /** Between the solids of a film that is as solid as it must be. */
    double ofPaint(double solids, double deviate) {
      double share = asShare(solid + solidSpread * deviate);
      return share > 0 ? solids / solidsDensity * (1 / share - 1) : Double.POSITIVE_INFINITY;
    }

    /** In the hollows between the yarns, below the crowns that a frame touches. */
    double ofDye(double waterShare, double deviate) {
      return hollows * times(hollowsSpread, deviate) * mass * density * waterShare;
    }
  }

  /** The two ends, soaking up all that is mobile and being full, meet in a bend. */
  private static double soaked(double mobile, double full, double bend) {
    return full <= 0 || mobile <= 0
        ? 0
        : Math.pow(Math.pow(mobile, -bend) + Math.pow(full, -bend), -1 / bend);
  }

  private static double times(double spread, double deviate) {
    return Math.exp(spread * deviate);
  }

  /** No share is more than the whole, or less than nothing. */
  private static double asShare(double share) {
    return Math.min(1, Math.max(0, share));
  }

  private static double logit(double share, double moved) {
    return 1 / (1 + (1 - share) / share * Math.exp(-moved));
  }

  private double ofMedium(Quantity ofDye, Quantity ofPaint) {
    return (paint ? ofPaint : ofDye).base();
  }
}

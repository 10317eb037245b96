package strikeoff.day;

import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Until;

/** Two colours of dye on a cloth so long that it takes many sets of four on one table. */
public final class LongCloth {

  private static final int STATIONS = 4;

  private LongCloth() {}

  /** How often a frame comes too early. */
  public enum Contacts {
    /** Never: motifs stand apart, and colours dry between. */
    NONE(60, 15),
    /** Never on neighbours, but each second colour may come too early in slow drying. */
    FEW(60, 1),
    /** On nearly every neighbour too. */
    MANY(35, 1);

    private final double pitch;
    private final double minutesBetween;

    Contacts(double pitch, double minutesBetween) {
      this.pitch = pitch;
      this.minutesBetween = minutesBetween;
    }
  }

  static PrintPlan of(int impressions, Contacts contacts) {
    return new PrintDay(Medium.DYE)
        .paste("blue")
        .paste("ink")
        .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
        .series("herons", "heron", impressions / 2, contacts.pitch, 20)
        .stations(STATIONS)
        .print(
            "herons",
            PrintOrder.BY_COLOUR,
            false,
            0,
            PrintDay.minutes(contacts.minutesBetween),
            PrintDay.until(Until.Dryness.LIFT_SAFE))
        .plan();
  }
}

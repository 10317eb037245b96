package strikeoff.speech;

import java.util.List;
import strikeoff.bath.HeatSetting;
import strikeoff.bath.HeatTime;
import strikeoff.bath.IronTime;
import strikeoff.bath.PaintPrinted;
import strikeoff.bath.Warmth;
import strikeoff.plan.HeatSource;
import strikeoff.units.Measures;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** Says how hot and how long paint wants to be set. */
public final class HeatSpeech {

  private HeatSpeech() {}

  /** Between which temperatures each group is fixed. */
  public static List<String> windows(Warmth warmth, Measures units) {
    return warmth.windows().stream()
        .map(
            w ->
                w.group()
                    + " asks for "
                    + w.coolest().text(units)
                    + " to "
                    + w.warmest().text(units))
        .toList();
  }

  public static String basis(HeatSetting setting) {
    return basis(setting.labelled());
  }

  public static String basis(HeatTime time) {
    return basis(time.labelled());
  }

  private static String basis(boolean labelled) {
    return labelled ? "as its label says" : "as an acrylic binder does";
  }

  /** What sets paints on this cloth: as they ask, and no hotter than its weakest fibre stands. */
  public static String mending(PaintPrinted printed, Measures units) {
    PaintPrinted.Setting setting = printed.setting();
    return setting.harms()
        ? "Take a paint that sets cooler, and heat-set it once it is dry through: "
            + setting.fibre()
            + " takes harm above "
            + setting.harmsAbove().most(units)
            + ", and "
            + setting.paint()
            + " asks for "
            + setting.at().enough(units)
        : "Add a heat-set once it is dry through: "
            + setting.lasts().text()
            + " at "
            + setting.at().text(units)
            + " at the film";
  }

  /**
   * What sets them, as an instruction without a full stop: as hot as they ask and the cloth stands,
   * and as long.
   */
  public static String mending(HeatTime time, Measures units) {
    if (time.heat().harms()) {
      return cooling(time.heat(), units);
    }
    boolean cool = time.heat().temperature().compareTo(time.heat().coolest()) < 0;
    return cool
        ? heating(time.heat(), units)
        : "Leave it "
            + time.more().text()
            + " longer"
            + (time.heat().inSpots() ? " at every spot" : "");
  }

  /** In words, where both are ironed. */
  public static String eachSide(IronTime time) {
    return time.sides() > 1 ? " on both sides" : "";
  }

  /** What makes it shorter, as an instruction without a full stop. */
  public static String shortening(IronTime time) {
    return (time.with() == HeatSource.IRON
            ? "A press takes more at a time, and an oven all that it holds"
            : "An oven takes all that it holds at once")
        + (time.canBeShorter()
            ? "; with the "
                + time.with().text()
                + " "
                + time.needed().text()
                + " at each spot are enough, "
                + time.atLeast().text()
                + " in all"
            : "");
  }

  /** How much colder than it bears, in words. */
  public static String degreesCold(Warmth warmth, Measures units) {
    return Temperature.difference(warmth.coldBy(), units);
  }

  /** How much hotter than it stands, in words. */
  public static String degreesHot(Warmth warmth, Measures units) {
    return Temperature.difference(warmth.hotBy(), units);
  }

  /** How long the slowest paste needs, in words. */
  public static String needed(Warmth warmth) {
    String best = new Span(warmth.neededMinutes().best()).text();
    String low = new Span(warmth.neededMinutes().low()).text();
    String high = new Span(warmth.neededMinutes().high()).text();
    return low.equals(best) && high.equals(best) ? best : best + " (" + low + " to " + high + ")";
  }

  /** What to do where it is too hot for the cloth, as an instruction without a full stop. */
  public static String cooling(HeatSetting setting, Measures units) {
    return setting.serves()
        ? "Set it to "
            + setting.gentle().most(units)
            + (setting.labelled() && setting.gentle().equals(setting.coolest())
                ? ", as " + setting.asks() + " asks, for "
                : " at most, for ")
            + setting.neededGently().byTheWatch()
            + " at least"
        : nothingServes(setting, units);
  }

  /** What to do where it is too cool for the paint. */
  public static String heating(HeatSetting setting, Measures units) {
    return setting.serves()
        ? "Set it to "
            + setting.coolest().enough(units)
            + " at the film for "
            + setting.neededThere().byTheWatch()
        : nothingServes(setting, units);
  }

  private static String nothingServes(HeatSetting setting, Measures units) {
    return "No heat both sets "
        + setting.asks()
        + " and spares the cloth: "
        + setting.fibre()
        + " takes harm above "
        + setting.harmsAbove().most(units)
        + ", and "
        + setting.asks()
        + " asks for "
        + setting.coolest().enough(units)
        + ", "
        + basis(setting)
        + ". Take a paint whose label asks for "
        + setting.harmsAbove().most(units)
        + " or less, or another cloth";
  }
}

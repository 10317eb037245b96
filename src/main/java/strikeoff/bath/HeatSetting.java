package strikeoff.bath;

import java.util.List;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.HeatSource;
import strikeoff.units.Measures;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * Heat on paint: its temperature and time at the film.
 *
 * @param with what heats it
 * @param paints on the cloth
 * @param coolest temperature at which all of them set
 * @param asks the paint that asks for it
 * @param labelled whether it is the label
 * @param neededThere the shortest time at the coolest temperature
 * @param fibre the fibre of the cloth that is harmed first
 * @param harmsAbove hotter than that it is harmed
 * @param spoilt the fibre that is spoilt first; in a blend it may be another one
 * @param spoilsAbove hotter than that it is spoilt
 * @param gentle what the label asks for, or else the hottest that does no harm, as a dial is set
 * @param neededGently the shortest time at that
 * @param timePath of the time
 * @param path of the temperature
 */
public record HeatSetting(
    int step,
    HeatSource with,
    List<String> paints,
    Temperature temperature,
    Span lasts,
    Temperature coolest,
    String asks,
    boolean labelled,
    Span neededThere,
    String fibre,
    Temperature harmsAbove,
    String spoilt,
    Temperature spoilsAbove,
    Temperature gentle,
    Span neededGently,
    PlanPath timePath,
    PlanPath path)
    implements Evidence {

  public HeatSetting {
    paints = List.copyOf(paints);
  }

  /** False if whatever heat sets all paints harms the cloth. */
  public boolean serves() {
    return coolest.compareTo(harmsAbove) <= 0;
  }

  /** True if it is the cloth that is told of, where no heat is right. */
  public boolean harms() {
    return temperature.compareTo(harmsAbove) > 0;
  }

  /** The same as edits; none where no heat serves. */
  public List<List<Edit>> coolingEdits(Measures units) {
    return serves() ? List.of(at(gentle.most(units), neededGently)) : List.of();
  }

  /** True if it heats one spot after another; an oven heats all that it holds. */
  public boolean inSpots() {
    return with != HeatSource.OVEN;
  }

  /** The same as edits; none where no heat serves. */
  public List<List<Edit>> heatingEdits(Measures units) {
    return serves() ? List.of(at(coolest.enough(units), neededThere)) : List.of();
  }

  /** Another temperature, and the time for it where there is too little. */
  private List<Edit> at(String there, Span needed) {
    Edit warmth = new Edit.Write(path, there);
    return lasts.compareTo(needed) >= 0
        ? List.of(warmth)
        : List.of(warmth, new Edit.Write(timePath, needed.byTheWatch()));
  }
}

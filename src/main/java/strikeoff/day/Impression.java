package strikeoff.day;

import strikeoff.document.PlanPath;
import strikeoff.layout.Footprint;
import strikeoff.plan.Paste;

/**
 * One print of one separation at one placement.
 *
 * @param id its index in the order of printing
 * @param step number of the print step
 * @param set which set of the step, from 1
 * @param laid when the frame touches the cloth
 * @param lifted when the frame leaves it, which is when the film begins to dry
 */
public record Impression(
    int id,
    int step,
    int set,
    Footprint footprint,
    String person,
    Moment laid,
    Moment lifted,
    Film film,
    PlanPath path) {

  /** The same of a paste that is mixed otherwise. */
  public Impression with(Paste other) {
    return new Impression(id, step, set, footprint.with(other), person, laid, lifted, film, path);
  }
}

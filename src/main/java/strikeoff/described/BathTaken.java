package strikeoff.described;

import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * A step that fixes or finishes the cloth.
 *
 * @param kind soak, batch, steam, rinse, wash or heat-set
 * @param lasts as the plan says it
 * @param begins as that of {@link StepTaken}
 */
public record BathTaken(
    int step,
    String kind,
    Temperature temperature,
    Span lasts,
    Moment begins,
    Moment ends,
    PlanPath path)
    implements Evidence {

  /** The day on which it begins, from 1. */
  public int day() {
    return begins.day();
  }
}

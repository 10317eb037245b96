package strikeoff.sequence;

import java.util.List;
import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * The first print on a cloth that has been in water.
 *
 * @param step the print step
 * @param bath the last wet step before it
 * @param before the step to wait before: the print, or the first mixing between, since paste ages
 *     while the cloth dries
 * @param beforePath its path
 * @param dried time from the end of that bath to the first frame
 * @param wetFor for how long the cloth surely stays wet in the room's air, spun after a wash or
 *     wrung by hand after a soak
 * @param paint whether the step prints paint
 * @param laid when that frame is laid
 */
public record PrintAfterBath(
    Step step,
    Step bath,
    Step before,
    PlanPath beforePath,
    boolean paint,
    Span dried,
    Span wetFor,
    Moment laid,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public PrintAfterBath {
    related = List.copyOf(related);
  }
}

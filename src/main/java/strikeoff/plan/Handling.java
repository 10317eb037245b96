package strikeoff.plan;

import strikeoff.document.PlanPath;
import strikeoff.units.Span;

/**
 * How long each handling takes, unless a step says otherwise.
 *
 * @param lay fetch a frame and lay it on its marks
 * @param pull one pull of the squeegee, flood included
 * @param lift take the frame off
 * @param load pin or gum the cloth on the table at the start
 * @param move take the cloth on to its next stretch
 * @param mix mix one paste
 * @param sew sew and press one seam
 * @param brush brush silicate liquid on, both faces of the cloth
 * @param washScreen wash a screen out
 * @param dryScreen let a washed screen dry; nobody need stand by
 */
public record Handling(
    Span lay,
    Span pull,
    Span lift,
    Span load,
    Span move,
    Span mix,
    Span sew,
    Span brush,
    Span washScreen,
    Span dryScreen,
    PlanPath path) {}

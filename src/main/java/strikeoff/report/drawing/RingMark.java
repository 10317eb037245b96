package strikeoff.report.drawing;

import strikeoff.document.PlanPath;
import strikeoff.evidence.FilmPlace;
import strikeoff.findings.Severity;

/**
 * A finding's number as it stands on the page, to be shown where it lies on a film.
 *
 * @param film what of the plan names the film
 */
public record RingMark(int number, Severity severity, PlanPath film, FilmPlace place) {}

package strikeoff.timeline;

import strikeoff.drying.FilmNeed;
import strikeoff.layout.Footprint;
import strikeoff.plan.Step;

/**
 * An impression as the simulation leaves it, before it is known when its film will dry.
 *
 * @param run the impressions with which it was waited for
 * @param impressionsBefore how many impressions the step had before it
 * @param passesBefore how often it has let a pass dry before the placements between
 * @param begins second at which the frame is fetched
 * @param laid second at which the frame touches the cloth
 * @param lifted second at which the film begins to dry
 */
record Printed(
    int id,
    Step.Print step,
    int set,
    Footprint footprint,
    String person,
    ColourRun run,
    int impressionsBefore,
    int passesBefore,
    long begins,
    long laid,
    long lifted,
    FilmNeed need) {}

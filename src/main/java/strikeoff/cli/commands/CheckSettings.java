package strikeoff.cli.commands;

import java.util.List;
import java.util.Optional;
import strikeoff.cli.files.Output;
import strikeoff.cli.files.ResultCache;
import strikeoff.cli.text.Colouring;
import strikeoff.cli.text.Detail;
import strikeoff.document.Bounds;
import strikeoff.report.outcome.Baseline;
import strikeoff.report.outcome.Part;
import strikeoff.units.UnitChoice;

/**
 * What is wanted of a run.
 *
 * @param title what the batch is
 * @param reports the folder for HTML pages, as the user named it
 * @param sheets the folder for sheets for the wall
 * @param part the part of the batch to check; empty for all
 * @param baseline an earlier run that findings are held against
 * @param cache results of earlier runs
 * @param by what the index is grouped by
 * @param handBack whether each pupil gets a page back
 * @param artwork whether pages draw films
 * @param materials whether what to buy and to weigh is told
 * @param bounds how much of a plan is taken in
 */
record CheckSettings(
    String title,
    Optional<String> reports,
    Optional<String> sheets,
    Optional<Part> part,
    Optional<Baseline> baseline,
    Optional<ResultCache> cache,
    Bounds bounds,
    UnitChoice units,
    Groups by,
    boolean handBack,
    boolean artwork,
    List<Output> outputs,
    Detail detail,
    boolean materials,
    Colouring colour,
    FailOn failOn,
    int maxFindings,
    long maxSeconds) {}

package strikeoff.layout;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Table;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/**
 * How often frames are laid for one arrangement, and the same with longer frames that hold several
 * motifs at the arrangement's pitch.
 *
 * @param placements copies of the design
 * @param separations screens for each
 * @param lays placements times separations
 * @param sets how often the table is filled: placements by stations; one if they need none
 * @param motifs how many motifs the longest frame that hands can lay holds; 1 if no more
 * @param laysThen lays with frames of that many motifs
 * @param saved lays fewer
 * @param frameLength longest frame now, as it lies
 * @param frameThen length of that frame with as many motifs
 * @param stationThen length of a station for it; zero without stations
 */
public record Lays(
    String arrangement,
    int placements,
    int separations,
    int lays,
    int sets,
    int motifs,
    int laysThen,
    int saved,
    Length frameLength,
    Length frameThen,
    Length stationThen,
    PlanPath path)
    implements Evidence {

  static Optional<Lays> of(PrintPlan plan, Layout layout, Policy policy, Arrangement arrangement) {
    int copies = layout.of(arrangement.name()).size();
    if (copies == 0) {
      return Optional.empty();
    }
    double frame = 0;
    int separations = 0;
    for (Footprint footprint : layout.footprintsOf(layout.of(arrangement.name()).get(0).id())) {
      frame = Math.max(frame, footprint.frame().getEnvelopeInternal().getWidth());
      separations++;
    }
    double pitch = pitchOnOneFrame(arrangement);
    double longest =
        Math.min(policy.table().longestHandFrame().amount(), plan.table().length().mm());
    int motifs = 1;
    if (pitch > 0 && copies > 1) {
      motifs = (int) Math.max(1, Math.min(copies, Math.floor((longest - frame) / pitch) + 1));
    }
    int laysThen = (copies + motifs - 1) / motifs * separations;
    Optional<Table.Stations> stations = plan.table().stations();
    int atOnce =
        arrangement.takesBoard() ? stations.map(Table.Stations::count).orElse(copies) : copies;
    double frameThen = frame + (motifs - 1) * pitch;
    double clear = stations.map(s -> 2 * s.clearance().mm()).orElse(0.0);
    return Optional.of(
        new Lays(
            arrangement.name(),
            copies,
            separations,
            copies * separations,
            (copies + Math.max(1, atOnce) - 1) / Math.max(1, atOnce),
            motifs,
            laysThen,
            copies * separations - laysThen,
            new Length(frame),
            new Length(frameThen),
            new Length(stations.isPresent() ? frameThen + clear : 0),
            arrangement.path()));
  }

  /**
   * The pitch at which a longer frame holds several motifs; 0 if none does: there is no row, or the
   * frame lies askew to it.
   */
  static double pitchOnOneFrame(Arrangement arrangement) {
    if (!arrangement.turn().square()) {
      return 0;
    }
    if (arrangement instanceof Arrangement.Series series) {
      return series.pitch().mm();
    }
    return arrangement instanceof Arrangement.Border border ? border.repeat().mm() : 0;
  }
}

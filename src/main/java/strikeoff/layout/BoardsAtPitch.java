package strikeoff.layout;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Cloth;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Table;
import strikeoff.units.Length;

/**
 * A series against the boards of the table: a board belongs under each copy.
 *
 * @param copies of the series
 * @param pitch from one copy to the next
 * @param boardLength of one board
 * @param boardStep from one board to the next, if they are fixed
 * @param frameLength that the copies' frames take along the cloth
 * @param boardNeeded the longest board that goes under each copy and still has the clearance; zero
 *     if there is none
 * @param fixed true if the boards stand where they are
 * @param every each how manieth copy has a board under it: 1 for all of them; 0 if none but the
 *     first has, since fixed boards stand elsewhere
 * @param holds how many copies the cloth holds at the pitch that the boards ask for, if not all;
 *     else their number
 * @param second the copy behind the first one, as people call it
 */
public record BoardsAtPitch(
    String arrangement,
    int copies,
    Length pitch,
    Length boardLength,
    Length boardStep,
    Length frameLength,
    Length boardNeeded,
    boolean fixed,
    int every,
    int holds,
    String second,
    PlanPath path,
    PlanPath boardsPath)
    implements Evidence {

  static Optional<BoardsAtPitch> of(PrintPlan plan, Layout layout, Arrangement arrangement) {
    List<Placement> own = layout.of(arrangement.name());
    Optional<Table.Stations> boards = plan.table().stations();
    if (boards.isEmpty()
        || own.size() < 2
        || boards.get().count() < 2
        || !(arrangement instanceof Arrangement.Series series)
        // Copies that lie on each other are told as that.
        || series.pitch().below(own.get(0).outline().getEnvelopeInternal().getWidth())) {
      return Optional.empty();
    }
    Envelope frames = new Envelope();
    layout
        .footprintsOf(own.get(0).id())
        .forEach(f -> frames.expandToInclude(f.frame().getEnvelopeInternal()));
    double frame = frames.isNull() ? 0 : frames.getWidth();
    Table.Stations set = boards.get();
    double needed = frame + 2 * set.clearance().mm();
    Length wanted = set.fixed() ? set.length().plus(set.gap()) : set.length();
    return Optional.of(
        new BoardsAtPitch(
            series.name(),
            own.size(),
            series.pitch(),
            set.length(),
            set.length().plus(set.gap()),
            new Length(frame),
            new Length(series.pitch().below(needed) ? 0 : series.pitch().mm()),
            set.fixed(),
            set.fixed() ? onFixed(series, set, frame) : onLoose(series, set),
            Math.min(own.size(), holds(plan.cloth(), series, own.get(0), wanted)),
            own.get(1).name(),
            series.path().key("pitch"),
            set.path()));
  }

  /** On a tube all round, on open cloth up to the allowance at its end. */
  private static int holds(Cloth cloth, Arrangement.Series series, Placement first, Length pitch) {
    double room =
        cloth.closed()
            ? cloth.length().mm() - pitch.mm()
            : cloth.length().mm()
                - cloth.endAllowance().mm()
                - series.start().mm()
                - first.outline().getEnvelopeInternal().getWidth();
    return 1 + (int) Math.max(0, Math.floor((room + Length.TOLERANCE) / pitch.mm()));
  }

  private static int onLoose(Arrangement.Series series, Table.Stations boards) {
    double copies = (boards.length().mm() - Length.TOLERANCE) / series.pitch().mm();
    return (int) Math.max(1, Math.min(series.count(), Math.ceil(copies)));
  }

  /**
   * The least number of pitches that makes a board's step, if each copy served so stays on its
   * board: on the last one they are out by as many times the difference.
   */
  private static int onFixed(Arrangement.Series series, Table.Stations boards, double frame) {
    double step = boards.length().mm() + boards.gap().mm();
    double slack = Math.max(0, boards.length().mm() - frame) + Length.TOLERANCE;
    for (int every = 1; every < series.count(); every++) {
      int used = Math.min(boards.count(), (series.count() + every - 1) / every);
      if (Math.abs(every * series.pitch().mm() - step) * (used - 1) <= slack) {
        return every;
      }
    }
    return 0;
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.BOARDS, boardsPath));
  }
}

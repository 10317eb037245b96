package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;
import strikeoff.units.Angle;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** What to write for the mirrored one of two panels so that each copy mirrors its partner. */
final class MirrorMend {

  /** More places than this nobody copies from a finding. */
  private static final int MOST_PLACES = 12;

  private final Panel panel;
  private final List<Coordinate> moves;
  private final Measures units;

  private MirrorMend(Panel panel, List<Coordinate> moves, Measures units) {
    this.panel = panel;
    this.moves = moves;
    this.units = units;
  }

  static MirroredPanels.Mend of(PanelFit fit, boolean rightMirrored, Measures units) {
    Panel panel = rightMirrored ? fit.right() : fit.left();
    int copies = fit.partners().length;
    Coordinate[] moves = new Coordinate[copies];
    for (int i = 0; i < copies; i++) {
      Coordinate move = rightMirrored ? fit.moveOfRight(i) : fit.moveOfLeft(i);
      moves[rightMirrored ? i : fit.partners()[i]] =
          panel.lineAcross() ? move : new Coordinate(move.y, move.x);
    }
    return new MirrorMend(panel, List.of(moves), units).mend(fit.axis());
  }

  private MirroredPanels.Mend mend(double axis) {
    Arrangement arrangement = panel.arrangement();
    Entries entries = new Entries(units);
    if (arrangement instanceof Arrangement.Series series && inARow()) {
      entries.add("start", series.start(), first().x);
      entries.add("pitch", series.pitch(), step().x);
      entries.add("across", series.across(), first().y);
    } else if (arrangement instanceof Arrangement.Border border && inARow()) {
      double from = entries.add("from", border.from(), first().x);
      double repeat = entries.add("repeat", border.repeat(), step().x);
      entries.add("to", border.to(), from + moves.size() * repeat - border.to().mm());
      entries.add(
          "inset", border.inset(), border.edge() == Arrangement.Edge.NEAR ? first().y : -first().y);
    } else if (arrangement instanceof Arrangement.Fill fill && allAlike()) {
      entries.add("from", fill.from(), first().x);
      entries.add("to", fill.to(), first().x);
      entries.add("near", fill.near(), first().y);
      entries.add("far", fill.far(), first().y);
    } else if (arrangement instanceof Arrangement.Anchored anchored && allAlike()) {
      double x = anchored.dx().mm() + first().x;
      return new MirroredPanels.Mend.Values("offset: " + pair(x, anchored.dy().mm() + first().y));
    }
    if (!entries.written.isEmpty()) {
      return new MirroredPanels.Mend.Values(entries.text());
    }
    return moves.size() <= MOST_PLACES ? places() : formula(axis);
  }

  private Coordinate first() {
    return moves.get(0);
  }

  private boolean allAlike() {
    return moves.stream().allMatch(m -> m.distance(first()) < Length.TOLERANCE);
  }

  /** True if the copies, once moved, stand in one row along the cloth at one pitch. */
  private boolean inARow() {
    Coordinate step = step();
    for (int i = 1; i < moves.size(); i++) {
      Coordinate here = change(i);
      if (Math.abs(here.y) > Length.TOLERANCE || Math.abs(here.x - step.x) > Length.TOLERANCE) {
        return false;
      }
    }
    return true;
  }

  private Coordinate step() {
    return moves.size() > 1 ? change(1) : new Coordinate(0, 0);
  }

  /** How much more a copy moves than the one before it. */
  private Coordinate change(int i) {
    return new Coordinate(moves.get(i).x - moves.get(i - 1).x, moves.get(i).y - moves.get(i - 1).y);
  }

  /** Corners of all copies, as a list of places. */
  private MirroredPanels.Mend places() {
    List<String> places = new ArrayList<>();
    for (int i = 0; i < moves.size(); i++) {
      Placement placement = panel.placements().get(i);
      places.add(pair(placement.x().mm() + moves.get(i).x, placement.y().mm() + moves.get(i).y));
    }
    return new MirroredPanels.Mend.Places(
        "at: [" + String.join(", ", places) + "]",
        !(panel.arrangement() instanceof Arrangement.Placed));
  }

  /**
   * A corner and its partner's add up to twice the line less what one sees of the design along
   * there.
   */
  private MirroredPanels.Mend formula(double axis) {
    boolean across = panel.lineAcross();
    Design design = panel.design();
    Angle turn = panel.arrangement().turn();
    double extent = (across ? design.lengthTurned(turn) : design.widthTurned(turn)).mm();
    return new MirroredPanels.Mend.Partners(across, new Length(2 * axis - extent));
  }

  private String pair(double x, double y) {
    return '"' + new Length(x).writtenText(units) + ", " + new Length(y).writtenText(units) + '"';
  }

  /** What changes of an arrangement, as it is written into a plan. */
  private static final class Entries {

    private final Measures units;
    private final List<String> written = new ArrayList<>();

    Entries(Measures units) {
      this.units = units;
    }

    /**
     * Notes a value if it changes.
     *
     * @return the value as it is written, mm: to the last of its figures
     */
    double add(String key, Length now, double change) {
      if (Math.abs(change) < Length.TOLERANCE) {
        return now.mm();
      }
      Length then = new Length(now.mm() + change).written(units);
      written.add(key + ": " + then.writtenText(units));
      return then.mm();
    }

    String text() {
      return String.join(", ", written);
    }
  }
}

package strikeoff.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;

/**
 * One arrangement seen as one half of what a line may mirror. Places are told as ({@code out}, the
 * distance at right angles to the line; {@code beside}, the place along it).
 *
 * @param lineAcross true if the line runs across the cloth
 * @param centres of the copies, by number: x is out, y is beside
 * @param bounds of all outlines, in the same terms
 * @param firstCentre least {@code out} of the centres, mm; kept, since each panel is held against
 *     all
 * @param lastCentre greatest {@code out} of the centres, mm
 * @param meanBeside mean {@code beside} of the centres, mm
 */
record Panel(
    Arrangement arrangement,
    Design design,
    boolean lineAcross,
    List<Placement> placements,
    List<Coordinate> centres,
    Envelope bounds,
    double firstCentre,
    double lastCentre,
    double meanBeside) {

  static Panel of(
      Arrangement arrangement, Design design, boolean across, List<Placement> placements) {
    List<Coordinate> centres = new ArrayList<>();
    Envelope bounds = new Envelope();
    for (Placement placement : placements) {
      Envelope outline = placement.outline().getEnvelopeInternal();
      Coordinate centre = outline.centre();
      centres.add(across ? centre : new Coordinate(centre.y, centre.x));
      bounds.expandToInclude(
          across
              ? outline
              : new Envelope(
                  outline.getMinY(), outline.getMaxY(), outline.getMinX(), outline.getMaxX()));
    }
    return new Panel(
        arrangement,
        design,
        across,
        placements,
        centres,
        bounds,
        centres.stream().mapToDouble(c -> c.x).min().orElseThrow(),
        centres.stream().mapToDouble(c -> c.x).max().orElseThrow(),
        centres.stream().mapToDouble(c -> c.y).average().orElseThrow());
  }

  /** The side of the design's outline that is shorter. */
  double shortSide() {
    return Math.min(design.length().mm(), design.width().mm());
  }

  /**
   * True if a design laid as the other one is what a mirror makes of this one: one of them is
   * mirrored, and their turns answer each other.
   */
  boolean answers(Panel other) {
    double turns = arrangement.turn().degrees() + other.arrangement.turn().degrees();
    double rest = (turns - (lineAcross ? 0 : 180)) % 360;
    return arrangement.mirrored() != other.arrangement.mirrored()
        && Math.abs(rest - 360 * Math.rint(rest / 360)) < 1e-6;
  }

  /**
   * Indices of the copies, going one way from the line, column by column, and along the line within
   * one: partners stand at one index. A column is as deep as half a motif, since a copy that is a
   * little off is in its column still.
   *
   * @param direction 1 with growing distance, −1 against it
   */
  List<Integer> order(int direction) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < centres.size(); i++) {
      order.add(i);
    }
    Comparator<Integer> out = Comparator.comparingDouble(i -> direction * centres.get(i).x);
    order.sort(out.thenComparingDouble(i -> centres.get(i).y));
    double depth = shortSide() / 2;
    for (int from = 0, to; from < order.size(); from = to) {
      double begins = centres.get(order.get(from)).x;
      for (to = from + 1; to < order.size(); to++) {
        if (Math.abs(centres.get(order.get(to)).x - begins) > depth) {
          break;
        }
      }
      order.subList(from, to).sort(Comparator.comparingDouble(i -> centres.get(i).y));
    }
    return order;
  }
}

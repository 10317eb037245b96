package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.Impression;
import strikeoff.layout.Placement;
import strikeoff.report.page.DaySheet.Spot;
import strikeoff.report.page.DaySheet.Where;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * Where placements lie, as two tapes show it: one from the start of the cloth, one from its near
 * edge. Measured is the corner that lies nearest to both; of a design turned askew, whose corners
 * lie anywhere, the middle.
 */
final class Corners {

  private final double around;
  private final Measures units;
  private final boolean askew;
  private final Map<Placement, List<Impression>> byPlacement = new LinkedHashMap<>();

  private Corners(List<Impression> impressions, double around, Measures units) {
    this.around = around;
    this.units = units;
    for (Impression impression : impressions) {
      byPlacement
          .computeIfAbsent(impression.footprint().placement(), key -> new ArrayList<>())
          .add(impression);
    }
    this.askew = first().turn().degrees() % 90 != 0;
  }

  /**
   * @param impressions of one arrangement
   * @param around of a closed cloth in millimetres: measures start anew there; infinite for an open
   *     one
   * @param units to tell measures in
   */
  static Where of(List<Impression> impressions, double around, Measures units) {
    return new Corners(impressions, around, units).where();
  }

  private Where where() {
    Set<String> across = new LinkedHashSet<>();
    byPlacement.keySet().forEach(p -> across.add(told(point(p).y)));
    boolean row = across.size() == 1;
    String unit = Length.columnUnit(units);
    // A slash or a bare number beside fractions of an inch would read as another fraction.
    boolean fractions = unit.equals("in");
    String one = fractions ? " in" : "";
    String slash = fractions ? " in along, " : " / ";
    String both = fractions ? " in across" : "";
    List<Spot> spots = new ArrayList<>();
    for (Placement placement : byPlacement.keySet()) {
      Coordinate point = point(placement);
      String along = told(point.x % around);
      spots.add(
          new Spot(
              Integer.toString(placement.number()),
              row ? along + one : along + slash + told(point.y) + both));
    }
    String what = askew ? "Middle" : "Corner";
    String words =
        row
            ? what
                + " "
                + across.iterator().next()
                + " "
                + unit
                + " from the near edge; from the start"
                + (fractions ? ":" : ", " + unit + ":")
            : fractions
                ? what + ", along from the start and across from the near edge:"
                : what + ", " + unit + " from the start / from the near edge:";
    return new Where(words, spots, turned() + frame());
  }

  private String turned() {
    String turn =
        first().turn().degrees() == 0 ? "" : "Turn the design by " + first().turn().text() + ". ";
    return turn + (first().mirrored() ? "Mirrored. " : "");
  }

  /** How far the frame's own corner lies from there, if it is the same for all. */
  private String frame() {
    Set<String> offsets = new LinkedHashSet<>();
    byPlacement.forEach(
        (placement, impressions) -> {
          Coordinate point = point(placement);
          for (Impression impression : impressions) {
            Envelope frame = impression.footprint().frame().getEnvelopeInternal();
            offsets.add(
                apart(point.x - frame.getMinX(), "nearer the start", "farther from the start")
                    + " and "
                    + apart(point.y - frame.getMinY(), "nearer the near edge", "farther from it"));
          }
        });
    return offsets.size() == 1 && !askew
        ? "The frame's corner lies " + offsets.iterator().next() + "."
        : "";
  }

  private String apart(double mm, String nearer, String farther) {
    return told(Math.abs(mm)) + " " + Length.columnUnit(units) + " " + (mm >= 0 ? nearer : farther);
  }

  private Placement first() {
    return byPlacement.keySet().iterator().next();
  }

  private Coordinate point(Placement placement) {
    Envelope box = placement.outline().getEnvelopeInternal();
    return askew ? box.centre() : new Coordinate(box.getMinX(), box.getMinY());
  }

  private String told(double mm) {
    return new Length(mm).inColumn(units);
  }
}

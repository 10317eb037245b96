package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import strikeoff.check.Checked;
import strikeoff.day.ClothLies;
import strikeoff.day.Impression;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintPlan;
import strikeoff.report.page.DaySheet.Spot;
import strikeoff.report.page.DaySheet.Where;
import strikeoff.speech.TableSpeech;
import strikeoff.speech.TableSpeech.Tape;
import strikeoff.units.Length;

/**
 * Where frames and designs come to lie, as tapes on the table show it while the cloth lies as it
 * does then. Measured are the corners that lie nearest to the start and the near edge; of a design
 * turned askew, whose corners lie anywhere, the middle.
 */
final class Corners {

  private final TableSpeech words;
  private final WhereCloth cloth;
  private final boolean askew;
  private final Map<Placement, List<Impression>> byPlacement = new LinkedHashMap<>();

  /** The cloth's near edge, from what is measured from across. */
  private final Length nearEdge;

  private Corners(List<Impression> impressions, Checked.Judged judged) {
    PrintPlan plan = judged.plan();
    this.words = TableSpeech.of(plan);
    this.cloth = new WhereCloth(judged);
    this.nearEdge = words.fits() ? plan.table().nearEdgeOf(plan.cloth()) : new Length(0);
    for (Impression impression : impressions) {
      byPlacement
          .computeIfAbsent(impression.footprint().placement(), key -> new ArrayList<>())
          .add(impression);
    }
    this.askew = !first().turn().square();
  }

  /**
   * @param impressions of one arrangement
   */
  static Where of(List<Impression> impressions, Checked.Judged judged) {
    return new Corners(impressions, judged).where();
  }

  private Where where() {
    Set<String> across = new LinkedHashSet<>();
    byPlacement.keySet().forEach(placement -> across.add(told(placement, Tape.ACROSS)));
    boolean row = across.size() == 1;
    List<Spot> spots = new ArrayList<>();
    for (Placement placement : byPlacement.keySet()) {
      spots.add(
          new Spot(
              Integer.toString(placement.number()), told(placement, row ? Tape.ALONG : Tape.BOTH)));
    }
    return new Where(
        words.measured(askew, row),
        spots,
        turned() + (row ? words.across(across.iterator().next()) : ""));
  }

  /** The frame's corner, by screens where theirs differ, and the design's. */
  private String told(Placement placement, Tape tape) {
    ClothLies lies = cloth.under(byPlacement.get(placement).get(0));
    String own = told(point(placement), lies, tape);
    if (askew) {
      return own;
    }
    Map<String, Set<String>> frames = new LinkedHashMap<>();
    for (Impression impression : byPlacement.get(placement)) {
      Envelope frame = impression.footprint().frame().getEnvelopeInternal();
      frames
          .computeIfAbsent(
              told(new Coordinate(frame.getMinX(), frame.getMinY()), lies, tape),
              key -> new LinkedHashSet<>())
          .add(DayJobs.name(impression.footprint().screen().name()));
    }
    return words.of(frames, own);
  }

  private String told(Coordinate place, ClothLies lies, Tape tape) {
    return words.at(lies.onTable(new Length(place.x)), nearEdge.plus(new Length(place.y)), tape);
  }

  private String turned() {
    String turn =
        first().turn().degrees() == 0 ? "" : "Turn the design by " + first().turn().text() + ". ";
    return turn + (first().mirrored() ? "Mirrored. " : "");
  }

  private Placement first() {
    return byPlacement.keySet().iterator().next();
  }

  private Coordinate point(Placement placement) {
    Envelope box = placement.outline().getEnvelopeInternal();
    return askew ? box.centre() : new Coordinate(box.getMinX(), box.getMinY());
  }
}

package strikeoff.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;
import strikeoff.document.GivenUp;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/** Finds the place of every copy of every arrangement, anchors before what hangs on them. */
final class Laying {

  /**
   * More impressions than this are not laid: the tool's own bound against plans that would eat all
   * memory, far beyond any table's day.
   */
  static final int MOST_IMPRESSIONS = 200_000;

  private final PrintPlan plan;
  private final Tube tube;

  /** A border's repeats share out a misfit of so much. */
  private final Length closing;

  private final Map<String, Template> templates = new LinkedHashMap<>();
  private final Map<String, List<CopyPlace>> spots = new LinkedHashMap<>();
  private final List<Evidence> evidence = new ArrayList<>();
  private final Set<String> refused = new HashSet<>();
  private double impressions;

  private Laying(PrintPlan plan, Policy policy) {
    this.plan = plan;
    this.closing = policy.layout().closingTolerance();
    this.tube = Tube.of(plan.cloth());
  }

  static Laying of(PrintPlan plan, Policy policy) {
    Laying laying = new Laying(plan, policy);
    LayingOrder order = LayingOrder.of(plan.arrangements());
    order.order().forEach(laying::lay);
    for (List<Arrangement> circle : order.circles()) {
      laying.evidence.add(
          new AnchorCircle(
              circle.stream().map(Arrangement::name).toList(),
              order.waiting().stream().map(Arrangement::name).toList(),
              circle.get(0).path()));
    }
    return laying;
  }

  /** Spots of one arrangement by number; none if it could not be laid. */
  List<CopyPlace> spots(String arrangement) {
    return spots.getOrDefault(arrangement, List.of());
  }

  Template template(String arrangement) {
    return templates.get(arrangement);
  }

  /** What was noticed on the way: fills, circles, missing anchors, what is beyond counting. */
  List<Evidence> evidence() {
    return evidence;
  }

  private void lay(Arrangement arrangement) {
    GivenUp.ifAsked();
    Template template =
        new Template(
            plan.designs().get(arrangement.design()),
            plan.screens(),
            arrangement.turn(),
            arrangement.mirrored());
    templates.put(arrangement.name(), template);
    List<CopyPlace> found = new ArrayList<>();
    if (countable(arrangement, template)) {
      if (arrangement instanceof Arrangement.Series series) {
        layRow(found, template, series.count(), series.start(), series.across(), series.pitch());
      } else if (arrangement instanceof Arrangement.Border border) {
        layBorder(found, template, border);
      } else if (arrangement instanceof Arrangement.Fill fill) {
        layFill(found, template, fill);
      } else if (arrangement instanceof Arrangement.Anchored anchored) {
        layAnchored(found, template, anchored);
      } else if (arrangement instanceof Arrangement.Placed placed) {
        placed.at().forEach(at -> add(found, template, at.x().mm(), at.y().mm(), null));
      }
    }
    spots.put(arrangement.name(), List.copyOf(found));
  }

  private boolean countable(Arrangement arrangement, Template template) {
    double copies = copies(arrangement, template);
    int separations = plan.designs().get(arrangement.design()).separations().size();
    double wanted = copies * Math.max(1, separations);
    // Not "greater than": a count that is no number is not countable either.
    if (!(impressions + wanted <= MOST_IMPRESSIONS)) {
      refused.add(arrangement.name());
      evidence.add(
          new BeyondCounting(arrangement.name(), copies, MOST_IMPRESSIONS, arrangement.path()));
      return false;
    }
    impressions += wanted;
    return true;
  }

  private double copies(Arrangement arrangement, Template template) {
    if (arrangement instanceof Arrangement.Series series) {
      return series.count();
    } else if (arrangement instanceof Arrangement.Border border) {
      return BorderRepeats.whole(border, closing);
    } else if (arrangement instanceof Arrangement.Fill fill) {
      return new FillLattice(fill, template.bounds(), tube).count();
    } else if (arrangement instanceof Arrangement.Anchored anchored) {
      return anchored.which().isEmpty() ? spots(anchored.anchor()).size() : anchored.which().size();
    }
    return ((Arrangement.Placed) arrangement).at().size();
  }

  private static void add(
      List<CopyPlace> found, Template template, double x, double y, CopyPlace anchor) {
    Polygon outline = template.outlineAt(x, y);
    found.add(new CopyPlace(found.size() + 1, x, y, outline, anchor));
  }

  private static void layRow(
      List<CopyPlace> found,
      Template template,
      int count,
      Length start,
      Length across,
      Length pitch) {
    for (int i = 0; i < count; i++) {
      add(found, template, start.mm() + i * pitch.mm(), across.mm(), null);
    }
  }

  private void layBorder(List<CopyPlace> found, Template template, Arrangement.Border border) {
    double y =
        border.edge() == Arrangement.Edge.NEAR
            ? border.inset().mm()
            : plan.cloth().width().mm() - border.inset().mm() - template.bounds().getHeight();
    BorderRepeats repeats = BorderRepeats.of(border, template.bounds().getWidth(), tube, closing);
    layRow(found, template, repeats.whole(), border.from(), new Length(y), repeats.laidEvery());
  }

  private void layAnchored(
      List<CopyPlace> found, Template template, Arrangement.Anchored anchored) {
    List<CopyPlace> anchors = spots(anchored.anchor());
    List<Integer> beyond = new ArrayList<>();
    List<Integer> which =
        anchored.which().isEmpty()
            ? anchors.stream().map(CopyPlace::number).toList()
            : anchored.which();
    for (int number : which) {
      if (number < 1 || number > anchors.size()) {
        beyond.add(number);
      } else {
        CopyPlace anchor = anchors.get(number - 1);
        double x = anchor.x() + anchored.dx().mm();
        add(found, template, x, anchor.y() + anchored.dy().mm(), anchor);
      }
    }
    if (!refused.contains(anchored.anchor())) {
      evidence.add(
          new Anchoring(
              anchored.name(), anchored.anchor(), anchors.size(), beyond, anchored.path()));
    }
  }

  private void layFill(List<CopyPlace> found, Template template, Arrangement.Fill fill) {
    ClothIndex<Polygon> taken = new ClothIndex<>(tube);
    for (String name : fill.around()) {
      spots(name).forEach(spot -> taken.add(spot.outline(), spot.outline()));
    }
    double clear = fill.clear().mm();
    List<Double> tooNear = new ArrayList<>();
    FillLattice lattice = new FillLattice(fill, template.bounds(), tube);
    for (FillLattice.Corner corner : lattice.corners()) {
      GivenUp.ifAsked();
      Polygon outline = template.outlineAt(corner.x(), corner.y());
      double nearest = Double.POSITIVE_INFINITY;
      boolean covers = false;
      for (Polygon other : taken.near(outline, clear)) {
        nearest = Math.min(nearest, tube.distance(outline, other));
        covers |= nearest == 0 && tube.overlaps(outline, other);
      }
      if (covers || nearest < clear - Length.TOLERANCE) {
        tooNear.add(covers ? -1 : nearest);
      } else {
        add(found, template, corner.x(), corner.y(), null);
      }
    }
    evidence.add(FillFit.of(fill, lattice, found.size(), tooNear));
  }
}

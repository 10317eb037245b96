package strikeoff.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/** Everything's place on the cloth, and what follows from it. Immutable. */
public final class Layout {

  private final Tube tube;
  private final List<Placement> placements;
  private final List<Footprint> footprints;
  private final List<Evidence> evidence;
  private final Map<String, List<Placement>> arrangements;
  private final Map<String, Placement> named;
  private final int[] firstFootprint;
  private final double begin;

  /**
   * @param placements in order of arrangements and numbers; a placement's id is its index
   * @param footprints of every separation of every placement, by placement id and separation number
   * @param evidence further facts for rules: spans and misfits, closings, seam crossings, overlaps,
   *     clearances, fits of frames on table and cloth
   */
  public Layout(
      Tube tube, List<Placement> placements, List<Footprint> footprints, List<Evidence> evidence) {
    this.tube = tube;
    this.placements = List.copyOf(placements);
    this.footprints = List.copyOf(footprints);
    this.evidence = List.copyOf(evidence);
    Map<String, List<Placement>> byName = new LinkedHashMap<>();
    this.named = new HashMap<>();
    for (Placement placement : this.placements) {
      named.put(placement.name(), placement);
      byName.computeIfAbsent(placement.arrangement(), name -> new ArrayList<>()).add(placement);
    }
    byName.replaceAll((name, own) -> List.copyOf(own));
    this.arrangements = Collections.unmodifiableMap(byName);
    this.firstFootprint = new int[this.placements.size() + 1];
    double first = 0;
    for (Footprint footprint : this.footprints) {
      firstFootprint[footprint.placement().id() + 1]++;
      first = Math.min(first, footprint.frame().getEnvelopeInternal().getMinX());
    }
    this.begin = first;
    for (int id = 0; id < this.placements.size(); id++) {
      firstFootprint[id + 1] += firstFootprint[id];
    }
  }

  /** Lays a plan out. */
  public static Layout of(PrintPlan plan, Policy policy) {
    Laying laying = Laying.of(plan, policy);
    List<Placement> placements = new ArrayList<>();
    List<Footprint> footprints = new ArrayList<>();
    Map<CopyPlace, Integer> ids = ids(plan, laying);
    for (Arrangement arrangement : plan.arrangements().values()) {
      Design design = plan.designs().get(arrangement.design());
      for (CopyPlace spot : laying.spots(arrangement.name())) {
        OptionalInt anchor =
            spot.anchor() == null ? OptionalInt.empty() : OptionalInt.of(ids.get(spot.anchor()));
        Placement placement =
            new Placement(
                placements.size(),
                arrangement.name(),
                spot.number(),
                design.name(),
                new Length(spot.x()),
                new Length(spot.y()),
                arrangement.turn(),
                arrangement.mirrored(),
                spot.outline(),
                anchor,
                arrangement.path());
        placements.add(placement);
        addFootprints(footprints, plan, placement, design, laying.template(arrangement.name()));
      }
    }
    Layout bare = new Layout(Tube.of(plan.cloth()), placements, footprints, List.of());
    List<Evidence> evidence = new ArrayList<>(laying.evidence());
    evidence.addAll(LayoutFacts.of(plan, bare, laying, policy));
    return new Layout(bare.tube, placements, footprints, evidence);
  }

  private static Map<CopyPlace, Integer> ids(PrintPlan plan, Laying laying) {
    Map<CopyPlace, Integer> ids = new IdentityHashMap<>();
    for (String name : plan.arrangements().keySet()) {
      laying.spots(name).forEach(spot -> ids.put(spot, ids.size()));
    }
    return ids;
  }

  private static void addFootprints(
      List<Footprint> footprints,
      PrintPlan plan,
      Placement placement,
      Design design,
      Template template) {
    double x = placement.x().mm();
    double y = placement.y().mm();
    for (int i = 0; i < design.separations().size(); i++) {
      Design.Separation separation = design.separations().get(i);
      footprints.add(
          new Footprint(
              placement,
              separation,
              plan.screens().get(separation.screen()),
              plan.pastes().get(separation.paste()),
              template.imageAt(i, x, y),
              template.frameAt(i, x, y)));
    }
  }

  public Tube tube() {
    return tube;
  }

  public List<Placement> placements() {
    return placements;
  }

  /** The bounds of what a placement prints: by films, and by images where none tells. */
  public Envelope printed(Placement placement) {
    Envelope bounds = new Envelope();
    for (Footprint footprint : footprintsOf(placement.id())) {
      bounds.expandToInclude(footprint.printed().getEnvelopeInternal());
    }
    return bounds;
  }

  /**
   * The outline around what a placement prints where films tell that of all its colours, or else of
   * its design's rectangle.
   */
  Geometry outline(Placement placement) {
    List<Footprint> own = footprintsOf(placement.id());
    if (own.isEmpty() || own.stream().anyMatch(print -> print.printed() == print.image())) {
      return placement.outline();
    }
    Geometry[] printed = own.stream().map(Footprint::printed).toArray(Geometry[]::new);
    return placement.outline().getFactory().createGeometryCollection(printed).convexHull();
  }

  /** The placement of that name. */
  public Optional<Placement> named(String name) {
    return Optional.ofNullable(named.get(name));
  }

  /** Names of the placements of a design. */
  public List<String> placed(Design design) {
    return placements.stream()
        .filter(p -> p.design().equals(design.name()))
        .map(Placement::name)
        .toList();
  }

  public List<Footprint> footprints() {
    return footprints;
  }

  public List<Evidence> evidence() {
    return evidence;
  }

  /** Placements by arrangement, both in the plan's order; without arrangements that have none. */
  public Map<String, List<Placement>> arrangements() {
    return arrangements;
  }

  /** The placements of one arrangement, by number; none if it has none. */
  public List<Placement> of(String arrangement) {
    return arrangements.getOrDefault(arrangement, List.of());
  }

  /**
   * Where the stretch begins that holds the cloth's first frames whole, in mm: the start of the
   * cloth, or as far before it as a frame reaches.
   */
  public double begin() {
    return begin;
  }

  /** The footprints of one placement, by separation number. */
  public List<Footprint> footprintsOf(int placementId) {
    return footprints.subList(firstFootprint[placementId], firstFootprint[placementId + 1]);
  }

  /**
   * What one separation of one placement covers.
   *
   * @param separation its number, from 1
   * @throws NoSuchElementException if the design has no such separation
   */
  public Footprint footprint(int placementId, int separation) {
    List<Footprint> own = footprintsOf(placementId);
    if (separation < 1 || separation > own.size()) {
      throw new NoSuchElementException(
          placements.get(placementId).name() + " has no separation " + separation);
    }
    return own.get(separation - 1);
  }
}

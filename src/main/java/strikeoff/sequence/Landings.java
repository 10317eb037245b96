package strikeoff.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import strikeoff.colour.Meeting;
import strikeoff.colour.Meetings;
import strikeoff.day.Impression;
import strikeoff.document.Bounds;
import strikeoff.document.GivenUp;
import strikeoff.evidence.Evidence;
import strikeoff.layout.ClothIndex;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.Design;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * Where each colour lands: on the ground, on earlier colours of its motif, on other placements. The
 * run says what lies under what; a plan without one, the order of the design's list, anchors and
 * what is printed over another on purpose.
 */
final class Landings {

  private static final double WHOLE = 1 - 1e-9;

  private final PrintPlan plan;
  private final Layout layout;
  private final Meetings meetings;
  private final double partly;
  private final Stacking stacking;
  private final Length registration;
  private final Map<String, LostPrints> lost = new LinkedHashMap<>();
  private final boolean dulled;
  private final Map<String, Boolean> canBeLost = new HashMap<>();
  private final Map<String, Unseen> unseen = new LinkedHashMap<>();
  private final ClothIndex<Footprint> index;
  private long left;

  private Landings(
      PrintPlan plan, Layout layout, List<Impression> impressions, Policy policy, boolean dulled) {
    this.dulled = dulled;
    this.plan = plan;
    this.layout = layout;
    meetings = new Meetings(plan.cloth(), policy);
    partly = policy.order().partlyLost().fraction();
    registration = policy.registration(plan.table().railed());
    left = Bounds.PAIRS;
    stacking = new Stacking(plan, impressions);
    index = new ClothIndex<>(layout.tube());
    layout.footprints().forEach(f -> index.add(f.printed(), f));
  }

  /**
   * Colours that are lost where they land, and translucent ones that come out dull there; what is
   * told as lost is not told as dull again.
   */
  static List<Evidence> facts(
      PrintPlan plan, Layout layout, List<Impression> impressions, Policy policy) {
    Landings landings = new Landings(plan, layout, impressions, policy, false);
    landings.look();
    List<Evidence> facts = new ArrayList<>();
    landings.lost.values().forEach(prints -> facts.add(prints.fact(landings.meetings)));
    if (plan.pastes().values().stream().anyMatch(Paste::translucent)) {
      Landings dull = new Landings(plan, layout, impressions, policy, true);
      dull.look();
      dull.lost.forEach(
          (key, prints) -> {
            if (!landings.lost.containsKey(key)) {
              facts.add(prints.dulled(dull.meetings));
            }
          });
    }
    return facts;
  }

  private void look() {
    for (Placement placement : layout.placements()) {
      GivenUp.ifAsked();
      List<Footprint> motif = layout.footprintsOf(placement.id());
      for (Footprint one : motif) {
        if (!stacking.isPrinted(one)) {
          continue;
        }
        if (meetings.isLostOnGround(one.paste())) {
          unseen
              .computeIfAbsent(one.paste().name(), name -> new Unseen())
              .add(one, beneath(one, motif));
        } else if (canBeLost(one.paste())) {
          onMotif(one, motif);
          onOthers(one);
        }
      }
    }
    unseen.values().forEach(this::onPrintsAlone);
  }

  /** Prints of a paste that nobody sees on the bare ground, and what they lie on instead. */
  private static final class Unseen {

    private final Map<Footprint, List<Footprint>> prints = new LinkedHashMap<>();
    private boolean bare;

    void add(Footprint one, List<Footprint> beneath) {
      prints.put(one, beneath);
      bare |= beneath.isEmpty();
    }
  }

  /**
   * What is printed on others everywhere was never meant for the ground, and all of it is lost
   * where they let nobody see it either. If it lies on the bare ground anywhere, that is told.
   */
  private void onPrintsAlone(Unseen paste) {
    if (paste.bare) {
      return;
    }
    paste.prints.forEach(
        (one, beneath) -> {
          if (beneath.stream().allMatch(other -> isGoneOver(one, other))) {
            add(one, false, beneath, 1);
          }
        });
  }

  /** A second look tells what is dull, and only that. */
  private boolean isGoneOver(Footprint one, Footprint other) {
    Meeting meeting = meetings.over(one.paste(), other.paste());
    return dulled ? meeting.isDulled() && !meeting.isLost() : meeting.isLost();
  }

  /**
   * What was printed before on its own motif, where the stencils can have it lie on that, and on
   * placements that hold all of it. What nobody tells from the ground is as the ground.
   */
  private List<Footprint> beneath(Footprint one, List<Footprint> motif) {
    List<Footprint> beneath = new ArrayList<>();
    for (Footprint other : left > 0 ? motif : List.<Footprint>of()) {
      left--;
      if (other != one
          && stacking.isPrinted(other)
          && stacking.isOver(one, other)
          && SharedAreas.most(design(one), one.separation(), other.separation()) > 0
          && !meetings.isLostOnGround(other.paste())) {
        beneath.add(other);
      }
    }
    for (Footprint other : upperFirst(one)) {
      if (other.placement().id() != one.placement().id()
          && stacking.isOver(one, other)
          && share(one, other) >= WHOLE
          && !meetings.isLostOnGround(other.paste())) {
        beneath.add(other);
      }
    }
    return beneath;
  }

  /** Whether a colour is gone there, or in the second look perhaps only dull. */
  private boolean isGone(Meeting meeting) {
    return meeting.isLost() || dulled && meeting.isDulled();
  }

  /** Whether there is a paste that it could be lost over or under. */
  private boolean canBeLost(Paste paste) {
    return canBeLost.computeIfAbsent(paste.name(), name -> isLostAnywhere(paste));
  }

  private boolean isLostAnywhere(Paste paste) {
    return plan.pastes().values().stream()
        .anyMatch(
            other -> isGone(meetings.over(paste, other)) || isGone(meetings.under(paste, other)));
  }

  private void onMotif(Footprint one, List<Footprint> motif) {
    List<Footprint> below = new ArrayList<>();
    List<Footprint> above = new ArrayList<>();
    List<Footprint> shown = new ArrayList<>();
    double fills = 0;
    double alike = 0;
    for (Footprint other : left > 0 ? motif : List.<Footprint>of()) {
      left--;
      double area = SharedAreas.most(design(one), one.separation(), other.separation());
      if (other == one || area == 0 || !stacking.isPrinted(other)) {
        continue;
      }
      if (stacking.isOver(one, other)) {
        boolean isLost = isLostOver(one, other);
        (isLost ? below : shown).add(other);
        fills += other.separation().key() ? 0 : area;
        alike += isLost && !other.separation().key() ? area : 0;
      } else if (isLostUnder(one, other)) {
        above.add(other);
      }
    }
    double certain = certain(one, below);
    Optional<Footprint> highest = below.stream().reduce((a, b) -> stacking.isOver(b, a) ? b : a);
    for (Footprint base : shown) {
      boolean uppermost = highest.stream().allMatch(lower -> stacking.isOver(base, lower));
      certain -= uppermost ? certain * underlaid(one, base) : 0;
    }
    boolean key = one.separation().key();
    add(one, false, below, key && fills > 0 ? alike / fills : certain);
    add(one, true, above, certain(one, above));
  }

  private void onOthers(Footprint one) {
    List<Footprint> below = new ArrayList<>();
    List<Footprint> above = new ArrayList<>();
    double bare = 1;
    double lostOver = 0;
    double lostUnder = 0;
    for (Footprint other : upperFirst(one)) {
      boolean own = other.placement().id() == one.placement().id();
      double held = own ? 1 : share(one, other);
      double covers = other.separation().printed().squareCm() * 100 / other.printed().getArea();
      if (stacking.isOver(one, other)) {
        if (!own && isLostOver(one, other)) {
          below.add(other);
          lostOver += bare * held * covers;
          bare -= other.paste().transparent() ? 0 : bare * held * covers;
        } else if (held >= WHOLE) {
          bare -= bare * underlaid(one, other);
        }
      } else if (!own && held >= WHOLE && stacking.isOver(other, one) && isLostUnder(one, other)) {
        above.add(other);
        lostUnder += covers;
      }
    }
    add(one, false, below, lostOver);
    add(one, true, above, lostUnder);
  }

  /**
   * The share of a print that lies on an opaque one it shows on, cut for it to lie on: a white that
   * is printed first.
   */
  private double underlaid(Footprint one, Footprint other) {
    if (other.paste().transparent()) {
      return 0;
    }
    boolean own = other.placement().id() == one.placement().id();
    double area =
        own
            ? SharedAreas.most(design(one), one.separation(), other.separation())
            : other.separation().printed().squareCm();
    return SharedAreas.clamp(area / one.separation().printed().squareCm());
  }

  private Design design(Footprint print) {
    return plan.designs().get(print.placement().design());
  }

  /** What of the outline around one's print, or of its image, lies in another's. */
  private double share(Footprint one, Footprint other) {
    Geometry printed = one.printed();
    Area shared = layout.tube().overlap(printed, other.printed());
    return SharedAreas.clamp(shared.squareCm() * 100 / printed.getArea());
  }

  /** What it meets on the cloth, what is printed last first; copies of one row are left to it. */
  private List<Footprint> upperFirst(Footprint one) {
    List<Footprint> near = new ArrayList<>();
    if (left <= 0) {
      return near;
    }
    for (Footprint other : index.near(one.printed(), 0)) {
      left--;
      boolean own = other.placement().id() == one.placement().id();
      boolean row = other.placement().arrangement().equals(one.placement().arrangement());
      if (own ? other != one : !row && stacking.isPrinted(other)) {
        near.add(other);
      }
    }
    near.sort(stacking.lastFirst());
    return near;
  }

  /**
   * Two colours of a motif that pass for one are told as such, unless one is the outline; and one
   * dye over itself goes deeper.
   */
  private boolean isLostOver(Footprint one, Footprint other) {
    Meeting meeting = meetings.over(one.paste(), other.paste());
    boolean same = one.paste().name().equals(other.paste().name());
    boolean own = one.placement().id() == other.placement().id();
    boolean fine =
        own ? meeting.isLike() && !one.separation().key() : same && one.paste().transparent();
    return isGone(meeting) && !fine;
  }

  /** A covering colour under darker ones is a white that is printed first, unless it is the key. */
  private boolean isLostUnder(Footprint one, Footprint other) {
    boolean same = one.paste().name().equals(other.paste().name());
    return !same
        && (one.separation().key()
            || one.paste().transparent()
            || meetings.isDarker(one.paste(), other.paste()))
        && meetings.under(one.paste(), other.paste()).isLost();
  }

  /** What share of a print surely lies on, or under, others of its motif. */
  private double certain(Footprint one, List<Footprint> others) {
    return SharedAreas.certain(
        design(one), one.separation(), others.stream().map(Footprint::separation).toList());
  }

  private boolean isMeasured(Footprint one, Footprint other) {
    return other.placement().id() == one.placement().id()
        && design(one).joint(one.separation(), other.separation()).isPresent();
  }

  private void add(Footprint one, boolean under, List<Footprint> others, double share) {
    if (!others.isEmpty() && SharedAreas.clamp(share) >= partly) {
      LostPrints prints =
          lost.computeIfAbsent(
              one.placement().design() + "\n" + one.separation().number() + under,
              key -> new LostPrints(one, under));
      prints.add(
          one,
          others,
          SharedAreas.clamp(share),
          under && others.stream().anyMatch(o -> stacking.isMeantOver(o, one)));
      if (under && others.stream().allMatch(o -> isMeasured(one, o))) {
        prints.knockedOut(registration);
      }
    }
  }
}

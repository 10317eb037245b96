package strikeoff.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.day.Impression;
import strikeoff.document.GivenUp;
import strikeoff.layout.ClothIndex;
import strikeoff.layout.FilmUnder;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.layout.Tube;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Area;

/** Finds prints that come to lie over earlier ones. */
final class Laps {

  private final PrintPlan plan;
  private final Tube tube;
  private final ClothIndex<Impression> index;
  private long left;

  /**
   * Prepares to look under prints for those impressions.
   *
   * @param most how many pairs are looked at; a plan that piles everything up would keep it busy
   *     for hours
   */
  Laps(PrintPlan plan, Layout layout, List<Impression> under, long most) {
    this.plan = plan;
    left = most;
    tube = layout.tube();
    index = new ClothIndex<>(tube);
    under.forEach(i -> index.add(i.footprint().printed(), i));
  }

  /** The earlier prints that share area with a later one and are of a kind. */
  List<Lap> under(Impression later, Predicate<Impression> kind) {
    GivenUp.ifAsked();
    List<Lap> laps = new ArrayList<>();
    if (isTired()) {
      return laps;
    }
    for (Impression earlier : index.near(later.footprint().printed(), 0)) {
      left--;
      if (earlier.id() < later.id() && kind.test(earlier)) {
        Lap lap =
            byFilms(earlier, later)
                .map(area -> new Lap(earlier, later, area, true))
                .orElseGet(() -> lap(earlier, later));
        if (lap.most().squareCm() > 0) {
          laps.add(lap);
        }
      }
    }
    return laps;
  }

  /** As far as outlines around what they print tell, and what each prints in the other's. */
  private Lap lap(Impression earlier, Impression later) {
    Footprint below = earlier.footprint();
    Footprint above = later.footprint();
    double shared = tube.overlap(below.printed(), above.printed()).squareCm();
    if (shared == 0) {
      return new Lap(earlier, later, new Area(0), false);
    }
    Optional<Area> p = FilmUnder.of(below, above.printed(), tube);
    Optional<Area> q = FilmUnder.of(above, below.printed(), tube);
    double most = Math.min(shared, Math.min(most(p, below), most(q, above)));
    boolean noRoom = least(p, below, shared) + least(q, above, shared) > shared * (1 + 1e-9);
    boolean certain = isMeant(earlier, later) || adjoins(below, above) || noRoom;
    return new Lap(earlier, later, new Area(most), certain);
  }

  private static double most(Optional<Area> there, Footprint print) {
    return there.orElse(print.separation().printed()).squareCm();
  }

  /** What surely is printed in a part of an outline; the rest of it may hold all it can. */
  private static double least(Optional<Area> there, Footprint print, double part) {
    double rest = print.printed().getArea() / 100 - part;
    return there
        .map(Area::squareCm)
        .orElseGet(() -> print.separation().printed().squareCm() - rest);
  }

  private static boolean adjoins(Footprint below, Footprint above) {
    Separation one = below.separation();
    Separation other = above.separation();
    return below.placement().id() == above.placement().id()
        && (one.key() || other.key() || trapped(one, other));
  }

  private static boolean trapped(Separation one, Separation other) {
    return one.trap().or(other::trap).filter(trap -> trap.mm() > 0).isPresent();
  }

  /** What two colours of one motif share, where their films tell. */
  private Optional<Area> byFilms(Impression earlier, Impression later) {
    Placement motif = later.footprint().placement();
    return earlier.footprint().placement().id() == motif.id()
        ? plan.designs()
            .get(motif.design())
            .overlap(earlier.footprint().separation(), later.footprint().separation())
        : Optional.empty();
  }

  /** Whether the plan says that the one goes over the other, whichever comes first. */
  private boolean isMeant(Impression one, Impression other) {
    return over(one).contains(other.footprint().placement().arrangement())
        || over(other).contains(one.footprint().placement().arrangement());
  }

  private List<String> over(Impression print) {
    return plan.arrangements().get(print.footprint().placement().arrangement()).over();
  }

  /** True if it has looked at as many pairs as it may, and looks at no more. */
  boolean isTired() {
    return left <= 0;
  }

  /**
   * One print over another.
   *
   * @param most area that the two can share: that of both outlines around what they print, or image
   *     rectangles, as far as both print there
   * @param certain true if they surely share some: films or the plan say so, an outline on its
   *     motif, colours with a trap, or two areas that cannot pass each other inside those
   */
  record Lap(Impression earlier, Impression later, Area most, boolean certain) {}
}

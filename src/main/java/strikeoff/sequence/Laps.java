package strikeoff.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.day.Impression;
import strikeoff.document.GivenUp;
import strikeoff.layout.ClothIndex;
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
    under.forEach(i -> index.add(i.footprint().image(), i));
  }

  /** The earlier prints that share area with a later one and are of a kind. */
  List<Lap> under(Impression later, Predicate<Impression> kind) {
    GivenUp.ifAsked();
    List<Lap> laps = new ArrayList<>();
    if (isTired()) {
      return laps;
    }
    for (Impression earlier : index.near(later.footprint().image(), 0)) {
      left--;
      if (earlier.id() < later.id() && kind.test(earlier)) {
        double shared =
            tube.overlap(earlier.footprint().image(), later.footprint().image()).squareCm();
        Optional<Area> printed = byFilms(earlier, later);
        if (shared > 0 && printed.map(Area::squareCm).orElse(shared) > 0) {
          laps.add(
              printed
                  .map(area -> new Lap(earlier, later, area, true))
                  .orElseGet(() -> Lap.of(earlier, later, shared, isMeant(earlier, later))));
        }
      }
    }
    return laps;
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
   * @param most area that the two can share: that of both image rectangles, as far as both print
   *     there
   * @param certain true if they surely share some: films or the plan say so, an outline on its
   *     motif, colours with a trap, or two areas that cannot pass each other inside their
   *     rectangles
   */
  record Lap(Impression earlier, Impression later, Area most, boolean certain) {

    static Lap of(Impression earlier, Impression later, double shared, boolean meant) {
      Separation below = earlier.footprint().separation();
      Separation above = later.footprint().separation();
      double p = below.printed().squareCm();
      double q = above.printed().squareCm();
      double union = below.rectangle().squareCm() + above.rectangle().squareCm() - shared;
      boolean oneMotif = earlier.footprint().placement().id() == later.footprint().placement().id();
      boolean adjoins = oneMotif && (below.key() || above.key() || trapped(below, above));
      double most = Math.min(shared, Math.min(p, q));
      return new Lap(earlier, later, new Area(most), meant || adjoins || p + q > union);
    }

    private static boolean trapped(Separation one, Separation other) {
      return one.trap().or(other::trap).filter(trap -> trap.mm() > 0).isPresent();
    }
  }
}

package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Cloth;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * Neighbours of one series, border or fill that lie on each other since the design is larger than
 * the pitch.
 *
 * @param designLength length of the design as it lies
 * @param designWidth its width as it lies
 * @param pitch the pitch as the plan gives it
 * @param needed a pitch that parts the neighbours: the least one in whole millimetres, or the one
 *     with which a border or a series round a tube closes
 * @param holds how many copies of a series find room at that pitch, if not all do
 * @param area that the two worst neighbours share
 * @param share that area as a part of the design
 */
public record Crowding(
    String arrangement,
    Length designLength,
    Length designWidth,
    Pitch pitch,
    Pitch needed,
    int holds,
    Area area,
    Share share,
    PlanPath path)
    implements Evidence {

  /** More copies than anybody counts: as many as the plan wants. */
  /** As many as there are: where nobody counts them. */
  public static final int ALL = Integer.MAX_VALUE;

  static Optional<Crowding> of(
      Arrangement arrangement, Template template, Tube tube, Length closing, Cloth cloth) {
    if (arrangement instanceof Arrangement.Series series && series.count() > 1) {
      return series(series, template, tube, cloth);
    } else if (arrangement instanceof Arrangement.Border border
        && BorderRepeats.whole(border, closing) > 1) {
      double run = border.to().mm() - border.from().mm();
      double repeat = closing(run, whole(template.parts()), ALL);
      return row(arrangement, template, border.repeat().mm(), "repeat", repeat, ALL);
    } else if (arrangement instanceof Arrangement.Fill fill) {
      double x = fill.pitchLength().mm();
      double y = fill.pitchWidth().mm();
      Pitch needed =
          Pitch.lattice(
              Math.max(x, whole(template.bounds().getWidth())),
              Math.max(y, whole(template.bounds().getHeight())));
      FillLattice lattice = new FillLattice(fill, template.bounds(), tube);
      List<double[]> steps = neighbours(fill).stream().filter(lattice::hasRoomFor).toList();
      return of(arrangement, template, steps, "pitch", Pitch.lattice(x, y), needed, ALL);
    }
    return Optional.empty();
  }

  /** Round a tube it has to close; on open cloth its last copy has to find room. */
  private static Optional<Crowding> series(
      Arrangement.Series series, Template template, Tube tube, Cloth cloth) {
    double least = whole(template.parts());
    double room =
        tube.closed()
            ? tube.circumference()
            : cloth.length().mm()
                - cloth.endAllowance().mm()
                - series.start().mm()
                - template.bounds().getWidth()
                + least;
    int holds = (int) Math.max(1, Math.floor((room + Length.TOLERANCE) / least));
    double needed = tube.closed() ? closing(room, least, series.count()) : least;
    return row(
        series,
        template,
        series.pitch().mm(),
        "pitch",
        needed,
        holds < series.count() ? holds : ALL);
  }

  /** The least pitch of at least so much with which a run closes, with at most so many copies. */
  private static double closing(double run, double least, int most) {
    double copies = Math.floor((run + Length.TOLERANCE) / least);
    return copies < 1 ? least : run / Math.min(copies, most);
  }

  /**
   * Steps from one repeat of a lattice to those next to it, half of them: the rest mirror these.
   */
  private static List<double[]> neighbours(Arrangement.Fill fill) {
    double x = fill.pitchLength().mm();
    double y = fill.pitchWidth().mm();
    List<double[]> steps = new ArrayList<>(List.of(new double[] {x, 0}, new double[] {0, y}));
    switch (fill.lattice()) {
      case GRID -> steps.addAll(List.of(new double[] {x, y}, new double[] {x, -y}));
      case BRICK -> {
        steps.set(1, new double[] {0, 2 * y});
        steps.addAll(List.of(new double[] {x / 2, y}, new double[] {x / 2, -y}));
      }
      case HALF_DROP -> {
        steps.set(0, new double[] {2 * x, 0});
        steps.addAll(List.of(new double[] {x, y / 2}, new double[] {x, -y / 2}));
      }
    }
    return steps;
  }

  private static Optional<Crowding> of(
      Arrangement arrangement,
      Template template,
      List<double[]> steps,
      String key,
      Pitch pitch,
      Pitch needed,
      int holds) {
    Tube flat = new Tube(false, 1);
    Polygon here = template.outlineAt(0, 0);
    double most = 0;
    for (double[] step : steps) {
      most = Math.max(most, flat.overlap(here, template.outlineAt(step[0], step[1])).squareCm());
    }
    return most == 0
        ? Optional.empty()
        : Optional.of(
            new Crowding(
                arrangement.name(),
                new Length(template.bounds().getWidth()),
                new Length(template.bounds().getHeight()),
                pitch,
                needed,
                holds,
                new Area(most),
                new Share(most * 100 / here.getArea()),
                arrangement.path().key(key)));
  }

  private static Optional<Crowding> row(
      Arrangement arrangement,
      Template template,
      double pitch,
      String key,
      double needed,
      int holds) {
    List<double[]> step = List.of(new double[] {pitch, 0});
    return of(arrangement, template, step, key, Pitch.row(pitch), Pitch.row(needed), holds);
  }

  private static double whole(double mm) {
    return Math.ceil(mm - Length.TOLERANCE);
  }
}

package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
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
 * @param needed a pitch that parts the neighbours, in whole millimetres: the least one of a row
 * @param area that the two worst neighbours share
 * @param share that area as a part of the design
 */
public record Crowding(
    String arrangement,
    Length designLength,
    Length designWidth,
    Pitch pitch,
    Pitch needed,
    Area area,
    Share share,
    PlanPath path)
    implements Evidence {

  static Optional<Crowding> of(Arrangement arrangement, Template template, Tube tube) {
    if (arrangement instanceof Arrangement.Series series && series.count() > 1) {
      return row(arrangement, template, series.pitch().mm(), "pitch");
    } else if (arrangement instanceof Arrangement.Border border
        && BorderRepeats.whole(border) > 1) {
      return row(arrangement, template, border.repeat().mm(), "repeat");
    } else if (arrangement instanceof Arrangement.Fill fill) {
      double x = fill.pitchLength().mm();
      double y = fill.pitchWidth().mm();
      Pitch needed =
          Pitch.lattice(
              Math.max(x, whole(template.bounds().getWidth())),
              Math.max(y, whole(template.bounds().getHeight())));
      FillLattice lattice = new FillLattice(fill, template.bounds(), tube);
      List<double[]> steps = neighbours(fill).stream().filter(lattice::hasRoomFor).toList();
      return of(arrangement, template, steps, "pitch", Pitch.lattice(x, y), needed);
    }
    return Optional.empty();
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
      Pitch needed) {
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
                new Area(most),
                new Share(most * 100 / here.getArea()),
                arrangement.path().key(key)));
  }

  private static Optional<Crowding> row(
      Arrangement arrangement, Template template, double pitch, String key) {
    List<double[]> step = List.of(new double[] {pitch, 0});
    Pitch needed = Pitch.row(whole(template.parts()));
    return of(arrangement, template, step, key, Pitch.row(pitch), needed);
  }

  private static double whole(double mm) {
    return Math.ceil(mm - Tube.ROUNDING);
  }
}

package strikeoff.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import strikeoff.plan.Colour;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintPlan;

/** Works out how designs look from afar. */
final class Motifs {

  private final PrintPlan plan;
  private final Palette palette;

  Motifs(PrintPlan plan, Palette palette) {
    this.plan = plan;
    this.palette = palette;
  }

  MotifLook look(Design design) {
    List<Separation> separations = design.separations();
    double area = design.length().cm() * design.width().cm();
    if (separations.size() > Neugebauer.MOST_COLOURS || !(area > 0)) {
      return new MotifLook(design.name(), Optional.empty(), 0, List.of());
    }
    double[] covers =
        separations.stream().mapToDouble(s -> Math.min(1, s.printed().squareCm() / area)).toArray();
    double[] shares = Neugebauer.demichel(covers);
    List<Reflectance> looks = new ArrayList<>();
    for (int overlap = 0; overlap < shares.length; overlap++) {
      looks.add(look(separations, overlap));
    }
    Reflectance mean =
        new Reflectance(
            mean(shares, looks, Reflectance::red),
            mean(shares, looks, Reflectance::green),
            mean(shares, looks, Reflectance::blue));
    Colour colour = mean.colour();
    double difference = Lab.of(colour).difference(Lab.of(plan.cloth().ground()));
    return new MotifLook(
        design.name(),
        Optional.of(colour),
        difference,
        looks.stream().map(Reflectance::colour).toList());
  }

  private Reflectance look(List<Separation> separations, int overlap) {
    Reflectance look = palette.ground();
    for (int i = 0; i < separations.size(); i++) {
      if ((overlap >> i & 1) == 1) {
        look = palette.wet(plan.pastes().get(separations.get(i).paste())).over(look);
      }
    }
    return look;
  }

  private double mean(
      double[] shares, List<Reflectance> looks, ToDoubleFunction<Reflectance> band) {
    return Neugebauer.mean(palette.spread(), shares, looks.stream().mapToDouble(band).toArray());
  }
}

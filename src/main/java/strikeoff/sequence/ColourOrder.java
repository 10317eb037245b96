package strikeoff.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Impression;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Evidence.Related;
import strikeoff.layout.Copies;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;
import strikeoff.units.Ratio;

/** The order of colours inside a motif: one fact a design and order, however many motifs. */
final class ColourOrder {

  private final PrintPlan plan;
  private final Course course;

  ColourOrder(PrintPlan plan, Course course) {
    this.plan = plan;
    this.course = course;
  }

  List<Evidence> facts() {
    List<Evidence> facts = new ArrayList<>();
    for (MotifOrder order : MotifOrder.of(course)) {
      darkBeforeLight(order).ifPresent(facts::add);
      keyNotLast(order).ifPresent(facts::add);
    }
    return facts;
  }

  private Optional<Evidence> darkBeforeLight(MotifOrder order) {
    Design design = plan.designs().get(order.design());
    Impression dark = null;
    Impression light = null;
    double most = 0;
    List<Impression> prints = order.prints();
    double[] lightness = prints.stream().mapToDouble(MotifOrder::lightness).toArray();
    for (int i = 0; i < prints.size(); i++) {
      for (int j = i + 1; j < prints.size(); j++) {
        double step = lightness[j] - lightness[i];
        if (step > most && mustBeLightFirst(design, prints.get(i), prints.get(j))) {
          dark = prints.get(i);
          light = prints.get(j);
          most = step;
        }
      }
    }
    if (dark == null) {
      return Optional.empty();
    }
    return Optional.of(
        new DarkBeforeLight(
            order.design(),
            paste(dark),
            paste(light),
            Ratio.toTenth(MotifOrder.lightness(dark)),
            Ratio.toTenth(MotifOrder.lightness(light)),
            Ratio.toTenth(most),
            order.pastes(),
            order.better(),
            Copies.of(order.placements()),
            order.names(),
            List.of(new Related(paste(light), order.cause(light, course))),
            order.cause(dark, course)));
  }

  private static boolean mustBeLightFirst(Design design, Impression earlier, Impression later) {
    return earlier.footprint().paste().transparent()
        && later.footprint().paste().transparent()
        && !MotifOrder.key(earlier)
        && !MotifOrder.key(later)
        && MotifOrder.overlap(design, earlier, later);
  }

  private Optional<Evidence> keyNotLast(MotifOrder order) {
    Design design = plan.designs().get(order.design());
    List<Impression> prints = order.prints();
    for (int i = 0; i < prints.size(); i++) {
      Impression key = prints.get(i);
      List<Impression> after =
          prints.subList(i + 1, prints.size()).stream()
              .filter(p -> !MotifOrder.key(p) && MotifOrder.overlap(design, key, p))
              .toList();
      if (MotifOrder.key(key) && !after.isEmpty()) {
        return Optional.of(
            new KeyBeforeOthers(
                order.design(),
                paste(key),
                after.stream().map(ColourOrder::paste).toList(),
                opaque(after).stream().map(ColourOrder::paste).distinct().toList(),
                overlap(key, opaque(after)),
                key.footprint().separation().detail(),
                order.better(),
                Copies.of(order.placements()),
                order.names(),
                after.stream()
                    .map(p -> new Related(paste(p), order.cause(p, course)))
                    .distinct()
                    .toList(),
                order.cause(key, course)));
      }
    }
    return Optional.empty();
  }

  private static List<Impression> opaque(List<Impression> prints) {
    return prints.stream().filter(p -> !p.footprint().paste().transparent()).toList();
  }

  /** The narrowest trap of those that meet: what each of them states, or else the outline. */
  private static Optional<Length> overlap(Impression key, List<Impression> over) {
    return over.stream()
        .map(p -> p.footprint().separation().trap().or(key.footprint().separation()::trap))
        .flatMap(Optional::stream)
        .min(Comparator.naturalOrder());
  }

  private static String paste(Impression print) {
    return print.footprint().paste().name();
  }
}

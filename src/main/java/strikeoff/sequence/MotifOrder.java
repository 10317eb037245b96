package strikeoff.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import strikeoff.colour.Lab;
import strikeoff.day.Impression;
import strikeoff.document.PlanPath;
import strikeoff.layout.Placement;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Paste;

/**
 * The placements of one design whose colours are printed in one and the same order.
 *
 * @param prints the first print of each separation at the first of those placements, in order of
 *     laying
 * @param placements all of them
 */
record MotifOrder(String design, List<Impression> prints, List<Placement> placements) {

  /** Gathers placements by design and order of colours. */
  static List<MotifOrder> of(Course course) {
    Map<String, MotifOrder> orders = new LinkedHashMap<>();
    for (List<Impression> prints : course.motifs()) {
      List<Integer> colours = prints.stream().map(MotifOrder::number).toList();
      String design = prints.get(0).footprint().placement().design();
      orders
          .computeIfAbsent(
              design + " " + colours, key -> new MotifOrder(design, prints, new ArrayList<>()))
          .placements
          .add(prints.get(0).footprint().placement());
    }
    return List.copyOf(orders.values());
  }

  List<String> names() {
    return placements.stream().map(Placement::name).toList();
  }

  List<String> pastes() {
    return prints.stream().map(p -> p.footprint().paste().name()).toList();
  }

  /** Light before dark, then opaque paint in its order, then outlines in theirs. */
  List<String> better() {
    List<Impression> transparent =
        prints.stream().filter(p -> !key(p) && p.footprint().paste().transparent()).toList();
    Stream<Impression> lightFirst =
        transparent.stream().sorted(Comparator.comparingDouble(MotifOrder::lightness).reversed());
    Stream<Impression> opaque =
        prints.stream().filter(p -> !key(p) && !p.footprint().paste().transparent());
    Stream<Impression> keys = prints.stream().filter(MotifOrder::key);
    return Stream.of(lightFirst, opaque, keys)
        .flatMap(s -> s)
        .map(p -> p.footprint().paste().name())
        .toList();
  }

  /**
   * What the printer would edit so that a print comes earlier or later: the design's list if the
   * order is the list's, else the step that prints it.
   */
  PlanPath cause(Impression print, Course course) {
    for (int i = 1; i < prints.size(); i++) {
      if (number(prints.get(i)) < number(prints.get(i - 1))) {
        boolean oneStep = prints.stream().allMatch(p -> p.step() == print.step());
        PlanPath step = course.path(print.step());
        return oneStep ? step.key("colours") : step;
      }
    }
    return print.footprint().separation().path();
  }

  static boolean key(Impression print) {
    return print.footprint().separation().key();
  }

  static double lightness(Impression print) {
    Paste paste = print.footprint().paste();
    return Lab.of(paste.colour()).lightness();
  }

  /**
   * Whether two separations print on each other, by films; else whether their images share area.
   */
  static boolean overlap(Design design, Impression one, Impression other) {
    Separation p = one.footprint().separation();
    Separation q = other.footprint().separation();
    return design
        .overlap(p, q)
        .map(area -> area.squareCm() > 0)
        .orElseGet(() -> SharedAreas.common(p, q) > 0);
  }

  private static int number(Impression print) {
    return print.footprint().separation().number();
  }
}

package strikeoff.bath;

import java.util.Comparator;
import java.util.List;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * What the binders of some paints ask of a heat-set: each what its label says, or else the policy's
 * least temperature and a time that halves with every so many degrees.
 */
record Binder(List<Paste> paints, Policy policy) {

  /** The coolest temperature, or the shortest time, with the paint that asks for it. */
  record Ask<T>(T value, String paint, boolean label) {

    String basis() {
      return label ? "as its label says" : "as an acrylic binder does";
    }
  }

  Ask<Temperature> coolest() {
    return paints.stream()
        .map(p -> ask(p, coolest(p)))
        .max(Comparator.comparing(ask -> ask.value().celsius()))
        .orElseThrow();
  }

  /** The shortest time at a temperature; below the coolest one it is that of the coolest. */
  Ask<Span> shortest(Temperature at) {
    return paints.stream()
        .map(p -> ask(p, shortest(p, at)))
        .max(Comparator.comparing(Ask::value))
        .orElseThrow();
  }

  private static <T> Ask<T> ask(Paste paint, T value) {
    return new Ask<>(value, paint.name(), paint.label().isPresent());
  }

  private Temperature coolest(Paste paint) {
    return paint
        .label()
        .map(Paste.Label::temperature)
        .orElseGet(() -> new Temperature(limit("coolest-heat-set")));
  }

  private Span shortest(Paste paint, Temperature at) {
    return paint.label().map(Paste.Label::lasts).orElseGet(() -> estimate(at.celsius()));
  }

  private Span estimate(double celsius) {
    double at = Math.min(limit("hottest-heat-set"), Math.max(limit("coolest-heat-set"), celsius));
    double steps = (limit("usual-heat-set") - at) / limit("heat-set-halving");
    return new Span(limit("shortest-heat-set") * Math.pow(2, steps));
  }

  private double limit(String name) {
    return policy.limit("fixing/" + name).amount();
  }
}

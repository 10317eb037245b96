package strikeoff.bath;

import java.util.Comparator;
import java.util.List;
import strikeoff.plan.HeatSource;
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
  record Ask<T>(T value, String paint, boolean label) {}

  Ask<Temperature> coolest() {
    return paints.stream()
        .map(p -> ask(p, coolest(p)))
        .max(Comparator.comparing(ask -> ask.value().celsius()))
        .orElseThrow();
  }

  /** The shortest time at a temperature. */
  Ask<Span> shortest(Temperature at, HeatSource with) {
    return paints.stream()
        .map(p -> ask(p, shortest(p, at, with)))
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
        .orElseGet(() -> new Temperature(policy.fixing().sureHeatSet().celsius()));
  }

  private Span shortest(Paste paint, Temperature at, HeatSource with) {
    return paint
        .label()
        .map(label -> cooler(label, at))
        .orElseGet(() -> estimate(at.celsius(), with));
  }

  /** A label holds at its temperature and above; cooler, its time grows as any binder's. */
  private Span cooler(Paste.Label label, Temperature at) {
    double degrees = Math.max(0, label.temperature().celsius() - at.celsius());
    return new Span(
        label.lasts().minutes() * Math.pow(2, degrees / policy.fixing().heatSetHalving().value()));
  }

  /**
   * A press touches both faces, so it needs a part of an oven's time, and some seconds at least.
   */
  private Span estimate(double celsius, HeatSource with) {
    double steps =
        (policy.fixing().usualHeatSet().celsius()
                - Math.max(policy.fixing().coolestHeatSet().celsius(), celsius))
            / policy.fixing().heatSetHalving().value();
    double oven = policy.fixing().shortestHeatSet().minutes() * Math.pow(2, steps);
    return new Span(
        with == HeatSource.PRESS
            ? Math.max(
                policy.fixing().shortestPress().minutes(),
                oven * policy.fixing().pressShare().fraction())
            : oven);
  }
}

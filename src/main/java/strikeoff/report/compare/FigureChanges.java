package strikeoff.report.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import strikeoff.day.Moment;
import strikeoff.report.outcome.Figures;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/** Compares the figures of two versions and keeps what differs. */
final class FigureChanges {

  private static final String NONE = "–";

  private final Optional<Figures> before;
  private final Optional<Figures> after;
  private final Measures units;
  private final List<Change> changes = new ArrayList<>();

  private FigureChanges(Optional<Figures> before, Optional<Figures> after) {
    this.before = before;
    this.after = after;
    this.units = after.or(() -> before).map(Figures::measures).orElse(Measures.METRIC);
  }

  static List<Change> of(Optional<Figures> before, Optional<Figures> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return List.of();
    }
    FigureChanges figures = new FigureChanges(before, after);
    figures.moments("starts", Figures::start);
    figures.moments("finishes", Figures::finish);
    figures.seconds("work", Figures::workSeconds);
    figures.seconds("waiting", Figures::waitingSeconds);
    figures.counts("placements", f -> Optional.of(f.placements()));
    figures.counts("lays", f -> Optional.of(f.allLays()));
    for (String screen : figures.names(f -> f.lays().keySet())) {
      figures.counts("lays of " + screen, f -> Optional.ofNullable(f.lays().get(screen)));
    }
    for (String paste : figures.names(FigureChanges::pastes)) {
      figures.grams("need of " + paste, f -> paste(f, paste).map(Figures.Paste::best));
      figures.grams("mixed " + paste, f -> paste(f, paste).flatMap(Figures.Paste::mixed));
    }
    return figures.changes;
  }

  private static List<String> pastes(Figures figures) {
    return figures.pastes().stream().map(Figures.Paste::name).toList();
  }

  private static Optional<Figures.Paste> paste(Figures figures, String name) {
    return figures.pastes().stream().filter(p -> p.name().equals(name)).findFirst();
  }

  /** Names of both versions, those of the new one first. */
  private Set<String> names(Function<Figures, Iterable<String>> of) {
    Set<String> names = new LinkedHashSet<>();
    after.ifPresent(f -> of.apply(f).forEach(names::add));
    before.ifPresent(f -> of.apply(f).forEach(names::add));
    return names;
  }

  private void moments(String name, Function<Figures, Optional<Moment>> of) {
    compare(
        name,
        of.andThen(m -> m.map(x -> (double) x.seconds())),
        seconds -> new Moment((long) seconds).text(),
        FigureChanges::span);
  }

  private void seconds(String name, Function<Figures, Long> of) {
    compare(
        name, of.andThen(s -> Optional.of((double) s)), FigureChanges::span, FigureChanges::span);
  }

  private void counts(String name, Function<Figures, Optional<Integer>> of) {
    DoubleFunction<String> whole = count -> Long.toString(Math.round(count));
    compare(name, of.andThen(c -> c.map(Integer::doubleValue)), whole, whole);
  }

  private void grams(String name, Function<Figures, Optional<Double>> of) {
    compare(name, of, this::mass, this::mass);
  }

  private static String span(double seconds) {
    return Span.ofSeconds(seconds).text();
  }

  private String mass(double grams) {
    return Double.isFinite(grams) ? new Mass(grams).text(units) : "without bound";
  }

  private void compare(
      String name,
      Function<Figures, Optional<Double>> of,
      DoubleFunction<String> words,
      DoubleFunction<String> difference) {
    Optional<Double> old = before.flatMap(of);
    Optional<Double> now = after.flatMap(of);
    if (old.equals(now)) {
      return;
    }
    String by =
        old.isPresent() && now.isPresent()
            ? (now.get() < old.get() ? "−" : "+")
                + difference.apply(Math.abs(now.get() - old.get()))
            : "";
    changes.add(
        new Change(
            name, old.map(words::apply).orElse(NONE), now.map(words::apply).orElse(NONE), by));
  }
}

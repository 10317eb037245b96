package strikeoff.report.drawing;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import strikeoff.day.Film;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Reached;

/**
 * How the films of one colour and set dry: a band that grows thinner at frame-safe and again at
 * lift-safe, so that it can be told without colour, with a whisker over the range of the estimate.
 */
final class DryingBand {

  private static final double WET = RunRows.BAR;
  private static final double FRAME_SAFE = 7;

  private DryingBand() {}

  static Svg of(List<Impression> films, ToDoubleFunction<Moment> x, double top, String colour) {
    Svg band = Svg.group("drying");
    double from = x.applyAsDouble(films.get(0).lifted());
    Reached frameSafe = latest(films, Film::frameSafe);
    Reached liftSafe = latest(films, Film::liftSafe);
    double middle = top + WET / 2;
    double first = x.applyAsDouble(frameSafe.best());
    double second = x.applyAsDouble(liftSafe.best());
    segment(band, from, first, middle, WET, "wet", colour);
    segment(band, first, second, middle, FRAME_SAFE, "frame-safe", colour);
    double earliest = x.applyAsDouble(liftSafe.earliest());
    double latest = x.applyAsDouble(liftSafe.latest());
    if (latest - earliest > 0.5) {
      band.add(
          Svg.path(
                  "M"
                      + Svg.pair(earliest, middle)
                      + "H"
                      + Svg.number(latest)
                      + "m0-3v6M"
                      + Svg.pair(earliest, middle - 3)
                      + "v6")
              .with("class", "range"));
    }
    return band.titled("last frame-safe " + words(frameSafe) + ", lift-safe " + words(liftSafe));
  }

  private static void segment(
      Svg band, double from, double to, double middle, double height, String kind, String colour) {
    if (to - from > 0.01) {
      band.add(
          Svg.rect(from, middle - height / 2, to - from, height)
              .with("class", kind)
              .with("fill", colour));
    }
  }

  private static String words(Reached reached) {
    return reached.never() ? "never in this air" : reached.best().text();
  }

  private static Reached latest(List<Impression> films, Function<Film, Reached> state) {
    return films.stream()
        .map(i -> state.apply(i.film()))
        .max(java.util.Comparator.comparing(Reached::best))
        .orElseThrow();
  }
}

package strikeoff.colour;

import java.util.OptionalInt;
import java.util.function.Predicate;
import strikeoff.plan.Colour;

/**
 * Deeper and paler tones of a colour, which keep its hue, and the first of them that does: what a
 * remedy can name without naming a colour that nobody can mix.
 */
final class Tones {

  /** How many tones are looked at; lightness is told in whole numbers, and there are a hundred. */
  private static final int STEPS = 200;

  private Tones() {}

  /**
   * @param does whether a tone does
   * @return the whole number of L* up to which all deeper tones do; empty if black does not, or
   *     only what is told from black by nobody
   */
  static OptionalInt deeper(Colour colour, Predicate<Reflectance> does) {
    Reflectance last = last(BLACK, Reflectance.of(colour), does);
    int most = last == null ? 0 : (int) Math.floor(Lab.of(last).lightness());
    return most < 1 ? OptionalInt.empty() : OptionalInt.of(most);
  }

  /**
   * @param does whether a tone does
   * @return the whole number of L* from which on all paler tones do, up to white; empty if white
   *     does not
   */
  static OptionalInt paler(Reflectance own, Predicate<Reflectance> does) {
    Reflectance last = last(Reflectance.WHITE, own, does);
    return last == null
        ? OptionalInt.empty()
        : OptionalInt.of((int) Math.min(100, Math.ceil(Lab.of(last).lightness() - 1e-6)));
  }

  /** The tone furthest from an end up to which all do; null if the end itself does not. */
  private static Reflectance last(Reflectance end, Reflectance own, Predicate<Reflectance> does) {
    Reflectance last = null;
    for (int step = 0; step <= STEPS; step++) {
      Reflectance tone = end.hiddenBy(own, square(step));
      if (!does.test(tone)) {
        break;
      }
      last = tone;
    }
    return last;
  }

  private static final Reflectance BLACK = new Reflectance(0, 0, 0);

  /** Finer where steps of reflectance are large to the eye. */
  private static double square(int step) {
    double share = step / (double) STEPS;
    return share * share;
  }
}

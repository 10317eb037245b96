package strikeoff.chemistry;

/** From the trade's degrees to the physicist's. */
final class Temperatures {

  private Temperatures() {}

  static double kelvin(double celsius) {
    return celsius + 273.15;
  }
}

package strikeoff.start;

import java.math.BigDecimal;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.UnitSystem;

/** Figures as a first plan writes them: in centimetres or in inches, each in round numbers. */
final class PlanNumbers {

  static final double INCH = 25.4;

  private final Measures units;

  PlanNumbers(Measures units) {
    this.units = units;
  }

  Measures units() {
    return units;
  }

  boolean isMetric() {
    return units.of(MeasureKind.LENGTH) == UnitSystem.METRIC;
  }

  String text(double mm) {
    return isMetric() ? new Length(mm).text() : number(mm) + " in";
  }

  String pair(double along, double across) {
    return number(along) + " x " + number(across) + (isMetric() ? " cm" : " in");
  }

  /** Of centimetres or inches, all of them that were wished. */
  private String number(double mm) {
    if (isMetric()) {
      return BigDecimal.valueOf(Math.round(mm * 10), 2).stripTrailingZeros().toPlainString();
    }
    double parts = mm / INCH * 64;
    return Math.abs(parts - Math.rint(parts)) < 1e-6
        ? new Length(mm).inColumn(units)
        : Numbers.plain(mm / INCH, 3);
  }

  /** A film's size, without what its file rounds the resolution by: a tenth of a millimetre. */
  double near(double mm) {
    double step = isMetric() ? 1 : INCH / 16;
    double round = Math.rint(mm / step) * step;
    return Math.abs(mm - round) <= 0.1 + 1e-9 && round > 0 ? round : mm;
  }

  /** To the next half centimetre or half inch. */
  Length roundedUp(double mm) {
    double step = isMetric() ? 5 : INCH / 2;
    return new Length(Math.ceil(mm / step - 1e-9) * step);
  }

  String weighed(double grams) {
    return isMetric() ? Math.round(grams) + " g" : new Mass(grams).text(units);
  }

  String warmth(double celsius, int fahrenheit) {
    return isMetric() ? Math.round(celsius) + " °C" : fahrenheit + " °F";
  }
}

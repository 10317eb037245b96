package strikeoff.speech;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strikeoff.cloth.ClothMass;
import strikeoff.cloth.FibreTake;
import strikeoff.cloth.UnwashedCloth;
import strikeoff.layout.FinishedSize;
import strikeoff.layout.Shrinkage;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.PerKilogram;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.UnitSystem;
import strikeoff.units.Volume;

/** Says what a cloth weighs, takes and is washed with. */
public final class ClothSpeech {

  private static final double SQUARE_INCH_IN_SQUARE_DM = 0.064516;

  private static final Volume DETERGENT = new Volume(0.01);

  private static final int MOST_PITCHES = 4;

  private ClothSpeech() {}

  /** What takes of a cloth, as a part of a sentence that begins with a colon; empty if nothing. */
  public static String taken(FinishedSize size, Measures units) {
    List<String> takers = new ArrayList<>();
    if (size.cutOff().along().mm() > 0 || size.cutOff().across().mm() > 0) {
      takers.add(
          "the allowances take "
              + size.cutOff().along().text(units)
              + " by "
              + size.cutOff().across().text(units)
              + " of it");
    }
    if (size.shrinkLength().fraction() > 0 || size.shrinkWidth().fraction() > 0) {
      takers.add(
          "the first wash takes "
              + size.shrinkLength().text()
              + " of the length and "
              + size.shrinkWidth().text()
              + " of the width");
    }
    return takers.isEmpty() ? "" : ": " + String.join(", and ", takers);
  }

  /** What to write beside a new length so that a tube still closes; empty if open. */
  public static String round(FinishedSize size, Measures units) {
    return round(size.pitches(), units);
  }

  public static String round(Shrinkage shrinkage, Measures units) {
    return round(shrinkage.roundPitches(), units);
  }

  private static String round(Map<String, Length> pitches, Measures units) {
    return pitches.isEmpty()
        ? ""
        : pitches.entrySet().stream()
            .map(pitch -> pitch.getValue().fineText(units) + " for " + pitch.getKey())
            .collect(Collectors.joining(", ", ", with a pitch of ", ""));
  }

  /** Pitches as printed and as finished, as a part of a sentence that begins with a semicolon. */
  public static String pitches(Shrinkage shrinkage, Measures units) {
    double keeps = 1 - shrinkage.shrinkLength().fraction();
    return shrinkage.printedPitches().isEmpty()
        ? ""
        : shrinkage.printedPitches().entrySet().stream()
            .limit(MOST_PITCHES)
            .map(
                pitch ->
                    "the pitch of "
                        + pitch.getKey()
                        + " shrinks from "
                        + pitch.getValue().text(units)
                        + " to "
                        + pitch.getValue().times(keeps).text(units))
            .collect(Collectors.joining(", ", "; ", ""));
  }

  /** What to ask oneself, as an instruction without a full stop. */
  public static String asking(ClothMass mass, Measures units) {
    boolean inches = units.of(MeasureKind.LENGTH) != UnitSystem.METRIC;
    return (mass.meant().isEmpty()
            ? ""
            : "Is it " + String.join(", or ", meant(mass, units)) + "? ")
        + "Weigh a square of "
        + (inches ? "4 by 4 in" : "10 by 10 cm")
        + ", which at "
        + mass.mass().text(units)
        + " would weigh "
        + square(mass, units, inches)
        + ", and write `mass` by what it does weigh";
  }

  /** What the figure may have been meant to be. */
  public static List<String> meant(ClothMass mass, Measures units) {
    return mass.meant().stream().map(reading -> text(reading, mass, units)).toList();
  }

  private static String text(ClothMass.Reading reading, ClothMass mass, Measures units) {
    return switch (reading.meant()) {
      case TENFOLD, A_TENTH -> reading.mass().text(units);
      case GRAMS -> otherwise(reading.mass().gramsPerSquareMetre(), " g/m²", reading.mass(), units);
      case OUNCES -> otherwise(mass.mass().gramsPerSquareMetre(), " oz/yd²", reading.mass(), units);
    };
  }

  /** A figure in the unit that may be meant, and in the plan's where that is another one. */
  private static String otherwise(double figure, String unit, ArealMass is, Measures units) {
    String meant = Numbers.plain(figure, 1) + unit;
    String told = is.text(units);
    return told.endsWith(unit) ? told : meant + ", which is " + told;
  }

  /** A hundredth of a gram counts. */
  private static String square(ClothMass mass, Measures units, boolean inches) {
    Mass weighs =
        new Mass(inches ? mass.square() * 4 * 4 * SQUARE_INCH_IN_SQUARE_DM : mass.square());
    return units.of(MeasureKind.MASS) == UnitSystem.METRIC
        ? Numbers.plain(weighs.grams(), 2) + " g"
        : weighs.text(units);
  }

  /**
   * Soda and detergent for some cloth, to be followed by {@code of cloth}: common practice, no
   * source.
   */
  public static String scour(UnwashedCloth cloth, Measures units) {
    boolean metric = PerKilogram.isMetric(units);
    return (metric ? "20 g" : "0.7 oz")
        + " and "
        + DETERGENT.text(units)
        + " for "
        + (metric ? "450 g" : "a pound");
  }

  /** What can be done about it, as an instruction without a full stop. */
  public static String mending(FibreTake take) {
    String paint = "print with pigment paint, which doesn't depend on the fibre";
    return take.stronger().value() <= take.strongest()
        ? "Mix the colours "
            + times(take.stronger())
            + " as strong, look at a washed strike-off and accept this; or "
            + paint
        : "Take a cloth with less "
            + String.join(" and ", take.resisting())
            + ", or "
            + paint
            + ". Even mixed "
            + times(new Ratio(take.strongest()))
            + " as strong, which is as much as a paste bears, the dye comes out at "
            + new Share(take.strongest() * take.takes().fraction()).text();
  }

  /** What a strike-off may ask for, as an instruction without a full stop. */
  public static String trying(FibreTake take) {
    return "Look at a washed strike-off, mix the colours up to "
        + times(take.stronger())
        + " as strong by it, and accept this"
        + (take.dyeable().fraction() < 1 ? ": fibres that take no dye stay as they are" : "");
  }

  private static String times(Ratio ratio) {
    return ratio.value() == 2 ? "twice" : ratio.text() + " times";
  }
}

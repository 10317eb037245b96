package strikeoff.speech;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import strikeoff.bath.AlkaliDose;
import strikeoff.bath.AlkaliForDye;
import strikeoff.bath.AlkalinePrint;
import strikeoff.bath.DriedBeforeBatch;
import strikeoff.bath.DyePrinted;
import strikeoff.bath.Liquor;
import strikeoff.bath.SecondAlkali;
import strikeoff.bath.Soak;
import strikeoff.bath.Steaming;
import strikeoff.bath.TimeInSoda;
import strikeoff.bath.UreaNeed;
import strikeoff.bath.WashOff;
import strikeoff.bath.Wrapped;
import strikeoff.chemistry.SodaSolution;
import strikeoff.paste.SodaLife;
import strikeoff.units.Concentration;
import strikeoff.units.Mass;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.PerKilogram;
import strikeoff.units.Phrase;
import strikeoff.units.Range;
import strikeoff.units.Ratio;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.UnitSystem;
import strikeoff.units.Volume;

/** Says what soda, salt, water and urea a bath and its pastes want. */
public final class BathSpeech {

  /** More pastes than that are left out of the words, not of the edits. */
  private static final int LISTED = 6;

  /** How silk and wool are steamed. */
  private static final String STEAM_PROTEIN =
      "Put baking soda into the paste in place of all other alkali, and steam the print";

  private BathSpeech() {}

  /** As much alkali as recipes hold; for steam baking soda, which doesn't brown the cloth. */
  private static String weighedIn(AlkaliForDye dye, Measures units) {
    return PerKilogram.number(dye.weighedIn().low(), units)
        + " to "
        + PerKilogram.text(dye.weighedIn().high(), units)
        + " of "
        + (dye.steam() ? "baking soda" : "soda ash")
        + " in "
        + PerKilogram.whole(units);
  }

  /** What is known of the urea of dried pastes, as a clause. */
  public static String urea(DriedBeforeBatch dried) {
    return dried.ureaKnown() ? "it holds urea" : "whether it holds urea is not written";
  }

  /** Where the alkali of a print is. */
  public static String from(AlkalinePrint print) {
    return print.inCloth() ? "in the cloth, from the soak before" : "in the paste";
  }

  /** What the bath holds that it comes into. */
  public static String holds(AlkalinePrint print) {
    return (print.salt() ? "salt and " : "") + (print.alkaline() ? "alkali" : "no alkali");
  }

  /** What would fix a print, as an instruction without a full stop. */
  public static String mending(DyePrinted printed) {
    return switch (printed.lacks()) {
      case STEAM -> "Add a step `fix: steam` after the print, with baking soda in the paste";
      case FIXING_OF_SODA_IN_CLOTH ->
          "Add a step `fix: batch` or `fix: steam` after the print: the soda is in the cloth"
              + " already, and a second soak would only bleed it";
      case FIXING_OF_ALKALI_IN_PASTE ->
          "Add a step `fix: batch` or `fix: steam` after the print: the paste holds its alkali, and a"
              + " soak would only bleed it";
      case ALKALI_AND_FIXING ->
          "Add a fix step after the print: a soda soak, or a batch or steam with alkali in the paste";
    };
  }

  /** The next water, as a part of a sentence that begins with a comma; empty without one. */
  public static String water(DyePrinted printed, Measures units) {
    return printed
        .waterStep()
        .map(
            w ->
                ", and step "
                    + w.number()
                    + ", "
                    + StepSpeech.title(w, units)
                    + ", takes the dye out")
        .orElse("");
  }

  /** What dry heat does to it, as a sentence that begins with a space; empty without one. */
  public static String heat(DyePrinted printed) {
    return printed
        .heatStep()
        .map(
            step ->
                " Dry heat, as of step "
                    + step
                    + ", fixes such dye only from a paste with far more urea than steam asks for,"
                    + " and less of it; no time is known for it here.")
        .orElse("");
  }

  /** How hot to wash. Nobody is sent into water that harms the cloth. */
  public static String advised(WashOff wash, Measures units) {
    Temperature hot = new Temperature(wash.hot().amount());
    Temperature stands = wash.stands();
    return stands.celsius() >= wash.machine().celsius()
        ? hot.enough(units) + " or hotter"
        : stands.compareTo(hot) > 0
            ? hot.enough(units) + " to " + stands.most(units)
            : stands.compareTo(hot) < 0 ? stands.most(units) : hot.enough(units);
  }

  /** The alkali that a bath adds. */
  public static String brings(SecondAlkali second, Measures units) {
    Liquor liquor = second.brings();
    if (liquor.silicateLitres().high() > 0) {
      return new Volume(liquor.silicateLitres().best()).text(units) + " of sodium silicate";
    }
    Range soda = liquor.sodaGramsPerLitre();
    return soda.high() > 0
        ? new Concentration(soda.best()).text(units) + " of soda ash"
        : new Mass(liquor.bicarbonateGrams().best()).text(units) + " of baking soda";
  }

  /** What can be done without it, as an instruction without a full stop. */
  public static String mending(SecondAlkali second) {
    return switch (second.instead()) {
          case LEAVE_STEP -> "Leave step " + second.step() + " out";
          case LEAVE_SILICATE -> "Leave the silicate out";
          case STEAM -> "Put a step `fix: steam` in the place of step " + second.step();
        }
        + ", or mix the paste without alkali";
  }

  /** What spares the fibre, as an instruction without a full stop. */
  public static String mending(TimeInSoda time) {
    return time.left()
        .map(
            left ->
                "Let the "
                    + time.fix().how().text()
                    + " of step "
                    + time.fix().number()
                    + " last "
                    + left.text()
                    + " at the most; or "
                    + Phrase.small(STEAM_PROTEIN))
        .orElse(STEAM_PROTEIN);
  }

  /** How much urea they hold: none, or as much as that in a kilogram. */
  public static String held(UreaNeed need, Measures units) {
    return need.mostHeld() > 0
        ? "only "
            + PerKilogram.text(need.mostHeld(), units)
            + " of urea in "
            + PerKilogram.whole(units)
        : "no urea";
  }

  /** How much these recipes take, and recipes in general. */
  public static String take(UreaNeed need, Measures units) {
    List<String> here = new ArrayList<>();
    need.here()
        .forEach(
            (paste, urea) ->
                here.add(
                    PasteSpeech.text(urea, units)
                        + (here.isEmpty() ? " of urea" : "")
                        + " into the recipe of "
                        + paste));
    return here.stream().limit(LISTED).collect(Collectors.joining(", "))
        + ": "
        + PasteSpeech.text(need.usual(), units);
  }

  /** The pH to show, with its range. */
  public static String acidity(Soak soak, Measures units) {
    if (soak.silicate()) {
      return "not estimated with silicate";
    }
    return soak.pH()
        .map(r -> Ratio.toTenth(r.low()) + " to " + Ratio.toTenth(r.high()))
        .orElse(
            "not estimated outside "
                + new Temperature(SodaSolution.COLDEST).text(units)
                + " to "
                + new Temperature(SodaSolution.HOTTEST).text(units)
                + " and "
                + new Ratio(SodaSolution.STRONGEST)
                + " mol/kg");
  }

  /** What is left out, in words. */
  public static String leftOut(WashOff off) {
    return off.rinsed()
        ? "wash with detergent"
        : off.washed() ? "cool rinse before the wash" : "rinse and no wash";
  }

  /** Where to put the alkali, in words: the soak first where a paste would die of it. */
  public static String mending(AlkaliForDye dye, Measures units) {
    if (dye.protein()) {
      return STEAM_PROTEIN;
    }
    if (dye.sodaForBath().isPresent()) {
      return "Put "
          + dye.sodaForBath().get().enough(units)
          + " of soda ash"
          + dye.saltForBath().map(salt -> " and " + salt.enough(units) + " of salt").orElse("")
          + " into the bath";
    }
    if (dye.shortLived().isEmpty()) {
      return "Put the alkali into the paste, "
          + weighedIn(dye, units)
          + ", and write it into the recipe; or soak the cloth in soda before";
    }
    SodaLife first = dye.shortLived().get(0);
    return "Soak the cloth in soda before and dry it; in the paste the alkali would leave "
        + first.paste()
        + " at least "
        + new Span(Math.floor(first.lifeMinutes().low())).text()
        + " of life, and from mixing to its last print the run takes "
        + first.needed().text();
  }

  /** What a pot reaches where water boils at 100 °C, in words. */
  public static String pot(Steaming steaming, Measures units) {
    return new Temperature(100).text(units);
  }

  /** What else may have been meant, beginning with a blank; empty where °F is written already. */
  public static String meant(Steaming steaming, Measures units) {
    return units.of(MeasureKind.TEMPERATURE) == UnitSystem.METRIC
        ? " Were degrees Fahrenheit meant? Then write °F."
        : "";
  }

  /** What works' steamers have, likewise. */
  public static String works(Steaming steaming, Measures units) {
    String most = new Temperature(103).text(units);
    String least = new Temperature(102).text(units);
    return least.substring(0, least.lastIndexOf(' '))
        + " to "
        + most.substring(0, most.lastIndexOf(' '));
  }

  /** A question about the likeliest slip, with a blank after it; or nothing. */
  public static String asking(AlkaliDose dose) {
    return dose.perKilogramMeant()
        ? "Were grams for a kilogram of paste weighed into this pot? "
        : "";
  }

  /** What to weigh in, in words. */
  public static String weighIn(AlkaliDose dose, Measures units) {
    return dose.here().map(h -> PasteSpeech.text(h, units)).orElse("enough")
        + (dose.soda() ? " of soda ash" : " of baking soda");
  }

  /** Both figures, as in {@code 20 g of alkali in a kilogram, 0.5 g for each gram of dye}. */
  public static String spoken(AlkaliDose dose, Measures units) {
    return (PerKilogram.isMetric(units)
            ? grams(dose.dose().alkaliGrams(), 1) + " g"
            : PerKilogram.text(dose.dose().alkaliGrams(), units))
        + " of alkali in "
        + PerKilogram.whole(units)
        + (dose.perDyeKnown()
            ? ", "
                + grams(dose.dose().alkaliPerDye(), 2)
                + " "
                + PerKilogram.forEach(units)
                + " of dye"
            : "");
  }

  /** A range whose ends show the same figure is none to a reader. */
  private static String grams(Range range, int digits) {
    String low = Numbers.plain(range.low(), digits);
    String high = Numbers.plain(range.high(), digits);
    return Numbers.plain(range.best(), digits)
        + (low.equals(high) ? "" : " (" + low + " to " + high + ")");
  }

  /** How many have, in words: {@code all 3 prints}, {@code 2 of 3 prints}. */
  public static String driedThrough(Wrapped wrapped) {
    String all = wrapped.prints() == 1 ? "the one print" : "all " + wrapped.prints() + " prints";
    return wrapped.dry() == wrapped.prints()
        ? all + (wrapped.prints() == 1 ? " has" : " have")
        : wrapped.dry()
            + " of "
            + wrapped.prints()
            + " prints "
            + (wrapped.dry() == 1 ? "has" : "have");
  }

  /** A bath that the cloth can move in and that is neither weak nor strong, in words. */
  public static String refilled(Soak soak, Measures units) {
    List<String> parts = new ArrayList<>();
    parts.add(soak.waterToCover().enough(units) + " of water");
    parts.add(soak.sodaForThat().enough(units) + " of soda ash");
    if (soak.saltForThat().grams() > 0) {
      parts.add(soak.saltForThat().enough(units) + " of salt");
    }
    return Phrase.list(parts);
  }

  /** What goes into the bath to use all its soda, in words. */
  public static String weakened(Soak soak, Measures units) {
    return soak.waterToWeaken().enough(units)
        + " of water"
        + (soak.saltForWeaker().grams() > 0
            ? " and " + soak.saltForWeaker().enough(units) + " of salt"
            : "");
  }

  /** The pH as a sentence, whether or not it is known. */
  public static String pHText(Soak soak, Measures units) {
    return soak.pH().isPresent()
        ? "Its pH is about " + acidity(soak, units) + "."
        : "Its pH is not known at " + soak.temperature().text(units) + " and that strength.";
  }
}

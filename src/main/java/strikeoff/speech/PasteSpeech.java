package strikeoff.speech;

import java.util.stream.Collectors;
import strikeoff.day.Moment;
import strikeoff.paste.DarkPaste;
import strikeoff.paste.ForRecipe;
import strikeoff.paste.HeldAlkali;
import strikeoff.paste.KeptInRoom;
import strikeoff.paste.MixedGroups;
import strikeoff.paste.PasteAge;
import strikeoff.paste.PasteDose;
import strikeoff.paste.RecipeSum;
import strikeoff.paste.SaltInPaste;
import strikeoff.paste.ThickenerStrength;
import strikeoff.paste.UsualUrea;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.PerKilogram;
import strikeoff.units.Phrase;
import strikeoff.units.Ratio;
import strikeoff.units.Temperature;

/** Says what pastes hold, take and how long they live. */
public final class PasteSpeech {

  private PasteSpeech() {}

  /** The salt in a kilogram or a pound of paste, in words. */
  public static String held(SaltInPaste paste, Measures units) {
    return PerKilogram.isMetric(units)
        ? new Ratio(paste.perKilogram().best()).text()
            + (paste.perKilogram().isExact()
                ? ""
                : " ("
                    + new Ratio(paste.perKilogram().low()).text()
                    + " to "
                    + new Ratio(paste.perKilogram().high()).text()
                    + ")")
            + " g"
        : PerKilogram.text(paste.perKilogram(), units);
  }

  /** How far they are carried over, in words. */
  public static String within(KeptInRoom room, Measures units) {
    return Temperature.difference(room.carried(), units);
  }

  /** As it is weighed, inside the band: {@code 9.1 to 19 g}. */
  public static String text(ForRecipe recipe, Measures units) {
    String up = recipe.least().roundedUp(units);
    String down = recipe.most().roundedDown(units);
    boolean narrow =
        up.equals(down) || recipe.most().grams() < recipe.least().grams() + said(recipe.least());
    return narrow ? up : bare(up, down) + " to " + down;
  }

  private static double said(Mass mass) {
    return mass.grams() < 10 ? 0.1 : 1;
  }

  /** The first figure without its unit, where the second one has the same. */
  private static String bare(String first, String second) {
    String unit = second.substring(second.lastIndexOf(' '));
    return first.endsWith(unit) ? first.substring(0, first.length() - unit.length()) : first;
  }

  /** What to change, in words. */
  public static String difference(RecipeSum sum, Measures units) {
    return sum.missing().grams() >= 0
        ? sum.missing().text(units) + " too little"
        : sum.missing().times(-1).text(units) + " too much";
  }

  /** What to weigh in, in words. */
  public static String weighIn(DarkPaste paste, Measures units) {
    return paste.here().map(h -> text(h, units)).orElse("more");
  }

  public static String names(MixedGroups groups) {
    return Phrase.list(groups.groups().stream().map(g -> g.group().name()).toList());
  }

  /** How long each lives in the pot, in words. */
  public static String lives(MixedGroups groups) {
    return switch (groups.alkali()) {
          case NONE -> "Without alkali";
          case SODA -> "With soda";
          case BICARBONATE -> "With " + groups.alkaliNamed();
        }
        + " in the pot, "
        + Phrase.list(
            groups.groups().stream()
                .map(g -> g.group().name() + " lives " + g.life().text())
                .toList());
  }

  /** What a bath has to offer, in words. */
  public static String windows(MixedGroups groups, Measures units) {
    Temperature coolest =
        groups.groups().stream()
            .map(g -> g.group().coolest())
            .max(Temperature::compareTo)
            .orElseThrow();
    Temperature warmest =
        groups.groups().stream()
            .map(g -> g.group().warmest())
            .min(Temperature::compareTo)
            .orElseThrow();
    String asked =
        groups.groups().stream()
            .map(
                g ->
                    g.group().name()
                        + " asks for "
                        + g.group().coolest().text(units)
                        + " to "
                        + g.group().warmest().text(units))
            .collect(Collectors.joining(", "));
    int met = coolest.compareTo(warmest);
    return "In a bath "
        + asked
        + ": "
        + (met > 0
            ? "no temperature serves all of them"
            : met == 0
                ? "only " + coolest.text(units) + " serves all of them"
                : coolest.text(units) + " to " + warmest.text(units) + " serve all of them");
  }

  /** In words, as in {@code 100 to 200 g in a kilogram of paste, as viscose asks}. */
  public static String text(UsualUrea urea, Measures units) {
    return PerKilogram.number(urea.least(), units)
        + " to "
        + PerKilogram.text(urea.most(), units)
        + " in "
        + PerKilogram.whole(units)
        + " of paste"
        + (urea.fibre().ureaFactor().value() > 1 ? ", as " + urea.fibre().name() + " asks" : "");
  }

  /** Urea for this recipe, in words. */
  public static String ureaHere(PasteDose dose, Measures units) {
    return dose.urea().map(u -> text(u, units) + " of urea: ").orElse("") + usualUrea(dose, units);
  }

  /** What recipes put into a kilogram for this cloth, in words. */
  public static String usualUrea(PasteDose dose, Measures units) {
    return text(dose.usual(), units);
  }

  /** The dye in a kilogram or a pound of it, in words. */
  public static String dyeHeld(PasteDose dose, Measures units) {
    return PerKilogram.text(dose.dyeGrams(), units);
  }

  /** The urea in it, likewise. */
  public static String ureaHeld(PasteDose dose, Measures units) {
    return PerKilogram.text(dose.ureaGrams(), units);
  }

  /** Dye powder for a pale print with this recipe. */
  public static String paleDye(PasteDose dose, Measures units) {
    return dose.dye().map(d -> d.least().roundedUp(units)).orElse("some");
  }

  /** Dye powder for a strong print with this recipe. */
  public static String strongDye(PasteDose dose, Measures units) {
    return dose.dye().map(d -> d.most().roundedDown(units)).orElse("more");
  }

  public static String text(HeldAlkali alkali) {
    return switch (alkali) {
      case NONE -> "without alkali";
      case BICARBONATE -> "with baking soda in it";
      case SODA -> "with alkali in it";
    };
  }

  /** What it holds, in words. */
  public static String holds(PasteAge age) {
    return age.alkali() == HeldAlkali.BICARBONATE
        ? "with " + age.alkaliNamed() + " in it"
        : text(age.alkali());
  }

  /** More batches than that are told by their number alone. */
  private static final int LISTED = 4;

  /** When it was ready, as in {@code 3 days before day 1, 18:00} or {@code on day 1, 09:00}. */
  public static String mixed(PasteAge age) {
    return age.mixedAt().when();
  }

  /** What to mix when, as an instruction without a full stop. */
  public static String mixing(PasteAge age) {
    if (age.batches().size() < 2) {
      return age.mixFrom().day() < 1
          ? "Mix it later: " + age.mixFrom().dayWhen() + ", not before " + age.mixFrom().clock()
          : "Mix it " + age.mixFrom().when() + " or later, before it is first printed";
    }
    String each =
        age.batches().stream().limit(LISTED).map(Moment::text).collect(Collectors.joining("; "));
    return "No one batch lasts from its first print to its last: mix "
        + age.batches().size()
        + " fresh ones, each just before its first print ("
        + each
        + (age.batches().size() > LISTED ? "; and so on)" : ")")
        + (age.alkali() == HeldAlkali.NONE
            ? ""
            : ", or leave the alkali out and soak the cloth in soda");
  }

  /** The thickener of a batch as it was weighed, also where that is less than a gram. */
  public static String weighed(ThickenerStrength strength, Measures units) {
    Mass weighed = new Mass(strength.thickenerGrams().best());
    return PerKilogram.isMetric(units) && weighed.grams() < 1
        ? Numbers.plain(weighed.grams(), 2) + " g"
        : weighed.text(units);
  }

  /**
   * The share by the best estimate, to a hundredth of a per cent, so that it differs from limits.
   */
  public static String told(ThickenerStrength strength) {
    return Numbers.plain(Math.floor(strength.share().best() * 1e4 + 1e-6) / 100, 2) + " %";
  }
}

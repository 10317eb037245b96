package strikeoff.speech;

import strikeoff.chemistry.SodaSolution;
import strikeoff.drying.Drying;
import strikeoff.drying.Tried;
import strikeoff.evidence.Basis;
import strikeoff.policy.Policy;
import strikeoff.screens.Mesh;
import strikeoff.units.Chance;
import strikeoff.units.Measures;
import strikeoff.units.Quantity;
import strikeoff.units.Ratio;

/**
 * What a kind of estimate rests on, in words.
 *
 * @param estimate what is estimated
 * @param method by which model, and what it takes for granted
 * @param holds the limits inside which the model was checked, and what happens outside them
 * @param source who published it
 */
public record ModelText(String estimate, String method, String holds, String source) {

  public static ModelText of(Basis basis, Policy policy) {
    return switch (basis) {
      case DRYING -> drying(policy);
      case DEPOSIT -> deposit(policy);
      case PASTE_LIFE -> pasteLife(policy);
      case PH -> pH();
      case DISSOLVING -> dissolving();
      case FIXING_TIME -> fixingTime(policy);
      case BLEND -> blend();
      case FINISHED_SIZE -> finishedSize();
      case COLOURS -> colours();
    };
  }

  private static ModelText drying(Policy policy) {
    Tried tried = Tried.of(policy);
    return new ModelText(
        "Drying times",
        "The heat balance of the wet film: air, radiation and table bring the heat that"
            + " evaporation takes. Yarns soak up what they can hold; what a paint's film keeps"
            + " must dry to touch, and dye paste must sink below the crowns of the yarns. Each"
            + " time is given for "
            + Drying.DAYS
            + " days that differ in deposit, hand, cloth and air: the time of an ordinary day, one"
            + " that is undercut on "
            + new Chance(Drying.quick(policy)).text()
            + ", and one that is exceeded on "
            + new Chance(1 - Drying.slow(policy)).text()
            + ".",
        tried.coldest().text(Measures.METRIC)
            + " to "
            + tried.hottest().text(Measures.METRIC)
            + " and up to "
            + tried.fastest().text(Measures.METRIC)
            + ", cloth that lies flat and open on a padded table. Outside, times are those of the"
            + " nearest air inside, and a finding says so. The heat of a hair-dryer and of the sun"
            + " is not counted, nor that wet prints make a small room damp.",
        "IAPWS-IF97; VDI 2089 and Shah 2002 for air at rest; Chilton and Colburn 1934; how paste"
            + " soaks in has no published source");
  }

  private static ModelText deposit(Policy policy) {
    return new ModelText(
        "Deposit of a pull",
        "Theoretical volume of a plain weave, open area times "
            + new Ratio(Mesh.THREADS_THICK.low()).text()
            + " to "
            + new Ratio(Mesh.THREADS_THICK.high()).text()
            + " threads, of which a pull leaves "
            + text(policy.screens().transferLeast())
            + " to "
            + text(policy.screens().transferMost())
            + " on the cloth; a second pull adds "
            + text(policy.screens().secondPull())
            + " of that, each further one "
            + text(policy.screens().furtherPull())
            + ".",
        "Plain weaves, whose threads are thinner than half the pitch. A finding says so for others;"
            + " state the deposit weighed on a strike-off for those.",
        "weavers' specification pages; the share left on cloth common practice, no source");
  }

  private static ModelText pasteLife(Policy policy) {
    return new ModelText(
        "Life of a dye paste",
        "The reactive group's life at room temperature, with alkali or without, carried over to the"
            + " room's temperature by Arrhenius' law with "
            + text(policy.paste().activationEnergyUsual())
            + " kJ/mol ("
            + text(policy.paste().activationEnergyLeast())
            + " to "
            + text(policy.paste().activationEnergyMost())
            + "); kept cold, as stated.",
        "Within "
            + text(policy.paste().carriedOver())
            + " of the room that the table holds for. Beyond, no life is given and a finding says so.",
        "hand-dyeing FAQ of 2005; Broadbent 2001; hand-dyeing FAQ on temperature; some lives"
            + " common practice, no source");
  }

  private static ModelText pH() {
    return new ModelText(
        "pH of a soda bath",
        "Carbonate equilibria with Pitzer's activity coefficients, before the cloth goes in, in"
            + " clean water that takes up no carbon dioxide from the air, with the salt that is in it; known to "
            + new Ratio(SodaSolution.UNCERTAINTY).text()
            + ".",
        new Ratio(SodaSolution.COLDEST).text()
            + " to "
            + new Ratio(SodaSolution.HOTTEST).text()
            + " °C and "
            + new Ratio(1000 * SodaSolution.WEAKEST).text()
            + " mmol to "
            + new Ratio(SodaSolution.STRONGEST).text()
            + " mol of soda in a kilogram of water, about 0.1 to 125 g/L. Outside, none is given.",
        "Plummer & Busenberg 1982; Harvie, Møller & Weare 1984");
  }

  private static ModelText dissolving() {
    return new ModelText(
        "Soda that dissolves",
        "Measured points, straight lines between them; good to 3 %, up to 5 % low at 30 to 40 °C.",
        "0 to 100 °C. There is no liquid bath beyond: the value at the nearer end is taken.",
        "compilation after Seidell and Comey & Hahn");
  }

  private static ModelText fixingTime(Policy policy) {
    return new ModelText(
        "Time that dye needs to fix",
        "The time that sources state for the dye's group and the way of fixing, carried over to"
            + " another temperature by Arrhenius' law with "
            + text(policy.fixing().activationEnergyUsual())
            + " kJ/mol ("
            + text(policy.fixing().activationEnergyLeast())
            + " to "
            + text(policy.fixing().activationEnergyMost())
            + "); what is fixed grows first order in time, "
            + text(policy.fixing().shareAtStatedTime())
            + " after the stated time. A bath weaker than the usual one is slower as its hydroxide."
            + " A soak warmer than stated saves no time.",
        "From "
            + text(policy.fixing().hopelessBelow())
            + " below the temperature stated for a batch upwards. Colder, no time is given and a"
            + " finding says so.",
        "a UK supplier's instructions, a dye maker's staff forum and a hand-dyeing FAQ on"
            + " temperature (three times as fast for ten degrees, after a reactive-dye monograph);"
            + " first order: Klančnik 2008, CABEQ 22:81");
  }

  private static ModelText blend() {
    return new ModelText(
        "How pale a blend comes out",
        "Each fibre takes dye in proportion to its share of the mass.",
        "Fibres of the table. Blends of unlike fibres may also look speckled, which is not reckoned.",
        "suppliers' pages for which fibres take the dye; no figure was found for wool and silk, which are taken as full");
  }

  private static ModelText finishedSize() {
    return new ModelText(
        "Finished sizes",
        "Length and width lose their stated or usual shares in the first wash, evenly over the"
            + " cloth; a finished size is what is left of them without the allowances.",
        "Cloth that was not washed before. Shops' cloths differ by 2 % and more: wash a measured"
            + " square.",
        "a trade table of 2018; ISO 5077 for the sign and the measure");
  }

  private static ModelText colours() {
    return new ModelText(
        "Colours on the cloth, overprints and softening",
        "A paste's named colour is its look on white cloth. Transparent pastes add K/S in three"
            + " broad bands (Kubelka–Munk, single constant). Translucent paint hides a part of what lies"
            + " under it and tints the rest, opaque paint covers. After wash-off a share of the dye is"
            + " left.",
        "Even cover and dyes that share a cloth; no match for a dye lot, a light or a weave. For the"
            + " eye only: print a strike-off.",
        "Kubelka & Munk 1931; IEC 61966-2-1; CIEDE2000 by Sharma & al. 2005; the shares that"
            + " paint hides are from memory, the share left is common practice, no source");
  }

  private static String text(Quantity limit) {
    return limit.text(Measures.METRIC);
  }
}

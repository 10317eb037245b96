package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.chemistry.SodaSolution;
import strikeoff.day.facts.Timeline;
import strikeoff.evidence.Basis;
import strikeoff.evidence.Evidence;
import strikeoff.paste.PasteAge;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Measures;
import strikeoff.units.Quantity;
import strikeoff.units.Ratio;

/**
 * How the run fixes its colours.
 *
 * @param soaks every soda bath
 * @param evidence all facts about fixing that rules judge, the baths among them
 */
public record Fixing(List<Soak> soaks, List<Evidence> evidence) {

  /** What a bath's pH rests on. */
  public static final Basis PH =
      new Basis(
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

  /** What the limit of dissolving rests on. */
  public static final Basis DISSOLVING =
      new Basis(
          "Soda that dissolves",
          "Measured points, straight lines between them; good to 3 %, up to 5 % low at 30 to 40 °C.",
          "0 to 100 °C. There is no liquid bath beyond: the value at the nearer end is taken.",
          "compilation after Seidell and Comey & Hahn");

  /** What the time that a dye needs rests on. */
  public static Basis timeBasis(Policy policy) {
    return new Basis(
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

  private static String text(Quantity limit) {
    return limit.text(Measures.METRIC);
  }

  public Fixing {
    soaks = List.copyOf(soaks);
    evidence = List.copyOf(evidence);
  }

  /**
   * @param ages of the pastes, for what is left of their dye
   */
  public static Fixing of(PrintPlan plan, Timeline timeline, List<PasteAge> ages, Policy policy) {
    FixingRun work = new FixingRun(plan, timeline, ages, policy);
    List<Soak> soaks = new Soaks(work).all();
    List<Evidence> evidence = new ArrayList<>(soaks);
    evidence.addAll(Brushing.all(work));
    evidence.addAll(SecondAlkali.all(work));
    evidence.addAll(SodaInPaste.all(work));
    TimeInSoda.of(work).ifPresent(evidence::add);
    evidence.addAll(AlkaliDose.all(work));
    evidence.addAll(UnweighedAlkali.all(work));
    evidence.addAll(UreaNeed.all(work));
    evidence.addAll(DriedBeforeBatch.all(work));
    evidence.addAll(HotWater.all(work));
    evidence.addAll(PaintInHotWater.all(work));
    evidence.addAll(new Warmths(work).all());
    evidence.addAll(new Dyes(work).all());
    evidence.addAll(new Heats(work).all());
    evidence.addAll(Curing.all(work));
    return new Fixing(soaks, evidence);
  }
}

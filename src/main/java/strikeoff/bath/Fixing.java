package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.chemistry.SodaSolution;
import strikeoff.plan.Basis;
import strikeoff.plan.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.timeline.Timeline;
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
              + " clean water that takes up no carbon dioxide from the air; known to "
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
  public static final Basis TIME =
      new Basis(
          "Time that dye needs to fix",
          "The reactive group's time at the coolest temperature of its window, carried over to"
              + " another by Arrhenius' law with 60 to 100 kJ/mol; hotter than its window saves no"
              + " time.",
          "From 15 °C below the window upwards, or as the policy says. Colder, no time is given and a"
              + " finding says so.",
          "a textile course's table of reactive groups; Dyestuffs & Coloration 2004(6):331; times of a"
              + " soak common practice, no source");

  public Fixing {
    soaks = List.copyOf(soaks);
    evidence = List.copyOf(evidence);
  }

  public static Fixing of(PrintPlan plan, Timeline timeline, Policy policy) {
    Work work = new Work(plan, timeline, policy);
    List<Soak> soaks = new Soaks(work).all();
    List<Evidence> evidence = new ArrayList<>(soaks);
    evidence.addAll(SodaInPaste.all(work));
    evidence.addAll(new Warmths(work).all());
    evidence.addAll(new Dyes(work).all());
    evidence.addAll(new Heats(work).all());
    evidence.addAll(new Wetness(work).all());
    return new Fixing(soaks, evidence);
  }
}

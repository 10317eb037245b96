package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.facts.Timeline;
import strikeoff.evidence.Evidence;
import strikeoff.paste.PasteAge;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;

/**
 * How the run fixes its colours.
 *
 * @param soaks every soda bath
 * @param evidence all facts about fixing that rules judge, the baths among them
 */
public record Fixing(List<Soak> soaks, List<Evidence> evidence) {

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

package strikeoff.care;

import java.util.List;
import java.util.Map;
import strikeoff.bath.Soak;
import strikeoff.plan.Draught;
import strikeoff.plan.HeatSource;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.Temperature;

/** What it is that can hurt, as far as figures and names tell it. */
public sealed interface Hurt {

  /** The hazard itself says all. */
  record Plain() implements Hurt {}

  record MovedAir(Draught air) implements Hurt {}

  record DryHeat(HeatSource with, Temperature temperature) implements Hurt {}

  record Steam(Temperature temperature) implements Hurt {}

  record HotWater(Temperature temperature) implements Hurt {}

  /**
   * @param frames the longer side of each screen's frame, by its name
   */
  record LongFrames(Map<String, Length> frames) implements Hurt {}

  record UreaIn(List<String> pastes) implements Hurt {}

  record SodaAsh(Mass mass) implements Hurt {}

  /** What a bath leaves for the drain. */
  record SpentBath(Soak soak) implements Hurt {}

  record AlkaliFrom(List<String> sources) implements Hurt {}
}

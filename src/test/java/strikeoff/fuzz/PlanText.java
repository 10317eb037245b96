package strikeoff.fuzz;

import strikeoff.artwork.Artworks;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.plan.yaml.PlanReading;
import strikeoff.units.UnitChoice;

/** Any bytes in a plan's place: read, or refused with every mistake at its place. */
public final class PlanText {

  private PlanText() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] input) {
    PlanReading reading =
        PlanReader.read(
            "plan.yaml",
            input,
            Expectations.checker().policy(),
            Expectations.checker().studio().stock(),
            Expectations.BOUNDS,
            UnitChoice.PLAN,
            Artworks.nowhere());
    if (reading instanceof PlanReading.Unreadable unreadable) {
      Expectations.told(unreadable.problems(), input);
    }
  }
}

package strikeoff.speech;

import java.util.List;
import strikeoff.bath.DyeAtWater;
import strikeoff.bath.HotWater;
import strikeoff.bath.PaintInHotWater;
import strikeoff.day.AboutStep;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** Names a step of the run in a few words, for findings and day sheets. */
public final class StepSpeech {

  /** More names than that are no title any more. */
  private static final int MOST_NAMED = 12;

  private StepSpeech() {}

  /** What the step that a fact is about does. */
  public static String title(AboutStep fact, Measures units) {
    return title(fact.doing(), units);
  }

  /** The bath that the cloth lies in. */
  public static String what(HotWater bath, Measures units) {
    return title(bath.doing(), units);
  }

  /** The bath that the paint lies in. */
  public static String what(PaintInHotWater bath, Measures units) {
    return title(bath.doing(), units);
  }

  /** The rinse or the wash. */
  public static String water(DyeAtWater dye, Measures units) {
    return title(dye.washing(), units);
  }

  /** What comes too late to fix it; empty if nothing comes. */
  public static String fix(DyeAtWater dye, Measures units) {
    return dye.late().map(fix -> title(fix, units)).orElse("");
  }

  /** What it does: {@code print herons}. */
  public static String title(Step step, Measures units) {
    if (step instanceof Step.Mix mix) {
      return "mix " + few(mix.pastes());
    }
    if (step instanceof PrintStep print) {
      return "print " + String.join(", ", print.arrangements());
    }
    if (step instanceof Step.Dry dry) {
      return "dry " + dry.until().text();
    }
    if (step instanceof Step.WashScreen wash) {
      return "wash screen " + String.join(", ", wash.screens());
    }
    if (step instanceof Step.Move move) {
      return move.to().mm() < 0
          ? "move, the start " + new Length(-move.to().mm()).text(units) + " inside the table"
          : "move on to " + move.to().text(units);
    }
    if (step instanceof Step.Sew sew) {
      return "sew " + sew.seam();
    }
    if (step instanceof Step.Fix fix) {
      return "fix by " + fix.how().text();
    }
    if (step instanceof Step.Rinse rinse) {
      return "rinse at " + rinse.temperature().text(units);
    }
    if (step instanceof Step.Wash wash) {
      return "wash at " + wash.temperature().text(units);
    }
    if (step instanceof Step.HeatSet heat) {
      return "heat-set with " + heat.with().text();
    }
    return "end of day";
  }

  /** With its number, as findings say it: {@code step 4 (print herons)}. */
  public static String numbered(Step step, Measures units) {
    return "step " + step.number() + " (" + title(step, units) + ")";
  }

  private static String few(List<String> names) {
    return names.size() <= MOST_NAMED
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, MOST_NAMED))
            + " and "
            + (names.size() - MOST_NAMED)
            + " more";
  }
}

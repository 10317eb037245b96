package strikeoff.speech;

import java.util.List;
import java.util.stream.Collectors;
import strikeoff.bath.Soak;
import strikeoff.care.Caution;
import strikeoff.care.Exposure;
import strikeoff.care.Hurt;
import strikeoff.care.Workplace;
import strikeoff.units.Measures;

/** Says where something can hurt, and what it is there. */
public final class CareSpeech {

  private CareSpeech() {}

  /** The place: {@code step 4, fix by soak}, or one that is no step. */
  public static String place(Caution caution, Measures units) {
    return caution.where() instanceof Workplace.InStep in
        ? "step " + in.number() + ", " + StepSpeech.title(in.step(), units)
        : text(caution.where(), units);
  }

  /** All places with a hazard, inside a sentence. */
  public static List<String> where(Exposure exposure, Measures units) {
    return exposure.where().stream().map(place -> text(place, units)).toList();
  }

  /** The same inside a sentence: {@code step 4 (fix by soak)}. */
  public static String text(Workplace where, Measures units) {
    if (where instanceof Workplace.InStep in) {
      return StepSpeech.numbered(in.step(), units);
    }
    return switch ((Workplace.AllDay) where) {
      case CLASS -> "the class";
      case AIR -> "the air of the room";
    };
  }

  /** The figures and names that belong to it; empty where the hazard says all. */
  public static String figures(Caution caution, Measures units) {
    Hurt hurt = caution.hurt();
    if (hurt instanceof Hurt.MovedAir moved) {
      return moved.air().text(units);
    }
    if (hurt instanceof Hurt.DryHeat heat) {
      return heat.with().text() + " at " + heat.temperature().text(units);
    }
    if (hurt instanceof Hurt.Steam steam) {
      return "steam at " + steam.temperature().text(units);
    }
    if (hurt instanceof Hurt.HotWater water) {
      return "water at " + water.temperature().text(units);
    }
    if (hurt instanceof Hurt.LongFrames screens) {
      return screens.frames().entrySet().stream()
          .map(frame -> frame.getKey() + ", " + frame.getValue().text(units))
          .collect(Collectors.joining("; "));
    }
    if (hurt instanceof Hurt.UreaIn urea) {
      return "urea in " + String.join(", ", urea.pastes());
    }
    if (hurt instanceof Hurt.SodaAsh soda) {
      return soda.mass().text(units) + " of soda ash";
    }
    if (hurt instanceof Hurt.SpentBath bath) {
      return spent(bath.soak(), units);
    }
    return hurt instanceof Hurt.AlkaliFrom alkali
        ? "alkali from " + String.join(", ", alkali.sources())
        : "";
  }

  private static String spent(Soak soak, Measures units) {
    return soak.pH().isPresent()
        ? "pH " + BathSpeech.acidity(soak, units) + " at " + soak.temperature().text(units)
        : "pH not known at " + soak.temperature().text(units);
  }
}

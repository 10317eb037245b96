package strikeoff.plan.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Crew;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Step;
import strikeoff.plan.Step.Fixing;
import strikeoff.policy.Substance;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Values;

/** Reads the steps that fix and clean: fix, rinse, wash, heat-set. */
final class WetStepPart {

  private static final Expected<Temperature> WARMTH = Values.quantity(Temperature.class);
  private static final Map<String, Fixing> WAYS = new LinkedHashMap<>();
  private static final Map<String, Step.Heat> DEVICES = new LinkedHashMap<>();

  static {
    for (Fixing way : Fixing.values()) {
      WAYS.put(way.text(), way);
    }
    for (Step.Heat device : Step.Heat.values()) {
      DEVICES.put(device.text(), device);
    }
  }

  private final Draft draft;
  private final Assumptions assumptions;
  private final Crew crew;

  WetStepPart(Draft draft, Crew crew) {
    this.draft = draft;
    this.assumptions = draft.assumptions();
    this.crew = crew;
  }

  Step fix(int number, Fields f) {
    Fixing how = f.required("fix", Values.word("soak, batch or steam", WAYS));
    return new Step.Fix(
        number,
        how,
        bath(f, how),
        assumptions.or(
            f,
            "temperature",
            WARMTH,
            "fix.temperature." + how.text(),
            "temperature of the " + how.text()),
        f.required("for", Values.aboveZero(Span.class)),
        by(f),
        f.path());
  }

  private List<Ingredient> bath(Fields f, Fixing how) {
    Expected<List<Ingredient>> recipe = Recipes.recipe(draft.policy());
    if (!f.sound("fix")) {
      return f.optional("bath", recipe).orElse(List.of());
    }
    if (how != Fixing.SOAK) {
      if (f.has("bath")) {
        f.wrong("bath", "a " + how.text() + " has no bath; leave it out, or say fix: soak");
      }
      return List.of();
    }
    List<Ingredient> bath = f.required("bath", recipe);
    if (f.sound("bath") && !Recipes.holds(bath, Substance.Role.WATER, draft.policy())) {
      f.wrong("bath", "the bath holds no water; give its volume such as water: 5 L");
    }
    return bath;
  }

  Step rinse(int number, Fields f) {
    return new Step.Rinse(number, f.required("rinse", WARMTH), lasts(f, "rinse"), by(f), f.path());
  }

  Step wash(int number, Fields f) {
    return new Step.Wash(number, f.required("wash", WARMTH), lasts(f, "wash"), by(f), f.path());
  }

  Step heatSet(int number, Fields f) {
    return new Step.HeatSet(
        number,
        f.required("heat-set", Values.word("iron, press or oven", DEVICES)),
        assumptions.or(
            f, "temperature", WARMTH, "heat-set.temperature", "temperature of heat-setting"),
        lasts(f, "heat-set"),
        by(f),
        f.path());
  }

  private Span lasts(Fields f, String verb) {
    return assumptions.or(
        f, "for", Values.aboveZero(Span.class), verb + ".for", "time of the " + verb);
  }

  private Optional<String> by(Fields f) {
    return f.optional(
        "by", Values.nameIn("a name of the crew", "person of the crew", crew.names()));
  }
}

package strikeoff.plan.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Crew;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.HeatSource;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Step;
import strikeoff.policy.Default;
import strikeoff.policy.Substance;
import strikeoff.units.MeasureKind;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.UnitSystem;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.ValueKinds;

/** Reads the steps that fix and clean: fix, rinse, wash, heat-set. */
final class WetStepPart {

  private static final Expected<Temperature> WARMTH = QuantityKinds.quantity(Temperature.class);

  /** °C, at sea level. */
  private static final double BOILING = 100;

  private static final double FREEZING = 0;

  private static final Map<String, DyeFixing> WAYS = new LinkedHashMap<>();
  private static final Map<String, HeatSource> DEVICES = new LinkedHashMap<>();

  static {
    for (DyeFixing way : DyeFixing.values()) {
      WAYS.put(way.text(), way);
    }
    for (HeatSource device : HeatSource.values()) {
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
    DyeFixing how = f.required("fix", ValueKinds.word("soak, batch or steam", WAYS));
    List<Ingredient> bath = bath(f, how);
    return new Step.Fix(
        number,
        how == DyeFixing.SOAK && brushedOn(bath) ? DyeFixing.BATCH : how,
        bath,
        how == DyeFixing.STEAM
            ? thawed(f, "temperature", warmth(f, how))
            : water(f, "temperature", warmth(f, how)),
        f.required("for", QuantityKinds.aboveZero(Span.class)),
        by(f),
        f.path());
  }

  private Temperature warmth(Fields f, DyeFixing how) {
    return assumptions.or(
        f,
        "temperature",
        WARMTH,
        assumptions.standard().fix().temperature().of(how),
        "temperature of the " + how.text());
  }

  /** What is colder than ice was not meant. */
  private static Temperature thawed(Fields f, String key, Temperature temperature) {
    if (f.sound(key) && temperature.celsius() < FREEZING) {
      f.wrong(
          key,
          temperature.text(f.measures())
              + " is colder than ice: water freezes at "
              + new Temperature(0).text(f.measures()));
    }
    return temperature;
  }

  /** No open bath is hotter than boiling water. */
  private static Temperature water(Fields f, String key, Temperature temperature) {
    if (f.sound(key) && temperature.celsius() > BOILING) {
      f.wrong(
          key,
          temperature.text(f.measures())
              + " is hotter than water gets: it boils at "
              + new Temperature(100).text(f.measures())
              + (temperature.celsius() <= 212
                      && f.measures().of(MeasureKind.TEMPERATURE) == UnitSystem.METRIC
                  ? "; were degrees Fahrenheit meant (°F)?"
                  : ""));
    }
    return thawed(f, key, temperature);
  }

  private List<Ingredient> bath(Fields f, DyeFixing how) {
    Expected<List<Ingredient>> recipe = Recipes.recipe(draft.policy());
    if (how != DyeFixing.SOAK || !f.sound("fix")) {
      List<Ingredient> bath = f.optional("bath", recipe).orElse(List.of());
      boolean brushed = how == DyeFixing.BATCH && (brushedOn(bath) || !f.sound("bath"));
      if (f.has("bath") && f.sound("fix") && !brushed) {
        f.wrong("bath", dryBath(how));
        return List.of();
      }
      return bath;
    }
    List<Ingredient> bath = f.required("bath", recipe);
    boolean wet = Recipes.holds(bath, Substance.Role.WATER, draft.policy()) || brushedOn(bath);
    if (f.sound("bath") && !wet) {
      f.wrong("bath", "the bath holds no water; give its volume such as water: 5 L");
    }
    return bath;
  }

  private static String dryBath(DyeFixing how) {
    return "a "
        + how.text()
        + " has no bath; leave it out, or say fix: soak"
        + (how == DyeFixing.BATCH
            ? ". Only silicate is brushed on before it lies: bath: {sodium silicate: 1 L}"
            : "");
  }

  /** Silicate liquid needs no water and no tub: it is brushed on, and the cloth then lies. */
  private boolean brushedOn(List<Ingredient> bath) {
    return !bath.isEmpty()
        && bath.stream().allMatch(i -> draft.policy().substance(i.substance()).silicate());
  }

  Step rinse(int number, Fields f) {
    return new Step.Rinse(
        number,
        water(f, "rinse", f.required("rinse", WARMTH)),
        lasts(f, assumptions.standard().rinse().lasts(), "rinse"),
        by(f),
        f.path());
  }

  Step wash(int number, Fields f) {
    return new Step.Wash(
        number,
        water(f, "wash", f.required("wash", WARMTH)),
        lasts(f, assumptions.standard().wash().lasts(), "wash"),
        by(f),
        f.path());
  }

  Step heatSet(int number, Fields f) {
    Everyday.called("heat", f);
    HeatSource with = f.required("heat-set", ValueKinds.word("iron, press or oven", DEVICES));
    return new Step.HeatSet(
        number,
        with,
        thawed(
            f,
            "temperature",
            assumptions.or(
                f,
                "temperature",
                WARMTH,
                assumptions.standard().heatSet().temperature(),
                "temperature of heat-setting")),
        lasts(f, assumptions.standard().heatSet().lasts(), "heat-set"),
        sides(f, with),
        by(f),
        f.path());
  }

  /** Only an iron has a side: a press and an oven heat both. */
  private static int sides(Fields f, HeatSource with) {
    boolean both = f.optional("both sides", ValueKinds.yesNo()).orElse(false);
    if (both && f.sound("heat-set") && with != HeatSource.IRON) {
      f.wrong("both sides", "only an iron has a side; a press and an oven heat both at once");
    }
    return both ? 2 : 1;
  }

  private Span lasts(Fields f, Default<Span> standard, String verb) {
    return assumptions.or(
        f, "for", QuantityKinds.aboveZero(Span.class), standard, "time of the " + verb);
  }

  private Optional<String> by(Fields f) {
    return f.optional(
        "by", ValueKinds.nameIn("a name of the crew", "person of the crew", crew.names()));
  }
}

package strikeoff.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Length;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** One step of the run, in the order the printer works. */
public sealed interface Step
    permits Step.Mix,
        PrintStep,
        Step.Dry,
        Step.WashScreen,
        Step.Move,
        Step.Sew,
        Step.Fix,
        Step.Rinse,
        Step.Wash,
        Step.HeatSet,
        Step.EndOfDay {

  /** Where a step of that number stands in the plan. */
  static PlanPath path(int number) {
    return new PlanPath("run").item(number - 1);
  }

  /** Where it stands in the run, from 1. */
  int number();

  /**
   * The same step at another place of the run.
   *
   * @param place from 1
   */
  Step at(int place);

  PlanPath path();

  /** Who does it, if the plan says so. */
  default Optional<String> by() {
    return Optional.empty();
  }

  /** When it begins beside the step above it. */
  default Begins begins() {
    return Begins.IN_TURN;
  }

  /**
   * How dry films must be when the cloth is moved on or taken up for it; empty where it is neither.
   */
  default Optional<Dryness> needs() {
    return Optional.empty();
  }

  /** True if somebody feels films in it and waits until they are dry, for longer on a slow day. */
  default boolean feels() {
    return false;
  }

  /** What moves the air over the cloth in its waits, by the places where that is written. */
  default Map<PlanPath, Draught> draughts() {
    return Map.of();
  }

  /** Mix pastes; each takes the handling's mixing time unless {@code takes} gives the whole. */
  record Mix(
      int number,
      List<String> pastes,
      Optional<Span> takes,
      Optional<String> by,
      Begins begins,
      PlanPath path)
      implements Step {

    /** In its turn. */
    public Mix(
        int number, List<String> pastes, Optional<Span> takes, Optional<String> by, PlanPath path) {
      this(number, pastes, takes, by, Begins.IN_TURN, path);
    }

    public Mix {
      pastes = List.copyOf(pastes);
    }

    @Override
    public Mix at(int place) {
      return new Mix(place, pastes, takes, by, begins, Step.path(place));
    }
  }

  /**
   * Let what is printed dry.
   *
   * @param air other air than the room's
   * @param by who holds a hair-dryer; empty for the first of the crew
   */
  record Dry(int number, Until until, Optional<Draught> air, Optional<String> by, PlanPath path)
      implements Step {

    @Override
    public Map<PlanPath, Draught> draughts() {
      return air.map(draught -> Map.of(path.key("air"), draught)).orElseGet(Map::of);
    }

    @Override
    public boolean feels() {
      return until instanceof Until.State;
    }

    /** The wait that it is. */
    public Wait waits() {
      return new Wait(until, air);
    }

    @Override
    public Dry at(int place) {
      return new Dry(place, until, air, by, Step.path(place));
    }
  }

  /**
   * Wash screens out, those that hold paste by then; they dry by themselves.
   *
   * @param screens names
   * @param takes for all of them together; each takes the handling's time if it is empty
   */
  record WashScreen(
      int number,
      List<String> screens,
      Optional<Span> takes,
      Optional<String> by,
      Begins begins,
      PlanPath path)
      implements Step {

    /** In its turn. */
    public WashScreen(
        int number,
        List<String> screens,
        Optional<Span> takes,
        Optional<String> by,
        PlanPath path) {
      this(number, screens, takes, by, Begins.IN_TURN, path);
    }

    public WashScreen {
      screens = List.copyOf(screens);
    }

    @Override
    public WashScreen at(int place) {
      return new WashScreen(place, screens, takes, by, begins, Step.path(place));
    }
  }

  /**
   * Move the cloth so that the table shows it from {@code to} on; below zero if the table begins
   * before the cloth's start.
   */
  record Move(int number, Length to, Optional<Span> takes, Optional<String> by, PlanPath path)
      implements Step {

    @Override
    public Optional<Dryness> needs() {
      return Optional.of(Dryness.LIFT_SAFE);
    }

    @Override
    public Move at(int place) {
      return new Move(place, to, takes, by, Step.path(place));
    }
  }

  /** Sew and press a seam; the cloth leaves the table for it. */
  record Sew(
      int number,
      String seam,
      Optional<Span> takes,
      Optional<String> by,
      Begins begins,
      PlanPath path)
      implements Step {

    /** In its turn. */
    public Sew(int number, String seam, Optional<Span> takes, Optional<String> by, PlanPath path) {
      this(number, seam, takes, by, Begins.IN_TURN, path);
    }

    @Override
    public Optional<Dryness> needs() {
      return Optional.of(Dryness.LIFT_SAFE);
    }

    @Override
    public Sew at(int place) {
      return new Sew(place, seam, takes, by, begins, Step.path(place));
    }
  }

  /**
   * Fix the dye.
   *
   * @param bath ingredients of a soak, water included, or what is brushed on before a batch lies;
   *     else empty
   * @param temperature of the bath, of the batching place, or of the steam
   * @param lasts how long
   */
  record Fix(
      int number,
      DyeFixing how,
      List<Ingredient> bath,
      Temperature temperature,
      Span lasts,
      Optional<String> by,
      PlanPath path)
      implements Step {

    public Fix {
      bath = List.copyOf(bath);
    }

    /** True for a batch whose alkali is brushed on before it lies. */
    public boolean brushed() {
      return how == DyeFixing.BATCH && !bath.isEmpty();
    }

    /** True if it makes the cloth wet: a soak, or a batch with alkali brushed on. */
    public boolean wets() {
      return how == DyeFixing.SOAK || brushed();
    }

    @Override
    public Optional<Dryness> needs() {
      // A batch is kept damp on purpose, but wrapping must not smear it.
      return Optional.of(
          how == DyeFixing.BATCH && !brushed() ? Dryness.LIFT_SAFE : Dryness.FIX_SAFE);
    }

    @Override
    public Fix at(int place) {
      return new Fix(place, how, bath, temperature, lasts, by, Step.path(place));
    }
  }

  /** Rinse until clear. */
  record Rinse(int number, Temperature temperature, Span lasts, Optional<String> by, PlanPath path)
      implements Step {

    @Override
    public Optional<Dryness> needs() {
      return Optional.of(Dryness.FIX_SAFE);
    }

    @Override
    public Rinse at(int place) {
      return new Rinse(place, temperature, lasts, by, Step.path(place));
    }
  }

  /** Wash off with detergent. */
  record Wash(int number, Temperature temperature, Span lasts, Optional<String> by, PlanPath path)
      implements Step {

    @Override
    public Optional<Dryness> needs() {
      return Optional.of(Dryness.FIX_SAFE);
    }

    @Override
    public Wash at(int place) {
      return new Wash(place, temperature, lasts, by, Step.path(place));
    }
  }

  /**
   * Set paint by dry heat.
   *
   * @param lasts at each spot; a press or an oven heats all that it holds at once
   * @param sides how many sides of the cloth are ironed, each for that time
   */
  record HeatSet(
      int number,
      HeatSource with,
      Temperature temperature,
      Span lasts,
      int sides,
      Optional<String> by,
      PlanPath path)
      implements Step {

    @Override
    public Optional<Dryness> needs() {
      return Optional.of(Dryness.FIX_SAFE);
    }

    @Override
    public HeatSet at(int place) {
      return new HeatSet(place, with, temperature, lasts, sides, by, Step.path(place));
    }
  }

  /** The day ends; the next step begins when the room opens again. Films go on drying. */
  record EndOfDay(int number, PlanPath path) implements Step {

    @Override
    public EndOfDay at(int place) {
      return new EndOfDay(place, Step.path(place));
    }
  }
}

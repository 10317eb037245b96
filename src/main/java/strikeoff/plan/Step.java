package strikeoff.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Length;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** One step of the run, in the order the printer works. */
public sealed interface Step {

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
   * Print arrangements.
   *
   * @param arrangements names, printed one after the other
   * @param only numbers of the placements to print, from 1; empty for all
   * @param separations numbers of the separations to print, in this order, from 1; empty for all in
   *     the design's order
   * @param order in which order colours, stations and sets are worked
   * @param everyOther true to print placements 1, 3, 5 … of a set and then 2, 4, 6 … in each colour
   * @param pause waiting after each impression before the next frame is laid
   * @param dryBetweenColours waiting after each colour before the next one starts
   * @param beforeMoving waiting before the cloth moves on to the next set, and on to this step's
   *     first set
   * @param by who prints; empty for the first of the crew
   * @param also who prints at the same time: colours, or stations, go round among them and the
   *     first one
   * @param washes who washes screens out; empty for whoever prints
   * @param dryBetweenPasses waiting after placements 1, 3, 5 … before 2, 4, 6 … are printed between
   *     them; only where every other one is printed
   * @param washBetweenColours true to wash each screen out before the next one prints
   * @param dryBetweenNeighbours waiting before a frame lies on films of its own colour beside it
   * @param numbers of an arrangement, where they differ from one to the next; for those that it
   *     does not name, {@code only} holds
   * @param air what moves the air over the cloth for as long as the step prints; empty for the
   *     room's own
   * @param begins when free to print beside the step above it
   */
  record Print(
      int number,
      List<String> arrangements,
      List<Integer> only,
      List<Integer> separations,
      Order order,
      boolean everyOther,
      Span pause,
      Wait dryBetweenColours,
      Wait beforeMoving,
      Optional<String> by,
      List<String> also,
      Optional<String> washes,
      Wait dryBetweenPasses,
      boolean washBetweenColours,
      Until dryBetweenNeighbours,
      Map<String, List<Integer>> numbers,
      Optional<Draught> air,
      Begins begins,
      PlanPath path)
      implements Step {

    public Print {
      arrangements = List.copyOf(arrangements);
      only = List.copyOf(only);
      separations = List.copyOf(separations);
      also = List.copyOf(also);
      numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    }

    @Override
    public Map<PlanPath, Draught> draughts() {
      Map<PlanPath, Draught> all = new LinkedHashMap<>();
      air.ifPresent(draught -> all.put(path.key("air"), draught));
      dryBetweenColours
          .air()
          .ifPresent(air -> all.put(path.key("dry between colours").key("air"), air));
      dryBetweenPasses
          .air()
          .ifPresent(air -> all.put(path.key("dry between passes").key("air"), air));
      beforeMoving.air().ifPresent(air -> all.put(path.key("before moving").key("air"), air));
      return all;
    }

    /** Numbers of the placements of an arrangement that it prints, from 1; empty for all. */
    public List<Integer> only(String arrangement) {
      return numbers.getOrDefault(arrangement, only);
    }

    /** True if it prints a placement. */
    public boolean prints(String arrangement, int number) {
      List<Integer> own = only(arrangement);
      return arrangements.contains(arrangement) && (own.isEmpty() || own.contains(number));
    }

    /** True if frames wait for films of their own colour beside them. */
    public boolean mindsNeighbours() {
      return dryBetweenNeighbours.isWait();
    }

    /** True if it is printed beside others: by several, or beside the step above it. */
    public boolean beside() {
      return !also.isEmpty() || begins == Begins.WHEN_FREE;
    }

    /** The same step, to be changed in some of its values. */
    public PrintChange change() {
      return new PrintChange(this);
    }

    /** The same step, printed by the first of its people alone. */
    public Print byOne() {
      return by(by.stream().toList());
    }

    /**
     * The same step, printed by others.
     *
     * @param people who; none for the first of the crew
     */
    public Print by(List<String> people) {
      return change().by(people).made();
    }

    /** The same step, with somebody who washes its screens out. */
    public Print washedBy(String person) {
      return change().washedBy(person).made();
    }

    @Override
    public Optional<Dryness> needs() {
      return Optional.of(Dryness.LIFT_SAFE);
    }

    @Override
    public Print at(int place) {
      return change().at(place).made();
    }

    /** Who prints it, if the plan says so. */
    public List<String> people() {
      return Stream.concat(by.stream(), also.stream()).toList();
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
      Fixing how,
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
      return how == Fixing.BATCH && !bath.isEmpty();
    }

    /** True if it makes the cloth wet: a soak, or a batch with alkali brushed on. */
    public boolean wets() {
      return how == Fixing.SOAK || brushed();
    }

    @Override
    public Optional<Dryness> needs() {
      // A batch is kept damp on purpose, but wrapping must not smear it.
      return Optional.of(how == Fixing.BATCH && !brushed() ? Dryness.LIFT_SAFE : Dryness.FIX_SAFE);
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
      Heat with,
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

  /** When a step begins beside the one above it. */
  enum Begins {
    /** Not before that one has begun. */
    IN_TURN("in turn"),
    /** As soon as its own hands and what it needs are free; nothing below waits for that. */
    WHEN_FREE("when free"),
    /** Not before all above it is done. */
    WHEN_DONE("when done");

    private final String text;

    Begins(String text) {
      this.text = text;
    }

    /** As a plan says it; a step in its turn says nothing. */
    public String text() {
      return text;
    }
  }

  /** How several colours, sets and arrangements are worked. */
  enum Order {
    /** Arrangement after arrangement, set after set; in a set colour after colour. */
    BY_COLOUR,
    /** The same, but all colours at a station before the next. */
    BY_STATION,
    /**
     * Each colour over all sets of an arrangement, however often the cloth moves, then the next.
     */
    OVER_ALL,
    /** Everything that the table shows of all arrangements before the cloth moves on. */
    SET_BY_SET
  }

  /** What sets paint by dry heat. */
  enum Heat {
    /** Heats only what lies under its sole. */
    IRON("iron"),
    PRESS("press"),
    OVEN("oven");

    private final String text;

    Heat(String text) {
      this.text = text;
    }

    public String text() {
      return text;
    }
  }

  /** How dye is fixed. */
  enum Fixing {
    SOAK("soak"),
    BATCH("batch"),
    STEAM("steam");

    private final String text;

    Fixing(String text) {
      this.text = text;
    }

    public String text() {
      return text;
    }
  }
}

package strikeoff.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.drying.SteadyDays;
import strikeoff.layout.Layout;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Begins;
import strikeoff.plan.Colour;
import strikeoff.plan.Crew;
import strikeoff.plan.Design;
import strikeoff.plan.Draught;
import strikeoff.plan.DryingTime;
import strikeoff.plan.Equipment;
import strikeoff.plan.Handling;
import strikeoff.plan.Hours;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PlainParts;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.PrintSteps;
import strikeoff.plan.Room;
import strikeoff.plan.Screen;
import strikeoff.plan.Step;
import strikeoff.plan.Storage;
import strikeoff.plan.Table;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.AirSpeed;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * A plan for tests of the clock, made bit by bit; lengths in centimetres. Handling takes round
 * times: lay 20 s, pull 10 s, lift 10 s, load 15 min, move 10 min, mix 10 min, sew 30 min, wash a
 * screen 10 min, dry it 30 min.
 */
public final class PrintDay {

  /** Days that differ in air, hand and deposit, as the policy has them. */
  public static final Policy UNSURE = PolicyReader.builtIn();

  /** All days alike, so that a time that was taken is the time that a film takes. */
  public static final Policy POLICY = SteadyDays.of(UNSURE);

  private final Map<String, Screen> screens = new LinkedHashMap<>();
  private final Map<String, Paste> pastes = new LinkedHashMap<>();
  private final Map<String, Design> designs = new LinkedHashMap<>();
  private final Map<String, Arrangement> arrangements = new LinkedHashMap<>();
  private final List<Step> run = new ArrayList<>();
  private final Medium medium;
  private Table.Stations stations;
  private double tableLength = 280;
  private boolean closed;
  private double length = 1000;
  private double humidity = 0.5;
  private double celsius = 20;
  private Draught air = Draught.STILL;
  private Equipment equipment = new Equipment(1, 1, 1, 10, at("equipment"));
  private Hours hours = new Hours(List.of(new Hours.Day(540, 1020)), at("hours"));

  private List<String> crew = List.of("Wren", "Tam");
  private Handling handling =
      new Handling(
          Span.ofSeconds(20),
          Span.ofSeconds(10),
          Span.ofSeconds(10),
          new Span(15),
          new Span(10),
          new Span(10),
          new Span(30),
          new Span(15),
          new Span(10),
          new Span(30),
          at("handling"));

  public PrintDay(Medium medium) {
    this.medium = medium;
  }

  public PrintDay table(double cm) {
    tableLength = cm;
    return this;
  }

  public PrintDay stations(int count) {
    stations =
        new Table.Stations(count, cm(50), cm(100), cm(10), cm(0), false, at("table.stations"));
    return this;
  }

  /** Air moves all day. */
  public PrintDay blown(Draught.By by) {
    air = new Draught(by, new AirSpeed(1.5));
    return this;
  }

  PrintDay equipment(int sinks, int fans, int hairDryers, int dryingPlaces) {
    equipment = new Equipment(sinks, fans, hairDryers, dryingPlaces, at("equipment"));
    return this;
  }

  PrintDay crew(String... names) {
    crew = List.of(names);
    return this;
  }

  PrintDay handling(Handling other) {
    handling = other;
    return this;
  }

  PrintDay tube(double cm) {
    closed = true;
    length = cm;
    return this;
  }

  public PrintDay humidity(double share) {
    humidity = share;
    return this;
  }

  public PrintDay temperature(double celsius) {
    this.celsius = celsius;
    return this;
  }

  /** Air moves all day, at a speed in m/s. */
  public PrintDay blown(double speed) {
    air = new Draught(Draught.By.STATED, new AirSpeed(speed));
    return this;
  }

  /** Every day so. */
  PrintDay hours(Hours.Day day) {
    hours = new Hours(List.of(day), at("hours"));
    return this;
  }

  public PrintDay hours(int opens, int closes) {
    hours = new Hours(List.of(new Hours.Day(opens * 60, closes * 60)), at("hours"));
    return this;
  }

  /** A paste mixed before the day, with a measured time to frame-safe and lift-safe if given. */
  public PrintDay paste(String name, Integer... measuredMinutes) {
    Optional<Span> frame =
        measuredMinutes.length > 0 ? Optional.of(new Span(measuredMinutes[0])) : Optional.empty();
    Optional<Span> lift =
        measuredMinutes.length > 1 ? Optional.of(new Span(measuredMinutes[1])) : Optional.empty();
    return paste(name, Optional.of(new Span(30)), frame, lift);
  }

  public PrintDay unmixedPaste(String name) {
    return paste(name, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private PrintDay paste(
      String name, Optional<Span> before, Optional<Span> frame, Optional<Span> lift) {
    pastes.put(
        name,
        new Paste(
            name,
            medium,
            List.of(),
            new Colour(0, 0, 0, "black"),
            medium == Medium.DYE,
            Optional.empty(),
            List.of(),
            false,
            Optional.empty(),
            Storage.ROOM,
            before,
            Optional.empty(),
            frame.map(DryingTime::inTheRoom),
            lift.map(DryingTime::inTheRoom),
            Optional.empty(),
            Optional.empty(),
            at("pastes." + name)));
    return this;
  }

  /**
   * A design whose separations fill it, two pulls each, in frames that reach {@code margin} beyond.
   *
   * @param colours as {@code screen=paste}
   */
  public PrintDay design(String name, double l, double w, double margin, String... colours) {
    List<Design.Separation> separations = new ArrayList<>();
    for (String colour : colours) {
      String[] parts = colour.split("=");
      screens.putIfAbsent(
          parts[0],
          new Screen(
              parts[0],
              cm(l + 2 * margin),
              cm(w + 2 * margin),
              cm(3),
              cm(l),
              cm(w),
              new MeshCount(43),
              new Length(0.08),
              Optional.empty(),
              at("screens." + parts[0])));
      separations.add(
          new Design.Separation(
              separations.size() + 1,
              parts[0],
              parts[1],
              cm(0),
              cm(0),
              cm(l),
              cm(w),
              new Area(l * w / 2),
              2,
              false,
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              at("designs." + name)));
    }
    designs.put(
        name, new Design(name, cm(l), cm(w), separations, List.of(), at("designs." + name)));
    return this;
  }

  public PrintDay series(String name, String design, int n, double pitch, double start) {
    return add(
        new Arrangement.Series(
            name, design, n, cm(pitch), cm(start), cm(20), new Angle(0), false, at(name)));
  }

  public PrintDay placed(String name, String design, double... corners) {
    List<Arrangement.Point> points = new ArrayList<>();
    for (int i = 0; i < corners.length; i += 2) {
      points.add(new Arrangement.Point(cm(corners[i]), cm(corners[i + 1])));
    }
    return add(new Arrangement.Placed(name, design, points, new Angle(0), false, at(name)));
  }

  /** One at each copy of the anchor, {@code dy} above its corner. */
  PrintDay anchored(String name, String design, String anchor, double dy) {
    return add(
        new Arrangement.Anchored(
            name, design, anchor, List.of(), cm(0), cm(dy), new Angle(0), false, at(name)));
  }

  private PrintDay add(Arrangement arrangement) {
    arrangements.put(arrangement.name(), arrangement);
    return this;
  }

  PrintDay step(IntFunction<Step> step) {
    run.add(step.apply(run.size() + 1));
    return this;
  }

  PrintDay mix(String... names) {
    return mix(Optional.empty(), Optional.empty(), names);
  }

  /** All of them together take so many minutes. */
  PrintDay mixedIn(double minutes, String... names) {
    return mix(Optional.of(new Span(minutes)), Optional.empty(), names);
  }

  public PrintDay mixedBy(String person, String... names) {
    return mix(Optional.empty(), Optional.of(person), names);
  }

  public PrintDay mixedBy(String person, double minutes, String... names) {
    return mix(Optional.of(new Span(minutes)), Optional.of(person), names);
  }

  private PrintDay mix(Optional<Span> time, Optional<String> person, String... names) {
    return step(n -> new Step.Mix(n, List.of(names), time, person, stepAt(n)));
  }

  public PrintDay print(String arrangement) {
    return print(arrangement, PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT);
  }

  public PrintDay print(
      String arrangement,
      PrintOrder order,
      boolean everyOther,
      double pauseMinutes,
      Until between,
      Until beforeMoving) {
    return printInAir(
        List.of(), arrangement, order, everyOther, pauseMinutes, Wait.of(between), beforeMoving);
  }

  /** Wren and Tam print at the same time. */
  PrintDay printTogether(
      String arrangement,
      PrintOrder order,
      boolean everyOther,
      double pauseMinutes,
      Until between,
      Until beforeMoving) {
    return printBy(
        List.of("Wren", "Tam"),
        arrangement,
        order,
        everyOther,
        pauseMinutes,
        between,
        beforeMoving);
  }

  PrintDay printBy(
      List<String> people,
      String arrangement,
      PrintOrder order,
      boolean everyOther,
      double pauseMinutes,
      Until between,
      Until beforeMoving) {
    return printInAir(
        people, arrangement, order, everyOther, pauseMinutes, Wait.of(between), beforeMoving);
  }

  /**
   * With moved air between colours and between passes.
   *
   * @param arrangement one, or several with commas between
   */
  PrintDay printInAir(
      List<String> people,
      String arrangement,
      PrintOrder order,
      boolean everyOther,
      double pauseMinutes,
      Wait between,
      Until beforeMoving) {
    Wait passes =
        everyOther && people.size() < 2 ? new Wait(Until.NO_WAIT, between.air()) : Wait.NONE;
    return printInAir(
        people, arrangement, order, everyOther, pauseMinutes, between, passes, beforeMoving);
  }

  PrintDay printInAir(
      List<String> people,
      String arrangement,
      PrintOrder order,
      boolean everyOther,
      double pauseMinutes,
      Wait between,
      Wait passes,
      Until beforeMoving) {
    return step(
        n ->
            new PrintStep(
                n,
                List.of(arrangement.split(", ")),
                List.of(),
                List.of(),
                order,
                everyOther,
                new Span(pauseMinutes),
                between,
                Wait.of(beforeMoving),
                people.stream().findFirst(),
                people.stream().skip(1).toList(),
                Optional.empty(),
                passes,
                false,
                Until.NO_WAIT,
                Map.of(),
                Optional.empty(),
                Begins.IN_TURN,
                stepAt(n)));
  }

  /** Wren prints, somebody else washes the screens out. */
  PrintDay printWashedBy(String washer, String arrangement) {
    return step(
        n ->
            PrintSteps.plain(
                    n, List.of(arrangement), List.of(), List.of(), PrintOrder.BY_COLOUR, stepAt(n))
                .washedBy(washer));
  }

  public PrintDay dry(double minutes) {
    return dry(minutes(minutes), null);
  }

  public PrintDay dry(Until until, Double air) {
    return step(n -> new Step.Dry(n, until, air(air), Optional.empty(), stepAt(n)));
  }

  PrintDay moveTo(double cm) {
    return step(n -> new Step.Move(n, cm(cm), Optional.empty(), Optional.empty(), stepAt(n)));
  }

  public PrintDay endOfDay() {
    return step(n -> new Step.EndOfDay(n, stepAt(n)));
  }

  public PrintDay sew() {
    return step(n -> new Step.Sew(n, "centre", Optional.empty(), Optional.empty(), stepAt(n)));
  }

  public PrintPlan plan() {
    return new PrintPlan(
        "test",
        "",
        PlainParts.cotton(cm(length), cm(140), closed, new Colour(255, 255, 255, "white")),
        Map.of(),
        new Table(
            cm(tableLength),
            cm(160),
            true,
            Optional.empty(),
            Optional.ofNullable(stations),
            at("table")),
        new Room(new Temperature(celsius), new Share(humidity), air, at("room")),
        new Crew(crew, at("crew")),
        hours,
        handling,
        equipment,
        screens,
        pastes,
        designs,
        arrangements,
        run,
        List.of(),
        List.of(),
        List.of(),
        Measures.METRIC,
        "");
  }

  public Timeline timeline() {
    return timeline(plan(), POLICY);
  }

  public static Timeline timeline(PrintPlan plan, Policy policy) {
    return Timeline.of(plan, Layout.of(plan, policy), policy);
  }

  public static Timeline timeline(PrintPlan plan, Effort effort) {
    return Timeline.of(plan, Beforehand.of(plan, Layout.of(plan, POLICY), POLICY, effort));
  }

  /** The figures of a run, which each one has. */
  public static RunFigures figures(Timeline day) {
    return day.evidence().stream()
        .filter(RunFigures.class::isInstance)
        .map(RunFigures.class::cast)
        .findFirst()
        .orElseThrow();
  }

  /** A speed in m/s; none for the room's own air. */
  public static Optional<Draught> air(Double speed) {
    return Optional.ofNullable(speed).map(s -> new Draught(Draught.By.STATED, new AirSpeed(s)));
  }

  public static Until minutes(double minutes) {
    return new Until.Time(new Span(minutes));
  }

  public static Until until(Until.Dryness state) {
    return new Until.State(state);
  }

  private static PlanPath stepAt(int number) {
    return new PlanPath("run[" + (number - 1) + "]");
  }

  private static PlanPath at(String text) {
    return new PlanPath(text);
  }

  private static Length cm(double cm) {
    return Length.ofCm(cm);
  }
}

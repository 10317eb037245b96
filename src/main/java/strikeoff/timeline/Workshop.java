package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import strikeoff.plan.GivenUp;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * The print room while the run is simulated: who and what is busy until when, which paste lies in
 * which screen, which pastes are mixed, and every task done so far.
 */
final class Workshop {

  private final PrintPlan plan;
  private final Bookings bookings = new Bookings();
  private final List<Task> tasks = new ArrayList<>();
  private final Map<String, String> inScreen = new LinkedHashMap<>();
  private final Map<String, Long> mixed = new LinkedHashMap<>();
  private final HeldUp heldUp = new HeldUp();
  private final int most;
  private final long opened;
  private long floor;
  private long stepBegan;

  /**
   * @param most tasks before the simulation gives up
   */
  Workshop(PrintPlan plan, int most) {
    this.plan = plan;
    this.most = most;
    this.opened = Moment.of(1, plan.hours().of(1).opens()).seconds();
    this.floor = opened;
    this.stepBegan = Long.MAX_VALUE;
  }

  /** A step never begins before the one written before it has begun. */
  void nextStep() {
    if (stepBegan != Long.MAX_VALUE) {
      floor = Math.max(floor, stepBegan);
      heldUp.nextStep();
    }
    stepBegan = Long.MAX_VALUE;
  }

  long opened() {
    return opened;
  }

  /** When the cloth is free for the next thing done to it. */
  long clothFree() {
    return Math.max(floor, bookings.freeAt(Resource.CLOTH));
  }

  String person(Optional<String> by) {
    return by.orElse(plan.crew().names().get(0));
  }

  List<Task> tasks() {
    return tasks;
  }

  /** What each task had to wait for, by its index. */
  HeldUp heldUp() {
    return heldUp;
  }

  boolean full() {
    return tasks.size() >= most;
  }

  /** Work of one person on the cloth. */
  Task onCloth(Step step, Task.Kind kind, String what, Span takes, String person) {
    List<Resource> held = List.of(Resource.person(person), Resource.CLOTH);
    long start = bookings.start(held, floor);
    return add(step, kind, what, held, start, seconds(takes), person, null, -1, -1);
  }

  /** Something that happens to the cloth while nobody need stand by. */
  Task clothAlone(Step step, Task.Kind kind, String what, long seconds) {
    List<Resource> held = List.of(Resource.CLOTH);
    return add(step, kind, what, held, bookings.start(held, floor), seconds, null, null, -1, -1);
  }

  /** A wait of everybody who works on the cloth; nothing if it takes no time. */
  void waitFor(Step step, String what, long seconds) {
    if (seconds > 0) {
      clothAlone(step, Task.Kind.WAIT, what, seconds);
    }
  }

  void mix(Step step, String paste, Span takes, String person) {
    List<Resource> held = List.of(Resource.person(person));
    long start = bookings.start(held, floor);
    Task task =
        add(step, Task.Kind.MIX, "mix " + paste, held, start, seconds(takes), person, null, -1, -1);
    if (mixed.putIfAbsent(paste, task.end().seconds()) == null) {
      heldUp.mixed(paste);
    }
  }

  boolean isMixed(String paste) {
    return mixed.containsKey(paste);
  }

  /**
   * One impression. Whatever the printer has to wait for becomes a wait of its own, so that nobody
   * stands idle without a cause.
   */
  Task print(
      Step.Print step,
      String what,
      long seconds,
      String person,
      Optional<String> helper,
      String screen,
      String paste,
      int set,
      int id) {
    exchange(step, washer(step), screen, paste);
    List<Resource> held = new ArrayList<>(4);
    held.add(Resource.person(person));
    held.add(Resource.CLOTH);
    helper.map(Resource::person).ifPresent(held::add);
    long ready = bookings.start(held, floor);
    long isMixed = mixedAt(paste);
    if (isMixed > ready) {
      clothIdle(step, "paste " + paste + " is mixed", ready, isMixed);
      heldUp.byMixing(paste);
      ready = isMixed;
    }
    Resource itsScreen = Resource.screen(screen);
    long isDry = bookings.freeAt(itsScreen);
    if (isDry > ready) {
      clothIdle(step, "screen " + screen + " dries", ready, isDry);
      heldUp.by(itsScreen);
    }
    held.add(itsScreen);
    long start = bookings.start(held, floor);
    inScreen.put(screen, paste);
    return add(step, Task.Kind.PRINT, what, held, start, seconds, person, screen, set, id);
  }

  /** One impression beside others on the same stretch; everything it needs is free by then. */
  Task printBeside(
      Step.Print step,
      String what,
      long start,
      long seconds,
      String person,
      String screen,
      String paste,
      int set,
      int id) {
    List<Resource> held = List.of(Resource.person(person), Resource.screen(screen));
    inScreen.put(screen, paste);
    return add(step, Task.Kind.PRINT, what, held, start, seconds, person, screen, set, id);
  }

  /** Nobody can go on: a wait that holds up the task booked next. */
  void everybodyWaits(Step step, String cause, long from, long until, int after) {
    heldUp.byTask(after);
    clothIdle(step, cause, from, until);
    heldUp.byTask(tasks.size() - 1);
  }

  /** The cloth was worked on by several people until then. */
  void clothBusyUntil(long second) {
    long from = clothFree();
    if (second > from) {
      bookings.hold(List.of(Resource.CLOTH), from, second - from);
    }
    for (int i = tasks.size() - 1; i >= 0; i--) {
      if (tasks.get(i).end().seconds() == second) {
        heldUp.took(Resource.CLOTH, i);
        return;
      }
    }
  }

  long freeAt(Resource resource) {
    return bookings.freeAt(resource);
  }

  int lastOf(Resource resource) {
    return heldUp.lastOf(resource);
  }

  /** When a paste is mixed; the start of the step if nobody mixes it. */
  long mixedAt(String paste) {
    return mixed.getOrDefault(paste, floor);
  }

  /** Who washes a step's screens out. */
  String washer(Step.Print step) {
    return person(step.washes().or(step::by));
  }

  private void clothIdle(Step step, String cause, long from, long until) {
    List<Resource> cloth = List.of(Resource.CLOTH);
    add(step, Task.Kind.WAIT, cause, cloth, from, until - from, null, null, -1, -1);
  }

  /** Washes a screen that holds another paste. */
  void exchange(Step step, String person, String screen, String paste) {
    String holds = inScreen.get(screen);
    if (holds != null && !holds.equals(paste)) {
      washScreen(step, person, screen);
    }
  }

  private void washScreen(Step step, String person, String screen) {
    List<Resource> both = List.of(Resource.person(person), Resource.screen(screen));
    long start = bookings.start(both, floor);
    Span takes = plan.handling().washScreen();
    add(
        step,
        Task.Kind.WASH_SCREEN,
        "wash out " + screen,
        both,
        start,
        seconds(takes),
        person,
        screen,
        -1,
        -1);
    List<Resource> alone = List.of(Resource.screen(screen));
    add(
        step,
        Task.Kind.DRY_SCREEN,
        screen + " dries",
        alone,
        bookings.start(alone, floor),
        seconds(plan.handling().dryScreen()),
        null,
        screen,
        -1,
        -1);
    inScreen.remove(screen);
  }

  /** Washes out every screen that holds paste, but for those that are needed again. */
  void washScreens(Step step, String person, Set<String> needed) {
    for (String screen : List.copyOf(inScreen.keySet())) {
      if (!needed.contains(screen)) {
        washScreen(step, person, screen);
      }
    }
  }

  /** Nobody works until the room opens again. */
  void close(Step step) {
    long end = clothFree();
    for (String person : plan.crew().names()) {
      end = Math.max(end, bookings.freeAt(Resource.person(person)));
    }
    List<Resource> everything = new ArrayList<>();
    plan.crew().names().stream().map(Resource::person).forEach(everything::add);
    everything.add(Resource.CLOTH);
    long opens = nextOpening(end);
    floor = opens;
    add(step, Task.Kind.CLOSED, "closed", everything, end, opens - end, null, null, -1, -1);
    stepBegan = opens;
  }

  private long nextOpening(long second) {
    int day = new Moment(second).day();
    long opens = Moment.of(day, plan.hours().of(day).opens()).seconds();
    return opens > second ? opens : Moment.of(day + 1, plan.hours().of(day + 1).opens()).seconds();
  }

  private Task add(
      Step step,
      Task.Kind kind,
      String what,
      List<Resource> held,
      long start,
      long seconds,
      String person,
      String screen,
      int set,
      int impression) {
    GivenUp.ifAsked();
    heldUp.add(held, start, bookings::freeAt, start < stepBegan);
    long end = bookings.hold(held, start, seconds);
    stepBegan = Math.min(stepBegan, start);
    Task task =
        new Task(
            step == null ? 0 : step.number(),
            kind,
            what,
            new Moment(start),
            new Moment(end),
            Optional.ofNullable(person),
            Optional.ofNullable(screen),
            set < 0 ? OptionalInt.empty() : OptionalInt.of(set),
            impression < 0 ? OptionalInt.empty() : OptionalInt.of(impression),
            step == null ? PlanPath.ROOT : step.path());
    tasks.add(task);
    return task;
  }

  /** Whole seconds, rounded up, so that nothing takes less than the plan says. */
  static long seconds(Span span) {
    return new Moment(0).plus(new Span(Math.min(Math.max(0, span.minutes()), 1e9))).seconds();
  }
}

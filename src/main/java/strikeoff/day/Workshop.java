package strikeoff.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToLongFunction;
import strikeoff.plan.Begins;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * The print room while the run is simulated: who prints, waits, mixes and washes, and what they
 * need for it.
 */
public final class Workshop {

  private final PrintPlan plan;
  private final Daybook book;
  private final Shared shared;
  private final ScreenCare screens;
  private final Map<String, Long> mixed = new LinkedHashMap<>();

  /**
   * @param most tasks before the simulation gives up
   * @param sinks how many of those that there are are used
   * @param stands how many seconds a paste stands in a mesh before it clogs
   */
  Workshop(PrintPlan plan, int most, int sinks, ToLongFunction<String> stands) {
    this.plan = plan;
    this.book =
        new Daybook(Moment.opens(1, plan.hours()).seconds(), new Breaks(plan.hours()), most);
    this.shared = new Shared(plan.equipment(), book);
    shared.use(Resource.Kind.SINK, sinks);
    this.screens = new ScreenCare(plan, book, shared, stands);
  }

  void nextStep(Begins begins) {
    book.nextStep(begins);
  }

  ScreenCare screens() {
    return screens;
  }

  long opened() {
    return book.opened();
  }

  /** When the cloth is free for the next thing done to it. */
  long clothFree() {
    return Math.max(book.floor(), book.freeAt(Resource.CLOTH));
  }

  String person(Optional<String> by) {
    return by.orElse(plan.crew().names().get(0));
  }

  List<Task> tasks() {
    return book.tasks();
  }

  /** What each task had to wait for, by its index. */
  HeldUp heldUp() {
    return book.heldUp();
  }

  boolean full() {
    return book.full();
  }

  /** What the run asks for though the room has none, with the numbers of the steps that ask. */
  Map<Resource.Kind, Set<Integer>> missing() {
    return shared.missing();
  }

  /** How long pieces of equipment were in use beside other work, which no task tells. */
  Map<Resource, Span> beside() {
    return shared.beside();
  }

  /** Work of one person on the cloth; to rinse it and to wash it off takes a sink. */
  Task onCloth(Step step, Task.Kind kind, Doing doing, Span takes, String person) {
    Entry entry = Entry.of(step, kind, doing).by(person);
    List<Resource> held = List.of(Resource.person(person), Resource.CLOTH);
    boolean atSink = kind == Task.Kind.RINSE || kind == Task.Kind.WASH;
    return atSink
        ? shared.book(entry, held, Resource.Kind.SINK, seconds(takes))
        : book.add(entry, held, seconds(takes));
  }

  /** Something that happens to the cloth while nobody need stand by; a batch is begun by hand. */
  Task clothAlone(Step step, Task.Kind kind, Doing doing, long seconds) {
    List<Resource> cloth = List.of(Resource.CLOTH);
    long free = book.start(cloth);
    long start = kind == Task.Kind.WAIT ? free : over(free);
    return book.add(Entry.of(step, kind, doing), cloth, start, seconds);
  }

  /** A wait of everybody who works on the cloth; nothing if it takes no time. */
  void waitFor(Step step, Doing cause, long seconds) {
    if (seconds > 0) {
      Task wait = clothAlone(step, Task.Kind.WAIT, cause, seconds);
      screens.washMeanwhile(step, wait.start().seconds(), wait.end().seconds());
    }
  }

  /**
   * Moved air over the cloth.
   *
   * @param person who holds a hair-dryer
   */
  Blowing blow(Step step, Draught air, String person) {
    return new Blowing(book, shared, step, air, person);
  }

  /** A fan blows over the cloth while people print. */
  void fanBeside(Step step, Draught air, long from, long until) {
    if (air.by() == Draught.By.FAN) {
      shared.take(Resource.Kind.FAN, step.number(), from, until);
    }
  }

  void mix(Step step, String paste, Span takes, String person) {
    List<Resource> held = List.of(Resource.person(person));
    Entry entry = Entry.of(step, Task.Kind.MIX, new Doing.Mix(paste)).by(person);
    Task task = book.add(entry, held, seconds(takes));
    if (mixed.putIfAbsent(paste, task.end().seconds()) == null) {
      book.heldUp().mixed(paste);
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
      PrintStep step,
      Doing what,
      long seconds,
      String person,
      Optional<String> helper,
      String screen,
      String paste,
      int set,
      int id) {
    screens.exchange(step, screen, paste);
    List<Resource> held = new ArrayList<>(4);
    held.add(Resource.person(person));
    held.add(Resource.CLOTH);
    long ready = book.start(held);
    if (helper.isPresent()) {
      Resource second = Resource.person(helper.get());
      if (book.freeAt(second) > ready) {
        heldUpTill(ready, held);
        clothIdle(step, new Doing.ForPerson(helper.get()), ready, book.freeAt(second));
        book.heldUp().by(second);
      }
      held.add(second);
      ready = book.start(held);
    }
    long isMixed = mixedAt(paste);
    if (isMixed > ready) {
      heldUpTill(ready, held);
      clothIdle(step, new Doing.Mixed(paste), ready, isMixed);
      book.heldUp().byMixing(paste);
      ready = isMixed;
    }
    Resource frame = Resource.screen(screen);
    long isDry = book.freeAt(frame);
    if (isDry > ready) {
      ScreenCare.Washed washed = screens.washed(screen);
      heldUpTill(ready, held);
      if (washed.clean() > ready) {
        clothIdle(step, new Doing.WashedOut(screen), ready, washed.clean());
        ready = washed.clean();
      }
      if (washed.placed() > ready) {
        clothIdle(step, shared.waitsFor(Resource.Kind.DRYING_PLACE), ready, washed.placed());
        ready = washed.placed();
      }
      clothIdle(step, new Doing.ScreenIsDry(screen), ready, isDry);
      book.heldUp().by(frame);
    }
    held.add(frame);
    Entry entry = Entry.print(step, what, person, screen, set, id).with(helper);
    Task task = book.add(entry, held, seconds);
    screens.fill(screen, paste, task.end().seconds());
    return task;
  }

  /** One impression beside others on the same stretch; everything it needs is free by then. */
  Task printBeside(
      PrintStep step,
      Doing what,
      long start,
      long seconds,
      String person,
      String screen,
      String paste,
      int set,
      int id) {
    List<Resource> held = List.of(Resource.person(person), Resource.screen(screen));
    Task task = book.add(Entry.print(step, what, person, screen, set, id), held, start, seconds);
    screens.fill(screen, paste, task.end().seconds());
    return task;
  }

  /** Nobody can go on: a wait that holds up the task booked next. */
  void everybodyWaits(Step step, Doing cause, long from, long until, int after) {
    book.heldUp().byTask(after);
    int wait = clothIdle(step, cause, from, until);
    // Where a screen that dries or a paste being mixed ends the wait, that is the cause and not the
    // wait, which may have begun before it.
    boolean ended = after >= 0 && tasks().get(after).end().seconds() == until;
    book.heldUp().byTask(ended ? after : wait);
  }

  /** The cloth was worked on by several people until then. */
  void clothBusyUntil(long second) {
    long from = clothFree();
    if (second > from) {
      book.take(Resource.CLOTH, from, second);
    }
    for (int i = tasks().size() - 1; i >= 0; i--) {
      if (tasks().get(i).end().seconds() == second) {
        book.heldUp().took(Resource.CLOTH, i);
        return;
      }
    }
  }

  long freeAt(Resource resource) {
    return book.freeAt(resource);
  }

  /** When work begins that could begin at a second but for a break. */
  long over(long second) {
    return book.over(second);
  }

  int lastOf(Resource resource) {
    return book.heldUp().lastOf(resource);
  }

  /** When nothing of the present step may begin before. */
  long floor() {
    return book.floor();
  }

  /** When a paste is mixed; the start of the step if nobody mixes it. */
  long mixedAt(String paste) {
    return mixed.getOrDefault(paste, book.floor());
  }

  /** A wait at the cloth that begins when somebody comes to it was held up by her other work. */
  private void heldUpTill(long start, List<Resource> held) {
    if (book.freeAt(Resource.CLOTH) < start) {
      held.stream()
          .filter(resource -> book.freeAt(resource) == start)
          .findFirst()
          .ifPresent(book.heldUp()::by);
    }
  }

  /** Gives the index of the wait. */
  private int clothIdle(Step step, Doing cause, long from, long until) {
    List<Resource> cloth = List.of(Resource.CLOTH);
    book.add(Entry.of(step, Task.Kind.WAIT, cause), cloth, from, until - from);
    int wait = tasks().size() - 1;
    screens.washMeanwhile(step, from, until);
    return wait;
  }

  /** Nobody works until the room opens again. */
  void close(Step step) {
    long end = clothFree();
    List<Resource> everything = new ArrayList<>();
    for (String name : plan.crew().names()) {
      Resource person = Resource.person(name);
      end = Math.max(end, book.freeAt(person));
      everything.add(person);
    }
    everything.add(Resource.CLOTH);
    book.close(
        Entry.of(step, Task.Kind.CLOSED, new Doing.Closed()), everything, end, nextOpening(end));
  }

  private long nextOpening(long second) {
    int day = new Moment(second).day();
    long opens = Moment.opens(day, plan.hours()).seconds();
    return opens > second ? opens : Moment.opens(day + 1, plan.hours()).seconds();
  }

  /** Whole seconds, rounded up, so that nothing takes less than the plan says. */
  public static long seconds(Span span) {
    return Daybook.seconds(span);
  }
}

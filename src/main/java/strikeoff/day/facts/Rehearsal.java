package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import strikeoff.day.Beforehand;
import strikeoff.day.Contact;
import strikeoff.day.DayRun;
import strikeoff.day.Effort;
import strikeoff.day.Films;
import strikeoff.day.Impression;
import strikeoff.day.Ironing;
import strikeoff.day.Moment;
import strikeoff.day.PrintRun;
import strikeoff.day.Reached;
import strikeoff.day.Sets;
import strikeoff.day.Simulation;
import strikeoff.day.Task;
import strikeoff.day.Use;
import strikeoff.drying.DryingClock;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.Draught;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until.Dryness;
import strikeoff.policy.Policy;
import strikeoff.units.Span;

/**
 * Tries other runs of one plan: what each would come to, without remedies and without words. What
 * is the same in all of them, how films dry and which frames meet, is worked out once. One thread
 * at a time.
 */
public final class Rehearsal {

  /** Runs after which sets that were worked out are forgotten, so that they don't fill memory. */
  private static final int REMEMBERED = 4_000;

  private final PrintPlan plan;
  private final Surety surety;
  private final Beforehand known;
  private final double fewMinutes;
  private final boolean breaks;
  private final Films slowFilms;
  private final Map<String, Optional<Span>> lives = new HashMap<>();
  private PrintRun sets;
  private int tried;

  private Rehearsal(PrintPlan plan, Surety surety, Beforehand known) {
    this.plan = plan;
    this.surety = surety;
    this.known = known;
    this.sets = known.sets();
    this.slowFilms = known.films().dryingSlowly();
    Policy policy = known.policy();
    this.breaks = plan.hours().hasBreaks();
    this.fewMinutes = policy.time().fewMinutesOver().minutes();
  }

  /**
   * @param plan whose run is left aside
   * @param lives how long a paste may stand between mixing and print, by the shortest estimate
   */
  public static Rehearsal of(
      PrintPlan plan,
      Layout layout,
      Policy policy,
      Function<Paste, Optional<Span>> lives,
      Surety surety) {
    Effort effort = Effort.USUAL.withoutTrials();
    return new Rehearsal(plan, surety, Beforehand.of(plan, layout, policy, effort, lives));
  }

  /**
   * Tries a run.
   *
   * @param run numbered from 1 in its order
   */
  public Rehearsed of(List<Step> run) {
    PrintPlan tries = plan.with(run);
    Beforehand all = fresh().in(tries);
    int sinks = plan.equipment().sinks();
    DayRun day = DayRun.of(Simulation.once(tries, all, sinks), tries, all);
    List<Rehearsed.TooSoon> tooSoon = new ArrayList<>();
    long wet = framesOnWet(day, tooSoon);
    long up = clothUp(day, tooSoon);
    List<DayEnd> late = late(day.tasks(), tries);
    List<Rehearsed.TooOld> tooOld = tooOld(day, tries);
    Shortfall shortfall =
        new Shortfall(
            wet,
            up,
            afterClosing(late),
            inMesh(day.run(), tries),
            tooOld.stream().mapToLong(Rehearsed.TooOld::seconds).sum(),
            FramesOnBoards.all(day, tries).stream().mapToInt(FramesOnBoards::frames).sum(),
            day.run().blocked().size(),
            day.run().missing().size());
    return new Rehearsed(
        day.finish(),
        worked(day.finish()),
        shortfall,
        tooSoon,
        tooOld,
        late.stream().map(DayEnd::step).toList(),
        leftInBath(day, tries),
        leftWet(day, tries),
        day.tasks(),
        day.impressions());
  }

  /** When a run ends if every film dries slowly: whoever feels films then waits for longer. */
  public Moment slowFinish(List<Step> run) {
    Moment opens = Moment.opens(1, plan.hours());
    return slowly(run).stream().map(Task::end).reduce(opens, Moment::later);
  }

  /**
   * The same run on a day on which its hours are to do, and no paste is to dry in a screen: where
   * runs are to be sure, on a slow one too.
   *
   * @param ordinary what it comes to on an ordinary day
   */
  public Rehearsed surely(List<Step> run, Rehearsed ordinary) {
    if (surety != Surety.SURE) {
      return ordinary;
    }
    PrintPlan tries = plan.with(run);
    Simulation.Run slow = slow(tries);
    List<DayEnd> late = late(slow.tasksByStart(), tries);
    Shortfall lacks = ordinary.shortfall();
    return ordinary.on(
        Math.max(lacks.afterClosing(), afterClosing(late)),
        late.stream().map(DayEnd::step).toList(),
        Math.max(lacks.inMesh(), (long) Math.ceil(IdleScreen.slowlyOver(slow, known.policy()))));
  }

  /** Its tasks, in order of start, if every film dries slowly. */
  public List<Task> slowly(List<Step> run) {
    return slow(plan.with(run)).tasksByStart();
  }

  private Simulation.Run slow(PrintPlan tries) {
    Beforehand slow = known.with(sets).with(slowFilms).in(tries);
    return Simulation.once(tries, slow, plan.equipment().sinks());
  }

  private Beforehand fresh() {
    if (++tried % REMEMBERED == 0) {
      sets = new PrintRun(plan, known.layout());
    }
    return known.with(sets);
  }

  private List<LeftInBath> leftInBath(DayRun day, PrintPlan tries) {
    return breaks
        ? LeftInBath.all(day.tasks(), tries, known.policy().fixing().leftInBath()).stream()
            .filter(LeftInBath::tooLong)
            .toList()
        : List.of();
  }

  private List<LeftWet> leftWet(DayRun day, PrintPlan tries) {
    return breaks
        ? LeftWet.all(day.tasks(), tries, known.policy().fixing().leftUnwashed()).stream()
            .filter(left -> left.rinsed() && left.overBreak())
            .toList()
        : List.of();
  }

  private long framesOnWet(DayRun day, List<Rehearsed.TooSoon> tooSoon) {
    long all = 0;
    for (Contact contact : day.contacts()) {
      long by = early(contact.safe(), contact.later().laid());
      if (by > 0) {
        all += by;
        tooSoon.add(
            new Rehearsed.TooSoon(
                Rehearsed.What.FRAME_ON_WET,
                contact.earlier().step(),
                contact.later().step(),
                Span.ofSeconds(by)));
      }
    }
    return all;
  }

  private long clothUp(DayRun day, List<Rehearsed.TooSoon> tooSoon) {
    long all = 0;
    for (Map.Entry<Integer, TakingUp.Occasion> worst : TakingUp.worst(day).entrySet()) {
      TakingUp.Occasion occasion = worst.getValue();
      long by = early(occasion.safe(), new Moment(occasion.taken().second()));
      if (by > 0) {
        all += by;
        tooSoon.add(
            new Rehearsed.TooSoon(Rehearsed.What.CLOTH_UP, 0, worst.getKey(), Span.ofSeconds(by)));
      }
    }
    return all;
  }

  /** A film that never dries is as good as a day too early. */
  private long early(Reached safe, Moment touched) {
    long by = surety.counted(safe).seconds() - touched.seconds();
    return Math.min(by, 24 * 3600);
  }

  private List<DayEnd> late(List<Task> tasks, PrintPlan tries) {
    return DayEnds.late(tasks, tries).stream()
        .filter(late -> late.over().minutes() > fewMinutes)
        .toList();
  }

  private static long afterClosing(List<DayEnd> late) {
    return late.stream().mapToLong(day -> (long) day.over().seconds()).sum();
  }

  /** Opening hours from the first opening to a finish. */
  public Span worked(Moment finish) {
    long opens = Moment.opens(1, plan.hours()).seconds();
    return Span.ofSeconds(Use.open(opens, Math.max(opens, finish.seconds()), plan.hours()));
  }

  private long inMesh(Simulation.Run day, PrintPlan tries) {
    double over = 0;
    for (IdleScreen idle : IdleScreen.all(day, tries, known.policy())) {
      over += Math.max(0, idle.longest().seconds() - 60 * idle.most().amount());
    }
    return (long) Math.ceil(over);
  }

  /** Batches of paste that are printed for too long, in the order of their pastes' last prints. */
  private List<Rehearsed.TooOld> tooOld(DayRun day, PrintPlan tries) {
    Map<String, List<Impression>> uses = new LinkedHashMap<>();
    for (Impression impression : day.impressions()) {
      uses.computeIfAbsent(impression.footprint().paste().name(), name -> new ArrayList<>())
          .add(impression);
    }
    List<Rehearsed.TooOld> tooOld = new ArrayList<>();
    Mixings mixings = null;
    for (List<Impression> prints : uses.values()) {
      Paste paste = prints.get(0).footprint().paste();
      Optional<Span> life = lives.computeIfAbsent(paste.name(), n -> known.lives().apply(paste));
      if (life.isPresent()) {
        mixings = mixings == null ? new Mixings(tries, day.tasks(), day.start()) : mixings;
        tooOld(prints, mixings, life.get(), tooOld);
      }
    }
    return tooOld;
  }

  private static void tooOld(
      List<Impression> prints, Mixings mixings, Span life, List<Rehearsed.TooOld> tooOld) {
    Paste paste = prints.get(0).footprint().paste();
    Impression last = prints.get(prints.size() - 1);
    boolean once = mixings.of(paste.name()).size() < 2;
    if (once && over(last, mixings.readyBefore(paste, last.laid()), life) <= 0) {
      return;
    }
    Optional<Moment> batch = Optional.empty();
    Rehearsed.TooOld found = null;
    Set<Integer> fresh = new HashSet<>();
    for (Impression print : prints) {
      Optional<Moment> ready = mixings.readyBefore(paste, print.laid());
      if (!ready.equals(batch)) {
        batch = ready;
        found = null;
        fresh.clear();
      }
      double over = over(print, ready, life);
      if (over <= 0) {
        fresh.add(print.step());
      } else if (found == null) {
        boolean within = fresh.contains(print.step());
        found = new Rehearsed.TooOld(paste.name(), print.step(), within, (long) Math.ceil(over));
        tooOld.add(found);
      } else if (over > found.seconds()) {
        tooOld.remove(tooOld.size() - 1);
        found = found.by((long) Math.ceil(over));
        tooOld.add(found);
      }
    }
  }

  private static double over(Impression print, Optional<Moment> ready, Span life) {
    return ready.map(r -> print.laid().since(r).seconds() - life.seconds()).orElse(0.0);
  }

  /**
   * How long a film takes to be in a state in one air.
   *
   * @param air what moves it; empty for the room's own
   * @param slowly false on an ordinary day, true on a slow one
   * @return empty if it never is
   */
  public Optional<Span> dries(
      Footprint footprint, Dryness state, Optional<Draught> air, boolean slowly) {
    Films films = slowly ? slowFilms : known.films();
    DryingClock clock = new DryingClock(films.drying(), 0);
    air.ifPresent(moved -> clock.change(0, films.drying().moved(moved)));
    long best = clock.states(films.need(footprint), 0).in(state).best();
    return best >= DryingClock.NEVER ? Optional.empty() : Optional.of(Span.ofSeconds(best));
  }

  /**
   * How long a step that sets paint takes for all that is printed, spot by spot where it has to.
   */
  public Span heats(Step.HeatSet set) {
    return Ironing.of(known.layout().footprints(), set.with(), known.policy())
        .map(ironing -> ironing.total(set))
        .orElse(set.lasts());
  }

  /**
   * Placements that the table shows at once, stretch by stretch along the cloth.
   *
   * @param placements of any arrangements, each with all its colours
   */
  public List<List<Placement>> stretches(List<Placement> placements) {
    List<Sets.Motif> motifs =
        placements.stream()
            .map(p -> new Sets.Motif(p, known.layout().footprintsOf(p.id())))
            .filter(m -> !m.colours().isEmpty())
            .toList();
    return Sets.split(motifs, known.sets().boards()).stream()
        .map(set -> set.motifs().stream().map(Sets.Motif::placement).toList())
        .toList();
  }
}

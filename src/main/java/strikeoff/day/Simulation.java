package strikeoff.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.drying.HungCloth;
import strikeoff.layout.Footprint;
import strikeoff.plan.Draught;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Handling;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.units.Span;

/**
 * Works a run as written, in one pass, to the second.
 *
 * <p>Work runs on past closing time; only {@code end of day} stops it. Screens that hold paste are
 * washed out after the last print step that needs them on a day, unless a step of that day does it.
 */
public final class Simulation {

  private final PrintPlan plan;
  private final Handling takes;
  private final Workshop shop;
  private final WetCloth cloth;
  private final Blocked blocked;
  private final OnTable table;
  private final Waiting waiting;
  private final PrintRun sets;
  private final Printing printing;
  private final Policy policy;
  private final ScreensAhead ahead;

  /** How much was printed when the last heat-set began. */
  private int heated;

  private final Map<Integer, Long> idle = new HashMap<>();

  private Simulation(PrintPlan plan, Beforehand known, int sinks) {
    this.policy = known.policy();
    this.plan = plan;
    this.takes = plan.handling();
    this.shop =
        new Workshop(
            plan,
            known.effort().tasks(),
            sinks,
            paste -> standsInMesh(plan.pastes().get(paste).medium(), policy));
    this.cloth = new WetCloth(known.films(), shop.opened());
    this.blocked = new Blocked(plan);
    this.sets = known.sets();
    this.ahead = new ScreensAhead(plan.run(), sets, shop::person);
    this.table = new OnTable(shop, takes, sets.boards(), new Ahead(plan, sets), known.layout());
    this.waiting = new Waiting(shop, cloth, blocked);
    Helpers helpers = new Helpers(plan, policy.table().longestHandFrame().amount());
    Impressing impressing = new Impressing(plan, known.meetings(), shop, cloth, blocked, helpers);
    this.printing = new Printing(plan, sets, table, waiting, impressing);
  }

  /**
   * A run as written, once.
   *
   * @param sinks how many of those that there are are used
   */
  public static Run once(PrintPlan plan, Beforehand known, int sinks) {
    return new Simulation(plan, known, sinks).work();
  }

  private Run work() {
    List<Step> run = plan.run();
    if (layFirst(run)) {
      table.load();
    }
    for (int i = 0; i < run.size() && !blocked.givenUp(); i++) {
      Step step = run.get(i);
      shop.nextStep(step.begins());
      shop.screens().needed(ahead.from(i));
      long idleFrom = shop.clothFree();
      int before = shop.tasks().size();
      work(step);
      idle.put(step.number(), Math.max(0, begins(before, idleFrom) - idleFrom));
      if (step instanceof PrintStep print) {
        shop.screens().washUp(print);
      }
    }
    return new Run(
        shop.tasks(),
        shop.heldUp(),
        shop.missing(),
        shop.beside(),
        printing.printed(),
        table.taken(),
        table.places(),
        blocked.facts(),
        idle,
        cloth,
        Math.max(1, Math.max(printing.printed().size(), run.size())));
  }

  /** When a step's first work on the cloth began; what it only waited for before is no work. */
  private long begins(int before, long otherwise) {
    return shop.tasks().subList(before, shop.tasks().size()).stream()
        .filter(Task::onCloth)
        .mapToLong(task -> task.start().seconds())
        .min()
        .orElse(otherwise);
  }

  private static long standsInMesh(Medium medium, Policy policy) {
    return Math.round(policy.drying().inMesh(medium).amount() * 60);
  }

  /** The cloth is laid before anything is done, unless it is taken up before it is printed. */
  private static boolean layFirst(List<Step> run) {
    return run.stream()
            .filter(s -> s instanceof PrintStep || s instanceof Step.Move || takesUp(s))
            .findFirst()
            .filter(s -> !takesUp(s))
            .isPresent()
        && run.stream().anyMatch(PrintStep.class::isInstance);
  }

  private static boolean takesUp(Step step) {
    return step instanceof Step.Sew
        || step instanceof Step.Fix
        || step instanceof Step.Rinse
        || step instanceof Step.Wash
        || step instanceof Step.HeatSet;
  }

  private void work(Step step) {
    if (step instanceof Step.Mix mix) {
      Optional<Span> each = mix.takes().map(t -> new Span(t.minutes() / mix.pastes().size()));
      for (String paste : mix.pastes()) {
        shop.mix(step, paste, each.orElse(takes.mix()), shop.person(mix.by()));
      }
    } else if (step instanceof PrintStep print) {
      printing.print(print);
    } else if (step instanceof Step.Dry dry) {
      waiting.until(step, dry.waits(), dry.by(), new Doing.OfStep(dry));
    } else if (step instanceof Step.WashScreen wash) {
      shop.screens().wash(wash);
    } else if (step instanceof Step.Move move) {
      table.show(
          move,
          move.to().mm(),
          move.takes().orElse(takes.move()),
          shop.person(move.by()),
          printing.printed().size());
    } else if (step instanceof Step.Sew sew) {
      takeUp(step, Task.Kind.SEW, sew.takes().orElse(takes.sew()), sew.by());
    } else if (step instanceof Step.Fix fix) {
      if (fix.how() == DyeFixing.BATCH) {
        if (fix.brushed()) {
          takeUp(step, Task.Kind.FIX, takes.brush(), fix.by());
        }
        int films = printing.printed().size();
        table.takeUp(step, Task.Kind.FIX, fix.lasts(), Optional.empty(), films);
      } else {
        takeUp(step, Task.Kind.FIX, fix.lasts(), fix.by());
      }
    } else if (step instanceof Step.Rinse rinse) {
      takeUp(step, Task.Kind.RINSE, rinse.lasts(), rinse.by());
    } else if (step instanceof Step.Wash wash) {
      takeUp(step, Task.Kind.WASH, wash.lasts(), wash.by());
    } else if (step instanceof Step.HeatSet set) {
      takeUp(step, Task.Kind.HEAT_SET, heats(set), set.by());
    } else if (step instanceof Step.EndOfDay) {
      shop.close(step);
    }
    if (step instanceof Step.HeatSet) {
      waiting.ironed();
    } else if (step instanceof Step.Rinse
        || step instanceof Step.Wash
        || step instanceof Step.Fix fix && fix.wets()) {
      waiting.wetted(shop.clothFree() + hangs(step));
    }
  }

  /**
   * Seconds until wrung or spun cloth can be printed on: what is usual, or what it surely takes.
   */
  private long hangs(Step bath) {
    boolean moved = plan.room().air().by() != Draught.By.STILL;
    Span surely =
        HungCloth.wetFor(plan.cloth(), plan.room(), bath instanceof Step.Fix, moved, policy);
    double usual = policy.media().dryAfterBath().minutes();
    return Workshop.seconds(new Span(Math.max(usual, surely.minutes())));
  }

  /** An iron and a press go from spot to spot; an oven takes all at once, or what it holds. */
  private Span heats(Step.HeatSet set) {
    List<Printed> all = printing.printed();
    List<Footprint> since =
        all.subList(heated, all.size()).stream().map(Printed::footprint).toList();
    heated = all.size();
    return Ironing.of(since, set.with(), policy).map(i -> i.total(set)).orElse(set.lasts());
  }

  private void takeUp(Step step, Task.Kind kind, Span lasts, Optional<String> by) {
    Optional<String> person = Optional.of(shop.person(by));
    table.takeUp(step, kind, lasts, person, printing.printed().size());
  }

  /**
   * What the simulation leaves.
   *
   * @param idle seconds for which the cloth lay idle before each step: a drying step put in before
   *     it runs beside them
   * @param simulated how many impressions were simulated to come to it, or steps if there are more
   *     of them, at least 1
   */
  public record Run(
      List<Task> tasks,
      HeldUp heldUp,
      Map<Resource.Kind, Set<Integer>> missing,
      Map<Resource, Span> beside,
      List<Printed> printed,
      List<OnTable.Taken> taken,
      List<ClothLies> places,
      List<EndlessWait> blocked,
      Map<Integer, Long> idle,
      WetCloth cloth,
      long simulated) {

    /** The same after so many impressions. */
    Run after(long impressions) {
      return new Run(
          tasks,
          heldUp,
          missing,
          beside,
          printed,
          taken,
          places,
          blocked,
          idle,
          cloth,
          impressions);
    }

    public List<Task> tasksByStart() {
      List<Task> sorted = new ArrayList<>(tasks);
      sorted.sort(Comparator.comparingLong(t -> t.start().seconds()));
      return sorted;
    }

    /** Index of the first task that ends when the run does; {@link HeldUp#NOBODY} without any. */
    int last() {
      int last = HeldUp.NOBODY;
      for (int i = 0; i < tasks.size(); i++) {
        if (last == HeldUp.NOBODY || tasks.get(i).end().compareTo(tasks.get(last).end()) > 0) {
          last = i;
        }
      }
      return last;
    }

    /** The other if it comes as far and ends sooner. */
    Run orSooner(Run other) {
      return printed.size() == other.printed.size() && other.ends() < ends() ? other : this;
    }

    /** How many sinks were used, whether at once or not. */
    int sinks() {
      return (int)
          tasks.stream()
              .filter(task -> task.kind() != Task.Kind.QUEUE)
              .flatMap(task -> task.piece().stream())
              .filter(piece -> piece.kind() == Resource.Kind.SINK)
              .distinct()
              .count();
    }

    long moves() {
      return tasks.stream().filter(task -> task.kind() == Task.Kind.MOVE).count();
    }

    public long ends() {
      return tasks.isEmpty() ? 0 : tasks.get(last()).end().seconds();
    }
  }
}

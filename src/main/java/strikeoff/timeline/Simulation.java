package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.drying.DryingClock;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.plan.Evidence.Related;
import strikeoff.plan.Handling;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.policy.Policy;
import strikeoff.timeline.CannotStart.Why;
import strikeoff.timeline.Sets.Motif;
import strikeoff.timeline.Sets.PrintSet;
import strikeoff.units.Length;
import strikeoff.units.Span;

/**
 * Works a run as written, in one pass, to the second.
 *
 * <p>An impression's frame touches the cloth once it is laid, and leaves it after the pulls and the
 * lift. Work runs on past closing time; only {@code end of day} stops it. Screens that hold paste
 * are washed out at the end of a day and after the last print step.
 */
final class Simulation {

  private static final String LOAD = "lay the cloth on the table";

  private final PrintPlan plan;
  private final Workshop shop;
  private final WetCloth cloth;
  private final PrintRun printing;
  private final Handling takes;
  private final List<Printed> printed = new ArrayList<>();
  private final List<Taken> taken = new ArrayList<>();
  private final List<CannotStart> blocked = new ArrayList<>();
  private final Set<String> missed = new LinkedHashSet<>();
  private final double begin;
  private Optional<Stretch> stretch = Optional.empty();
  private boolean loaded;
  private boolean given;

  private Simulation(PrintPlan plan, Layout layout, Policy policy) {
    this.plan = plan;
    this.begin = begin(layout);
    this.takes = plan.handling();
    this.shop = new Workshop(plan, (int) policy.limit("time/most-tasks").amount());
    this.cloth = new WetCloth(plan, policy, shop.opened());
    this.printing = new PrintRun(plan, layout);
  }

  static Run run(PrintPlan plan, Layout layout, Policy policy) {
    return new Simulation(plan, layout, policy).work();
  }

  private Run work() {
    List<Step> run = plan.run();
    if (run.stream().anyMatch(Step.Print.class::isInstance)) {
      shop.onCloth(null, Task.Kind.LOAD, LOAD, takes.load(), shop.person(Optional.empty()));
      loaded = true;
    }
    for (int i = 0; i < run.size() && !given; i++) {
      Step step = run.get(i);
      shop.nextStep();
      work(step);
      if (step instanceof Step.Print print) {
        shop.washScreens(step, shop.person(print.by()), neededToday(i + 1));
      }
    }
    return new Run(shop.tasks(), shop.heldUp(), printed, taken, blocked, cloth);
  }

  /** Screens that a print step uses before the day ends; the others are washed out at once. */
  private Set<String> neededToday(int from) {
    Set<String> needed = new LinkedHashSet<>();
    for (int i = from; i < plan.run().size(); i++) {
      Step step = plan.run().get(i);
      if (step instanceof Step.EndOfDay) {
        break;
      }
      if (step instanceof Step.Print print) {
        needed.addAll(printing.screens(print));
      }
    }
    return needed;
  }

  private void work(Step step) {
    if (step instanceof Step.Mix mix) {
      Optional<Span> each = mix.takes().map(t -> new Span(t.minutes() / mix.pastes().size()));
      for (String paste : mix.pastes()) {
        shop.mix(step, paste, each.orElse(takes.mix()), shop.person(mix.by()));
      }
    } else if (step instanceof Step.Print print) {
      print(print);
    } else if (step instanceof Step.Dry dry) {
      dry.air().ifPresent(air -> cloth.blow(air, shop.clothFree()));
      await(step, dry.until(), dry.title());
      dry.air().ifPresent(air -> cloth.still(shop.clothFree()));
    } else if (step instanceof Step.Move move) {
      show(move, move.to().mm(), move.takes().orElse(takes.move()), shop.person(move.by()));
    } else if (step instanceof Step.Sew sew) {
      takeUp(
          step, Task.Kind.SEW, sew.takes().orElse(takes.sew()), Optional.of(shop.person(sew.by())));
    } else if (step instanceof Step.Fix fix) {
      boolean alone = fix.how() == Step.Fixing.BATCH;
      takeUp(
          step,
          Task.Kind.FIX,
          fix.lasts(),
          alone ? Optional.empty() : Optional.of(shop.person(fix.by())));
    } else if (step instanceof Step.Rinse rinse) {
      takeUp(step, Task.Kind.RINSE, rinse.lasts(), Optional.of(shop.person(rinse.by())));
    } else if (step instanceof Step.Wash wash) {
      takeUp(step, Task.Kind.WASH, wash.lasts(), Optional.of(shop.person(wash.by())));
    } else if (step instanceof Step.HeatSet set) {
      takeUp(step, Task.Kind.HEAT_SET, set.lasts(), Optional.of(shop.person(set.by())));
    } else if (step instanceof Step.EndOfDay) {
      shop.close(step);
    }
  }

  private void print(Step.Print step) {
    String person = shop.person(step.by());
    Progress progress = new Progress();
    for (String arrangement : step.arrangements()) {
      for (PrintSet set : printing.sets(step, arrangement)) {
        boolean onTable = stretch.isPresent();
        if (!shows(set)) {
          if (onTable) {
            await(step, step.beforeMoving(), "before moving");
          }
          show(step, set);
          progress.colour = null;
        }
        if (step.order() == Step.Order.BY_COLOUR) {
          byColour(step, set, person, progress);
        } else {
          byStation(step, set, person, progress);
        }
        if (given) {
          return;
        }
      }
    }
  }

  private void byColour(Step.Print step, PrintSet set, String person, Progress progress) {
    int colours = set.motifs().get(0).colours().size();
    List<Motif> order = step.everyOther() ? Sets.everyOther(set.motifs()) : set.motifs();
    for (int colour = 0; colour < colours; colour++) {
      for (Motif motif : order) {
        Footprint footprint = motif.colours().get(colour);
        String now = motif.placement().design() + "/" + footprint.separation().number();
        if (progress.colour != null && !progress.colour.equals(now)) {
          letDry(step, progress);
        }
        progress.colour = now;
        impress(step, set.number(), footprint, person, progress);
        if (given) {
          return;
        }
      }
    }
  }

  private void byStation(Step.Print step, PrintSet set, String person, Progress progress) {
    for (Motif motif : step.everyOther() ? Sets.everyOther(set.motifs()) : set.motifs()) {
      boolean first = true;
      for (Footprint footprint : motif.colours()) {
        if (!first) {
          letDry(step, progress);
        }
        first = false;
        impress(step, set.number(), footprint, person, progress);
        if (given) {
          return;
        }
      }
    }
  }

  private void letDry(Step.Print step, Progress progress) {
    await(step, step.dryBetweenColours(), "dry between colours");
    progress.waits++;
  }

  private void impress(
      Step.Print step, int set, Footprint footprint, String person, Progress progress) {
    if (given || tooLong(step)) {
      return;
    }
    String paste = footprint.paste().name();
    if (footprint.paste().mixedBefore().isEmpty() && !shop.isMixed(paste)) {
      missing(step, paste);
    }
    if (progress.impressions > 0) {
      shop.waitFor(step, "pause", Workshop.seconds(step.pause()));
    }
    long lay = Workshop.seconds(takes.lay());
    long rest =
        Workshop.seconds(
            new Span(
                takes.pull().minutes() * footprint.separation().pulls() + takes.lift().minutes()));
    Task task =
        shop.print(
            step,
            footprint.placement().name() + ", " + footprint.screen().name(),
            lay + rest,
            person,
            footprint.screen().name(),
            paste,
            set,
            printed.size());
    Printed done =
        new Printed(
            printed.size(),
            step,
            set,
            footprint,
            person,
            progress.waits,
            progress.impressions++,
            task.start().seconds() + lay,
            task.end().seconds(),
            cloth.need(footprint));
    printed.add(done);
    cloth.add(done);
  }

  /** Waits; what can never be waited for ends the simulation with a fact. */
  private void await(Step step, Until until, String cause) {
    if (given || tooLong(step)) {
      return;
    }
    long now = shop.clothFree();
    if (until instanceof Until.State state) {
      long end = cloth.until(state.dryness(), now);
      if (end >= DryingClock.NEVER) {
        given = true;
        blocked.add(
            new CannotStart(
                step.number(),
                step.title(),
                "films to get "
                    + state.dryness().text()
                    + ", which they never do in air of "
                    + plan.room().humidity().text()
                    + " humidity at "
                    + plan.room().temperature().text(),
                "dry the air of the room by heating or a dehumidifier",
                Why.NEVER_DRY,
                step.path(),
                List.of(new Related("the air", plan.room().path()))));
        return;
      }
      shop.waitFor(step, cause, end - now);
    } else if (until instanceof Until.Time time) {
      shop.waitFor(step, cause, Workshop.seconds(time.span()));
    }
  }

  /** Takes the cloth off the table. */
  private void takeUp(Step step, Task.Kind kind, Span lasts, Optional<String> person) {
    if (given) {
      return;
    }
    Task task =
        person.isPresent()
            ? shop.onCloth(step, kind, step.title(), lasts, person.get())
            : shop.clothAlone(step, kind, step.title(), Workshop.seconds(lasts));
    taken.add(new Taken(step, kind, task.start().seconds(), printed.size()));
    stretch = Optional.empty();
    loaded = false;
  }

  private boolean shows(PrintSet set) {
    return stretch.isPresent() && stretch.get().shows(set);
  }

  /** Brings the set on to the table: the first time the whole start of the cloth if that does. */
  private void show(Step.Print step, PrintSet set) {
    double from = set.from();
    if (stretch.isEmpty()) {
      Stretch first = new Stretch(begin, tableLength());
      from = first.shows(set) ? begin : from;
    }
    show(step, from, takes.move(), shop.person(step.by()));
  }

  private void show(Step step, double from, Span moving, String person) {
    if (given) {
      return;
    }
    if (stretch.isEmpty()) {
      if (!loaded) {
        shop.onCloth(step, Task.Kind.LOAD, LOAD, takes.load(), person);
      }
      loaded = true;
    } else {
      String to = new Length(from).text();
      Task task = shop.onCloth(step, Task.Kind.MOVE, "move on to " + to, moving, person);
      taken.add(new Taken(step, Task.Kind.MOVE, task.start().seconds(), printed.size()));
    }
    stretch = Optional.of(new Stretch(from, tableLength()));
  }

  /**
   * Where the cloth's first stretch begins, so that frames that reach past its end lie on the
   * table.
   */
  private static double begin(Layout layout) {
    double begin = 0;
    for (Footprint footprint : layout.footprints()) {
      begin = Math.min(begin, footprint.frame().getEnvelopeInternal().getMinX());
    }
    return begin;
  }

  private double tableLength() {
    return plan.table().length().mm();
  }

  private void missing(Step.Print step, String paste) {
    if (!missed.add(paste)) {
      return;
    }
    PlanPath where = plan.pastes().get(paste).path();
    Optional<Step> later =
        plan.run().stream()
            .filter(s -> s instanceof Step.Mix mix && mix.pastes().contains(paste))
            .findFirst();
    blocked.add(
        new CannotStart(
            step.number(),
            step.title(),
            "paste " + paste + later.map(s -> ", mixed in step " + s.number()).orElse(""),
            later.isPresent()
                ? "move the mix step before step " + step.number()
                : "write a mix step before step " + step.number() + ", or when it was mixed",
            later.isPresent() ? Why.MIXED_LATER : Why.NEVER_MIXED,
            step.path(),
            List.of(
                later
                    .map(s -> new Related("mixed here", s.path()))
                    .orElse(new Related("the paste", where)))));
  }

  private boolean tooLong(Step step) {
    if (!given && shop.full()) {
      given = true;
      blocked.add(
          new CannotStart(
              step.number(),
              step.title(),
              "more than " + shop.tasks().size() + " pieces of work before it",
              "split the run into several plans",
              Why.TOO_LONG,
              step.path(),
              List.of()));
    }
    return given;
  }

  /** How far a print step has come. */
  private static final class Progress {
    private String colour;
    private int waits;
    private int impressions;
  }

  /** The stretch of cloth that lies on the table. */
  private record Stretch(double from, double length) {
    boolean shows(PrintSet set) {
      return Math.abs(set.from() - from) <= Sets.ROUNDING
          || (set.from() >= from - Sets.ROUNDING && set.to() <= from + length + Sets.ROUNDING);
    }
  }

  /**
   * The cloth moved or left the table.
   *
   * @param filmsBefore how many impressions had been made
   */
  record Taken(Step step, Task.Kind kind, long second, int filmsBefore) {}

  /** What the simulation leaves. */
  record Run(
      List<Task> tasks,
      HeldUp heldUp,
      List<Printed> printed,
      List<Taken> taken,
      List<CannotStart> blocked,
      WetCloth cloth) {}
}

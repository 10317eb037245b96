package strikeoff.timeline;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.layout.Layout;
import strikeoff.plan.Handling;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.units.Span;

/**
 * Works a run as written, in one pass, to the second.
 *
 * <p>Work runs on past closing time; only {@code end of day} stops it. Screens that hold paste are
 * washed out after the last print step that needs them on a day, unless a step of that day does it.
 */
final class Simulation {

  private final PrintPlan plan;
  private final Handling takes;
  private final Workshop shop;
  private final WetCloth cloth;
  private final Blocked blocked;
  private final OnTable table;
  private final Waiting waiting;
  private final PrintRun sets;
  private final Printing printing;

  private Simulation(PrintPlan plan, Layout layout, Policy policy) {
    this.plan = plan;
    this.takes = plan.handling();
    this.shop = new Workshop(plan, (int) policy.limit("time/most-tasks").amount());
    this.cloth = new WetCloth(plan, policy, shop.opened());
    this.blocked = new Blocked(plan);
    this.table = new OnTable(shop, takes, plan.table().length(), layout);
    this.waiting = new Waiting(shop, cloth, blocked);
    this.sets = new PrintRun(plan, layout);
    Helpers helpers = new Helpers(plan, policy.limit("table/longest-hand-frame").amount());
    Impressing impressing = new Impressing(plan, shop, cloth, blocked, helpers);
    this.printing = new Printing(plan, sets, table, waiting, impressing);
  }

  static Run run(PrintPlan plan, Layout layout, Policy policy) {
    return new Simulation(plan, layout, policy).work();
  }

  private Run work() {
    List<Step> run = plan.run();
    if (run.stream().anyMatch(Step.Print.class::isInstance)) {
      table.load();
    }
    for (int i = 0; i < run.size() && !blocked.givenUp(); i++) {
      Step step = run.get(i);
      shop.nextStep();
      work(step);
      if (step instanceof Step.Print print) {
        shop.washScreens(step, shop.washer(print), neededToday(i + 1));
      }
    }
    return new Run(
        shop.tasks(),
        shop.heldUp(),
        shop.missing(),
        shop.beside(),
        printing.printed(),
        table.taken(),
        blocked.facts(),
        cloth);
  }

  /**
   * Screens that a print step uses, or a step washes out, before the day ends; the others are
   * washed out at once.
   */
  private Set<String> neededToday(int from) {
    Set<String> needed = new LinkedHashSet<>();
    for (int i = from; i < plan.run().size(); i++) {
      Step step = plan.run().get(i);
      if (step instanceof Step.EndOfDay) {
        break;
      }
      if (step instanceof Step.Print print) {
        needed.addAll(sets.screens(print));
      } else if (step instanceof Step.WashScreen wash) {
        needed.addAll(wash.screens());
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
      printing.print(print);
    } else if (step instanceof Step.Dry dry) {
      waiting.until(step, dry.waits(), dry.by(), dry.title());
    } else if (step instanceof Step.WashScreen wash) {
      shop.washScreens(wash);
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
      if (fix.how() == Step.Fixing.BATCH) {
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
      takeUp(step, Task.Kind.HEAT_SET, set.lasts(), set.by());
    } else if (step instanceof Step.EndOfDay) {
      shop.close(step);
    }
  }

  private void takeUp(Step step, Task.Kind kind, Span lasts, Optional<String> by) {
    Optional<String> person = Optional.of(shop.person(by));
    table.takeUp(step, kind, lasts, person, printing.printed().size());
  }

  /** What the simulation leaves. */
  record Run(
      List<Task> tasks,
      HeldUp heldUp,
      Map<Resource.Kind, Set<Integer>> missing,
      Map<Resource, Span> beside,
      List<Printed> printed,
      List<OnTable.Taken> taken,
      List<CannotStart> blocked,
      WetCloth cloth) {}
}

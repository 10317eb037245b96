package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.day.WashStep;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintChange;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/**
 * A change of the run that a printer could write.
 *
 * @param how what is changed
 * @param step number of the step that is changed, or before which one is put in
 * @param minutes the whole value to write, not what is added; for printing every other one the time
 *     to dry between its two passes, which may be 0
 * @param air what moves the air in that wait as the plan has it; empty for the room's own
 * @param state that the films must have reached then
 * @param alone who prints then, of several who would print side by side; else empty
 */
public record Remedy(
    How how, int step, long minutes, Optional<Draught> air, Dryness state, Optional<String> alone) {

  /** Till a frame may be laid on them. */
  public Remedy(How how, int step, long minutes, Optional<Draught> air) {
    this(how, step, minutes, air, Dryness.FRAME_SAFE);
  }

  /** By whoever prints there. */
  public Remedy(How how, int step, long minutes, Optional<Draught> air, Dryness state) {
    this(how, step, minutes, air, state, Optional.empty());
  }

  /** Every other one first, by one person, with no wait yet between the two passes. */
  static Remedy everyOther(PrintStep print) {
    return new Remedy(
        How.EVERY_OTHER,
        print.number(),
        0,
        print.dryBetweenPasses().air(),
        Dryness.FRAME_SAFE,
        print.also().isEmpty() ? Optional.empty() : print.by());
  }

  /** The day ends before a step. */
  static Remedy endOfDay(int step, Dryness state) {
    return new Remedy(How.END_OF_DAY, step, 0, Optional.empty(), state);
  }

  /** A month, in minutes. */
  static final long MOST_WORTH_SAYING = 30L * 24 * 60;

  /** Places of a plan where a wait can be written. */
  public enum How {
    DRY_BETWEEN_COLOURS("dry between colours"),
    DRY_BETWEEN_PASSES("dry between passes"),
    PAUSE("pause"),
    DRY_BETWEEN_NEIGHBOURS("dry between neighbours"),
    BEFORE_MOVING("before moving"),
    /** A step of its own. */
    DRY_STEP("dry"),
    /** The day ends before the step, and films dry on overnight. */
    END_OF_DAY("end of day"),
    /** Two passes instead of one, and the wait between them. */
    EVERY_OTHER("dry between passes");

    private final String key;

    How(String key) {
      this.key = key;
    }

    /** By which a plan names the wait. */
    public String key() {
      return key;
    }
  }

  /** In the air that the plan has in that place. */
  static Remedy in(PrintPlan plan, How how, int step, long minutes) {
    return plan.print(step)
        .map(print -> new Remedy(how, step, minutes, written(how, print).air()))
        .orElseGet(() -> new Remedy(how, step, minutes, Optional.empty()));
  }

  /** What a print step has in the place of a wait. */
  static Wait written(How how, PrintStep step) {
    return switch (how) {
      case DRY_BETWEEN_COLOURS -> step.dryBetweenColours();
      case DRY_BETWEEN_PASSES, EVERY_OTHER -> step.dryBetweenPasses();
      case BEFORE_MOVING -> step.beforeMoving();
      case PAUSE -> Wait.of(new Until.Time(step.pause()));
      case DRY_BETWEEN_NEIGHBOURS -> Wait.of(step.dryBetweenNeighbours());
      case DRY_STEP, END_OF_DAY -> Wait.NONE;
    };
  }

  /** The same as edits of the plan: the minutes first, then waiting until the films are felt. */
  public List<List<Edit>> edits(Measures units) {
    List<Edit> waiting = edits(waitText(units));
    return canBeFelt() ? List.of(waiting, untilFelt(units)) : List.of(waiting);
  }

  /** Waiting until the films are felt, as edits of the plan. */
  List<Edit> untilFelt(Measures units) {
    return edits(felt(units));
  }

  private List<Edit> edits(String wait) {
    PlanPath at = new PlanPath("run").item(step - 1);
    if (how == How.END_OF_DAY) {
      return List.of(new Edit.Insert(at, how.key));
    }
    if (how == How.DRY_STEP) {
      return List.of(new Edit.Insert(at, how.key + ": " + wait));
    }
    Edit written = new Edit.Write(at.key(how.key), wait);
    if (how != How.EVERY_OTHER) {
      return List.of(written);
    }
    List<Edit> passes = new ArrayList<>();
    alone.ifPresent(name -> passes.add(new Edit.Write(at.key("by"), WashStep.written(name))));
    passes.add(new Edit.Write(at.key("every other"), "yes"));
    if (minutes > 0) {
      passes.add(written);
    }
    return passes;
  }

  /** Whether films can be felt there instead of waiting by the clock. */
  public boolean canBeFelt() {
    return how != How.PAUSE && how != How.EVERY_OTHER && how != How.END_OF_DAY;
  }

  /** How long it is, to the minute, as a plan has it. */
  public String time() {
    return new Span(minutes).toTheMinute();
  }

  /** The wait as a plan would have it. */
  public String waitText(Measures units) {
    return air.map(a -> "{for: " + time() + ", air: " + a.text(units) + "}").orElse(time());
  }

  /** Waiting until the films are felt, as a plan would have it. */
  public String felt(Measures units) {
    return new Wait(new Until.State(state), air).text(units);
  }

  public Remedy longer(long more) {
    return new Remedy(how, step, minutes + more, air, state, alone);
  }

  /** The plan with it; steps keep their numbers, so that runs can be compared. */
  public PrintPlan applied(PrintPlan plan) {
    List<Step> run = new ArrayList<>();
    for (Step each : plan.run()) {
      if (each.number() != step || (each instanceof Step.Dry dry && dry.path().equals(PUT_IN))) {
        run.add(each);
      } else if (how == How.DRY_STEP) {
        run.add(new Step.Dry(step, drying().until(), Optional.empty(), Optional.empty(), PUT_IN));
        run.add(each);
      } else if (how == How.END_OF_DAY) {
        run.add(new Step.EndOfDay(step, PUT_IN));
        run.add(each);
      } else {
        run.add(each instanceof PrintStep print ? changed(print) : each);
      }
    }
    return plan.with(run);
  }

  private static final PlanPath PUT_IN = new PlanPath("run");

  private Wait drying() {
    return new Wait(new Until.Time(new Span(minutes)), air);
  }

  private Step changed(PrintStep print) {
    PrintChange change = print.change();
    alone.ifPresent(person -> change.by(List.of(person)));
    switch (how) {
      case PAUSE -> change.pause(new Span(minutes));
      case DRY_BETWEEN_COLOURS -> change.dryBetweenColours(drying());
      case BEFORE_MOVING -> change.beforeMoving(drying());
      case DRY_BETWEEN_NEIGHBOURS -> change.dryBetweenNeighbours(drying().until());
      case DRY_BETWEEN_PASSES -> change.dryBetweenPasses(drying());
      case EVERY_OTHER -> {
        change.everyOther();
        if (minutes > 0) {
          change.dryBetweenPasses(drying());
        }
      }
      case DRY_STEP, END_OF_DAY ->
          throw new IllegalStateException("a step of its own changes no print");
    }
    return change.made();
  }
}

package strikeoff.propose;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.day.facts.LeftInBath;
import strikeoff.day.facts.LeftWet;
import strikeoff.day.facts.Rehearsed;
import strikeoff.day.facts.Rehearsed.TooSoon;
import strikeoff.plan.Begins;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.units.Span;

/** Writes the waits that a run lacks, and the nights where its days are too long. */
final class Repair {

  private Repair() {}

  static Until until(Dryness state) {
    return new Until.State(state);
  }

  static Wait wait(Dryness state, Optional<Draught> air) {
    return new Wait(until(state), air);
  }

  /**
   * The same run with a wait more for each place where somebody is too early.
   *
   * @param run numbered as it was rehearsed
   * @param air what blows in the waits
   * @param order which knows where a night may lie
   * @param screens all that there are
   */
  static List<Step> repaired(
      List<Step> run,
      Rehearsed rehearsed,
      Optional<Draught> air,
      Order order,
      List<String> screens) {
    List<Step> mended = new ArrayList<>(run);
    Set<Integer> before = new HashSet<>();
    Set<Integer> asleep = new HashSet<>();
    rehearsed.lateSteps().forEach(late -> asleep.add(order.night(run, late - 1)));
    List<List<Step>> inserted = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      inserted.add(new ArrayList<>());
    }
    Set<Integer> done = new HashSet<>();
    for (TooSoon soon : rehearsed.tooSoon()) {
      int at = soon.step() - 1;
      Step step = mended.get(at);
      if (soon.what() == Rehearsed.What.FRAME_ON_WET && soon.before() == soon.step()) {
        if (done.add(at)) {
          mended.set(at, waitsWithin((PrintStep) step, soon, air));
        }
      } else if (soon.what() == Rehearsed.What.FRAME_ON_WET) {
        if (before.add(at)) {
          inserted.get(at).add(dry(Dryness.FRAME_SAFE, air));
        }
      } else if (step instanceof PrintStep print) {
        PrintDraft draft = new PrintDraft(print);
        draft.beforeMoving = wait(Dryness.LIFT_SAFE, air);
        mended.set(at, draft.step());
      } else if (before.add(at)) {
        inserted.get(at).add(dry(step.needs().orElse(Dryness.FIX_SAFE), air));
      }
    }
    for (Rehearsed.TooOld old : rehearsed.tooOld()) {
      afresh(mended, inserted, old);
    }
    for (LeftInBath left : rehearsed.leftInBath()) {
      if (left.step() > order.first()) {
        inserted.get(left.step() - 1).add(later(left.dry()));
      }
    }
    for (LeftWet left : rehearsed.leftWet()) {
      if (left.first() > order.first()) {
        inserted.get(left.first() - 1).add(later(left.dry()));
      }
    }
    List<Step> all = new ArrayList<>();
    for (int i = 0; i < mended.size(); i++) {
      // Baths that a day is too short for may wait for a longer one.
      boolean slept = i > 0 && run.get(i - 1) instanceof Step.EndOfDay;
      boolean night = asleep.contains(i) && i > 0 && (!slept || Leeway.isBath(run.get(i)));
      if (night) {
        all.add(new Step.EndOfDay(1, Step.path(1)));
      }
      all.addAll(inserted.get(i));
      all.add(mended.get(i));
    }
    return rehearsed.shortfall().inMesh() > 0 ? washed(all, order.first(), screens) : all;
  }

  /** The paste is mixed again before the step that prints it too old, or in the midst of it. */
  private static void afresh(List<Step> run, List<List<Step>> inserted, Rehearsed.TooOld old) {
    int at = old.step() - 1;
    // After the wait for what was printed before, not beside it.
    Step mix =
        new Step.Mix(
            1,
            List.of(old.paste()),
            Optional.empty(),
            Optional.empty(),
            Begins.WHEN_DONE,
            Step.path(1));
    PrintStep print = (PrintStep) run.get(at);
    if (!old.within()) {
      if (!print.beforeMoving().isNone()) {
        inserted.get(at).add(dry(Dryness.LIFT_SAFE, print.beforeMoving().air()));
      }
      inserted.get(at).add(mix);
      return;
    }
    List<Integer> only = print.only();
    if (only.size() > 1 && print.numbers().isEmpty()) {
      PrintDraft first = new PrintDraft(print);
      PrintDraft rest = new PrintDraft(print);
      first.only = only.subList(0, only.size() / 2);
      rest.only = only.subList(only.size() / 2, only.size());
      inserted.get(at).add(first.step());
      inserted.get(at).add(mix);
      run.set(at, rest.step());
    }
  }

  /**
   * Screens are washed out after each print step, or else after each colour.
   *
   * @param first how many steps stay as they are
   */
  private static List<Step> washed(List<Step> run, int first, List<String> screens) {
    List<Step> washed = new ArrayList<>(run.subList(0, first));
    for (int i = first; i < run.size(); i++) {
      washed.add(run.get(i));
      boolean printsOn =
          run.subList(i + 1, run.size()).stream().anyMatch(PrintStep.class::isInstance);
      boolean isWashed = i + 1 < run.size() && run.get(i + 1) instanceof Step.WashScreen;
      if (run.get(i) instanceof PrintStep && printsOn && !isWashed) {
        washed.add(
            new Step.WashScreen(1, screens, Optional.empty(), Optional.empty(), Step.path(1)));
      }
    }
    if (washed.size() == run.size()) {
      washed
          .subList(first, washed.size())
          .replaceAll(
              step -> {
                if (!(step instanceof PrintStep print) || print.beside()) {
                  return step;
                }
                PrintDraft draft = new PrintDraft(print);
                draft.washBetweenColours = true;
                return draft.step();
              });
    }
    return washed;
  }

  private static PrintStep waitsWithin(PrintStep print, TooSoon soon, Optional<Draught> air) {
    PrintDraft draft = new PrintDraft(print);
    boolean alone = draft.people.size() < 2;
    boolean held = air.filter(a -> a.by() == Draught.By.HAIR_DRYER).isPresent();
    if (draft.betweenColours.isNone()) {
      draft.betweenColours = wait(Dryness.FRAME_SAFE, held && !alone ? Optional.empty() : air);
      if (alone && !draft.everyOther && !draft.only.isEmpty() && draft.only.size() == 1) {
        return draft.step();
      }
    } else if (!draft.everyOther) {
      draft.everyOther = true;
      draft.betweenPasses = alone ? wait(Dryness.FRAME_SAFE, air) : Wait.NONE;
    } else {
      double more = Math.ceil(soon.by().minutes() + draft.pause.minutes());
      draft.pause = new Span(Math.min(30, Math.max(1, more)));
    }
    return draft.step();
  }

  private static Step.Dry later(Span wait) {
    return new Step.Dry(1, new Until.Time(wait), Optional.empty(), Optional.empty(), Step.path(1));
  }

  static Step.Dry dry(Dryness state, Optional<Draught> air) {
    return new Step.Dry(1, until(state), air, Optional.empty(), Step.path(1));
  }
}

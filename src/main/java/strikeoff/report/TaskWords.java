package strikeoff.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.day.Doing;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.paste.PasteUse;
import strikeoff.plan.HeatSource;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.report.drawing.FittedWords;
import strikeoff.speech.SheetSpeech;
import strikeoff.units.Length;
import strikeoff.units.Span;

/** Says how work besides printing is done: the amounts, the warmth, the place. */
final class TaskWords {

  private static final int LONGEST = 60;

  private final Checked.Judged judged;
  private final WhereCloth cloth;

  TaskWords(Checked.Judged judged) {
    this.judged = judged;
    this.cloth = new WhereCloth(judged);
  }

  String title(WorkBlock work) {
    return FittedWords.shortened(
        WorkWords.title(work, judged.plan().measures()),
        work.kind() == Task.Kind.MOVE ? Integer.MAX_VALUE : LONGEST);
  }

  /** What to wait after each print of the line, beginning with a comma; empty if nothing. */
  String pause(WorkBlock work) {
    return judged
        .plan()
        .print(work.first().step())
        .map(PrintStep::pause)
        .filter(pause -> pause.minutes() > 0)
        .map(pause -> ", wait " + pause.text() + " after each")
        .orElse("");
  }

  /**
   * What to do with the screen after the last print of the line, beginning with a comma, where it
   * then stands with paste in it until it prints again or is washed; empty if that is soon.
   */
  String covered(WorkBlock prints) {
    Task last = prints.tasks().get(prints.tasks().size() - 1);
    Span after = judged.facts().policy().drying().coveredAfter();
    return judged.facts().timeline().tasks().stream()
        .filter(task -> task.kind() == Task.Kind.PRINT || task.kind() == Task.Kind.WASH_SCREEN)
        .filter(task -> task.screen().equals(last.screen()))
        .filter(task -> task.start().compareTo(last.end()) >= 0)
        .min(Comparator.comparing(Task::start))
        .map(task -> task.kind() == Task.Kind.PRINT ? task.start() : inWater(task))
        .filter(until -> until.since(last.end()).compareTo(after) > 0)
        .map(until -> ", then flood and cover")
        .orElse("");
  }

  /** Who washes several screens lays them all in water first. */
  private Moment inWater(Task wash) {
    return judged.facts().timeline().tasks().stream()
        .filter(task -> task.kind() == Task.Kind.WASH_SCREEN)
        .filter(task -> task.people().equals(wash.people()) && task.end().equals(wash.start()))
        .findFirst()
        .map(this::inWater)
        .orElse(wash.start());
  }

  /** What the printer needs to know besides when; empty if nothing. */
  String how(WorkBlock work) {
    if (work.first().doing() instanceof Doing.MoveCloth move) {
      return move.to().above(0) ? cloth.mark(move.to(), work.start()) : "";
    }
    if (work.kind() == Task.Kind.LOAD) {
      return cloth.laidBy(work.start()).map(cloth::lies).orElse("");
    }
    if (work.first().doing() instanceof Doing.Mix mix) {
      return mixing(judged.plan().pastes().get(mix.paste()));
    }
    return step(work).map(this::how).orElse("");
  }

  /** What to do besides where the cloth is laid or moved, each a sentence. */
  List<String> laying(WorkBlock work) {
    List<String> besides = new ArrayList<>();
    if (work.kind() == Task.Kind.LOAD || work.kind() == Task.Kind.MOVE) {
      boolean laid = work.kind() == Task.Kind.LOAD;
      cloth
          .laidBy(work.start())
          .ifPresent(
              lies -> {
                besides.addAll(cloth.boards(lies));
                besides.addAll(cloth.widths(lies, laid));
              });
    }
    List<Length> marks = work.kind() == Task.Kind.LOAD ? cloth.marks(work.start()) : List.of();
    if (!marks.isEmpty()) {
      besides.add(SheetSpeech.marks(marks, judged.plan().measures()));
    }
    return besides;
  }

  private Optional<Step> step(WorkBlock work) {
    return work.kind() == Task.Kind.WASH_SCREEN || work.kind() == Task.Kind.WAIT
        ? Optional.empty()
        : judged.plan().step(work.first().step());
  }

  private String how(Step step) {
    if (step instanceof Step.Fix fix) {
      String bath = parts(fix.bath().stream().map(TaskWords::part).toList());
      return (bath.isEmpty() ? "" : bath + ", ")
          + "at "
          + fix.temperature().text(judged.plan().measures())
          + " for "
          + fix.lasts().text();
    }
    if (step instanceof Step.HeatSet heat) {
      return "at "
          + heat.temperature().text(judged.plan().measures())
          + " for "
          + heat.lasts().text()
          + (heat.with() == HeatSource.OVEN ? "" : " at each spot")
          + (heat.sides() > 1 ? " of both sides" : "");
    }
    if (step instanceof Step.Rinse) {
      return SheetSpeech.rinsed();
    }
    if (step instanceof Step.Sew sew) {
      Seam seam = judged.plan().seams().get(sew.seam());
      return seam == null
          ? ""
          : "the seam " + seam.at().text(judged.plan().measures()) + " from the start; press it";
    }
    return "";
  }

  /** The batch as the plan has it, or as much as the run needs. */
  private String mixing(Paste paste) {
    String recipe = parts(paste.recipe().stream().map(TaskWords::part).toList());
    Optional<String> amount =
        paste
            .amount()
            .map(mass -> mass.text(judged.plan().measures()))
            .or(() -> recipe.isEmpty() ? needed(paste.name()) : Optional.empty());
    return amount.map(a -> recipe.isEmpty() ? a : a + ": " + recipe).orElse(recipe);
  }

  private Optional<String> needed(String paste) {
    return judged.facts().pastes().uses().stream()
        .filter(use -> use.paste().equals(paste))
        .findFirst()
        .map(PasteUse::toMix)
        .map(mass -> "at least " + mass.enough(judged.plan().measures()));
  }

  private static String part(Ingredient part) {
    return FittedWords.shortened(part.written(), 20) + " " + part.named();
  }

  private static String parts(List<String> parts) {
    return String.join(", ", parts);
  }
}

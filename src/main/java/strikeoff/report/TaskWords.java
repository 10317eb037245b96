package strikeoff.report;

import java.util.List;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.paste.PasteUse;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.report.drawing.Words;
import strikeoff.timeline.Task;

/** Says how work besides printing is done: the amounts, the warmth, the place. */
final class TaskWords {

  private static final int LONGEST = 60;

  private final Checked.Judged judged;

  TaskWords(Checked.Judged judged) {
    this.judged = judged;
  }

  String title(Work work) {
    String title = WorkWords.title(work);
    return work.kind() == Task.Kind.MOVE
        ? title.replace("Move on", "Move the cloth on")
        : Words.shortened(title, LONGEST);
  }

  /** What the printer needs to know besides when; empty if nothing. */
  String how(Work work) {
    if (work.kind() == Task.Kind.MOVE) {
      return "that mark comes to the table's start";
    }
    if (work.kind() == Task.Kind.MIX) {
      return paste(work).map(this::mixing).orElse("");
    }
    return step(work).map(this::how).orElse("");
  }

  private Optional<Step> step(Work work) {
    int number = work.first().step();
    return work.kind() == Task.Kind.WASH_SCREEN || work.kind() == Task.Kind.WAIT
        ? Optional.empty()
        : judged.plan().run().stream().filter(s -> s.number() == number).findFirst();
  }

  private String how(Step step) {
    if (step instanceof Step.Fix fix) {
      String bath = parts(fix.bath().stream().map(TaskWords::part).toList());
      return (bath.isEmpty() ? "" : bath + ", ")
          + "at "
          + fix.temperature().text()
          + " for "
          + fix.lasts().text();
    }
    if (step instanceof Step.HeatSet heat) {
      return "at " + heat.temperature().text() + " for " + heat.lasts().text() + " at each place";
    }
    if (step instanceof Step.Sew sew) {
      Seam seam = judged.plan().seams().get(sew.seam());
      return seam == null ? "" : "the seam " + seam.at().text() + " from the start; press it";
    }
    return "";
  }

  private Optional<Paste> paste(Work work) {
    PrintPlan plan = judged.plan();
    return plan.pastes().values().stream()
        .filter(p -> work.first().what().equals("mix " + p.name()))
        .findFirst();
  }

  /** The batch as the plan has it, or as much as the run needs. */
  private String mixing(Paste paste) {
    String recipe = parts(paste.recipe().stream().map(TaskWords::part).toList());
    Optional<String> amount =
        paste
            .amount()
            .map(mass -> mass.text())
            .or(() -> recipe.isEmpty() ? needed(paste.name()) : Optional.empty());
    return amount.map(a -> recipe.isEmpty() ? a : a + ": " + recipe).orElse(recipe);
  }

  private Optional<String> needed(String paste) {
    return judged.facts().pastes().uses().stream()
        .filter(use -> use.paste().equals(paste))
        .findFirst()
        .map(PasteUse::toMix)
        .map(mass -> "at least " + mass.text());
  }

  private static String part(Ingredient part) {
    return Words.shortened(part.written(), 20) + " " + part.substance();
  }

  private static String parts(List<String> parts) {
    return String.join(", ", parts);
  }
}

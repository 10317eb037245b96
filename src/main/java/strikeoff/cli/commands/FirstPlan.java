package strikeoff.cli.commands;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.findings.Severity;
import strikeoff.plan.Colour;
import strikeoff.start.AnsweredPlan;
import strikeoff.start.FirstDesigns;
import strikeoff.start.FixingMethod;
import strikeoff.start.PlanAnswers;
import strikeoff.start.StartPlan;
import strikeoff.start.Wishes;

/**
 * The soundest first plan that there is for what was wished: every way of fixing and, if the
 * colours as they were named bring a risk, light before dark, judged by the check itself.
 *
 * @param colours in the order in which they are printed
 * @param reordered true if that is another order than they were named in
 */
record FirstPlan(List<String> colours, String text, Checked checked, boolean reordered) {

  private static final Comparator<FirstPlan> SOUNDEST =
      Comparator.comparingLong((FirstPlan p) -> p.count(Severity.STOP))
          .thenComparing(p -> p.count(Severity.RISK));

  /** Texts of plans that fix and print so, the simplest first. */
  private interface Writer {
    Stream<String> texts(FixingMethod fixing, List<String> colours);
  }

  static FirstPlan of(Wishes wishes, String file) {
    return of(
        wishes.dye(),
        wishes.colours(),
        Checker.builtIn(),
        file,
        (fixing, colours) -> Stream.of(StartPlan.text(wishes.inOrder(colours), fixing)));
  }

  /**
   * From films, in the order of their pastes; designs have a day each where the time asks for it.
   */
  static FirstPlan of(Wishes wishes, FirstDesigns motifs, Checker checker, String file) {
    return ofFilms(
        wishes.dye(),
        motifs,
        checker,
        file,
        fixing ->
            Stream.of(false, true)
                .limit(motifs.motifs().size())
                .map(apart -> StartPlan.text(wishes, motifs, fixing, apart)));
  }

  /** The same of answers. */
  static FirstPlan of(PlanAnswers answers, FirstDesigns motifs, Checker checker, String file) {
    return ofFilms(
        answers.dye(),
        motifs,
        checker,
        file,
        fixing ->
            AnsweredPlan.days(answers).stream()
                .map(days -> AnsweredPlan.text(answers, motifs, fixing, days)));
  }

  private static FirstPlan ofFilms(
      boolean dye,
      FirstDesigns motifs,
      Checker checker,
      String file,
      Function<FixingMethod, Stream<String>> texts) {
    List<String> colours = motifs.pastes().stream().map(paste -> paste.colour()).toList();
    List<FirstPlan> all = new ArrayList<>();
    for (FixingMethod fixing : FixingMethod.of(dye)) {
      FirstPlan plan = soundest(texts.apply(fixing), colours, checker, file, false);
      if (plan.isSound() || plan.checked() instanceof Checked.Unreadable) {
        return plan;
      }
      all.add(plan);
    }
    return all.stream().min(SOUNDEST).orElseThrow();
  }

  /** Of several days it takes those that the time asks for. */
  static FirstPlan of(PlanAnswers answers, String file) {
    return of(
        answers.dye(),
        answers.colours(),
        Checker.builtIn(),
        file,
        (fixing, colours) ->
            AnsweredPlan.days(answers).stream()
                .map(days -> AnsweredPlan.text(answers, fixing, colours, days)));
  }

  private static FirstPlan of(
      boolean dye, List<String> colours, Checker checker, String file, Writer writer) {
    List<FirstPlan> all = new ArrayList<>();
    for (FixingMethod fixing : FixingMethod.of(dye)) {
      FirstPlan plan = soundest(writer.texts(fixing, colours), colours, checker, file, false);
      if (plan.isSound() || plan.checked() instanceof Checked.Unreadable) {
        return plan;
      }
      all.add(plan);
      List<String> lightFirst = lightFirst(plan);
      if (!lightFirst.equals(colours)) {
        FirstPlan other =
            soundest(writer.texts(fixing, lightFirst), lightFirst, checker, file, true);
        if (other.isSound()) {
          return other;
        }
        all.add(other);
      }
    }
    // The first of the soundest: as it was wished, and by the usual fixing, wherever it can be.
    return all.stream().min(SOUNDEST).orElseThrow();
  }

  /** The first one that is sound; further ones only where more time might mend it. */
  private static FirstPlan soundest(
      Stream<String> texts, List<String> colours, Checker checker, String file, boolean reordered) {
    List<FirstPlan> all = new ArrayList<>();
    for (String text : (Iterable<String>) texts::iterator) {
      FirstPlan plan = new FirstPlan(colours, text, checker.check(file, text), reordered);
      all.add(plan);
      if (plan.isSound() || !plan.isShortOfTime()) {
        break;
      }
    }
    return all.stream().min(SOUNDEST).orElseThrow();
  }

  private boolean isShortOfTime() {
    return checked instanceof Checked.Judged judged
        && judged.findings().stream()
            .filter(f -> f.severity() != Severity.ADVICE)
            .anyMatch(f -> f.rule().family().equals("time") || f.rule().family().equals("paste"));
  }

  /** True if the check finds neither a stop nor a risk. */
  boolean isSound() {
    return count(Severity.STOP) + count(Severity.RISK) == 0 && checked instanceof Checked.Judged;
  }

  private long count(Severity severity) {
    return checked instanceof Checked.Judged judged
        ? judged.of(severity).count()
        : Long.MAX_VALUE / 4;
  }

  /** The colours as they were written, the lightest first; those of a kind stay as they were. */
  private static List<String> lightFirst(FirstPlan plan) {
    if (!(plan.checked() instanceof Checked.Judged judged)) {
      return plan.colours();
    }
    List<Colour> colours = judged.plan().pastes().values().stream().map(p -> p.colour()).toList();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < colours.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> -brightness(colours.get(i))));
    return order.stream().map(plan.colours()::get).toList();
  }

  /** The same of a colour as plans write it; what is none comes last. */
  static double brightness(String colour) {
    return AnswerReading.colour(colour).map(FirstPlan::brightness).orElse(0.0);
  }

  /** Relative luminance without gamma (ITU-R BT.709 weights): enough to sort by. */
  private static double brightness(Colour c) {
    return 0.2126 * c.red() + 0.7152 * c.green() + 0.0722 * c.blue();
  }
}

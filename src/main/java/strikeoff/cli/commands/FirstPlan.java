package strikeoff.cli.commands;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.findings.Severity;
import strikeoff.plan.Colour;
import strikeoff.start.FixingMethod;
import strikeoff.start.StartPlan;
import strikeoff.start.Wishes;

/**
 * The soundest first plan that there is for what was wished: every way of fixing and, if the
 * colours as they were named bring a risk, light before dark, judged by the check itself.
 *
 * @param wishes as they are kept
 * @param reordered true if the colours are printed in another order than they were named in
 */
record FirstPlan(Wishes wishes, String text, Checked checked, boolean reordered) {

  private static final Comparator<FirstPlan> SOUNDEST =
      Comparator.comparingLong((FirstPlan p) -> p.count(Severity.STOP))
          .thenComparing(p -> p.count(Severity.RISK));

  static FirstPlan of(Wishes wishes, String file) {
    List<FirstPlan> all = new ArrayList<>();
    for (FixingMethod fixing : FixingMethod.of(wishes.dye())) {
      FirstPlan plan = checked(wishes, fixing, file, false);
      if (plan.isSound() || plan.checked() instanceof Checked.Unreadable) {
        return plan;
      }
      all.add(plan);
      List<String> lightFirst = lightFirst(plan);
      if (!lightFirst.equals(wishes.colours())) {
        FirstPlan other = checked(wishes.inOrder(lightFirst), fixing, file, true);
        if (other.isSound()) {
          return other;
        }
        all.add(other);
      }
    }
    // The first of the soundest: as it was wished, and by the usual fixing, wherever it can be.
    return all.stream().min(SOUNDEST).orElseThrow();
  }

  private static FirstPlan checked(
      Wishes wishes, FixingMethod fixing, String file, boolean reordered) {
    String text = StartPlan.text(wishes, fixing);
    return new FirstPlan(wishes, text, Checker.builtIn().check(file, text), reordered);
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
      return plan.wishes().colours();
    }
    List<Colour> colours = judged.plan().pastes().values().stream().map(p -> p.colour()).toList();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < colours.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> -brightness(colours.get(i))));
    return order.stream().map(plan.wishes().colours()::get).toList();
  }

  /** Relative luminance without gamma (ITU-R BT.709 weights): enough to sort by. */
  private static double brightness(Colour c) {
    return 0.2126 * c.red() + 0.7152 * c.green() + 0.0722 * c.blue();
  }
}

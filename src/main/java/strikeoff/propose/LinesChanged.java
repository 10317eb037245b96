package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.Step;

/** Counts how many lines of the plan's own run another one changes. */
final class LinesChanged {

  private final StepLines lines;
  private final List<String> own;

  LinesChanged(Leeway leeway) {
    this.lines = new StepLines(leeway, DryingTold.NOTHING);
    this.own = written(Order.numbered(leeway.written()));
  }

  /** Lines that go, and lines that come. */
  int by(List<Step> run) {
    List<String> other = written(run);
    return own.size() + other.size() - 2 * kept(other);
  }

  /** Without comments, which are none of the work. */
  private List<String> written(List<Step> run) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      Step step = run.get(i);
      if (!Leeway.isWet(step) && !(step instanceof Step.Move)) {
        lines.of(run, i).stream()
            .filter(line -> !line.strip().startsWith("#"))
            .map(line -> line.replaceFirst("   # .*", ""))
            .forEach(all::add);
      }
    }
    return all;
  }

  /** The longest row of lines that both have in that order. */
  private int kept(List<String> other) {
    int[] before = new int[other.size() + 1];
    for (String line : own) {
      int[] now = new int[other.size() + 1];
      for (int i = 0; i < other.size(); i++) {
        now[i + 1] = line.equals(other.get(i)) ? before[i] + 1 : Math.max(now[i], before[i + 1]);
      }
      before = now;
    }
    return before[other.size()];
  }
}

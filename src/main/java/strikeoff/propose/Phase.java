package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/**
 * A part of a run: what is printed and then fixed and cleaned. Most runs have one; one that prints
 * again on fixed cloth has several, each of which is arranged by itself.
 *
 * @param number from 1
 * @param count how many the run has
 * @param from the place of its first step in the run, from 0
 * @param to the place after its last one
 */
record Phase(int number, int count, int from, int to) {

  /** Those of a run, in order; one at least. */
  static List<Phase> of(List<Step> run) {
    List<Integer> ends = new ArrayList<>();
    boolean printed = false;
    int fixed = -1;
    for (int i = 0; i < run.size(); i++) {
      Step step = run.get(i);
      if (step instanceof PrintStep) {
        if (fixed >= 0) {
          ends.add(fixed + 1);
          fixed = -1;
        }
        printed = true;
      } else if (printed && Leeway.isWet(step)) {
        fixed = i;
      }
    }
    ends.add(run.size());
    List<Phase> phases = new ArrayList<>();
    int from = 0;
    for (int to : ends) {
      phases.add(new Phase(phases.size() + 1, ends.size(), from, to));
      from = to;
    }
    return phases;
  }

  boolean isLast() {
    return number == count;
  }

  List<Step> before(List<Step> run) {
    return run.subList(0, from);
  }

  List<Step> own(List<Step> run) {
    return run.subList(from, to);
  }

  /** What comes after it, which is as it is. */
  List<Step> after(List<Step> run) {
    return run.subList(to, run.size());
  }
}

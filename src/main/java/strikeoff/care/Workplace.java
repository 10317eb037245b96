package strikeoff.care;

import strikeoff.plan.Step;

/** Where something can hurt: in a step, or all the day. */
public sealed interface Workplace {

  /** Number of the step; 0 for the plan as a whole. */
  int number();

  /** In a step of the run. */
  record InStep(Step step) implements Workplace {

    @Override
    public int number() {
      return step.number();
    }

    /** A run has each number once; all that a step holds need not be asked for it. */
    @Override
    public boolean equals(Object other) {
      return other instanceof InStep in && in.number() == number();
    }

    @Override
    public int hashCode() {
      return number();
    }
  }

  /** What is there as long as the plan is worked on. */
  enum AllDay implements Workplace {
    CLASS,
    AIR;

    @Override
    public int number() {
      return 0;
    }
  }
}

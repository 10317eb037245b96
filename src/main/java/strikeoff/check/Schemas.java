package strikeoff.check;

import strikeoff.plan.yaml.PlanSchema;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.studio.StudioSchema;

/** Schemas of what people write for the program. */
public final class Schemas {

  private Schemas() {}

  /** The JSON Schema of a plan, with the names that the built-in policy knows. */
  public static String plan() {
    return plan(Checker.builtIn());
  }

  /** The JSON Schema of a plan that may name what the checker's studio owns, with its defaults. */
  public static String plan(Checker checker) {
    return PlanSchema.text(checker.policy(), checker.studio().stock());
  }

  /**
   * The JSON Schema of a policy file, with the rules that the checker has.
   *
   * @param others true if the studio may have others besides
   */
  public static String policy(Checker checker, boolean others) {
    return StudioSchema.text(PolicyReader.builtIn(), checker.rules().rules(), others);
  }
}

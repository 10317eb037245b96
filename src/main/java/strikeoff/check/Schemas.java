package strikeoff.check;

import strikeoff.plan.yaml.PlanSchema;
import strikeoff.policy.yaml.PolicyReader;

/** Schemas of what people write for the program. */
public final class Schemas {

  private Schemas() {}

  /** The JSON Schema of a plan, with the names that the built-in policy knows. */
  public static String plan() {
    return PlanSchema.text(PolicyReader.builtIn());
  }
}

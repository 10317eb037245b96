package strikeoff.rulebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.kie.api.definition.rule.Rule;
import strikeoff.evidence.Evidence;
import strikeoff.rulebook.own.OwnRules;

/** Takes what rules find; the global of every rule. */
public final class Reporter {

  /** What rules call it. */
  public static final String GLOBAL = "reporter";

  /** More than anybody reads, and the engine's bound to firings as well. */
  static final int MOST_REPORTS = 50_000;

  private final List<Report> reports = new ArrayList<>();
  private boolean overrun;

  /**
   * Reports a fault.
   *
   * @param rule the rule that found it
   * @param judged the fact it judged; its path is where the finding stands
   * @param further more facts or limits whose values the message names
   * @throws NullPointerException if any is missing: told here, where the rule at fault is known
   */
  public void report(Rule rule, Evidence judged, Object... further) {
    Objects.requireNonNull(rule, "a report names no rule");
    Objects.requireNonNull(judged, "a report names no fact");
    if (reports.size() >= MOST_REPORTS) {
      overrun = true;
      throw new TooManyReports();
    }
    reports.add(new Report(rule, judged, List.of(further)));
  }

  /** True if more was reported than is taken, whatever the rule made of that. */
  boolean overrun() {
    return overrun;
  }

  /** Everything reported so far, in the order of firing. */
  public List<Report> reports() {
    return Collections.unmodifiableList(reports);
  }

  /** A rule goes round. An error, since nothing may catch it on its way. */
  static final class TooManyReports extends Error {

    private static final long serialVersionUID = 1;

    TooManyReports() {
      super("it reported more than " + MOST_REPORTS + " times", null, false, false);
    }
  }

  /** One call of a rule. */
  public record Report(Rule rule, Evidence judged, List<Object> further) {

    /** The id of the rule, whichever of its alternatives was met. */
    String ruleId() {
      return OwnRules.idOf(rule.getName());
    }
  }
}

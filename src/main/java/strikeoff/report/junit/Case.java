package strikeoff.report.junit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import strikeoff.findings.FailedRule;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Mistake;
import strikeoff.report.outcome.Outcome;

/**
 * One case of a plan's suite.
 *
 * @param message why it didn't pass, in one line; empty if it did
 * @param type what kind of reason, as a rule's id
 * @param text the whole reason
 * @param aside what was found besides and fails nothing; else empty
 */
record Case(String name, Ending ending, String message, String type, String text, String aside) {

  /** How a case ends. */
  enum Ending {
    PASSED(""),
    FAILURE("failure"),
    ERROR("error"),
    SKIPPED("skipped");

    private final String element;

    Ending(String element) {
      this.element = element;
    }

    String element() {
      return element;
    }
  }

  static final String READING = "reading";

  /**
   * @param families of rules that judged
   * @param leftOut families that nobody asked, which are skipped
   */
  static List<Case> of(Outcome plan, List<String> families, List<String> leftOut) {
    List<Case> cases = new ArrayList<>();
    cases.add(reading(plan));
    Set<String> names = new LinkedHashSet<>(families);
    // A rule that is in no list any more still has its say.
    plan.findings().forEach(f -> names.add(family(f.rule())));
    plan.failedRules().forEach(f -> names.add(family(f.rule())));
    Set<String> all = new TreeSet<>(names);
    all.addAll(leftOut);
    for (String name : all) {
      cases.add(
          plan.figures().isPresent() && names.contains(name)
              ? judged(plan, name)
              : new Case(name, Ending.SKIPPED, "", "", "", ""));
    }
    return cases;
  }

  private static Case reading(Outcome plan) {
    if (plan.failure().isPresent()) {
      return new Case(
          READING, Ending.ERROR, plan.sentence(), "not-checked", plan.failure().get(), "");
    }
    if (plan.mistakes().isEmpty()) {
      return passed(READING, "");
    }
    List<String> lines = new ArrayList<>();
    for (Mistake mistake : plan.mistakes()) {
      String path = mistake.path().isEmpty() ? "" : " " + mistake.path() + ":";
      lines.add(
          plan.file() + ":" + mistake.region().start() + ":" + path + " " + mistake.message());
    }
    return new Case(
        READING, Ending.ERROR, plan.sentence(), "unreadable", String.join("\n", lines), "");
  }

  private static Case judged(Outcome plan, String family) {
    List<String> lines = new ArrayList<>();
    List<FailedRule> failedRules =
        plan.failedRules().stream().filter(f -> family(f.rule()).equals(family)).toList();
    failedRules.forEach(f -> lines.add(f.rule() + ": " + f.what()));
    List<Found> stops =
        plan.findings().stream()
            .filter(f -> f.blocks() && !f.isOld())
            .filter(f -> family(f.rule()).equals(family))
            .toList();
    stops.forEach(f -> lines.addAll(FindingLines.of(plan, f)));
    String text = String.join("\n", lines);
    String aside = aside(plan, family);
    if (!failedRules.isEmpty()) {
      return new Case(
          family, Ending.ERROR, failedRules.get(0).what(), failedRules.get(0).rule(), text, aside);
    }
    if (stops.isEmpty()) {
      return passed(family, aside);
    }
    Found first = stops.get(0);
    String more = stops.size() == 1 ? "" : " (and " + (stops.size() - 1) + " more)";
    return new Case(family, Ending.FAILURE, first.message() + more, first.rule(), text, aside);
  }

  private static String aside(Outcome plan, String family) {
    List<String> lines = new ArrayList<>();
    plan.findings().stream()
        .filter(f -> (!f.blocks() || f.isOld()) && family(f.rule()).equals(family))
        .forEach(f -> lines.addAll(FindingLines.of(plan, f)));
    return String.join("\n", lines);
  }

  private static Case passed(String name, String aside) {
    return new Case(name, Ending.PASSED, "", "", "", aside);
  }

  private static String family(String rule) {
    int slash = rule.indexOf('/');
    return slash < 0 ? rule : rule.substring(0, slash);
  }
}

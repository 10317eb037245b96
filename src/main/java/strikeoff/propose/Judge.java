package strikeoff.propose;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.plan.Step;

/** Checks a run as a printer would: written into the plan, by all rules. */
final class Judge {

  private static final String DRYING = "drying/";

  /** Families of rules whose advice is about how the work goes; other advice costs no print. */
  private static final List<String> OF_THE_RUN = List.of(DRYING, "order/", "seams/", "media/");

  private final Checker checker;
  private final String name;
  private final RunText text;
  private final Set<String> advice;
  private final boolean anyOrder;
  private final boolean ordinaryDay;

  /**
   * @param checker without trials
   * @param advice ids of rules whose advice the printer has anyway
   * @param anyOrder true to take advice of any other rule as well
   * @param ordinaryDay true to take advice on slow drying, which nobody asked to wait for
   */
  Judge(
      Checker checker,
      String name,
      RunText text,
      Set<String> advice,
      boolean anyOrder,
      boolean ordinaryDay) {
    this.checker = checker;
    this.name = name;
    this.text = text;
    this.advice = Set.copyOf(advice);
    this.anyOrder = anyOrder;
    this.ordinaryDay = ordinaryDay;
  }

  /**
   * A run that was checked.
   *
   * @param text the plan with it
   */
  record Judged(String text, Checked.Judged checked) {

    /** Ids of the rules that stop it, or see a risk in it, that nobody accepted. */
    Set<String> faults() {
      Set<String> faults = new TreeSet<>();
      for (Finding finding : checked.findings()) {
        if (finding.severity() != Severity.ADVICE && finding.accepted().isEmpty()) {
          faults.add(finding.rule().id());
        }
      }
      return faults;
    }

    /** Ids of the rules that advise on how its work goes. */
    Set<String> advice() {
      return Judge.advice(checked);
    }
  }

  static Set<String> advice(Checked.Judged checked) {
    Set<String> advice = new HashSet<>();
    checked
        .of(Severity.ADVICE)
        .map(finding -> finding.rule().id())
        .filter(id -> OF_THE_RUN.stream().anyMatch(id::startsWith))
        .forEach(advice::add);
    return advice;
  }

  /** Nothing if the run can't be written, or can't be read or judged as it is written. */
  Optional<Judged> judged(List<Step> run) {
    return text.with(run)
        .flatMap(
            written ->
                checker.check(name, written) instanceof Checked.Judged checked
                        && checked.failedRules().isEmpty()
                    ? Optional.of(new Judged(written, checked))
                    : Optional.empty());
  }

  boolean accepts(Judged judged) {
    return judged.faults().isEmpty()
        && (anyOrder || judged.advice().stream().allMatch(this::takes));
  }

  private boolean takes(String rule) {
    return advice.contains(rule) || ordinaryDay && rule.startsWith(DRYING);
  }
}

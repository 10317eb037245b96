package strikeoff.propose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.document.PlanPath;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.plan.Step;

/** Checks a run as a printer would: written into the plan, by all rules. */
final class Judge {

  private static final String DRYING = "drying/";
  private static final String TIME = "time/";

  /** Families of rules whose advice is about how the work goes; other advice costs no print. */
  private static final List<String> OF_THE_RUN =
      List.of(DRYING, "order/", "seams/", "media/", "fixing/left-in-bath", "fixing/left-unwashed");

  private final Checker checker;
  private final Checked.Judged before;
  private final RunText text;
  private final Map<List<Step>, Judged> looked;
  private final Set<String> advice;
  private final boolean anyOrder;
  private final boolean ordinaryDay;

  /**
   * Takes advice of any rule.
   *
   * @param before the plan as it was read and judged
   */
  Judge(Checker checker, Checked.Judged before, RunText text) {
    this(checker, before, text, new ConcurrentHashMap<>(), Set.of(), true, true);
  }

  private Judge(
      Checker checker,
      Checked.Judged before,
      RunText text,
      Map<List<Step>, Judged> looked,
      Set<String> advice,
      boolean anyOrder,
      boolean ordinaryDay) {
    this.checker = checker.withoutTrials();
    this.before = before;
    this.text = text;
    this.looked = looked;
    this.advice = Set.copyOf(advice);
    this.anyOrder = anyOrder;
    this.ordinaryDay = ordinaryDay;
  }

  /**
   * The same judge for one who is to take less advice.
   *
   * @param advice ids of rules whose advice the printer has anyway
   * @param anyOrder true to take advice of any other rule as well
   * @param ordinaryDay true to take advice on slow drying, which nobody asked to wait for
   */
  Judge taking(Set<String> advice, boolean anyOrder, boolean ordinaryDay) {
    return new Judge(checker, before, text, looked, advice, anyOrder, ordinaryDay);
  }

  /** The same judge for somebody who plans for an ordinary day. */
  Judge onOrdinaryDays() {
    return taking(advice, anyOrder, true);
  }

  /**
   * A run that was checked.
   *
   * @param text the plan with it
   * @param later steps of the plan that come after the part that is arranged; what is found at them
   *     is left to whoever arranges those
   */
  record Judged(String text, Checked.Judged checked, int later) {

    /** Ids of the rules that stop it, or see a risk in it, that nobody accepted. */
    Set<String> faults() {
      Set<String> faults = new TreeSet<>();
      for (Finding finding : findings()) {
        if (stands(finding)) {
          faults.add(finding.rule().id());
        }
      }
      return faults;
    }

    /** Ids of the rules that advise on how its work goes. */
    Set<String> advice() {
      return findings().stream()
          .filter(finding -> finding.severity() == Severity.ADVICE)
          .map(finding -> finding.rule().id())
          .filter(id -> OF_THE_RUN.stream().anyMatch(id::startsWith))
          .collect(Collectors.toSet());
    }

    /**
     * What is found but at later steps; where there are any, neither what is found of the time of
     * the whole run, which they are part of.
     */
    List<Finding> findings() {
      if (later == 0) {
        return checked.findings();
      }
      int first = checked.plan().run().size() - later;
      return checked.findings().stream()
          .filter(finding -> isInRun(finding) || !finding.rule().id().startsWith(TIME))
          .filter(
              finding ->
                  IntStream.range(first, first + later)
                      .mapToObj(new PlanPath("run")::item)
                      .noneMatch(step -> isIn(finding.place().path(), step)))
          .toList();
    }

    private static boolean isInRun(Finding finding) {
      return finding.place().path().text().startsWith("run[");
    }

    private static boolean isIn(PlanPath path, PlanPath step) {
      return path.equals(step) || path.text().startsWith(step.text() + ".");
    }
  }

  /** True of a stop or a risk that nobody accepted. */
  static boolean stands(Finding finding) {
    return finding.severity() != Severity.ADVICE && finding.accepted().isEmpty();
  }

  /** The plan as it stands. */
  Judged asItIs(String written, Checked.Judged checked) {
    return new Judged(written, checked, text.later());
  }

  /** Looks at a run once, and knows it from then on. */
  Optional<Judged> looked(List<Step> run) {
    Optional<Judged> judged = judged(run);
    judged.ifPresent(one -> looked.put(run, one));
    return judged;
  }

  /** Nothing if the run can't be written, or can't be read or judged as it is written. */
  Optional<Judged> judged(List<Step> run) {
    // To look a run up hashes its steps, which costs a start more than to write it.
    Judged before = looked.isEmpty() ? null : looked.get(run);
    return before != null ? Optional.of(before) : written(run);
  }

  private Optional<Judged> written(List<Step> run) {
    return text.with(run)
        .flatMap(
            written ->
                checker.check(written, before) instanceof Checked.Judged checked
                        && checked.failedRules().isEmpty()
                    ? Optional.of(asItIs(written, checked))
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

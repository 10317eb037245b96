package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import strikeoff.check.Checked;
import strikeoff.day.Moment;
import strikeoff.day.Use;
import strikeoff.day.facts.Timeline;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.units.Span;

/** What came of looking for a better run. */
public sealed interface Proposal {

  /** The plan as it was read and judged. */
  Checked before();

  /** It can't be read, or not be judged. */
  record Unread(Checked before) implements Proposal {}

  /**
   * No run cures it.
   *
   * @param why in one sentence
   * @param findings what stands against the plan whatever its run is; may be none
   */
  record Refused(Checked.Judged before, String why, List<Finding> findings) implements Proposal {
    public Refused {
      findings = List.copyOf(findings);
    }
  }

  /**
   * A run that the check accepts.
   *
   * @param text the plan's text with it; as it was if no better run was found
   * @param after what the check makes of it
   * @param slowFinish when it ends if everything dries slowly
   * @param bound no run ends before
   * @param tried how many runs were tried
   * @param notes what a printer should know of it, a sentence each
   */
  record Found(
      Checked.Judged before,
      String text,
      Checked.Judged after,
      Moment slowFinish,
      Bound bound,
      long tried,
      List<String> notes)
      implements Proposal {

    public Found {
      notes = List.copyOf(notes);
    }

    /** The same with more to know of it. */
    Found noting(List<String> more) {
      List<String> all = new ArrayList<>(notes);
      more.stream().filter(note -> !all.contains(note)).forEach(all::add);
      return more.isEmpty() ? this : new Found(before, text, after, slowFinish, bound, tried, all);
    }

    public Moment finish() {
      return after.facts().timeline().finish();
    }

    /** True if nothing was changed. */
    public boolean isAsItWas() {
      return after == before;
    }

    /** True if the plan's own run is not printable. */
    public boolean mends() {
      return before.findings().stream()
          .anyMatch(f -> f.severity() == Severity.STOP && Judge.stands(f));
    }

    /** When the plan's own run ends; nothing if it prints nothing yet. */
    public Optional<Moment> ends() {
      Timeline today = before.facts().timeline();
      return today.impressions().isEmpty() ? Optional.empty() : Optional.of(today.finish());
    }

    /**
     * What stands against the plan's own run where that ends as soon, so that the run is proposed
     * for that alone; a line each.
     */
    public List<String> cured() {
      return isAsItWas() || ends().filter(end -> end.compareTo(finish()) <= 0).isEmpty()
          ? List.of()
          : before.findings().stream()
              .filter(Judge::stands)
              .map(
                  finding ->
                      "In yours "
                          + finding.rule().id()
                          + ", line "
                          + finding.place().position().line()
                          + ": "
                          + finding.message())
              .toList();
    }

    /** How its end compares with that of the plan's own run which it cures. */
    public String endsBut() {
      String compared = ends().filter(finish()::equals).isPresent() ? "as late as" : "later than";
      return compared
          + " yours, but without "
          + (cured().size() == 1
              ? "what the check finds there"
              : "the " + cured().size() + " faults that the check finds there");
    }

    /** The room's opening hours between both ends; nothing if there is nothing saved. */
    public Optional<Span> saved() {
      return ends()
          .filter(end -> end.compareTo(finish()) > 0)
          .map(
              end ->
                  Span.ofSeconds(Use.open(finish().seconds(), end.seconds(), before.plan().hours()))
                      .wholeMinutesUp())
          .filter(saved -> saved.minutes() > 0);
    }

    /** What it does otherwise than the plan's own run, in sentences. */
    public List<String> moved() {
      return Moved.of(this);
    }

    /** How far it is from the best, in sentences. */
    public String proof() {
      String such = bound.advised().map(advised -> " " + advised.text() + ",").orElse("");
      String none =
          (such.isEmpty() ? "No run" : "No runs")
              + " of these prints"
              + such
              + " can end before "
              + bound.finish().text()
              + ": "
              + bound.text();
      Span gap = finish().since(bound.finish());
      return none
          + (isProved()
              ? ". This one is as short as can be" + (such.isEmpty() ? "." : " in such an order.")
              : ". This one ends "
                  + (gap.minutes() < 1 ? "less than a minute" : gap.wholeMinutesUp().text())
                  + " later"
                  + (mayBeSooner()
                      ? "; a longer search, as by `--seconds 60`, may find a sooner run."
                      : "."))
          + bound
              .advised()
              .map(
                  advised ->
                      " With `--any-order` it might end from "
                          + advised.otherwise().text()
                          + " on.")
              .orElse("");
    }

    /** True if so many opening hours lie between the bound and its end as are worth a search. */
    private boolean mayBeSooner() {
      long open = Use.open(bound.finish().seconds(), finish().seconds(), before.plan().hours());
      return open >= before.facts().policy().time().soonerRunWorthTelling().seconds();
    }

    /** What the check says of it besides, a line each, and what of that is new. */
    public List<String> advice() {
      Set<String> known =
          before.findings().stream().map(f -> f.rule().id()).collect(Collectors.toSet());
      return after.findings().stream()
          .map(
              finding ->
                  finding.rule().id()
                      + ", line "
                      + finding.place().position().line()
                      + ": "
                      + finding.rule().summary()
                      + (known.contains(finding.rule().id()) ? "." : ": new."))
          .toList();
    }

    /** True if no run ends sooner, of those that keep to the advice that the bound counts on. */
    public boolean isProved() {
      return finish().compareTo(bound.finish()) <= 0;
    }
  }
}

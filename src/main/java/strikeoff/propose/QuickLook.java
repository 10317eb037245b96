package strikeoff.propose;

import java.util.Optional;
import java.util.OptionalLong;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.Moment;
import strikeoff.day.facts.Surety;
import strikeoff.document.yaml.Manuscript;
import strikeoff.findings.Finding;
import strikeoff.units.Span;

/**
 * Whether another run of a plan is so much sooner that a search is worth its seconds: the first few
 * runs that one begins with, and no more. The same plan gets the same answer.
 */
public final class QuickLook {

  /** More impressions than that take longer than a look. */
  private static final int MOST_IMPRESSIONS = 300;

  private QuickLook() {}

  /**
   * When the soonest of them ends, if the check accepts it and it saves what the policy calls worth
   * telling; nothing for a plan that another run makes no better, nor for one in several parts.
   */
  public static Optional<Moment> sooner(Checker checker, Checked.Judged judged) {
    Span worth = checker.policy().time().soonerRunWorthTelling();
    if (!Arranging.prints(judged.plan())
        || judged.facts().layout().footprints().size() > MOST_IMPRESSIONS
        || judged.findings().stream().anyMatch(QuickLook::staysInAnyRun)
        || !judged.failedRules().isEmpty()
        || Phase.of(judged.plan().run()).size() > 1
        || isShort(judged, worth)) {
      return Optional.empty();
    }
    RunWanted asked = new RunWanted(Surety.SURE, false, false, false, OptionalLong.of(0), () -> 1);
    Leeway leeway = Leeway.of(judged.plan(), judged.facts().layout(), checker.policy(), asked);
    return leeway.last().isEmpty()
        ? Optional.empty()
        : Manuscript.of(judged.source().text())
            .flatMap(
                text ->
                    new Arranging(checker.withoutTrials(), asked, 1, judged, leeway)
                        .quickly(text, worth))
            .map(found -> found.checked().facts().timeline().finish());
  }

  /** True of what stands against a plan but that its run takes too long. */
  private static boolean staysInAnyRun(Finding finding) {
    return Judge.stands(finding) && !finding.rule().id().startsWith("time/");
  }

  /** True if the whole run takes no longer than what is worth saving. */
  private static boolean isShort(Checked.Judged judged, Span worth) {
    Moment opens = Moment.opens(1, judged.plan().hours());
    return judged.facts().timeline().finish().since(opens).compareTo(worth) <= 0;
  }
}

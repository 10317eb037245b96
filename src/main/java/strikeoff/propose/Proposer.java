package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.Moment;
import strikeoff.document.Position;
import strikeoff.document.yaml.Manuscript;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;

/**
 * Looks for the run of a plan that ends soonest, or for the shortest to read that ends nearly as
 * soon. Only what the check accepts is proposed.
 */
public final class Proposer {

  /** More impressions than that would leave no time to try anything. */
  private static final int MOST_IMPRESSIONS = 3_000;

  private final Checker checker;
  private final RunWanted asked;
  private final int atOnce;
  private Checked.Judged before;

  private Proposer(Checker checker, RunWanted asked, int atOnce) {
    this.checker = checker.withoutTrials();
    this.asked = asked;
    this.atOnce = Math.max(1, atOnce);
  }

  /**
   * Looks for a run.
   *
   * @param text the plan's text, without a byte-order mark
   * @param atOnce searches at the same time where seconds end them
   */
  public static Proposal proposed(
      Checker checker, String name, String text, RunWanted asked, int atOnce) {
    Checked checked = checker.check(name, text);
    if (!(checked instanceof Checked.Judged judged) || !judged.failedRules().isEmpty()) {
      return new Proposal.Unread(checked);
    }
    Proposer proposer = new Proposer(checker, asked, atOnce);
    proposer.before = judged;
    Proposal proposal = proposer.proposed(text);
    return proposal instanceof Proposal.Found found
        ? found.noting(CommentsGone.noted(text, found.text()))
        : proposal;
  }

  private Proposal.Refused refused(String why) {
    return new Proposal.Refused(before, why, List.of());
  }

  private Proposal proposed(String text) {
    PrintPlan plan = before.plan();
    Layout layout = before.facts().layout();
    if (layout.footprints().isEmpty()) {
      return refused("There is nothing to print.");
    }
    if (layout.footprints().size() > MOST_IMPRESSIONS) {
      return refused(
          "It has "
              + layout.footprints().size()
              + " impressions; of more than "
              + MOST_IMPRESSIONS
              + " no run is proposed.");
    }
    Optional<Position> braces = Manuscript.of(text).flatMap(Manuscript::braces);
    if (braces.isPresent()) {
      return refused(
          "The braces round the whole plan, from line "
              + braces.get().line()
              + " on, leave no place for another run: take them away and begin a line with each of"
              + " its keys. What stands below a key may stay in braces, the run too.");
    }
    Moment opens = Moment.opens(1, plan.hours());
    if (Phase.of(plan.run()).size() > 1) {
      return inPhases(text);
    }
    Leeway leeway = Leeway.of(plan, layout, checker.policy(), asked);
    return leeway.last().isEmpty()
        ? fixedToo(text)
        : new Arranging(checker, asked, atOnce, before, leeway).of(text, opens, opens);
  }

  /** Part by part: each is arranged after those before it, with what comes later as it is. */
  private Proposal inPhases(String text) {
    String now = text;
    Checked.Judged judged = before;
    Moment from = Moment.opens(1, before.plan().hours());
    Moment inAnyOrder = from;
    List<Bound> bounds = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    long tried = 0;
    Proposal.Found last = null;
    int count = Phase.of(before.plan().run()).size();
    for (int number = 1; number <= count; number++) {
      PrintPlan plan = judged.plan();
      Phase phase = Phase.of(plan.run()).get(number - 1);
      Leeway leeway = Leeway.of(plan, judged.facts().layout(), checker.policy(), asked, phase);
      if (leeway.last().isEmpty()) {
        return refused(
            "What it prints last is never fixed or washed: write the steps that do, and ask again.");
      }
      from = leeway.begins(from);
      inAnyOrder = leeway.begins(inAnyOrder);
      Proposal proposal =
          new Arranging(checker, asked.part(number, count), atOnce, judged, leeway)
              .of(now, from, inAnyOrder);
      if (!(proposal instanceof Proposal.Found found)) {
        return proposal instanceof Proposal.Refused refused
            ? new Proposal.Refused(
                before,
                "Its prints before fixing no. " + number + " of " + count + ": " + refused.why(),
                refused.findings())
            : proposal;
      }
      last = found;
      now = found.text();
      judged = found.after();
      tried += found.tried();
      found.notes().stream().filter(note -> !notes.contains(note)).forEach(notes::add);
      bounds.add(found.bound());
      from = found.bound().finish();
      inAnyOrder = found.bound().inAnyOrder();
    }
    boolean same =
        now.equals(text)
            || Arranging.endsNoSooner(
                before,
                judged.plan().run(),
                judged.facts().timeline().finish(),
                Arranging.rehearsal(before, checker.policy(), asked.surety()));
    return new Proposal.Found(
        before,
        same ? text : now,
        same ? before : judged,
        same ? slowFinish() : last.slowFinish(),
        last.bound().after(bounds.subList(0, count - 1)),
        tried,
        same ? List.of() : notes);
  }

  /** Of the plan's own run. */
  private Moment slowFinish() {
    return Arranging.rehearsal(before, checker.policy(), asked.surety())
        .slowFinish(before.plan().run());
  }

  /** With steps that fix the prints, of which the plan says nothing. */
  private Proposal fixedToo(String text) {
    Optional<String> ironing =
        FixingSteps.tooLong(before.plan(), before.facts().layout(), checker.policy());
    if (ironing.isPresent()) {
      return refused(ironing.get());
    }
    Optional<Proposal.Refused> likeliest = Optional.empty();
    for (String fixed : FixingSteps.written(text, before.plan(), checker.policy())) {
      Proposal proposal = proposed(checker, before.file(), fixed, asked, atOnce);
      if (proposal instanceof Proposal.Found found) {
        List<String> notes = new ArrayList<>(found.notes());
        notes.add(
            "The plan says nothing of how its prints are fixed: those steps are assumed by its"
                + " pastes and fibres; compare them with what your dyes' and paints' sheets say.");
        return new Proposal.Found(
            before,
            found.text(),
            found.after(),
            found.slowFinish(),
            found.bound(),
            found.tried(),
            notes);
      }
      if (likeliest.isEmpty() && proposal instanceof Proposal.Refused refused) {
        likeliest = Optional.of(refused);
      }
    }
    return likeliest
        .map(
            refused ->
                new Proposal.Refused(
                    before,
                    "Its run has no steps that fix the prints; with those that its pastes ask for: "
                        + refused.why(),
                    refused.findings()))
        .orElseGet(
            () ->
                refused(
                    "Its run has no steps that fix the prints (fix, rinse, wash or heat-set), and"
                        + " none can be written for it."));
  }
}

package strikeoff.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Surety;
import strikeoff.document.PlanPath;
import strikeoff.document.yaml.Manuscript;
import strikeoff.facts.Facts;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.layout.Layout;
import strikeoff.paste.Lives;
import strikeoff.plan.Acceptance;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.propose.Judge.Judged;

/**
 * Looks for the run of a plan that ends soonest, or for the shortest to read that ends nearly as
 * soon. Only what the check accepts is proposed.
 */
public final class Proposer {

  /** More impressions than that would leave no time to try anything. */
  private static final int MOST_IMPRESSIONS = 3_000;

  /** By so much of its time a run may be longer that has fewer steps. */
  private static final double NEARLY = 1.05;

  /** Starting runs that are checked to see what no run cures. */
  private static final int LOOKED_AT = 4;

  /** Families of rules that another run may cure even if no starting run does. */
  private static final List<String> CURABLE = List.of("time/", "drying/", "order/", "seams/");

  private final Checker checker;
  private final RunWanted asked;
  private final int atOnce;
  private String name = "";
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
    proposer.name = name;
    proposer.before = judged;
    return proposer.proposed(text);
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
    if (Leeway.printsAgain(plan.run())) {
      return refused(
          "It prints again after the cloth was fixed or washed; propose a run for each of its"
              + " phases, as a plan of its own.");
    }
    Leeway leeway = Leeway.of(plan, layout, policy(), asked);
    if (leeway.last().isEmpty()) {
      return fixedToo(text);
    }
    if (Manuscript.of(text).flatMap(m -> m.withList("run", List.of("- end of day"))).isEmpty()) {
      return refused("Its text has no place for another run: write it in lines, without braces.");
    }
    return searched(text, leeway);
  }

  /** With steps that fix the prints, of which the plan says nothing. */
  private Proposal fixedToo(String text) {
    Optional<Proposal.Refused> likeliest = Optional.empty();
    for (String fixed : FixingSteps.written(text, before.plan(), policy())) {
      Proposal proposal = proposed(checker, name, fixed, asked, atOnce);
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

  private Policy policy() {
    return checker.policy();
  }

  private Rehearsal rehearsal(Leeway leeway) {
    Facts facts = before.facts();
    PrintPlan plan = before.plan();
    return Rehearsal.of(
        plan, facts.layout(), policy(), new Lives(plan, policy())::least, asked.surety());
  }

  private Proposal searched(String text, Leeway leeway) {
    asked.onlooker().sees(0, Optional.empty());
    Order order = new Order(leeway);
    Rehearsal rehearsal = rehearsal(leeway);
    PasteLeft stock = new PasteLeft(before.plan(), policy());
    Beginnings begun = new Beginnings(leeway, order, rehearsal, stock);
    List<Candidate> beginnings = begun.all(() -> Team.begins(asked, begun.tried()));
    if (beginnings.isEmpty()) {
      return refused("No order of its prints keeps to what must come first.");
    }
    RunText runText = new RunText(text, leeway, rehearsal);
    Judge anything = new Judge(checker, name, runText, Set.of(), true, true);
    List<Looked> looked = looked(beginnings, anything);
    if (looked.isEmpty()) {
      return refused("None of its runs can be judged.");
    }
    List<Finding> incurable = incurable(looked);
    if (!incurable.isEmpty()) {
      return new Proposal.Refused(
          before, "Whatever its run, the plan is not printable as it is.", incurable);
    }
    Set<String> advice = advice(looked);
    boolean sewnLast = !asked.anyOrder() && !advice.contains("seams/sewn-too-early");
    Order kept = sewnLast ? order.sewnLast(Leeway.awayAfterSewing(policy())) : order;
    List<Candidate> starts = beginnings.stream().filter(start -> kept.keeps(start.run())).toList();
    if (starts.isEmpty()) {
      return refused("No order of its prints keeps to what must come first.");
    }
    Judge judge =
        new Judge(
            checker, name, runText, advice, asked.anyOrder(), asked.surety() == Surety.LIKELY);
    ToDoubleFunction<Candidate> cost =
        asked.shortest() ? Candidate::costOfShortest : Candidate::cost;
    Bound bound = Bounding.of(leeway, rehearsal, policy(), sewnLast, asked.surety() == Surety.SURE);
    Team team = team(leeway, kept, judge, begun.tried());
    List<Search> searches =
        team.soonest(
            search -> search.soonest(starts, cost),
            search -> search.best().filter(best -> best.ends(bound.finish())).isPresent());
    Optional<Search> first =
        searches.stream()
            .filter(s -> s.best().isPresent())
            .min(Comparator.comparingDouble(s -> cost.applyAsDouble(s.best().get().candidate())));
    if (first.isEmpty()) {
      return new Proposal.Refused(
          before,
          "Of " + team.tried() + " runs none was found that the check accepts.",
          before.findings().stream().filter(Proposer::stands).toList());
    }
    Search best = first.get();
    Tidying tidying = new Tidying(leeway, kept, asked.onlooker()::hasEnough);
    tidying.tidy(best, best.best().get().candidate().worked(), cost);
    Search.Found soonest = best.best().get();
    Search.Found found = soonest;
    if (!asked.shortest()) {
      double within = within(soonest, rehearsal, judge);
      List<Search> tidier = team.fewest(search -> search.fewest(soonest, within));
      for (Search search : tidier) {
        tidying.tidy(search, within, c -> c.costOfFew(within));
      }
      found =
          tidier.stream()
              .map(s -> s.best().get())
              .min(Comparator.comparingDouble(f -> f.candidate().costOfFew(within)))
              .get();
    }
    boolean same = found.candidate().run().equals(Order.numbered(before.plan().run()));
    Checked.Judged after =
        same ? before : (Checked.Judged) checker.check(name, found.judged().text());
    return new Proposal.Found(
        before,
        same ? text : found.judged().text(),
        after,
        rehearsal.slowFinish(found.candidate().run()),
        bound,
        begun.tried() + team.tried(),
        same ? List.of() : notes(found.candidate().run(), runText));
  }

  private static boolean stands(Finding finding) {
    return finding.severity() != Severity.ADVICE && finding.accepted().isEmpty();
  }

  /** A run that was looked at before any search. */
  private record Looked(List<Step> run, Judged judged) {}

  /** The plan's own run, and the best of the starting runs. */
  private List<Looked> looked(List<Candidate> beginnings, Judge judge) {
    List<Looked> looked = new ArrayList<>();
    if (prints(before.plan())) {
      looked.add(new Looked(before.plan().run(), new Judged("", before)));
    }
    Set<List<Step>> runs = new LinkedHashSet<>();
    beginnings.stream()
        .sorted(Comparator.comparingDouble(Candidate::cost))
        .limit(LOOKED_AT)
        .forEach(candidate -> runs.add(candidate.run()));
    // Worked as the plan lists its prints, which the rules have nothing against.
    runs.add(beginnings.get(0).run());
    for (List<Step> run : runs) {
      judge.judged(run).ifPresent(judged -> looked.add(new Looked(run, judged)));
    }
    return looked;
  }

  private static boolean prints(PrintPlan plan) {
    return plan.run().stream().anyMatch(Step.Print.class::isInstance);
  }

  /** What stands against the plan in each of them, and that no other run could cure. */
  private static List<Finding> incurable(List<Looked> looked) {
    Set<String> always = new HashSet<>(looked.get(0).judged().faults());
    looked.forEach(one -> always.retainAll(one.judged().faults()));
    always.removeIf(id -> CURABLE.stream().anyMatch(id::startsWith));
    return looked.get(0).judged().checked().findings().stream()
        .filter(Proposer::stands)
        .filter(finding -> always.contains(finding.rule().id()))
        .toList();
  }

  /** What the plan is advised anyway: as it is now, or without a run of its own whatever it is. */
  private Set<String> advice(List<Looked> looked) {
    if (prints(before.plan())) {
      return Judge.advice(before);
    }
    Set<String> always = new HashSet<>(looked.get(0).judged().advice());
    looked.forEach(one -> always.retainAll(one.judged().advice()));
    return always;
  }

  /** A run as the plan has it that is accepted is not made later for the sake of fewer steps. */
  private double within(Search.Found found, Rehearsal rehearsal, Judge judge) {
    double nearly = found.candidate().worked() * NEARLY;
    boolean accepted = judge.accepts(new Judged("", before));
    double now =
        accepted && prints(before.plan())
            ? rehearsal.worked(before.facts().timeline().finish()).seconds()
            : Double.MAX_VALUE;
    return Math.max(found.candidate().worked(), Math.min(nearly, now));
  }

  private Team team(Leeway leeway, Order order, Judge judge, long begun) {
    return new Team(
        asked,
        begun,
        atOnce,
        number ->
            new Search(
                number,
                leeway,
                order,
                rehearsal(leeway),
                judge,
                new PasteLeft(before.plan(), policy())));
  }

  private List<String> notes(List<Step> run, RunText text) {
    List<String> notes = new ArrayList<>();
    for (Acceptance gone : text.dropped(run)) {
      notes.add(
          "What is accepted of "
              + gone.rule()
              + " at "
              + new PlanPath(gone.at().orElseThrow()).spoken()
              + " has no place in this run, so that line goes: “"
              + gone.because()
              + "”.");
    }
    if (Leeway.assumesFans(before.plan()) && !Leeway.namesFan(before.plan())) {
      notes.add(
          "It counts on no fan, since the plan names none: if there is one, write `equipment:"
              + " {fans: 1}` and ask again.");
    }
    return notes;
  }
}

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
import strikeoff.day.Moment;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Surety;
import strikeoff.document.yaml.Manuscript;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.paste.Lives;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.propose.Judge.Judged;
import strikeoff.units.Span;

/** Looks for the soonest way to work one part of a plan's run, or the shortest to read. */
final class Arranging {

  /** By so much of its time a run may be longer that has fewer steps. */
  private static final double NEARLY = 1.05;

  /** So much of the time may be over while the soonest run is made tidier. */
  private static final double TIDY_SOONEST = 0.7;

  /** The same while the one with the fewest steps is; to the end what was written is put back. */
  private static final double TIDY = 0.95;

  /** Starting runs that are checked to see what no run cures. */
  private static final int LOOKED_AT = 4;

  /**
   * Rules on amounts of paste: a run that washes screens more often needs more, one that mixes
   * afresh less each time.
   */
  private static final Set<String> OF_AMOUNTS =
      Set.of("paste/short", "paste/may-run-short", "paste/rest-dies");

  /** Families of rules that another run may cure even if no starting run does. */
  private static final List<String> CURABLE = List.of("time/", "drying/", "order/", "seams/");

  /** Of other families, what a paste that is mixed again cures. */
  private static final Set<String> AFRESH =
      Set.of("paste/past-its-life", "paste/may-be-past-its-life");

  /** Rules of these families that judge artwork, colours and places, whatever is printed when. */
  private static final Set<String> OF_NO_RUN =
      Set.of(
          "order/colour-dulled-by-ground",
          "order/colour-lighter-than-ground",
          "order/trap-too-narrow",
          "seams/image-in-seam-allowance",
          "seams/image-sewn-under");

  private final Checker checker;
  private final RunWanted asked;
  private final int atOnce;
  private final Checked.Judged before;
  private final Leeway leeway;

  /**
   * @param checker without trials
   * @param atOnce searches at the same time where seconds end them
   * @param before the plan as it was read and judged
   * @param leeway what of its run is to be arranged
   */
  Arranging(Checker checker, RunWanted asked, int atOnce, Checked.Judged before, Leeway leeway) {
    this.checker = checker;
    this.asked = asked;
    this.atOnce = atOnce;
    this.before = before;
    this.leeway = leeway;
  }

  private Proposal.Refused refused(String why) {
    return new Proposal.Refused(before, why, List.of());
  }

  /** True once what is found is to be told as it is; where runs are counted no clock says so. */
  private boolean isOver(double share) {
    return asked.onlooker().hasEnough()
        || asked.effort().isEmpty() && asked.timeUsed().getAsDouble() >= share;
  }

  private Policy policy() {
    return checker.policy();
  }

  private Rehearsal rehearsal(Surety surety) {
    return rehearsal(before, policy(), surety);
  }

  static Rehearsal rehearsal(Checked.Judged plan, Policy policy, Surety surety) {
    return Rehearsal.of(
        plan.plan(), plan.facts().layout(), policy, new Lives(plan.plan(), policy)::least, surety);
  }

  /**
   * @param text the plan's
   * @param from when the part can begin at the soonest
   * @param inAnyOrder the same if what comes before it need not keep to advice
   */
  Proposal of(String text, Moment from, Moment inAnyOrder) {
    asked.onlooker().sees(0, Optional.empty());
    Optional<String> baths = leeway.noDayForBaths(LastSteps.secondsOver(policy()));
    if (baths.isPresent()) {
      return refused(baths.get());
    }
    Order order = new Order(leeway);
    Rehearsal rehearsal = rehearsal(asked.surety());
    PasteLeft stock = new PasteLeft(before.plan(), policy());
    Beginnings begun = new Beginnings(leeway, order, rehearsal, stock);
    List<Candidate> beginnings = begun.all(() -> Team.begins(asked, begun.tried()));
    if (beginnings.isEmpty()) {
      return refused("No order of its prints keeps to what must come first.");
    }
    RunText runText = new RunText(text, leeway);
    Judge anything = new Judge(checker, before, runText);
    List<Judged> looked = looked(beginnings, anything);
    if (looked.isEmpty()) {
      return refused("None of its runs can be judged.");
    }
    Set<String> always = always(looked);
    List<Finding> incurable = incurable(looked, always);
    if (!incurable.isEmpty()) {
      return new Proposal.Refused(
          before, "However its prints are arranged, " + stays(incurable), incurable);
    }
    Set<String> advice = advice(looked, anything);
    boolean sewnLast = sewnLast(advice);
    Order kept = sewnLast ? order.sewnLast(Leeway.awayAfterSewing(policy())) : order;
    List<Candidate> starts = beginnings.stream().filter(start -> kept.keeps(start.run())).toList();
    if (starts.isEmpty()) {
      return refused("No order of its prints keeps to what must come first.");
    }
    Judge judge = anything.taking(advice, asked.anyOrder(), asked.surety() == Surety.LIKELY);
    ToDoubleFunction<Candidate> cost =
        asked.shortest() ? Candidate::costOfShortest : Candidate::cost;
    Bound bound = bound(rehearsal, sewnLast, from, inAnyOrder);
    Team team = team(kept, judge, begun.tried());
    List<Search> searches =
        team.soonest(
            search -> search.soonest(starts, cost),
            search -> search.best().filter(best -> best.ends(bound.finish())).isPresent());
    Optional<Search> first =
        searches.stream()
            .filter(s -> s.best().isPresent())
            .min(Comparator.comparingDouble(s -> cost.applyAsDouble(s.best().get().candidate())));
    if (first.isEmpty()) {
      // Of a plan without prints it would be that its prints are left out.
      List<Finding> told = prints(before.plan()) ? before.findings() : looked.get(0).findings();
      String none = "Of " + team.tried() + " runs none was found that the check accepts.";
      return butForPaste(starts, judge)
          .map(
              nearly ->
                  new Proposal.Refused(
                      before,
                      none
                          + " One that ends on "
                          + nearly.checked().facts().timeline().finish().text()
                          + " has nothing against it but how much paste is mixed.",
                      standing(nearly.findings(), always)))
          .orElseGet(() -> new Proposal.Refused(before, none, standing(told, always)));
    }
    Search best = first.get();
    new Tidying(leeway, kept, () -> isOver(asked.shortest() ? TIDY : TIDY_SOONEST))
        .tidy(best, best.best().get().candidate().worked(), cost);
    Search.Found soonest = best.best().get();
    double within = soonest.candidate().worked();
    if (!asked.shortest()) {
      boolean saves = saves(soonest);
      within = within(soonest, rehearsal, judge, saves);
      ToDoubleFunction<Candidate> least = least(within, saves);
      double most = within;
      Tidying tidying = new Tidying(leeway, kept, () -> isOver(TIDY));
      List<Search> tidier =
          team.fewest(search -> search.least(soonest, saves ? List.of() : starts, least));
      for (Search search : tidier) {
        tidying.tidy(search, most, least);
      }
      best =
          tidier.stream()
              .min(Comparator.comparingDouble(s -> least.applyAsDouble(s.best().get().candidate())))
              .get();
    }
    if (prints(before.plan())) {
      new AsWritten(leeway, kept, () -> isOver(1)).putBack(best, within);
    }
    new Tidying(leeway, kept, () -> isOver(1)).dropIdle(best);
    Search.Found found = best.best().get();
    boolean same =
        found.candidate().run().equals(Order.numbered(leeway.written()))
            || endsNoSooner(found, rehearsal);
    String written = same ? text : told(found.candidate().run(), runText, rehearsal);
    Checked.Judged after = same ? before : (Checked.Judged) checker.check(written, before);
    return new Proposal.Found(
        before,
        written,
        after,
        rehearsal.slowFinish(same ? Order.numbered(leeway.written()) : found.candidate().run()),
        bound,
        begun.tried() + team.tried(),
        same
            ? onOrdinaryDays(found, judge).map(List::of).orElse(List.of())
            : new RunNotes(before, leeway, asked)
                .of(found, rehearsal, runText, () -> onOrdinaryDays(found, judge)));
  }

  /**
   * True if the plan's own run lacks nothing, on a slow day neither, and the one found ends no
   * sooner on any. Parts of a run are compared when all of them are arranged.
   */
  private boolean endsNoSooner(Search.Found found, Rehearsal rehearsal) {
    return isWhole()
        && endsNoSooner(
            before,
            found.candidate().run(),
            found.judged().checked().facts().timeline().finish(),
            rehearsal);
  }

  /**
   * @param before the whole plan as it was
   * @param run another run of it
   * @param finish when that ends on an ordinary day
   */
  static boolean endsNoSooner(
      Checked.Judged before, List<Step> run, Moment finish, Rehearsal rehearsal) {
    if (!prints(before.plan()) || before.findings().stream().anyMatch(Judge::stands)) {
      return false;
    }
    List<Step> own = before.plan().run();
    return before.facts().timeline().finish().compareTo(finish) <= 0
        && rehearsal.slowFinish(own).compareTo(rehearsal.slowFinish(run)) <= 0
        && rehearsal.surely(own, rehearsal.of(own)).shortfall().isNothing();
  }

  /** True if the plan is arranged in one part. */
  private boolean isWhole() {
    return leeway.later().isEmpty() && leeway.phase().number() == 1;
  }

  private static String stays(List<Finding> incurable) {
    return incurable.stream().anyMatch(finding -> finding.severity() == Severity.STOP)
        ? "the plan is not printable as it is."
        : (incurable.size() > 1 ? "risks stay" : "a risk stays")
            + " that no run cures: mend the plan, or accept what you take upon you.";
  }

  private Bound bound(Rehearsal rehearsal, boolean sewnLast, Moment from, Moment inAnyOrder) {
    boolean sure = asked.surety() == Surety.SURE;
    Bound bound = Bounding.of(leeway, rehearsal, policy(), sewnLast, sure, from);
    if (!sewnLast && inAnyOrder.equals(from)) {
      return bound;
    }
    Bound free = Bounding.of(leeway, rehearsal, policy(), false, sure, inAnyOrder);
    List<String> seams =
        leeway.across().keySet().stream()
            .filter(seam -> !leeway.across().get(seam).isEmpty())
            .toList();
    return bound.advised(seams, free.finish());
  }

  /** The plan with that run, with how long it waits beside its waits. */
  private static String told(List<Step> run, RunText text, Rehearsal rehearsal) {
    DryingTold waits = new DryingTold(rehearsal.of(run).tasks(), rehearsal.slowly(run));
    return text.telling(waits).with(run).orElseThrow();
  }

  /** That a run which does for ordinary days alone saves a night, if it does. */
  private Optional<String> onOrdinaryDays(Search.Found found, Judge judge) {
    if (asked.surety() != Surety.SURE) {
      return Optional.empty();
    }
    int day = found.judged().checked().facts().timeline().finish().day();
    return new Beginnings(
            leeway,
            new Order(leeway),
            rehearsal(Surety.LIKELY),
            new PasteLeft(before.plan(), policy()))
        .first(start -> start.isSound() && start.rehearsed().finish().day() < day)
        .flatMap(start -> judge.onOrdinaryDays().judged(start.run()))
        .filter(judge.onOrdinaryDays()::accepts)
        .map(
            likely ->
                "It leaves time for films that dry slowly. `--likely` plans for ordinary days and ends"
                    + " on "
                    + likely.checked().facts().timeline().finish().text()
                    + " or sooner.");
  }

  /**
   * One of the first few starting runs that the check accepts, without any search.
   *
   * @param saves how much sooner than the plan's own run it has to end, in opening hours
   */
  Optional<Judged> quickly(Manuscript text, Span saves) {
    Order order = new Order(leeway);
    Rehearsal rehearsal = rehearsal(asked.surety());
    Judge anything = new Judge(checker, before, new RunText(text, leeway));
    Judged own = anything.asItIs("", before);
    Judge judge = anything.taking(own.advice(), asked.anyOrder(), false);
    Order kept = sewnLast(own.advice()) ? order.sewnLast(Leeway.awayAfterSewing(policy())) : order;
    double most = rehearsal.worked(before.facts().timeline().finish()).seconds() - saves.seconds();
    return new Beginnings(leeway, order, rehearsal, new PasteLeft(before.plan(), policy()))
        .first(start -> start.isSound() && start.worked() <= most && kept.keeps(start.run()))
        .flatMap(start -> judge.judged(start.run()))
        .filter(judge::accepts);
  }

  /** The plan's own run, and the best of the starting runs. */
  private List<Judged> looked(List<Candidate> beginnings, Judge judge) {
    List<Judged> looked = new ArrayList<>();
    if (prints(before.plan())) {
      looked.add(judge.asItIs("", before));
    }
    Set<List<Step>> runs = new LinkedHashSet<>();
    beginnings.stream()
        .sorted(Comparator.comparingDouble(Candidate::cost))
        .limit(LOOKED_AT)
        .forEach(candidate -> runs.add(candidate.run()));
    // Worked as the plan lists its prints, which the rules have nothing against.
    runs.add(beginnings.get(0).run());
    for (List<Step> run : runs) {
      judge.looked(run).ifPresent(looked::add);
    }
    return looked;
  }

  /** Unless the printer wants any order, or is advised against hers anyway. */
  private boolean sewnLast(Set<String> advice) {
    return !asked.anyOrder() && !advice.contains("seams/sewn-too-early");
  }

  static boolean prints(PrintPlan plan) {
    return plan.run().stream().anyMatch(PrintStep.class::isInstance);
  }

  /** The best of the starting runs for which no more is wrong than how much is mixed. */
  private static Optional<Judged> butForPaste(List<Candidate> starts, Judge judge) {
    return starts.stream()
        .filter(start -> start.rehearsed().shortfall().isNothing())
        .sorted(Comparator.comparingDouble(Candidate::cost))
        .limit(LOOKED_AT)
        .flatMap(start -> judge.judged(start.run()).stream())
        .filter(judged -> !judged.faults().isEmpty() && OF_AMOUNTS.containsAll(judged.faults()))
        .findFirst();
  }

  /** Ids of the rules that stand against the plan in each of them. */
  private static Set<String> always(List<Judged> looked) {
    Set<String> always = new HashSet<>(looked.get(0).faults());
    looked.forEach(one -> always.retainAll(one.faults()));
    return always;
  }

  /** What of that no other run could cure. */
  private static List<Finding> incurable(List<Judged> looked, Set<String> always) {
    boolean afresh =
        looked.stream().anyMatch(one -> one.faults().stream().anyMatch(AFRESH::contains));
    return looked.get(0).findings().stream()
        .filter(Judge::stands)
        .filter(finding -> always.contains(finding.rule().id()))
        .filter(finding -> !isCurable(finding.rule().id(), afresh))
        .toList();
  }

  /**
   * @param afresh true if a paste dies in one of the runs: each further mixing makes more of it
   */
  private static boolean isCurable(String rule, boolean afresh) {
    return AFRESH.contains(rule)
        || afresh && OF_AMOUNTS.contains(rule)
        || !OF_NO_RUN.contains(rule) && CURABLE.stream().anyMatch(rule::startsWith);
  }

  /** What stands, first that of which no run that was looked at is free. */
  private static List<Finding> standing(List<Finding> findings, Set<String> always) {
    return findings.stream()
        .filter(Judge::stands)
        .sorted(Comparator.comparing(finding -> !always.contains(finding.rule().id())))
        .toList();
  }

  /** What the plan is advised anyway: as it is now, or without a run of its own whatever it is. */
  private Set<String> advice(List<Judged> looked, Judge judge) {
    if (prints(before.plan())) {
      return judge.asItIs("", before).advice();
    }
    Set<String> always = new HashSet<>(looked.get(0).advice());
    looked.forEach(one -> always.retainAll(one.advice()));
    return always;
  }

  /** True unless the plan's own run, whatever stands against it, ends as soon. */
  private boolean saves(Search.Found found) {
    return !isWhole()
        || !prints(before.plan())
        || !new Order(leeway).keeps(Order.numbered(leeway.written()))
        || !found.ends(before.facts().timeline().finish())
        || found
                .judged()
                .checked()
                .facts()
                .timeline()
                .finish()
                .compareTo(before.facts().timeline().finish())
            < 0;
  }

  /** Where no time is saved, the plan's own run is mended and nothing else of it changed. */
  private ToDoubleFunction<Candidate> least(double within, boolean saves) {
    if (saves) {
      return c -> c.costOfFew(within);
    }
    LinesChanged changed = new LinesChanged(leeway);
    return c -> c.costOfChange(changed.by(c.run()), within);
  }

  /** A run as the plan has it that is accepted is not made later for the sake of fewer steps. */
  private double within(Search.Found found, Rehearsal rehearsal, Judge judge, boolean saves) {
    double soonest = found.candidate().worked();
    boolean accepted = judge.accepts(judge.asItIs("", before));
    double now =
        prints(before.plan()) && (accepted || !saves)
            ? rehearsal.of(Order.numbered(leeway.written())).worked().seconds()
            : Double.MAX_VALUE;
    return Math.max(soonest, saves ? Math.min(soonest * NEARLY, now) : now);
  }

  private Team team(Order order, Judge judge, long begun) {
    return new Team(
        asked,
        begun,
        atOnce,
        number ->
            new Search(
                number,
                leeway,
                order,
                rehearsal(asked.surety()),
                judge,
                new PasteLeft(before.plan(), policy())));
  }
}

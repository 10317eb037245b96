package strikeoff.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import strikeoff.day.Breaks;
import strikeoff.day.Moment;
import strikeoff.layout.Layout;
import strikeoff.layout.SeamCrossing;
import strikeoff.plan.Draught;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.units.Phrase;
import strikeoff.units.Span;

/**
 * What a plan leaves to its run, and what its run leaves as it is: the steps that fix and clean.
 *
 * @param first steps that wet the cloth before anything is printed, with what follows them
 * @param last steps that fix and clean, in order, as written
 * @param airs what may blow over the cloth in waits; the room's own air first
 * @param mixed pastes that a step must mix
 * @param sewn seams that the run sews
 * @param across for each of them the ids of the placements that lie across it
 * @param before for the id of a placement those that must be printed before it begins
 * @param phase the part of the plan's run that is arranged; what comes before it is among the first
 *     steps
 * @param own what is printed in it
 */
record Leeway(
    PrintPlan plan,
    Layout layout,
    List<Step> first,
    List<Step> last,
    List<Optional<Draught>> airs,
    List<String> mixed,
    List<String> sewn,
    Map<String, Set<Integer>> across,
    Map<Integer, Set<Integer>> before,
    Phase phase,
    OwnPrints own) {

  /** Of a plan that is printed and then fixed, once. */
  static Leeway of(PrintPlan plan, Layout layout, Policy policy, RunWanted asked) {
    return of(plan, layout, policy, asked, Phase.of(plan.run()).get(0));
  }

  /**
   * @param phase which part of the plan's run is to be arranged
   */
  static Leeway of(PrintPlan plan, Layout layout, Policy policy, RunWanted asked, Phase phase) {
    List<Step> first = new ArrayList<>(phase.before(plan.run()));
    List<Step> last = new ArrayList<>();
    List<Step> steps = phase.own(plan.run());
    boolean printed = steps.stream().noneMatch(PrintStep.class::isInstance);
    for (Step step : steps) {
      printed |= step instanceof PrintStep;
      if (isWet(step) && printed) {
        last.add(step);
      } else if (isWet(step) || !printed && !first.isEmpty() && isRest(step)) {
        first.add(step);
      }
    }
    Map<String, Set<Integer>> across = new LinkedHashMap<>();
    for (String seam : sewn(plan, phase)) {
      across.put(seam, new HashSet<>());
    }
    layout.evidence().stream()
        .filter(SeamCrossing.class::isInstance)
        .map(SeamCrossing.class::cast)
        .filter(crossing -> across.containsKey(crossing.seam()))
        .forEach(crossing -> across.get(crossing.seam()).addAll(crossing.crossing()));
    OwnPrints own = OwnPrints.of(plan, layout, phase);
    return new Leeway(
        plan,
        layout,
        List.copyOf(first),
        List.copyOf(last),
        Airs.of(plan, policy, asked),
        mixed(plan, own, phase),
        List.copyOf(across.keySet()),
        across,
        Underneath.of(plan, layout, firstSteps(plan)),
        phase,
        own);
  }

  /** True of steps that wet the cloth while somebody stands by. */
  static boolean isBath(Step step) {
    return bathes(step).isPresent();
  }

  /** True of steps that fix or clean, which stay as they are. */
  static boolean isWet(Step step) {
    return step instanceof Step.Fix
        || step instanceof Step.Rinse
        || step instanceof Step.Wash
        || step instanceof Step.HeatSet;
  }

  private static boolean isRest(Step step) {
    return step instanceof Step.Dry || step instanceof Step.EndOfDay;
  }

  /** Those that are mixed in it, and all that it prints and that nobody mixed before. */
  private static List<String> mixed(PrintPlan plan, OwnPrints own, Phase phase) {
    Set<String> used = own.pastes();
    Set<String> before = mixed(phase.before(plan.run()));
    Set<String> mixed = mixed(phase.own(plan.run()));
    for (Paste paste : plan.pastes().values()) {
      if (used.contains(paste.name())
          && paste.mixedBefore().isEmpty()
          && !before.contains(paste.name())) {
        mixed.add(paste.name());
      }
    }
    return List.copyOf(mixed);
  }

  private static Set<String> mixed(List<Step> run) {
    Set<String> mixed = new LinkedHashSet<>();
    for (Step step : run) {
      if (step instanceof Step.Mix mix) {
        mixed.addAll(mix.pastes());
      }
    }
    return mixed;
  }

  /** Those that are sewn in it; in the last part also those that nobody sews. */
  private static Set<String> sewn(PrintPlan plan, Phase phase) {
    Set<String> sewn = sewn(phase.own(plan.run()));
    if (phase.isLast()) {
      Set<String> before = sewn(phase.before(plan.run()));
      for (Seam seam : plan.seams().values()) {
        if (!seam.sewnBefore() && !before.contains(seam.name())) {
          sewn.add(seam.name());
        }
      }
    }
    return sewn;
  }

  private static Set<String> sewn(List<Step> run) {
    Set<String> sewn = new LinkedHashSet<>();
    for (Step step : run) {
      if (step instanceof Step.Sew sew) {
        sewn.add(sew.seam());
      }
    }
    return sewn;
  }

  private static Map<String, Integer> firstSteps(PrintPlan plan) {
    Map<String, Integer> first = new HashMap<>();
    int at = 0;
    for (Step step : plan.run()) {
      at++;
      if (step instanceof PrintStep print) {
        for (String arrangement : print.arrangements()) {
          first.putIfAbsent(arrangement, 100 * at + print.arrangements().indexOf(arrangement));
        }
      }
    }
    return first;
  }

  /**
   * For each of the last steps whether it follows the one before it without a night between, as wet
   * cloth does from soaking to the last wash. Where the plan lets rinsed cloth lie it may, and
   * unrinsed cloth where it says why.
   */
  List<Boolean> followAtOnce() {
    List<Boolean> follow = new ArrayList<>();
    for (int i = 0; i < last.size(); i++) {
      boolean wet = i > 0 && bathes(last.get(i)).isPresent() && bathes(last.get(i - 1)).isPresent();
      follow.add(wet && (isNext(i) || last.get(i - 1) instanceof Step.Fix && !unrinsed()));
    }
    return follow;
  }

  private boolean isNext(int at) {
    return last.get(at).number() == last.get(at - 1).number() + 1;
  }

  private boolean unrinsed() {
    return plan.acceptances().stream().anyMatch(a -> a.rule().equals("fixing/left-unrinsed"));
  }

  /**
   * Why no run of the plan can be one: baths that follow each other are longer than any day.
   *
   * @param over seconds that people may stay after closing
   */
  Optional<String> noDayForBaths(long over) {
    List<Boolean> follow = followAtOnce();
    for (int from = 0; from < last.size(); from++) {
      if (bathes(last.get(from)).isEmpty()) {
        continue;
      }
      int to = from + 1;
      while (to < last.size() && follow.get(to)) {
        to++;
      }
      List<Step> baths = last.subList(from, to);
      // A bath that is longer by itself is told as that.
      boolean alone = baths.stream().allMatch(bath -> anyDay(List.of(bath), over));
      if (to > from + 1 && !follow.get(from) && alone && !anyDay(baths, over)) {
        return Optional.of(baths(baths));
      }
    }
    return Optional.empty();
  }

  /** Each kind of day, by a number that it has. */
  private IntStream days() {
    return IntStream.rangeClosed(1, plan.hours().days().size() + 1);
  }

  private boolean anyDay(List<Step> baths, long over) {
    return days().anyMatch(day -> fits(baths, day, over));
  }

  private boolean fits(List<Step> baths, int day, long over) {
    Breaks breaks = new Breaks(plan.hours());
    double at = Moment.opens(day, plan.hours()).seconds();
    for (Step step : baths) {
      at = breaks.over((long) at) + bathes(step).orElseThrow().seconds();
    }
    return at <= Moment.closes(day, plan.hours()).seconds() + over;
  }

  private String baths(List<Step> baths) {
    double needs = 0;
    List<String> named = new ArrayList<>();
    for (Step step : baths) {
      needs += bathes(step).orElseThrow().seconds();
      named.add(step instanceof Step.Fix ? "soak" : step instanceof Step.Rinse ? "rinse" : "wash");
    }
    return "Its "
        + Phrase.list(named)
        + " need "
        + Span.ofSeconds((long) needs).wholeMinutesUp().text()
        + " in one day, as wet cloth with loose dye in it doesn't lie overnight; no day has more"
        + " than "
        + plan.hours().longest().text()
        + (plan.hours().hasBreaks() ? ", breaks included" : "")
        + ". Open the room for longer.";
  }

  /**
   * How long somebody stands over a bath; empty for other steps, and where cloth lies by itself.
   */
  private static Optional<Span> bathes(Step step) {
    if (step instanceof Step.Fix fix) {
      return fix.how() == DyeFixing.SOAK ? Optional.of(fix.lasts()) : Optional.empty();
    }
    if (step instanceof Step.Rinse rinse) {
      return Optional.of(rinse.lasts());
    }
    return step instanceof Step.Wash wash ? Optional.of(wash.lasts()) : Optional.empty();
  }

  /** How many prints away from a seam may come after it is sewn, without advice against it. */
  static int awayAfterSewing(Policy policy) {
    return (int) policy.seams().awayAfterSewing().value();
  }

  /** In the order in which the plan's run prints them first, as far as it does. */
  List<String> arrangements() {
    Map<String, Integer> first = firstSteps(plan);
    List<String> names = new ArrayList<>(plan.arrangements().keySet());
    names.sort(Comparator.comparingInt(name -> first.getOrDefault(name, 0)));
    return names;
  }

  /** Mix steps as the plan has them if it says how long they take, which nobody else may say. */
  List<Step> timedMixing() {
    List<Step> mixing = phase.own(plan.run()).stream().filter(Step.Mix.class::isInstance).toList();
    return mixing.stream().anyMatch(step -> ((Step.Mix) step).takes().isPresent())
        ? mixing
        : List.of();
  }

  /** Seconds for one paste where a step says so. */
  long leastMixing() {
    long least = Long.MAX_VALUE;
    for (Step step : timedMixing()) {
      Step.Mix mix = (Step.Mix) step;
      if (mix.takes().isPresent()) {
        least = Math.min(least, (long) (mix.takes().get().seconds() / mix.pastes().size()));
      }
    }
    return least;
  }

  /** Seconds for one seam where a step says so. */
  long leastSewing() {
    return plan.steps(Step.Sew.class).stream()
        .flatMap(step -> step.takes().stream())
        .mapToLong(takes -> (long) takes.seconds())
        .min()
        .orElse(Long.MAX_VALUE);
  }

  /** The step that sews a seam, as the plan has it. */
  Step.Sew sew(String seam) {
    return plan.steps(Step.Sew.class).stream()
        .filter(sew -> sew.seam().equals(seam))
        .findFirst()
        .orElse(new Step.Sew(1, seam, Optional.empty(), Optional.empty(), Step.path(1)));
  }

  /** What the plan has until the end of the part that is arranged. */
  List<Step> written() {
    return plan.run().subList(0, phase.to());
  }

  /** What the plan has after that, which stays. */
  List<Step> later() {
    return phase.after(plan.run());
  }

  /**
   * When the part can begin at the soonest that is arranged: after the nights and the times that
   * lie between it and what was done before.
   *
   * @param done when that is done at the soonest
   */
  Moment begins(Moment done) {
    Moment at = done;
    for (Step step : first.subList(phase.from(), first.size())) {
      if (step instanceof Step.EndOfDay && phase.number() > 1) {
        at = Moment.opens(at.day() + 1, plan.hours());
      }
    }
    return at;
  }

  List<String> screens() {
    return List.copyOf(plan.screens().keySet());
  }

  List<String> crew() {
    return plan.crew().names();
  }

  int colours(String arrangement) {
    return plan.designs().get(plan.arrangements().get(arrangement).design()).separations().size();
  }
}

package strikeoff.propose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.layout.SeamCrossing;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Draught;
import strikeoff.plan.Hours;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.units.AirSpeed;
import strikeoff.units.Quantities;
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
    Map<Integer, Set<Integer>> before) {

  static Leeway of(PrintPlan plan, Layout layout, Policy policy, RunWanted asked) {
    List<Step> first = new ArrayList<>();
    List<Step> last = new ArrayList<>();
    int prints = firstPrint(plan.run());
    for (int i = 0; i < plan.run().size(); i++) {
      Step step = plan.run().get(i);
      if (i < prints && (isWet(step) || !first.isEmpty() && isRest(step))) {
        first.add(step);
      } else if (i > prints && isWet(step)) {
        last.add(step);
      }
    }
    Map<String, Set<Integer>> across = new LinkedHashMap<>();
    for (String seam : sewn(plan)) {
      across.put(seam, new HashSet<>());
    }
    layout.evidence().stream()
        .filter(SeamCrossing.class::isInstance)
        .map(SeamCrossing.class::cast)
        .filter(crossing -> across.containsKey(crossing.seam()))
        .forEach(crossing -> across.get(crossing.seam()).addAll(crossing.crossing()));
    return new Leeway(
        plan,
        layout,
        List.copyOf(first),
        List.copyOf(last),
        airs(plan, policy, asked),
        mixed(plan),
        List.copyOf(across.keySet()),
        across,
        before(plan, layout));
  }

  private static int firstPrint(List<Step> run) {
    for (int i = 0; i < run.size(); i++) {
      if (run.get(i) instanceof Step.Print) {
        return i;
      }
    }
    return -1;
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

  /** True if something is printed after it was fixed, which only a printer can part into phases. */
  static boolean printsAgain(List<Step> run) {
    boolean fixed = false;
    boolean printed = false;
    for (Step step : run) {
      if (step instanceof Step.Print && fixed) {
        return true;
      }
      printed |= step instanceof Step.Print;
      fixed |= printed && isWet(step);
    }
    return false;
  }

  private static List<Optional<Draught>> airs(PrintPlan plan, Policy policy, RunWanted asked) {
    List<Optional<Draught>> airs = new ArrayList<>(List.of(Optional.empty()));
    if (namesFan(plan)) {
      airs.add(Optional.of(draught(Draught.By.FAN, "air.fan", policy)));
    }
    if (asked.hairDryer() && plan.equipment().hairDryers() > 0) {
      airs.add(Optional.of(draught(Draught.By.HAIR_DRYER, "air.hair-dryer", policy)));
    }
    return airs;
  }

  /**
   * True if the plan says that there is a fan: among its equipment, in its room, or in a step. That
   * rooms usually have one is no reason to count on it.
   */
  static boolean namesFan(PrintPlan plan) {
    return plan.equipment().fans() > 0
        && (!assumesFans(plan)
            || plan.room().air().by() == Draught.By.FAN
            || RunText.blows(plan.run(), Draught.By.FAN));
  }

  /** True if it says nothing of how many there are. */
  static boolean assumesFans(PrintPlan plan) {
    return plan.assumptions().stream()
        .anyMatch(a -> a.path().equals(plan.equipment().path().key("fans")));
  }

  private static Draught draught(Draught.By by, String usual, Policy policy) {
    String speed = policy.defaults().get(usual).value();
    return new Draught(by, Quantities.parse(speed, AirSpeed.class).toOptional().orElseThrow());
  }

  /** Those that its run mixes, or else all that it prints and that nobody mixed before. */
  private static List<String> mixed(PrintPlan plan) {
    Set<String> used =
        plan.arrangements().values().stream()
            .flatMap(a -> plan.designs().get(a.design()).separations().stream())
            .map(separation -> separation.paste())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    Set<String> mixed = new LinkedHashSet<>();
    for (Step step : plan.run()) {
      if (step instanceof Step.Mix mix) {
        mixed.addAll(mix.pastes());
      }
    }
    for (Paste paste : plan.pastes().values()) {
      if (used.contains(paste.name()) && paste.mixedBefore().isEmpty()) {
        mixed.add(paste.name());
      }
    }
    return List.copyOf(mixed);
  }

  private static List<String> sewn(PrintPlan plan) {
    List<String> sewn = new ArrayList<>();
    for (Step step : plan.run()) {
      if (step instanceof Step.Sew sew && !sewn.contains(sew.seam())) {
        sewn.add(sew.seam());
      }
    }
    for (Seam seam : plan.seams().values()) {
      if (!seam.sewnBefore() && !sewn.contains(seam.name())) {
        sewn.add(seam.name());
      }
    }
    return sewn;
  }

  /** What is set from another, goes over it, or lands on it comes after it, as the plan has it. */
  private static Map<Integer, Set<Integer>> before(PrintPlan plan, Layout layout) {
    Map<Integer, Set<Integer>> before = new HashMap<>();
    Map<String, Integer> firstStep = firstSteps(plan);
    for (Placement one : layout.placements()) {
      one.anchor().ifPresent(a -> before.computeIfAbsent(one.id(), i -> new HashSet<>()).add(a));
    }
    List<Placement> all = layout.placements();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        Placement one = all.get(i);
        Placement other = all.get(j);
        if (!one.arrangement().equals(other.arrangement()) && meet(one, other, layout)) {
          Arrangement first = plan.arrangements().get(one.arrangement());
          boolean turned =
              first.over().contains(other.arrangement())
                  || firstStep.getOrDefault(other.arrangement(), 0)
                      < firstStep.getOrDefault(one.arrangement(), 0);
          int earlier = turned ? other.id() : one.id();
          int later = turned ? one.id() : other.id();
          if (!before.getOrDefault(earlier, Set.of()).contains(later)) {
            before.computeIfAbsent(later, k -> new HashSet<>()).add(earlier);
          }
        }
      }
    }
    return before;
  }

  private static boolean meet(Placement one, Placement other, Layout layout) {
    if (!layout.tube().closed()
        && !one.outline().getEnvelopeInternal().intersects(other.outline().getEnvelopeInternal())) {
      return false;
    }
    for (Footprint a : layout.footprintsOf(one.id())) {
      for (Footprint b : layout.footprintsOf(other.id())) {
        if (layout.tube().overlaps(a.image(), b.image())) {
          return true;
        }
      }
    }
    return false;
  }

  private static Map<String, Integer> firstSteps(PrintPlan plan) {
    Map<String, Integer> first = new HashMap<>();
    int at = 0;
    for (Step step : plan.run()) {
      at++;
      if (step instanceof Step.Print print) {
        for (String arrangement : print.arrangements()) {
          first.putIfAbsent(arrangement, 100 * at + print.arrangements().indexOf(arrangement));
        }
      }
    }
    return first;
  }

  /**
   * For each of the last steps whether it follows the one before it without a night between, as wet
   * cloth does unless the plan lets it lie: from soaking to the last wash, where every day is long
   * enough for that.
   */
  List<Boolean> followAtOnce() {
    List<Boolean> follow = new ArrayList<>();
    double all = 0;
    for (int i = 0; i < last.size(); i++) {
      boolean wet = i > 0 && bathes(last.get(i)).isPresent() && bathes(last.get(i - 1)).isPresent();
      follow.add(wet && last.get(i).number() == last.get(i - 1).number() + 1);
      all += bathes(last.get(i)).map(Span::minutes).orElse(0.0);
    }
    Hours hours = plan.hours();
    for (int day = 1; day <= hours.days().size() + 1; day++) {
      if (hours.of(day).closes() - hours.of(day).opens() < all) {
        return Collections.nCopies(last.size(), false);
      }
    }
    return follow;
  }

  /**
   * How long somebody stands over a bath; empty for other steps, and where cloth lies by itself.
   */
  private static Optional<Span> bathes(Step step) {
    if (step instanceof Step.Fix fix) {
      return fix.how() == Step.Fixing.SOAK ? Optional.of(fix.lasts()) : Optional.empty();
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
    List<Step> mixing = plan.run().stream().filter(Step.Mix.class::isInstance).toList();
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
    return plan.run().stream()
        .filter(Step.Sew.class::isInstance)
        .flatMap(step -> ((Step.Sew) step).takes().stream())
        .mapToLong(takes -> (long) takes.seconds())
        .min()
        .orElse(Long.MAX_VALUE);
  }

  /** The step that sews a seam, as the plan has it. */
  Step.Sew sew(String seam) {
    return plan.run().stream()
        .filter(Step.Sew.class::isInstance)
        .map(Step.Sew.class::cast)
        .filter(sew -> sew.seam().equals(seam))
        .findFirst()
        .orElse(new Step.Sew(1, seam, Optional.empty(), Optional.empty(), Step.path(1)));
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

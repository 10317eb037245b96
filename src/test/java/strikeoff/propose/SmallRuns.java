package strikeoff.propose;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.plan.Begins;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;

/**
 * Every run of a space, of one small plan: whole numbers in every way in one or two print steps,
 * colours together or one after the other in two steps, every other one or not, waits until
 * frame-safe or none, screens washed between colours or not, one person, the other or both, or one
 * beside the other, films of neighbours felt or not, a wait before the cloth moves or none, the
 * seam before, between or after the prints, in each air a drying step before the last ones or none,
 * and a night before that, after it, or none.
 */
final class SmallRuns {

  /** A frame lies on the image beside it up to this pitch, cm. */
  private static final int NEAR = 36;

  private final SmallPlan.Bench bench;
  private final SmallPlan plan;
  private final List<List<String>> hands;
  private final List<Integer> numbers;

  private SmallRuns(SmallPlan plan, SmallPlan.Bench bench) {
    this.plan = plan;
    this.bench = bench;
    List<String> crew = bench.leeway().crew();
    this.hands =
        crew.size() == 1 ? List.of(List.of()) : List.of(List.of(), List.of(crew.get(1)), crew);
    this.numbers = bench.judged().facts().layout().of("row").stream().map(p -> p.number()).toList();
  }

  /** All that keep to the order, numbered, each once. */
  static Set<List<Step>> of(SmallPlan plan, SmallPlan.Bench bench) {
    return new SmallRuns(plan, bench).all();
  }

  private Set<List<Step>> all() {
    Set<List<Step>> runs = new LinkedHashSet<>();
    for (List<String> mixes : hands) {
      if (mixes.size() > 1) {
        continue;
      }
      Step mix =
          new Step.Mix(
              1,
              bench.leeway().mixed(),
              Optional.empty(),
              mixes.stream().findFirst(),
              Step.path(1));
      for (List<Step> way : sewn()) {
        for (List<Step> end : ends()) {
          List<Step> run = new ArrayList<>(List.of(mix));
          run.addAll(way);
          run.addAll(end);
          run.addAll(bench.leeway().last());
          List<Step> numbered = Order.numbered(bench.order().mixedInOrder(run));
          if (bench.order().keeps(numbered)) {
            runs.add(numbered);
          }
        }
      }
    }
    return runs;
  }

  /** What may lie between the prints and the last steps. */
  private List<List<Step>> ends() {
    List<List<Step>> ends = new ArrayList<>(List.of(List.of()));
    bench.leeway().airs().forEach(air -> ends.add(List.of(Repair.dry(Dryness.FIX_SAFE, air))));
    if (!plan.hours().equals(SmallPlan.ALL_DAY) && !plan.hours().endsWith("17:00")) {
      Step night = new Step.EndOfDay(1, Step.path(1));
      for (List<Step> end : List.copyOf(ends)) {
        List<Step> later = new ArrayList<>(end);
        later.add(night);
        ends.add(later);
        if (!end.isEmpty()) {
          ends.add(List.of(night, end.get(0)));
        }
      }
    }
    return ends;
  }

  private List<List<Step>> sewn() {
    List<List<Step>> ways = new ArrayList<>();
    for (List<PrintStep> prints : ways()) {
      if (plan.seam() == SmallPlan.Seam.NONE) {
        ways.add(List.copyOf(prints));
        continue;
      }
      Step sew = bench.leeway().sew("side");
      for (int at = 0; at <= prints.size(); at++) {
        for (Optional<Step> dry : at == 0 ? List.of(Optional.<Step>empty()) : liftSafe()) {
          List<Step> way = new ArrayList<>(prints.subList(0, at));
          dry.ifPresent(way::add);
          way.add(sew);
          way.addAll(prints.subList(at, prints.size()));
          ways.add(way);
        }
      }
    }
    return ways;
  }

  private List<Optional<Step>> liftSafe() {
    List<Optional<Step>> all = new ArrayList<>(List.of(Optional.empty()));
    bench.leeway().airs().forEach(air -> all.add(Optional.of(Repair.dry(Dryness.LIFT_SAFE, air))));
    return all;
  }

  /** Print steps in every way: in one step, or in two that share out numbers or colours. */
  private List<List<PrintStep>> ways() {
    List<List<PrintStep>> all = new ArrayList<>();
    prints(List.of(), List.of()).forEach(whole -> all.add(List.of(whole)));
    for (int set = 1; set < (1 << numbers.size()) - 1; set++) {
      List<Integer> one = new ArrayList<>();
      List<Integer> other = new ArrayList<>();
      for (int i = 0; i < numbers.size(); i++) {
        ((set >> i & 1) == 1 ? one : other).add(numbers.get(i));
      }
      both(all, prints(one, List.of()), prints(other, List.of()));
    }
    List<Integer> colours = new ArrayList<>();
    for (int colour = 1; colour <= plan.colours(); colour++) {
      colours.add(colour);
    }
    for (int cut = 1; cut < colours.size(); cut++) {
      both(
          all,
          prints(List.of(), colours.subList(0, cut)),
          prints(List.of(), colours.subList(cut, colours.size())));
    }
    return all;
  }

  private static void both(
      List<List<PrintStep>> all, List<PrintStep> first, List<PrintStep> second) {
    for (PrintStep one : first) {
      for (PrintStep other : second) {
        all.add(List.of(one, other));
        if (!one.people().equals(other.people()) && other.dryBetweenPasses().isNone()) {
          PrintDraft beside = new PrintDraft(other);
          beside.begins = Begins.WHEN_FREE;
          all.add(List.of(one, beside.step()));
        }
      }
    }
  }

  private List<PrintStep> prints(List<Integer> only, List<Integer> colours) {
    Set<PrintStep> prints = new LinkedHashSet<>();
    boolean moves = plan.table() < 150 || plan.boards() > 0;
    boolean several = numbers.size() > 1 && only.size() != 1;
    boolean coloured = (colours.isEmpty() ? plan.colours() : colours.size()) > 1;
    for (List<String> people : hands) {
      for (boolean everyOther : several ? new boolean[] {false, true} : new boolean[] {false}) {
        for (Wait between : waits(Dryness.FRAME_SAFE, coloured || everyOther)) {
          for (Wait moving : waits(Dryness.LIFT_SAFE, moves && numbers.size() > 1)) {
            PrintDraft draft = new PrintDraft(List.of("row"), only, people);
            draft.colours = colours;
            draft.everyOther = everyOther;
            draft.betweenColours = coloured ? between : Wait.NONE;
            draft.betweenPasses = everyOther ? between : Wait.NONE;
            draft.beforeMoving = moving;
            prints.add(draft.step());
            if (several && plan.pitch() < NEAR && between.isNone()) {
              draft.betweenNeighbours = Repair.until(Dryness.FRAME_SAFE);
              prints.add(draft.step());
              draft.betweenNeighbours = Until.NO_WAIT;
            }
            if (moves && coloured && people.size() < 2) {
              draft.washBetweenColours = true;
              prints.add(draft.step());
            }
          }
        }
      }
    }
    return List.copyOf(prints);
  }

  private List<Wait> waits(Dryness state, boolean any) {
    List<Wait> waits = new ArrayList<>(List.of(Wait.NONE));
    if (any) {
      for (Optional<Draught> air : bench.leeway().airs()) {
        waits.add(Repair.wait(state, air));
      }
    }
    return waits;
  }
}

package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.units.Span;

/** Mixes pastes at other times. Each change is null where it fails. */
final class MixMoves {

  private final Leeway leeway;
  private final Order order;
  private final SplittableRandom random;

  MixMoves(Leeway leeway, Order order, SplittableRandom random) {
    this.leeway = leeway;
    this.order = order;
    this.random = random;
  }

  /** A paste becomes a mix step of its own, or goes to another one. */
  List<Step> mixing(List<Step> run) {
    int at = Moves.pick(random, run, Step.Mix.class);
    if (at < 0 || !leeway.timedMixing().isEmpty()) {
      return null;
    }
    Step.Mix mix = (Step.Mix) run.get(at);
    int mate = Moves.pick(random, run, Step.Mix.class);
    if (mate != at) {
      Step.Mix other = (Step.Mix) run.get(mate);
      List<String> own = new ArrayList<>(mix.pastes());
      List<String> theirs = new ArrayList<>(other.pastes());
      int many = random.nextBoolean() ? own.size() : 1;
      for (int i = 0; i < many; i++) {
        String paste = own.remove(random.nextInt(own.size()));
        if (!theirs.contains(paste)) {
          theirs.add(paste);
        }
      }
      run.set(mate, new Step.Mix(1, theirs, other.takes(), other.by(), Step.path(1)));
      if (own.isEmpty()) {
        run.remove(at);
      } else {
        run.set(at, new Step.Mix(1, own, mix.takes(), mix.by(), Step.path(1)));
      }
      return run;
    }
    if (mix.pastes().size() < 2) {
      return null;
    }
    int cut = 1 + random.nextInt(mix.pastes().size() - 1);
    List<String> one = new ArrayList<>();
    List<String> other = new ArrayList<>();
    boolean alternately = random.nextBoolean();
    for (int i = 0; i < mix.pastes().size(); i++) {
      ((alternately ? i % 2 == 0 : i < cut) ? one : other).add(mix.pastes().get(i));
    }
    run.set(at, new Step.Mix(1, one, mix.takes(), mix.by(), Step.path(1)));
    int to = at + 1;
    while (to < run.size() && random.nextInt(3) == 0) {
      to++;
    }
    run.add(to, new Step.Mix(1, other, mix.takes(), somebody(), Step.path(1)));
    return run;
  }

  /**
   * A colour dries while the pastes of the next ones are mixed, which then print in another step.
   */
  List<Step> mixMeanwhile(List<Step> run) {
    int at = Moves.pick(random, run, PrintStep.class);
    if (at < 0 || !leeway.timedMixing().isEmpty()) {
      return null;
    }
    PrintStep print = (PrintStep) run.get(at);
    List<Integer> colours = order.colours(print, print.arrangements().get(0));
    if (colours.size() < 2 || print.arrangements().size() > 1) {
      return null;
    }
    int cut = 1 + random.nextInt(colours.size() - 1);
    List<String> later = order.pastes(print, colours.subList(cut, colours.size()));
    later.removeAll(order.pastes(print, colours.subList(0, cut)));
    List<String> moved = new ArrayList<>();
    for (int i = 0; i < at; i++) {
      if (run.get(i) instanceof Step.Mix mix) {
        List<String> left = new ArrayList<>(mix.pastes());
        left.removeAll(later);
        mix.pastes().stream().filter(later::contains).forEach(moved::add);
        run.set(
            i,
            left.isEmpty()
                ? Repair.dry(Dryness.FRAME_SAFE, Optional.empty())
                : new Step.Mix(1, left, mix.takes(), mix.by(), Step.path(1)));
      }
    }
    if (moved.isEmpty()) {
      return null;
    }
    PrintDraft first = new PrintDraft(print);
    PrintDraft then = new PrintDraft(print);
    first.colours = colours.subList(0, cut);
    then.colours = colours.subList(cut, colours.size());
    then.beforeMoving = Wait.NONE;
    run.set(at, first.step());
    run.add(at + 1, then.step());
    run.add(at + 1, new Step.Mix(1, moved, Optional.empty(), somebody(), Step.path(1)));
    // In moved air for as long as the mixing takes, or until the next frame may come.
    double mixing = Math.ceil(leeway.plan().handling().mix().minutes() * moved.size());
    Until until =
        random.nextBoolean() ? new Until.Time(new Span(mixing)) : Repair.until(Dryness.FRAME_SAFE);
    run.add(at + 1, new Step.Dry(1, until, air(), Optional.empty(), Step.path(1)));
    return run;
  }

  private Optional<String> somebody() {
    return Optional.of(leeway.crew().get(random.nextInt(leeway.crew().size())));
  }

  private Optional<Draught> air() {
    return leeway.airs().get(random.nextInt(leeway.airs().size()));
  }
}

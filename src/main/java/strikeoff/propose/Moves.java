package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import strikeoff.day.facts.Rehearsed;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.units.Span;

/** Changes a run in one place, as somebody would who shuffles notes on a table. */
final class Moves {

  /** Changes that are drawn until one keeps to the order. */
  private static final int DRAWS = 30;

  private static final int[] MINUTES = {0, 1, 2, 3, 5};

  private final Leeway leeway;
  private final Order order;
  private final SplittableRandom random;
  private final ShareMoves shares;
  private final MixMoves mixes;
  private final BesideMoves besides;

  Moves(Leeway leeway, Order order, SplittableRandom random) {
    this.leeway = leeway;
    this.order = order;
    this.random = random;
    this.shares = new ShareMoves(leeway, order, random);
    this.mixes = new MixMoves(leeway, order, random);
    this.besides = new BesideMoves(leeway, random);
  }

  /**
   * Another run, numbered.
   *
   * @param rehearsed what it came to
   * @return empty if none was found in a few draws
   */
  Optional<List<Step>> next(List<Step> run, Rehearsed rehearsed) {
    for (int draw = 0; draw < DRAWS; draw++) {
      List<Step> changed = change(new ArrayList<>(run), rehearsed);
      if (changed != null) {
        List<Step> next = Order.numbered(order.mixedInOrder(changed));
        if (!next.equals(run) && order.keeps(next)) {
          return Optional.of(next);
        }
      }
    }
    return Optional.empty();
  }

  private List<Step> change(List<Step> run, Rehearsed rehearsed) {
    if (rehearsed.lacks() && random.nextInt(4) == 0) {
      return Repair.repaired(run, rehearsed, air(), order, leeway.screens());
    }
    return switch (random.nextInt(25)) {
      case 0, 1, 2 -> move(run);
      case 3, 4 -> people(run);
      case 5 -> swapColours(run);
      case 6, 7 -> waits(run);
      case 8 -> pauses(run);
      case 9 -> workOrder(run);
      case 10, 11 -> shares.handOver(run);
      case 12 -> shares.split(run);
      case 13 -> shares.merge(run);
      case 14 -> shares.joinArrangements(run);
      case 15 -> insert(run);
      case 16, 17 -> drop(run);
      case 18 -> mixes.mixing(run);
      case 19 -> mixes.mixMeanwhile(run);
      case 20 -> besides.whenFree(run);
      case 21 -> besides.sideBySide(run);
      case 22 -> besides.neighbours(run);
      case 23 -> besides.air(run);
      default -> reorderWithin(run);
    };
  }

  private boolean stays(List<Step> run, int at) {
    return at < leeway.first().size() || Leeway.isWet(run.get(at));
  }

  /** The place of one of the steps of a kind; -1 without any. */
  static int pick(SplittableRandom random, List<Step> run, Class<? extends Step> kind) {
    int[] at = new int[run.size()];
    int count = 0;
    for (int i = 0; i < run.size(); i++) {
      if (kind.isInstance(run.get(i))) {
        at[count++] = i;
      }
    }
    return count == 0 ? -1 : at[random.nextInt(count)];
  }

  private Optional<Draught> air() {
    return leeway.airs().get(random.nextInt(leeway.airs().size()));
  }

  /** Everybody, half of the time; else somebody, or two. */
  private List<String> somebody() {
    List<String> crew = leeway.crew();
    if (crew.size() > 1 && random.nextBoolean()) {
      return crew;
    }
    String one = crew.get(random.nextInt(crew.size()));
    String other = crew.get(random.nextInt(crew.size()));
    return crew.size() > 2 && !one.equals(other) && random.nextBoolean()
        ? List.of(one, other)
        : List.of(one);
  }

  private Optional<String> one() {
    return Optional.of(leeway.crew().get(random.nextInt(leeway.crew().size())));
  }

  /** A step goes somewhere else; most go not far. */
  private List<Step> move(List<Step> run) {
    int from = random.nextInt(run.size());
    if (stays(run, from)) {
      return null;
    }
    Step step = run.remove(from);
    int to =
        random.nextInt(3) == 0
            ? random.nextInt(run.size() + 1)
            : Math.max(0, Math.min(run.size(), from + random.nextInt(7) - 3));
    run.add(to, step);
    return run;
  }

  private List<Step> people(List<Step> run) {
    int at = random.nextInt(run.size());
    Step step = run.get(at);
    if (leeway.crew().size() < 2) {
      return null;
    }
    if (step instanceof PrintStep print) {
      PrintDraft draft = new PrintDraft(print);
      if (random.nextInt(6) == 0) {
        draft.washes = random.nextBoolean() ? Optional.empty() : one();
      } else {
        draft.people = somebody();
      }
      run.set(at, draft.step());
    } else if (step instanceof Step.Mix mix) {
      run.set(at, new Step.Mix(1, mix.pastes(), mix.takes(), one(), mix.begins(), Step.path(1)));
    } else if (step instanceof Step.Sew sew) {
      run.set(at, new Step.Sew(1, sew.seam(), sew.takes(), one(), sew.begins(), Step.path(1)));
    } else {
      return null;
    }
    return run;
  }

  /** A stretch of colours becomes a step of its own, or two such steps are one again. */
  private List<Step> swapColours(List<Step> run) {
    int at = pick(random, run, PrintStep.class);
    if (at < 0) {
      return null;
    }
    PrintStep print = (PrintStep) run.get(at);
    List<Integer> colours = order.colours(print, print.arrangements().get(0));
    boolean alike =
        print.arrangements().stream().allMatch(a -> order.colours(print, a).equals(colours));
    if (colours.size() < 2 || !alike) {
      return null;
    }
    int cut = 1 + random.nextInt(colours.size() - 1);
    PrintDraft earlier = new PrintDraft(print);
    PrintDraft later = new PrintDraft(print);
    earlier.colours = colours.subList(0, cut);
    later.colours = colours.subList(cut, colours.size());
    later.beforeMoving = Wait.NONE;
    run.set(at, earlier.step());
    int to = at + 1;
    while (to < run.size() && random.nextInt(3) > 0 && !Leeway.isWet(run.get(to))) {
      to++;
    }
    run.add(to, later.step());
    return run;
  }

  private List<Step> waits(List<Step> run) {
    int at = random.nextInt(run.size());
    Step step = run.get(at);
    if (step instanceof Step.Dry dry && !stays(run, at)) {
      run.set(
          at,
          random.nextBoolean()
              ? new Step.Dry(1, dry.until(), air(), Optional.empty(), Step.path(1))
              : Repair.dry(Dryness.values()[random.nextInt(3)], dry.air()));
      return run;
    }
    if (!(step instanceof PrintStep print)) {
      return null;
    }
    PrintDraft draft = new PrintDraft(print);
    switch (random.nextInt(3)) {
      case 0 -> draft.betweenColours = between(draft);
      case 1 ->
          draft.beforeMoving =
              random.nextBoolean() ? Wait.NONE : Repair.wait(Dryness.LIFT_SAFE, air());
      default ->
          draft.betweenPasses =
              random.nextBoolean() ? Wait.NONE : Repair.wait(Dryness.FRAME_SAFE, air());
    }
    run.set(at, draft.step());
    return run;
  }

  private Wait between(PrintDraft draft) {
    Optional<Draught> air = air();
    boolean held = air.filter(a -> a.by() == Draught.By.HAIR_DRYER).isPresent();
    Optional<Draught> moved = held && draft.people.size() > 1 ? Optional.empty() : air;
    return switch (random.nextInt(4)) {
      case 0 -> Wait.NONE;
      case 1 -> Wait.of(new Until.Time(new Span(MINUTES[1 + random.nextInt(4)])));
      default -> Repair.wait(Dryness.FRAME_SAFE, moved);
    };
  }

  private List<Step> pauses(List<Step> run) {
    int at = pick(random, run, PrintStep.class);
    if (at < 0) {
      return null;
    }
    PrintDraft draft = new PrintDraft((PrintStep) run.get(at));
    int which = random.nextInt(5);
    if (which == 0) {
      draft.washBetweenColours = !draft.washBetweenColours;
      draft.people = draft.people.stream().limit(1).toList();
    } else if (which < 3) {
      draft.everyOther = !draft.everyOther;
    } else {
      draft.pause = new Span(MINUTES[random.nextInt(MINUTES.length)]);
    }
    run.set(at, draft.step());
    return run;
  }

  private List<Step> workOrder(List<Step> run) {
    int at = pick(random, run, PrintStep.class);
    if (at < 0) {
      return null;
    }
    PrintDraft draft = new PrintDraft((PrintStep) run.get(at));
    draft.order = PrintOrder.values()[random.nextInt(4)];
    run.set(at, draft.step());
    return run;
  }

  private List<Step> insert(List<Step> run) {
    int at = 1 + random.nextInt(run.size());
    Step step =
        switch (random.nextInt(4)) {
          case 0 -> new Step.EndOfDay(1, Step.path(1));
          case 1 -> new Step.WashScreen(1, leeway.screens(), Optional.empty(), one(), Step.path(1));
          default -> Repair.dry(Dryness.values()[random.nextInt(3)], air());
        };
    run.add(at, step);
    return run;
  }

  private List<Step> drop(List<Step> run) {
    int at = random.nextInt(run.size());
    Step step = run.get(at);
    if (stays(run, at)) {
      return null;
    }
    if (step instanceof Step.Dry
        || step instanceof Step.EndOfDay
        || step instanceof Step.WashScreen
        || step instanceof Step.Move) {
      run.remove(at);
      return run;
    }
    if (step instanceof PrintStep print) {
      PrintDraft draft = new PrintDraft(print);
      switch (random.nextInt(4)) {
        case 0 -> draft.betweenColours = Wait.NONE;
        case 1 -> draft.beforeMoving = Wait.NONE;
        case 2 -> draft.betweenPasses = Wait.NONE;
        default -> draft.pause = new Span(0);
      }
      run.set(at, draft.step());
      return run;
    }
    return null;
  }

  /** Who is named first, or which arrangement comes first, in one step. */
  private List<Step> reorderWithin(List<Step> run) {
    int at = pick(random, run, PrintStep.class);
    if (at < 0) {
      return null;
    }
    PrintDraft draft = new PrintDraft((PrintStep) run.get(at));
    if (draft.arrangements.size() > 1 && random.nextBoolean()) {
      draft.arrangements = turned(draft.arrangements);
    } else if (draft.people.size() > 1) {
      draft.people = turned(draft.people);
    } else {
      return null;
    }
    run.set(at, draft.step());
    return run;
  }

  private <T> List<T> turned(List<T> list) {
    List<T> turned = new ArrayList<>(list);
    turned.add(0, turned.remove(1 + random.nextInt(turned.size() - 1)));
    return turned;
  }
}

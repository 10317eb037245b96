package strikeoff.propose;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import strikeoff.day.facts.Rehearsed;
import strikeoff.plan.Draught;
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

  Moves(Leeway leeway, Order order, SplittableRandom random) {
    this.leeway = leeway;
    this.order = order;
    this.random = random;
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
    if (!rehearsed.shortfall().isNothing() && random.nextInt(4) == 0) {
      return Repair.repaired(run, rehearsed, air(), leeway.screens());
    }
    return switch (random.nextInt(21)) {
      case 0, 1, 2 -> move(run);
      case 3, 4 -> people(run);
      case 5 -> swapColours(run);
      case 6, 7 -> waits(run);
      case 8 -> pauses(run);
      case 9 -> workOrder(run);
      case 10, 11 -> handOver(run);
      case 12 -> split(run);
      case 13 -> merge(run);
      case 14 -> joinArrangements(run);
      case 15 -> insert(run);
      case 16, 17 -> drop(run);
      case 18 -> mixing(run);
      case 19 -> mixMeanwhile(run);
      default -> reorderWithin(run);
    };
  }

  private boolean stays(List<Step> run, int at) {
    return at < leeway.first().size() || Leeway.isWet(run.get(at));
  }

  private int pick(List<Step> run, Class<? extends Step> kind) {
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
    if (step instanceof Step.Print print) {
      PrintDraft draft = new PrintDraft(print);
      if (random.nextInt(6) == 0) {
        draft.washes = random.nextBoolean() ? Optional.empty() : one();
      } else {
        draft.people = somebody();
      }
      run.set(at, draft.step());
    } else if (step instanceof Step.Mix mix) {
      run.set(at, new Step.Mix(1, mix.pastes(), mix.takes(), one(), Step.path(1)));
    } else if (step instanceof Step.Sew sew) {
      run.set(at, new Step.Sew(1, sew.seam(), sew.takes(), one(), Step.path(1)));
    } else {
      return null;
    }
    return run;
  }

  /** A stretch of colours becomes a step of its own, or two such steps are one again. */
  private List<Step> swapColours(List<Step> run) {
    int at = pick(run, Step.Print.class);
    if (at < 0) {
      return null;
    }
    Step.Print print = (Step.Print) run.get(at);
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
    if (!(step instanceof Step.Print print)) {
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
    int at = pick(run, Step.Print.class);
    if (at < 0) {
      return null;
    }
    PrintDraft draft = new PrintDraft((Step.Print) run.get(at));
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
    int at = pick(run, Step.Print.class);
    if (at < 0) {
      return null;
    }
    PrintDraft draft = new PrintDraft((Step.Print) run.get(at));
    draft.order = Step.Order.values()[random.nextInt(4)];
    run.set(at, draft.step());
    return run;
  }

  /** Numbers go from one step to another that prints the same colours of the arrangement. */
  private List<Step> handOver(List<Step> run) {
    int at = pick(run, Step.Print.class);
    if (at < 0) {
      return null;
    }
    Step.Print from = (Step.Print) run.get(at);
    List<Integer> others = alike(run, at);
    if (others.isEmpty()) {
      return null;
    }
    int other = others.get(random.nextInt(others.size()));
    Step.Print to = (Step.Print) run.get(other);
    List<Integer> own = numbers(from);
    List<Integer> theirs = numbers(to);
    int count = 1 + random.nextInt(Math.max(1, Math.min(4, own.size())));
    boolean atEnd = other > at ? random.nextInt(4) > 0 : random.nextInt(4) == 0;
    for (int i = 0; i < count && !own.isEmpty(); i++) {
      int index = atEnd ? own.size() - 1 : 0;
      theirs.add(own.remove(index));
    }
    run.set(other, numbered(to, theirs));
    if (own.isEmpty()) {
      run.remove(at);
    } else {
      run.set(at, numbered(from, own));
    }
    return run;
  }

  /** Places of other steps that print the same arrangements in the same colours. */
  private List<Integer> alike(List<Step> run, int at) {
    Step.Print one = (Step.Print) run.get(at);
    List<Integer> others = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      if (i != at
          && run.get(i) instanceof Step.Print other
          && other.arrangements().equals(one.arrangements())
          && other.separations().equals(one.separations())) {
        others.add(i);
      }
    }
    return others;
  }

  private List<Integer> numbers(Step.Print print) {
    if (print.numbers().isEmpty() && !print.only().isEmpty()) {
      return new ArrayList<>(print.only());
    }
    Set<Integer> numbers = new LinkedHashSet<>();
    order.placements(print).forEach(p -> numbers.add(p.number()));
    return new ArrayList<>(numbers);
  }

  /** The same with other numbers, rising; without any if they are all. */
  Step.Print numbered(Step.Print print, List<Integer> numbers) {
    PrintDraft draft = new PrintDraft(print);
    List<Integer> sorted = numbers.stream().distinct().sorted().toList();
    draft.only = List.of();
    List<Integer> all = numbers(draft.step()).stream().sorted().toList();
    draft.only = sorted.equals(all) ? List.of() : sorted;
    return draft.step();
  }

  private List<Step> split(List<Step> run) {
    int at = pick(run, Step.Print.class);
    if (at < 0) {
      return null;
    }
    Step.Print print = (Step.Print) run.get(at);
    if (print.arrangements().size() > 1) {
      int cut = 1 + random.nextInt(print.arrangements().size() - 1);
      PrintDraft one = new PrintDraft(print);
      PrintDraft other = new PrintDraft(print);
      one.arrangements = print.arrangements().subList(0, cut);
      other.arrangements = print.arrangements().subList(cut, print.arrangements().size());
      run.set(at, numbered(one.step(), within(one, print)));
      run.add(at + 1, numbered(other.step(), within(other, print)));
      return run;
    }
    List<Integer> numbers = numbers(print);
    if (numbers.size() < 2) {
      return null;
    }
    List<Integer> one = new ArrayList<>();
    List<Integer> other = new ArrayList<>();
    boolean oddAndEven = random.nextInt(3) == 0;
    int cut = 1 + random.nextInt(numbers.size() - 1);
    for (int i = 0; i < numbers.size(); i++) {
      ((oddAndEven ? i % 2 == 0 : i < cut) ? one : other).add(numbers.get(i));
    }
    PrintDraft second = new PrintDraft(print);
    second.beforeMoving = oddAndEven ? Wait.NONE : print.beforeMoving();
    run.set(at, numbered(print, one));
    run.add(at + 1, numbered(second.step(), other));
    return run;
  }

  /** Numbers that an arrangement of a step has; those of its other arrangements may be more. */
  private List<Integer> within(PrintDraft part, Step.Print whole) {
    List<Integer> there = new ArrayList<>();
    for (String name : part.arrangements) {
      leeway.layout().of(name).forEach(p -> there.add(p.number()));
    }
    List<Integer> numbers = numbers(whole);
    numbers.retainAll(there);
    return numbers;
  }

  private List<Step> merge(List<Step> run) {
    int at = pick(run, Step.Print.class);
    if (at < 0) {
      return null;
    }
    Step.Print one = (Step.Print) run.get(at);
    List<Integer> mates = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      if (i != at
          && run.get(i) instanceof Step.Print other
          && other.arrangements().equals(one.arrangements())) {
        mates.add(i);
      }
    }
    if (mates.isEmpty()) {
      return null;
    }
    int mate = mates.get(random.nextInt(mates.size()));
    Step.Print other = (Step.Print) run.get(mate);
    if (other.separations().equals(one.separations())) {
      List<Integer> numbers = numbers(one);
      numbers.addAll(numbers(other));
      run.set(at, numbered(one, numbers));
    } else if (Set.copyOf(numbers(one)).equals(Set.copyOf(numbers(other)))) {
      PrintDraft draft = new PrintDraft(one);
      List<Integer> colours = new ArrayList<>(one.separations());
      colours.addAll(other.separations());
      List<Integer> sorted = colours.stream().distinct().sorted().toList();
      boolean all = one.arrangements().stream().allMatch(a -> leeway.colours(a) == sorted.size());
      draft.colours = all ? List.of() : sorted;
      run.set(at, draft.step());
    } else {
      return null;
    }
    run.remove(mate);
    return run;
  }

  /** Two arrangements are printed in one step as far as they share numbers. */
  private List<Step> joinArrangements(List<Step> run) {
    int at = pick(run, Step.Print.class);
    int mate = pick(run, Step.Print.class);
    if (at < 0 || at == mate) {
      return null;
    }
    Step.Print one = (Step.Print) run.get(at);
    Step.Print other = (Step.Print) run.get(mate);
    boolean apart = other.arrangements().stream().noneMatch(one.arrangements()::contains);
    if (!apart || !other.separations().equals(one.separations())) {
      return null;
    }
    PrintDraft draft = new PrintDraft(one);
    draft.arrangements = new ArrayList<>(one.arrangements());
    draft.arrangements.addAll(other.arrangements());
    draft.order = random.nextInt(3) == 0 ? Step.Order.SET_BY_SET : one.order();
    if (one.numbers().isEmpty() && one.only().isEmpty() && other.only().isEmpty()) {
      run.set(at, draft.step());
      run.remove(mate);
      return run;
    }
    List<Integer> shared = numbers(one);
    shared.retainAll(numbers(other));
    if (shared.isEmpty()) {
      return null;
    }
    draft.only = shared.stream().sorted().toList();
    List<Integer> left = numbers(one);
    left.removeAll(shared);
    List<Integer> rest = numbers(other);
    rest.removeAll(shared);
    run.set(mate, rest.isEmpty() ? null : numbered(other, rest));
    run.set(at, draft.step());
    if (!left.isEmpty()) {
      run.add(at + 1, numbered(one, left));
    }
    run.remove(null);
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
    if (step instanceof Step.Print print) {
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

  /** A paste becomes a mix step of its own, or goes to another one. */
  private List<Step> mixing(List<Step> run) {
    int at = pick(run, Step.Mix.class);
    if (at < 0 || !leeway.timedMixing().isEmpty()) {
      return null;
    }
    Step.Mix mix = (Step.Mix) run.get(at);
    int mate = pick(run, Step.Mix.class);
    if (mate != at) {
      Step.Mix other = (Step.Mix) run.get(mate);
      List<String> own = new ArrayList<>(mix.pastes());
      List<String> theirs = new ArrayList<>(other.pastes());
      int many = random.nextBoolean() ? own.size() : 1;
      for (int i = 0; i < many; i++) {
        theirs.add(own.remove(random.nextInt(own.size())));
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
    run.add(to, new Step.Mix(1, other, mix.takes(), one(), Step.path(1)));
    return run;
  }

  /**
   * A colour dries while the pastes of the next ones are mixed, which then print in another step.
   */
  private List<Step> mixMeanwhile(List<Step> run) {
    int at = pick(run, Step.Print.class);
    if (at < 0 || !leeway.timedMixing().isEmpty()) {
      return null;
    }
    Step.Print print = (Step.Print) run.get(at);
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
    run.add(at + 1, new Step.Mix(1, moved, Optional.empty(), one(), Step.path(1)));
    run.add(at + 1, Repair.dry(Dryness.FRAME_SAFE, air()));
    return run;
  }

  /** Who is named first, or which arrangement comes first, in one step. */
  private List<Step> reorderWithin(List<Step> run) {
    int at = pick(run, Step.Print.class);
    if (at < 0) {
      return null;
    }
    PrintDraft draft = new PrintDraft((Step.Print) run.get(at));
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

package strikeoff.propose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Wait;

/**
 * Shares the prints out anew among the steps that print them. Each change is null where it fails.
 */
final class ShareMoves {

  private final Leeway leeway;
  private final Order order;
  private final SplittableRandom random;

  ShareMoves(Leeway leeway, Order order, SplittableRandom random) {
    this.leeway = leeway;
    this.order = order;
    this.random = random;
  }

  /** Numbers go from one step to another that prints the same colours of the arrangement. */
  List<Step> handOver(List<Step> run) {
    int at = Moves.pick(random, run, PrintStep.class);
    if (at < 0) {
      return null;
    }
    PrintStep from = (PrintStep) run.get(at);
    List<Integer> others = alike(run, at);
    if (others.isEmpty()) {
      return null;
    }
    int other = others.get(random.nextInt(others.size()));
    PrintStep to = (PrintStep) run.get(other);
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
    PrintStep one = (PrintStep) run.get(at);
    List<Integer> others = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      if (i != at
          && run.get(i) instanceof PrintStep other
          && other.arrangements().equals(one.arrangements())
          && other.separations().equals(one.separations())
          && one.numbers().isEmpty()
          && other.numbers().isEmpty()) {
        others.add(i);
      }
    }
    return others;
  }

  private List<Integer> numbers(PrintStep print) {
    if (!print.only().isEmpty()) {
      return new ArrayList<>(print.only());
    }
    Set<Integer> numbers = new LinkedHashSet<>();
    order.placements(print).forEach(p -> numbers.add(p.number()));
    return new ArrayList<>(numbers);
  }

  /** The same with other numbers, rising; without any if they are all. */
  PrintStep numbered(PrintStep print, List<Integer> numbers) {
    PrintDraft draft = new PrintDraft(print);
    List<Integer> sorted = numbers.stream().distinct().sorted().toList();
    draft.only = List.of();
    List<Integer> all = numbers(draft.step()).stream().sorted().toList();
    draft.only = sorted.equals(all) ? List.of() : sorted;
    return draft.step();
  }

  List<Step> split(List<Step> run) {
    int at = Moves.pick(random, run, PrintStep.class);
    if (at < 0) {
      return null;
    }
    PrintStep print = (PrintStep) run.get(at);
    if (print.arrangements().size() > 1) {
      int cut = 1 + random.nextInt(print.arrangements().size() - 1);
      PrintDraft one = new PrintDraft(print);
      PrintDraft other = new PrintDraft(print);
      Map<String, List<Integer>> first = order.said(order.numbers(print));
      Map<String, List<Integer>> rest = new LinkedHashMap<>(first);
      first.keySet().retainAll(print.arrangements().subList(0, cut));
      rest.keySet().removeAll(first.keySet());
      one.prints(first);
      other.prints(rest);
      run.set(at, one.step());
      run.add(at + 1, other.step());
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

  List<Step> merge(List<Step> run) {
    int at = Moves.pick(random, run, PrintStep.class);
    if (at < 0) {
      return null;
    }
    PrintStep one = (PrintStep) run.get(at);
    List<Integer> mates = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      if (i != at
          && run.get(i) instanceof PrintStep other
          && other.arrangements().equals(one.arrangements())
          && one.numbers().isEmpty()
          && other.numbers().isEmpty()) {
        mates.add(i);
      }
    }
    if (mates.isEmpty()) {
      return null;
    }
    int mate = mates.get(random.nextInt(mates.size()));
    PrintStep other = (PrintStep) run.get(mate);
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

  /** Two arrangements are printed in one step: wholly, or as far as they share numbers. */
  List<Step> joinArrangements(List<Step> run) {
    int at = Moves.pick(random, run, PrintStep.class);
    int mate = Moves.pick(random, run, PrintStep.class);
    if (at < 0 || at == mate) {
      return null;
    }
    PrintStep one = (PrintStep) run.get(at);
    PrintStep other = (PrintStep) run.get(mate);
    boolean apart = other.arrangements().stream().noneMatch(one.arrangements()::contains);
    if (!apart || !other.separations().equals(one.separations())) {
      return null;
    }
    PrintDraft draft = new PrintDraft(one);
    draft.order = random.nextInt(3) == 0 ? PrintOrder.SET_BY_SET : one.order();
    Map<String, List<Integer>> both = order.said(order.numbers(one));
    both.putAll(order.said(order.numbers(other)));
    boolean alike = both.values().stream().distinct().count() == 1;
    if (alike || random.nextBoolean()) {
      draft.prints(both);
      run.set(at, draft.step());
      run.remove(mate);
      return run;
    }
    if (!one.numbers().isEmpty() || !other.numbers().isEmpty()) {
      return null;
    }
    List<Integer> shared = numbers(one);
    shared.retainAll(numbers(other));
    if (shared.isEmpty()) {
      return null;
    }
    draft.arrangements = new ArrayList<>(one.arrangements());
    draft.arrangements.addAll(other.arrangements());
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
}

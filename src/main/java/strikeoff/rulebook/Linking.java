package strikeoff.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.stream.Collectors;

/**
 * Links rules as facts ask for them: the usual ones ahead, then those that the first other facts
 * ask for, and at the next call all that are left. A rule that no fact asks for can't fire, and
 * linking it costs a start more than judging a plan.
 */
final class Linking {

  private final FutureTask<LinkedRules> usual;

  /** Changes under the lock; each state is whole. */
  private volatile State state;

  /**
   * @param further linked besides the usual ones
   * @param left not linked yet
   */
  private record State(List<LinkedRules> further, List<KnownRule> left) {}

  Linking(List<KnownRule> rules) {
    List<KnownRule> ahead = rules.stream().filter(KnownRule::usual).toList();
    this.usual = new FutureTask<>(() -> LinkedRules.of(ahead));
    this.state = new State(List.of(), rules.stream().filter(rule -> !rule.usual()).toList());
  }

  /** Begins to link the usual rules beside other work. */
  void prepare() {
    Thread linking = new Thread(usual, "link rules");
    linking.setDaemon(true);
    linking.start();
  }

  /**
   * All rules that could fire, linked; it may take others with them.
   *
   * @param there classes of the facts that are there
   */
  List<LinkedRules> answered(Set<String> there) {
    if (asksForMore(there)) {
      link(there);
    }
    List<LinkedRules> all = new ArrayList<>();
    all.add(usual());
    all.addAll(state.further());
    all.removeIf(rules -> !rules.answered(there));
    return all;
  }

  private boolean asksForMore(Set<String> there) {
    return state.left().stream().anyMatch(rule -> rule.asked().answered(there));
  }

  private synchronized void link(Set<String> there) {
    if (!asksForMore(there)) {
      return;
    }
    boolean all = !state.further().isEmpty();
    Map<Boolean, List<KnownRule>> now =
        state.left().stream()
            .collect(Collectors.partitioningBy(rule -> all || rule.asked().answered(there)));
    List<LinkedRules> further = new ArrayList<>(state.further());
    further.add(LinkedRules.of(now.get(true)));
    state = new State(List.copyOf(further), now.get(false));
  }

  private LinkedRules usual() {
    usual.run();
    try {
      return usual.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the rules can't be linked", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the rules were linked", e);
    }
  }
}

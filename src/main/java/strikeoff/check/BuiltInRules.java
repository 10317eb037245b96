package strikeoff.check;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.rulebook.Rulebook;

/** The rules that come with the program: the same for every checker, and loaded once. */
public final class BuiltInRules {

  private static final FutureTask<Rulebook> RULES = new FutureTask<>(BuiltInRules::linked);

  private BuiltInRules() {}

  /**
   * Begins to load and link the rules beside other work, and to set up what reads plans, since
   * nothing at a start takes longer. Once they are loaded, or being loaded, it does nothing.
   */
  public static void prepare() {
    if (RULES.isDone()) {
      return;
    }
    Thread loading =
        new Thread(
            () -> {
              RULES.run();
              PlanReader.prepare();
            },
            "load rules");
    loading.setDaemon(true);
    loading.start();
  }

  private static Rulebook linked() {
    Rulebook rules = Rulebook.builtIn();
    rules.prepare();
    return rules;
  }

  /**
   * The rules, once they are loaded.
   *
   * @throws IllegalStateException if they can't be
   */
  static Rulebook loaded() {
    try {
      return RULES.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the rules can't be loaded", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the rules were loaded", e);
    }
  }
}

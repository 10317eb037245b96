package strikeoff.cli.commands;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.Moment;
import strikeoff.propose.QuickLook;

/** A look at other runs of a plan, beside what else is done for it. */
final class FurtherLook {

  private final Optional<Checker> checker;
  private Optional<FutureTask<Optional<Moment>>> look = Optional.empty();

  /**
   * @param checker what judges the plan; nothing if nothing can
   */
  FurtherLook(Optional<Checker> checker) {
    this.checker = checker;
  }

  /**
   * @param checked the plan by all rules
   */
  void begin(Checked checked) {
    if (checked instanceof Checked.Judged judged && checker.isPresent()) {
      FutureTask<Optional<Moment>> task =
          new FutureTask<>(() -> QuickLook.sooner(checker.get(), judged));
      look = Optional.of(task);
      Thread beside = new Thread(task, "look at other runs");
      beside.setDaemon(true);
      beside.start();
    }
  }

  /** When a run ends that is worth telling of. */
  Optional<Moment> found() {
    try {
      return look.isPresent() ? look.get().get() : Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    } catch (ExecutionException e) {
      throw new IllegalStateException("no other run could be tried", e.getCause());
    }
  }
}

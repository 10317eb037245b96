package strikeoff.rulebook.own;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/**
 * Reads and compiles rules on a thread that nobody waits for longer than agreed. A few brackets in
 * one another, or a call in a call, can keep a parser or a compiler busy for years.
 */
final class BoundedCompilation {

  /** Twenty times what a folder of rules takes where two processors are shared by ten. */
  private static final Duration MOST = Duration.ofSeconds(60);

  private BoundedCompilation() {}

  static CompiledRules of(List<RuleFile> files) throws RuleMistakes {
    return of(files, MOST);
  }

  /**
   * @param most how long all files may take; when they took longer, each alone has a third of it
   * @throws RuleMistakes with every mistake that shows, or with the file that doesn't come to an
   *     end
   */
  static CompiledRules of(List<RuleFile> files, Duration most) throws RuleMistakes {
    Optional<CompiledRules> compiled = within(() -> Compilation.of(files), files.get(0), most);
    if (compiled.isPresent()) {
      return compiled.get();
    }
    List<RuleFile> words = files.stream().filter(RuleFile::isVocabulary).toList();
    List<RuleFile> rules = files.stream().filter(f -> !f.isVocabulary()).toList();
    RuleFile slow = rules.isEmpty() ? files.get(0) : rules.get(0);
    for (RuleFile file : rules.size() > 1 ? rules : List.<RuleFile>of()) {
      List<RuleFile> alone = Stream.concat(words.stream(), Stream.of(file)).toList();
      if (within(() -> Compilation.of(alone), file, most.dividedBy(3)).isEmpty()) {
        slow = file;
        break;
      }
    }
    throw new RuleMistakes(
        List.of(
            new RuleMistake(
                slow.name(),
                0,
                "reading these rules had not ended after "
                    + most.toSeconds()
                    + " s and was given up; write shorter conditions, with fewer brackets and calls"
                    + " in one another")));
  }

  private static Optional<CompiledRules> within(
      Callable<CompiledRules> work, RuleFile file, Duration most) throws RuleMistakes {
    FutureTask<CompiledRules> task = new FutureTask<>(work);
    Thread thread = new Thread(task, "compile own rules");
    // What never ends must not keep the program from ending.
    thread.setDaemon(true);
    thread.start();
    try {
      return Optional.of(task.get(most.toMillis(), TimeUnit.MILLISECONDS));
    } catch (TimeoutException e) {
      task.cancel(true);
      thread.setPriority(Thread.MIN_PRIORITY);
      return Optional.empty();
    } catch (InterruptedException e) {
      task.cancel(true);
      Thread.currentThread().interrupt();
      throw mistake(file, "reading these rules was interrupted");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuleMistakes mistakes) {
        throw mistakes;
      }
      if (e.getCause() instanceof OutOfMemoryError) {
        throw mistake(file, "reading these rules needs more memory than there is");
      }
      if (e.getCause() instanceof StackOverflowError) {
        throw mistake(file, "a rule here has too much in brackets in one another");
      }
      throw new IllegalStateException("own rules can't be compiled", e.getCause());
    }
  }

  private static RuleMistakes mistake(RuleFile file, String message) {
    return new RuleMistakes(List.of(new RuleMistake(file.name(), 0, message)));
  }
}

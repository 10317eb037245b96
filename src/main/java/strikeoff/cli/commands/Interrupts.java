package strikeoff.cli.commands;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import sun.misc.Signal;
import sun.misc.SignalHandler;

/**
 * Takes the first Ctrl-C as a wish, as long as this is open; the second ends the program as it
 * always does.
 *
 * <p>{@code sun.misc.Signal} is no standard of Java, though all JDKs from 17 on have it, and javac
 * warns of it. A shutdown hook can't do that: once the program is ending, neither its exit code nor
 * a second interrupt counts.
 */
final class Interrupts implements AutoCloseable {

  private final AtomicBoolean came = new AtomicBoolean();
  private final Optional<SignalHandler> before;

  Interrupts() {
    this.before = handled(this::noted);
  }

  private void noted(Signal signal) {
    came.set(true);
    Signal.handle(signal, SignalHandler.SIG_DFL);
  }

  /** True once somebody has pressed it. */
  boolean came() {
    return came.get();
  }

  /** From now on it ends the program again. */
  @Override
  public void close() {
    before.ifPresent(Interrupts::handled);
  }

  /**
   * What handled it before.
   *
   * @return nothing if it can't be handled here: the JDK was told to leave signals alone, or lacks
   *     what this takes
   */
  private static Optional<SignalHandler> handled(SignalHandler handler) {
    try {
      SignalHandler old = Signal.handle(new Signal("INT"), handler);
      if (old == SignalHandler.SIG_IGN && handler != SignalHandler.SIG_IGN) {
        // Whoever started this wants it to go on through interrupts.
        Signal.handle(new Signal("INT"), old);
      }
      return Optional.of(old);
    } catch (IllegalArgumentException | NoClassDefFoundError e) {
      return Optional.empty();
    }
  }
}

package strikeoff.cli;

import java.util.function.IntConsumer;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;

/**
 * Tells if something else than {@link Main} ends the program: a run that was cut short must not
 * pass for one that found nothing. Own rules can't call {@code System.exit(0)}; this is for what
 * they call that does.
 */
final class EarlyEnd {

  private final Surroundings here;
  private final IntConsumer halt;
  private volatile boolean done;

  private EarlyEnd(Surroundings here, IntConsumer halt) {
    this.here = here;
    this.halt = halt;
  }

  /**
   * @param halt ends the program at once with a code of its own
   */
  static EarlyEnd watch(Surroundings here, IntConsumer halt) {
    EarlyEnd end = new EarlyEnd(here, halt);
    Runtime.getRuntime().addShutdownHook(new Thread(end::look, "early end"));
    return end;
  }

  /** The work is done: from now on the program may end. */
  void done() {
    done = true;
  }

  private void look() {
    if (done) {
      return;
    }
    Thread.getAllStackTraces().entrySet().stream()
        .filter(thread -> ends(thread.getValue()))
        .map(thread -> thread.getKey().getName())
        .findFirst()
        .ifPresent(this::tell);
  }

  /** A signal ends the program without this call, and has a code of its own. */
  private static boolean ends(StackTraceElement[] frames) {
    for (StackTraceElement frame : frames) {
      if (frame.getClassName().equals("java.lang.Runtime")
          && frame.getMethodName().equals("exit")) {
        return true;
      }
    }
    return false;
  }

  private void tell(String thread) {
    Complaint.say(here, thread + " ended the program before its work was done");
    here.err().flush();
    halt.accept(Exit.FAULT.code());
  }
}

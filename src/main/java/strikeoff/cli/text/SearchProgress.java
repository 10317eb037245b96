package strikeoff.cli.text;

import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import strikeoff.day.Moment;
import strikeoff.propose.Onlooker;

/** Tells how far a search is, on one line of the error output that goes again. */
public final class SearchProgress implements Onlooker {

  /** People can't read faster, and each line takes time from the search. */
  private static final long REWRITTEN_NANOS = 250_000_000;

  private final Surroundings here;
  private final String wholly;
  private final BooleanSupplier enough;
  private final LongSupplier nanos;
  private final long begun;
  private long written;
  private boolean stands;
  private Optional<Moment> soonest = Optional.empty();

  /**
   * @param wholly how long it searches, in words
   * @param nanos a clock, from anywhen
   * @param enough true once somebody has pressed Ctrl-C
   */
  public SearchProgress(
      Surroundings here, String wholly, LongSupplier nanos, BooleanSupplier enough) {
    this.here = here;
    this.wholly = wholly;
    this.nanos = nanos;
    this.begun = nanos.getAsLong();
    this.enough = enough;
  }

  @Override
  public boolean hasEnough() {
    return enough.getAsBoolean();
  }

  @Override
  public synchronized void sees(long tried, Optional<Moment> best) {
    if (!here.watched()) {
      return;
    }
    if (best.isPresent() && (soonest.isEmpty() || best.get().compareTo(soonest.get()) < 0)) {
      soonest = best;
    }
    long now = nanos.getAsLong();
    if (!stands || now - written >= REWRITTEN_NANOS) {
      write(line(tried, (now - begun) / 1_000_000_000));
      written = now;
      stands = true;
    }
  }

  private String line(long tried, long seconds) {
    return String.format(
        Locale.ROOT,
        "%d s of %s, %d runs tried; %s; Ctrl-C takes the best",
        seconds,
        wholly,
        tried,
        soonest.map(moment -> "the best ends " + moment.when()).orElse("none is found yet"));
  }

  /** A line that is too long would break, and its first half stay. */
  private void write(String line) {
    int most = here.width() - 1;
    here.err().print(Progress.CLEAR + (line.length() > most ? line.substring(0, most) : line));
    here.err().flush();
  }

  /** Takes the line away, and says if the search ended before its time. */
  public synchronized void end() {
    if (stands) {
      here.err().print(Progress.CLEAR);
    }
    if (hasEnough()) {
      here.err().print((here.watched() ? Progress.CLEAR : "") + "Ctrl-C ended the search.\n");
    }
    here.err().flush();
  }
}

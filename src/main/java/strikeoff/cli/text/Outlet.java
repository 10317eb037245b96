package strikeoff.cli.text;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** Where the program writes to; remembers why it could not, since writers swallow that. */
public final class Outlet extends OutputStream {

  private final OutputStream to;
  private IOException failure;

  public Outlet(OutputStream to) {
    this.to = to;
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int count) throws IOException {
    try {
      to.write(bytes, from, count);
    } catch (IOException e) {
      failure = failure == null ? e : failure;
      throw e;
    }
  }

  /** Why something written got lost. None if whoever reads has merely read enough. */
  public Optional<String> lost() {
    return Optional.ofNullable(failure)
        .map(e -> String.valueOf(e.getMessage()))
        .filter(why -> !why.toLowerCase(java.util.Locale.ROOT).contains("pipe"));
  }
}

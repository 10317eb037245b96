package strikeoff.cli.files;

import java.io.BufferedInputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.nio.file.Path;

/**
 * What is handed in. A stream of files asks how much is left, which some JDKs can't answer of a
 * pipe; one with a buffer only reads.
 */
public final class StandardInput extends FilterInputStream {

  private static final Path NUMBER = Path.of("/proc/self/fd/0");

  private boolean begun;

  public StandardInput() {
    super(new BufferedInputStream(new FileInputStream(FileDescriptor.in)));
  }

  @Override
  public int read() throws IOException {
    begin();
    return super.read();
  }

  @Override
  public int read(byte[] bytes, int from, int count) throws IOException {
    begin();
    return super.read(bytes, from, count);
  }

  private void begin() throws IOException {
    if (!begun && HandedOver.isOurOwn(NUMBER)) {
      throw new IOException("standard input is closed");
    }
    begun = true;
  }
}

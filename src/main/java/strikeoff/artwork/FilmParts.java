package strikeoff.artwork;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;

/** A film's file of which any part is read when it is asked for, so that it is never held whole. */
interface FilmParts {

  /** How many bytes it has. */
  long length();

  /**
   * Fills a part of an array.
   *
   * @param place of the first of these bytes in the file
   * @throws EOFException if the file ends before the last of them
   */
  void read(long place, byte[] into, int from, int count) throws IOException;

  /** A file that is held already. */
  static FilmParts of(byte[] all) {
    return new FilmParts() {
      @Override
      public long length() {
        return all.length;
      }

      @Override
      public void read(long place, byte[] into, int from, int count) throws IOException {
        if (place + count > all.length) {
          throw new EOFException();
        }
        System.arraycopy(all, (int) place, into, from, count);
      }
    };
  }

  /** A file on a disk: as a stream, and anywhere without moving that. */
  final class OnDisk extends BufferedInputStream implements FilmParts {

    private final FileChannel file;
    private final long length;

    OnDisk(FileChannel file) throws IOException {
      super(Channels.newInputStream(file));
      this.file = file;
      this.length = file.size();
    }

    @Override
    public long length() {
      return length;
    }

    @Override
    public void read(long place, byte[] into, int from, int count) throws IOException {
      ByteBuffer wanted = ByteBuffer.wrap(into, from, count);
      for (int read = 0; read < count; ) {
        int more = file.read(wanted, place + read);
        if (more < 0) {
          throw new EOFException();
        }
        read += more;
      }
    }
  }
}

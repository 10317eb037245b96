package strikeoff.artwork;

import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import strikeoff.document.GivenUp;
import strikeoff.plan.Artwork.Tone;

/**
 * A PBM picture (portable bitmap): {@code P4}, eight points a byte, or {@code P1}, a digit a point;
 * in both 1 is black. It says nothing of its size.
 */
final class Pbm implements Picture {

  /** Longer remarks are none. */
  private static final int MOST_BETWEEN = 10_000;

  private static final int MOST_DIGITS = 10;

  private final ByteSource in;
  private final boolean plain;
  private final Head head;

  private Pbm(ByteSource in, boolean plain, Head head) {
    this.in = in;
    this.plain = plain;
    this.head = head;
  }

  /**
   * Reads the head; the two letters before it were read already.
   *
   * @param plain true for digits
   */
  static Pbm of(ByteSource in, boolean plain) throws IOException, UnreadablePicture {
    long columns = number(in);
    long rows = number(in);
    Picture.requireSize(columns, rows);
    return new Pbm(in, plain, new Head((int) columns, (int) rows, Optional.empty()));
  }

  /** A number after spaces and remarks, and the one space after it. */
  private static long number(ByteSource in) throws IOException, UnreadablePicture {
    int b = in.next();
    boolean remark = false;
    for (int i = 0; i < MOST_BETWEEN && b >= 0 && (remark || b == '#' || isSpace(b)); i++) {
      remark = b == '#' || remark && b != '\n' && b != '\r';
      b = in.next();
    }
    if (b >= 0 && (remark || b == '#' || isSpace(b))) {
      throw new UnreadablePicture(
          "the head of this PBM file is longer than the "
              + MOST_BETWEEN
              + " letters that are taken in");
    }
    long number = 0;
    int digits = 0;
    while (b >= '0' && b <= '9') {
      if (++digits > MOST_DIGITS) {
        throw new UnreadablePicture(
            "this PBM file says its size in a number of more than " + MOST_DIGITS + " digits");
      }
      number = number * 10 + b - '0';
      b = in.next();
    }
    if (digits == 0 || !isSpace(b)) {
      throw new UnreadablePicture("this PBM file doesn't say how large its picture is");
    }
    return number;
  }

  private static boolean isSpace(int b) {
    return b == ' ' || b >= '\t' && b <= '\r';
  }

  @Override
  public Head head() {
    return head;
  }

  @Override
  public void read(Tone prints, PointTaker points) throws IOException, UnreadablePicture {
    byte[] row = new byte[(columns() + 7) / 8];
    for (int y = 0; y < rows(); y++) {
      GivenUp.ifAsked();
      boolean whole = plain ? digits(row) : in.some(row, 0, row.length) == row.length;
      if (!whole) {
        throw UnreadablePicture.ends(y, rows());
      }
      points.bits(y, row, 0, prints == Tone.DARK ? 1 : 0);
    }
    requireEnd();
  }

  /** Nobody would miss what comes after the first picture; after digits, a space may. */
  private void requireEnd() throws IOException, UnreadablePicture {
    int b = in.next();
    for (int i = 0; i < MOST_BETWEEN && isSpace(b); i++) {
      b = in.next();
    }
    if (b >= 0) {
      throw new UnreadablePicture(
          "this PBM file goes on after its picture; save it again, each film in a file of its own");
    }
  }

  private boolean digits(byte[] row) throws IOException, UnreadablePicture {
    Arrays.fill(row, (byte) 0);
    for (int x = 0; x < columns(); x++) {
      int b = in.next();
      while (isSpace(b)) {
        b = in.next();
      }
      if (b < 0) {
        return false;
      }
      if (b != '0' && b != '1') {
        throw new UnreadablePicture("this PBM file holds something else than 0 and 1");
      }
      row[x >> 3] |= (byte) ((b - '0') << 7 - (x & 7));
    }
    return true;
  }
}

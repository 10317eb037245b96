package strikeoff.artwork;

/** Undoes the filters of PNG rows (ISO/IEC 15948, clause 9). */
final class PngFilters {

  private PngFilters() {}

  /**
   * Restores a row in place.
   *
   * @param row its filter in the first byte, then its samples
   * @param above the row above it, restored
   * @param back bytes of a point
   */
  static void undo(byte[] row, byte[] above, int back) throws UnreadablePicture {
    switch (row[0]) {
      case 0 -> {}
      case 1 -> sub(row, back);
      case 2 -> up(row, above);
      case 3 -> average(row, above, back);
      case 4 -> paeth(row, above, back);
      default ->
          throw new UnreadablePicture(
              "the picture is damaged: a row has no filter that the"
                  + " standard knows; save it again");
    }
  }

  private static void sub(byte[] row, int back) {
    for (int i = 1 + back; i < row.length; i++) {
      row[i] += row[i - back];
    }
  }

  private static void up(byte[] row, byte[] above) {
    for (int i = 1; i < row.length; i++) {
      row[i] += above[i];
    }
  }

  private static void average(byte[] row, byte[] above, int back) {
    for (int i = 1; i < Math.min(1 + back, row.length); i++) {
      row[i] += (byte) ((above[i] & 0xff) >> 1);
    }
    for (int i = 1 + back; i < row.length; i++) {
      row[i] += (byte) ((row[i - back] & 0xff) + (above[i] & 0xff) >> 1);
    }
  }

  private static void paeth(byte[] row, byte[] above, int back) {
    // Of what has nothing to its left, the guess is what lies above.
    for (int i = 1; i < Math.min(1 + back, row.length); i++) {
      row[i] += above[i];
    }
    for (int i = 1 + back; i < row.length; i++) {
      int left = row[i - back] & 0xff;
      int up = above[i] & 0xff;
      int both = above[i - back] & 0xff;
      int byLeft = Math.abs(up - both);
      int byUp = Math.abs(left - both);
      int byBoth = Math.abs(left + up - 2 * both);
      row[i] += (byte) (byLeft <= byUp && byLeft <= byBoth ? left : byUp <= byBoth ? up : both);
    }
  }
}

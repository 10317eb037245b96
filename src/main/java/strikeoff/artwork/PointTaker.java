package strikeoff.artwork;

/** Takes a picture's points as they are read. */
interface PointTaker {

  /**
   * Some points of a row.
   *
   * @param y the row, from the top
   * @param first column of the first of them
   * @param step from one column to the next
   * @param ink how much each is of full paste, 0 to 255 without sign
   * @param count how many there are
   * @throws UnreadablePicture if no film is like that
   */
  void row(int y, int first, int step, byte[] ink, int count) throws UnreadablePicture;

  /**
   * A whole row of one bit a point, the first in the highest bit.
   *
   * @param from the byte that holds the first eight
   * @param prints the bit that takes paste
   * @throws UnreadablePicture if no film is like that
   */
  void bits(int y, byte[] packed, int from, int prints) throws UnreadablePicture;
}

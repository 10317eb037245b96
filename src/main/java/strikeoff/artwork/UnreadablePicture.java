package strikeoff.artwork;

/** A picture can't be taken in; the message says why, in words for whoever wrote the plan. */
final class UnreadablePicture extends Exception {

  private static final long serialVersionUID = 1;

  UnreadablePicture(String why) {
    super(why, null, false, false);
  }

  /** The picture's data breaks off. */
  static UnreadablePicture ends(int rows, int of) {
    return new UnreadablePicture(
        "the picture ends after " + rows + " of " + of + " rows; save it again");
  }
}

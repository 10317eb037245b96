package strikeoff.sequence;

/** What the ridge of a seam asks for that is printed across once it is sewn. */
final class Ridge {

  private Ridge() {}

  /** As a sentence that begins with a space; empty if it is levelled. */
  static String besides(boolean padded) {
    return padded
        ? ""
        : " Its ridge would print a line: level it with padding and say `padded: yes`.";
  }
}

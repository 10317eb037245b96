package strikeoff.sequence;

/** What the ridge of a seam asks for that is printed across once it is sewn. */
final class Ridge {

  private Ridge() {}
}

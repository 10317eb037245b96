package strikeoff.start;

/** What a first plan prints. */
public enum PrintKind {
  /** In a row along the cloth, at a pitch. */
  MOTIFS,
  /** Repeats along the near edge. */
  NEAR_BORDER,
  /** Repeats along the far edge. */
  FAR_BORDER,
  /** Repeats along both edges. */
  BORDERS,
  /** All of the cloth filled. */
  SMALL_REPEATS;

  boolean isBorder() {
    return this == NEAR_BORDER || this == FAR_BORDER || this == BORDERS;
  }
}

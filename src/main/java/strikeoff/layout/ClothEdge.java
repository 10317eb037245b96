package strikeoff.layout;

/** An edge of the cloth as it lies before the printer: where it starts and ends, near and far. */
public enum ClothEdge {
  START,
  END,
  NEAR,
  FAR;

  /** True of an end of its length. */
  public boolean isEnd() {
    return this == START || this == END;
  }
}

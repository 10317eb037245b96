package strikeoff.plan;

/** How several colours, sets and arrangements are worked. */
public enum PrintOrder {
  /** Arrangement after arrangement, set after set; in a set colour after colour. */
  BY_COLOUR,
  /** The same, but all colours at a station before the next. */
  BY_STATION,
  /** Each colour over all sets of an arrangement, however often the cloth moves, then the next. */
  OVER_ALL,
  /** Everything that the table shows of all arrangements before the cloth moves on. */
  SET_BY_SET
}

package strikeoff.evidence;

/**
 * A kind of estimate that figures of a plan rest on, for whoever reads a report and asks how far to
 * trust it.
 */
public enum Basis {
  DRYING,
  DEPOSIT,
  PASTE_LIFE,
  /** pH of a soda bath. */
  PH,
  /** How much soda dissolves. */
  DISSOLVING,
  FIXING_TIME,
  /** How pale a blend comes out. */
  BLEND,
  FINISHED_SIZE,
  COLOURS
}

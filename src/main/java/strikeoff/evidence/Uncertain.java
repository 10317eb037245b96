package strikeoff.evidence;

import strikeoff.units.Chance;

/** A fact that is so on some of the days to come, and not on others. */
public interface Uncertain extends Evidence {

  /** On how many of them it is so. */
  Chance chance();
}

package strikeoff.sequence;

import strikeoff.evidence.Evidence;
import strikeoff.layout.Copies;

/** A fact of the order that concerns some of the placements. */
public interface AtCopies extends Evidence {

  Copies copies();
}

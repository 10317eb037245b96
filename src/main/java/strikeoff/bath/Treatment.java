package strikeoff.bath;

import strikeoff.units.Mass;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** What is done to a print so that more of its dye gets fixed. */
public sealed interface Treatment {

  /** More soda ash goes into the bath. */
  record AddSoda(Mass mass) implements Treatment {}

  record SteamLonger(Span more) implements Treatment {}

  record LeaveLonger(Span more) implements Treatment {}

  record KeepAt(Temperature temperature, Span lasts) implements Treatment {}

  /** With baking soda in the paste, in place of all other alkali. */
  record Steam(Span lasts) implements Treatment {}
}

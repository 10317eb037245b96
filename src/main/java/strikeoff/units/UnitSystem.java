package strikeoff.units;

/**
 * Whose units. US and imperial ones differ in volumes only, and in concentrations, which are by
 * volume.
 */
public enum UnitSystem {
  METRIC,
  US,
  IMPERIAL
}

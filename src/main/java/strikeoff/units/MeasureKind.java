package strikeoff.units;

/**
 * What people choose units for. Lengths are of three kinds, since who works in inches may well give
 * a trap in millimetres and a thread in micrometres.
 */
public enum MeasureKind {
  LENGTH,
  /** The length of a piece of cloth, told in yards where it is written so. */
  CLOTH_LENGTH,
  /** A length of less than an eighth of an inch: a trap, a line. */
  SMALL_LENGTH,
  /** A length of less than a hundredth of an inch: a thread, a film. */
  THICKNESS,
  AREA,
  MASS,
  VOLUME,
  TEMPERATURE,
  AREAL_MASS,
  CONCENTRATION,
  MESH_COUNT,
  AIR_SPEED;

  private static final double SMALL_BELOW = 25.4 / 8;
  private static final double THIN_BELOW = 0.254;

  /** What two decimals of a millimetre tell as nothing. */
  private static final double NOTHING = 0.005;

  /** That which a length in mm is told like: only what is called a thickness is told as one. */
  static MeasureKind toldFor(double mm) {
    return Math.abs(mm) < NOTHING || Math.abs(mm) >= SMALL_BELOW ? LENGTH : SMALL_LENGTH;
  }

  /** That which a length in mm was written as. */
  static MeasureKind ofLength(double mm) {
    double much = Math.abs(mm);
    return much >= SMALL_BELOW ? LENGTH : much >= THIN_BELOW ? SMALL_LENGTH : THICKNESS;
  }
}

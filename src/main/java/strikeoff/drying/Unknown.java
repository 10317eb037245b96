package strikeoff.drying;

/**
 * What nobody knows exactly when a plan is written, and what a print day settles. Each is drawn as
 * a deviate of a normal distribution with a spread of 1; how far that moves the figure is a limit
 * of the policy.
 */
enum Unknown {
  /** How much paste this hand and this mesh leave on the cloth. */
  DEPOSIT(true),
  /** How evenly the pulls of one day come out. */
  PULL(false),
  /** Share of water in the paste. */
  WATER(true),
  /** Share of the water that the cloth can draw out of the film. */
  MOBILE(true),
  /** How quickly it does. */
  SOAK_TIME(true),
  /** How much it can hold. */
  UPTAKE(true),
  /** How much the hollows between the yarns hold. */
  HOLLOWS(true),
  /** How solid a paint film is when a finger takes nothing off. */
  TOUCH_DRY(true),
  /** How much water the cloth may hold when it is lifted. */
  LIFT_DRY(true),
  /** How much the skin of a paint film holds back. */
  SKIN(true),
  /** How the air of a still room creeps over the table. */
  STILL_AIR(true),
  /** How the air of a fan reaches the film. */
  MOVED_AIR(true),
  /** What of that differs from day to day. */
  AIR_TODAY(false),
  /** How much heat comes through padding and table. */
  BACKING(true),
  TEMPERATURE(false),
  HUMIDITY(false),
  /** How much colder or warmer than the air the walls are. */
  WALLS(false),
  /** The same on the day of the strike-off, which was another one. */
  PULL_THEN(false),
  AIR_THEN(false),
  TEMPERATURE_THEN(false),
  HUMIDITY_THEN(false),
  WALLS_THEN(false),
  /** What a watch, a scale and a finger miss. */
  SEEN(false);

  private final boolean lasting;

  Unknown(boolean lasting) {
    this.lasting = lasting;
  }

  /**
   * True for what describes this paste, hand and room, so that a strike-off tells about it; false
   * for what the next day settles anew.
   */
  boolean lasting() {
    return lasting;
  }
}

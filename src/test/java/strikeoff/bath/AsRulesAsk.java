package strikeoff.bath;

/** What the rules of fixing ask of facts, for tests that look at facts alone. */
final class AsRulesAsk {

  private AsRulesAsk() {}

  /** As {@code fixing/no-alkali} asks. */
  static boolean noAlkali(AlkaliForDye fix) {
    return !fix.inBath() && !fix.inCloth() && fix.without() > 0;
  }

  /** As {@code fixing/dye-never-fixed} asks. */
  static boolean neverFixed(DyePrinted dye) {
    return dye.fixes() == 0;
  }

  /** As {@code fixing/washed-before-fixed} asks. */
  static boolean fixedTooLate(DyeAtWater dye) {
    return dye.fixes() == 0 && dye.fixStep() > 0;
  }

  /** As {@code fixing/never-heat-set} asks. */
  static boolean neverSet(PaintPrinted paint) {
    return paint.heats() == 0 && paint.baths() == 0;
  }
}

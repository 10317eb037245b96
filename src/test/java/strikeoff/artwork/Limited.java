package strikeoff.artwork;

import strikeoff.units.Length;
import strikeoff.units.Share;

/** By what joints are measured in tests. */
final class Limited {

  private Limited() {}

  /**
   * Ground is narrow up to 2 mm, films lie up to 20 mm off, and may be a tenth larger or smaller.
   *
   * @param strip ground goes on for at least so long, in mm
   * @param off so far off can a frame be, in mm
   */
  static JointLimits by(double strip, double off) {
    return new JointLimits(
        new Length(strip), new Length(2), new Length(off), new Length(20), new Share(0.1));
  }
}

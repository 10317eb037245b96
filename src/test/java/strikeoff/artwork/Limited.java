package strikeoff.artwork;

import strikeoff.units.Angle;
import strikeoff.units.Length;
import strikeoff.units.Share;

/** By what joints are measured in tests. */
final class Limited {

  private Limited() {}

  /**
   * Ground is narrow up to 2 mm, films lie up to 20 mm off, and may be a tenth larger or smaller,
   * or turned by 3°.
   *
   * @param strip ground goes on for at least so long, in mm
   * @param off so far off can a frame be, in mm
   */
  static JointLimits by(double strip, double off) {
    return new JointLimits(
        new Length(strip),
        new Length(2),
        new Length(off),
        new PoseBounds(new Length(20), new Share(0.1), new Angle(3)));
  }
}

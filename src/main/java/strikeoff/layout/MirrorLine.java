package strikeoff.layout;

import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * What two panels are mirrored in.
 *
 * @param across true if the line runs across the cloth, as a seam does; false if along it
 * @param setBy what sets the line
 * @param name of the seam, or of the arrangement that set the line; empty if the panels set it
 *     themselves
 */
public record MirrorLine(boolean across, SetBy setBy, String name) {

  /** What says where the line lies. */
  public enum SetBy {
    /** A seam between the panels. */
    SEAM,
    /** Another pair of panels whose line lies between these. */
    OTHER_PANELS,
    /** The panels themselves: the line that fits most of their copies. */
    PANELS
  }

  /** The line where it lies, in words. */
  String text(Length axis, Measures units) {
    String at = (across ? "at " : "") + axis.text(units) + (across ? "" : " from the near edge");
    return switch (setBy) {
      case SEAM -> "the seam " + name + ", " + at;
      case OTHER_PANELS -> "the line of " + name + ", " + at;
      case PANELS -> "the line between them, " + at;
    };
  }
}

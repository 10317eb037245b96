package strikeoff.layout;

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
}

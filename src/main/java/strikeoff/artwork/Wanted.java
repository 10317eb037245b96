package strikeoff.artwork;

import java.util.Optional;
import strikeoff.plan.Artwork.Tone;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/**
 * What a plan says of a separation's artwork.
 *
 * @param studio of a film that the plan takes from its studio, where that lies; empty of the plan's
 *     own
 * @param file its name, beside the plan or the studio's policy, or in a folder below
 * @param prints which tone takes paste
 * @param wrong true if the picture is seen through the film's back
 * @param pointsPerMm the plan's own word on its resolution; empty leaves it to the file
 * @param margin what is cut off all round
 * @param size the rectangle that the rest fills
 */
public record Wanted(
    Optional<StudioFolder> studio,
    String file,
    Tone prints,
    boolean wrong,
    Optional<Double> pointsPerMm,
    Length margin,
    Pair size) {

  /** So many letters a file's name may have. */
  public static final int LONGEST_NAME = 500;

  /** A film of the plan's own. */
  public Wanted(
      String file,
      Tone prints,
      boolean wrong,
      Optional<Double> pointsPerMm,
      Length margin,
      Pair size) {
    this(Optional.empty(), file, prints, wrong, pointsPerMm, margin, size);
  }
}

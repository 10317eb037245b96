package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.units.Length;

/**
 * The two films of one rectangle of a design whose sizes differ most. None of them is off by more
 * than the tolerance by itself, which would be told of that one.
 *
 * @param one name of the smaller one
 * @param other name of the larger one
 * @param by how far apart their far edges lie
 * @param tolerance how far a frame can be off on this table
 */
public record ArtworksApart(
    String design,
    String one,
    String other,
    Length by,
    boolean railed,
    Length tolerance,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public ArtworksApart {
    related = List.copyOf(related);
  }

  /** Empty if there are no two to compare. */
  static Optional<ArtworksApart> of(List<SizeOfArtwork> sizes) {
    ArtworksApart most = null;
    for (SizeOfArtwork a : sizes) {
      for (SizeOfArtwork b : sizes) {
        double along = b.is().along().mm() - a.is().along().mm();
        double across = b.is().across().mm() - a.is().across().mm();
        double by = Math.max(along, across);
        boolean alike = a.length().equals(b.length()) && a.width().equals(b.width());
        boolean alone = isIn(a) && isIn(b);
        if (alike && alone && by > 0 && (most == null || by > most.by().mm())) {
          most =
              new ArtworksApart(
                  a.design(),
                  a.files().get(0),
                  b.files().get(0),
                  new Length(by),
                  a.railed(),
                  a.tolerance(),
                  List.of(new Related(Tie.OTHER_FILM, b.path())),
                  a.path());
        }
      }
    }
    return Optional.ofNullable(most);
  }

  private static boolean isIn(SizeOfArtwork size) {
    return size.far().mm() <= size.tolerance().mm();
  }
}

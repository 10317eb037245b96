package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * The two films of one page of a design whose sizes differ most. None of them is off by more than
 * the tolerance by itself, which would be told of that one. They lie on one page where they fill
 * one rectangle, and where their rectangles begin in one corner, are of one shape and nearly of one
 * size: a part of a design that is meant to be smaller has another corner, or another shape.
 *
 * @param one name of the smaller one
 * @param other name of the larger one
 * @param by how far apart their far edges lie
 * @param tolerance how far a frame can be off on this table
 * @param sized true if the plan gives their separations sizes that differ
 */
public record ArtworksApart(
    String design,
    String one,
    String other,
    Length by,
    boolean railed,
    Length tolerance,
    boolean sized,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public ArtworksApart {
    related = List.copyOf(related);
  }

  /**
   * Empty if there are no two to compare.
   *
   * @param each the films of a design, each by itself
   * @param samePage by how much less one rectangle may be long for both to be of one page
   */
  static Optional<ArtworksApart> of(List<SizeOfArtwork> each, Share samePage) {
    ArtworksApart most = null;
    for (SizeOfArtwork a : each) {
      for (SizeOfArtwork b : each) {
        double along = b.drawn().along().mm() - a.drawn().along().mm();
        double across = b.drawn().across().mm() - a.drawn().across().mm();
        double by = Math.max(along, across);
        boolean compared = !a.isOff() && !b.isOff() && (a.fillsAs(b) || onePage(a, b, samePage));
        if (compared && by > 0 && (most == null || by > most.by().mm())) {
          most =
              new ArtworksApart(
                  a.design(),
                  a.files().get(0),
                  b.files().get(0),
                  new Length(by),
                  a.railed(),
                  a.tolerance(),
                  !a.fillsAs(b),
                  List.of(new Related(Tie.OTHER_FILM, b.path())),
                  a.path());
        }
      }
    }
    return Optional.ofNullable(most);
  }

  private static boolean onePage(SizeOfArtwork small, SizeOfArtwork large, Share samePage) {
    double scale = small.length().mm() / large.length().mm();
    return small.corner().equals(large.corner())
        && scale >= 1 - samePage.fraction()
        && Math.abs(large.width().mm() * scale - small.width().mm()) <= small.tolerance().mm();
  }
}

package strikeoff.screens;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Reach;
import strikeoff.plan.Design;
import strikeoff.plan.Screen;
import strikeoff.units.Length;

/**
 * A separation against the stencil of its screen.
 *
 * @param length of its rectangle; of a film, of what it prints, twice as far as that reaches from
 *     the middle
 * @param width the same across
 * @param lacksLength how much longer the stencil's image would have to be; zero if long enough
 * @param lacksWidth how much wider; zero if wide enough
 * @param filmed true if a film says where it prints
 */
public record SeparationOnScreen(
    String design,
    int separation,
    String screen,
    Length length,
    Length width,
    Length imageLength,
    Length imageWidth,
    Length lacksLength,
    Length lacksWidth,
    boolean filmed,
    PlanPath path,
    PlanPath screenPath)
    implements Evidence {

  static SeparationOnScreen of(Design design, Design.Separation separation, Screen screen) {
    Optional<Reach> reach = separation.artwork().flatMap(Artwork::reach);
    Length length =
        reach.map(r -> about(separation.length(), r.left(), r.right())).orElse(separation.length());
    Length width =
        reach.map(r -> about(separation.width(), r.near(), r.far())).orElse(separation.width());
    return new SeparationOnScreen(
        design.name(),
        separation.number(),
        screen.name(),
        length,
        width,
        screen.imageLength(),
        screen.imageWidth(),
        above(length.mm() - screen.imageLength().mm()),
        above(width.mm() - screen.imageWidth().mm()),
        reach.isPresent(),
        separation.path(),
        screen.path());
  }

  /** Twice as far as it prints from the middle, where the image is centred. */
  private static Length about(Length whole, Length first, Length last) {
    double middle = whole.mm() / 2;
    return new Length(2 * Math.max(middle - first.mm(), last.mm() - middle));
  }

  private static Length above(double mm) {
    return new Length(mm < Length.TOLERANCE ? 0 : mm);
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.SCREEN, screenPath));
  }

  /** The larger of what is missing in length and in width. */
  public Length lacks() {
    return lacksLength.compareTo(lacksWidth) > 0 ? lacksLength : lacksWidth;
  }
}

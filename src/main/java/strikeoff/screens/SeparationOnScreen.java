package strikeoff.screens;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Screen;
import strikeoff.units.Length;

/**
 * A separation against the stencil of its screen.
 *
 * @param lacksLength how much longer the stencil's image would have to be; zero if long enough
 * @param lacksWidth how much wider; zero if wide enough
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
    PlanPath path,
    PlanPath screenPath)
    implements Evidence {

  static SeparationOnScreen of(Design design, Design.Separation separation, Screen screen) {
    return new SeparationOnScreen(
        design.name(),
        separation.number(),
        screen.name(),
        separation.length(),
        separation.width(),
        screen.imageLength(),
        screen.imageWidth(),
        above(separation.length().mm() - screen.imageLength().mm()),
        above(separation.width().mm() - screen.imageWidth().mm()),
        separation.path(),
        screen.path());
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

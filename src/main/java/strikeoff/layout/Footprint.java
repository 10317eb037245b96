package strikeoff.layout;

import org.locationtech.jts.geom.Geometry;
import strikeoff.plan.Design;
import strikeoff.plan.Paste;
import strikeoff.plan.Screen;

/**
 * What one separation of one placement covers.
 *
 * @param image rectangle on the cloth that takes paste, in millimetres
 * @param frame what the frame's outside covers; the stencil's image lies centred in the frame
 */
public record Footprint(
    Placement placement,
    Design.Separation separation,
    Screen screen,
    Paste paste,
    Geometry image,
    Geometry frame) {

  /** A placement has each separation once; outlines need not be asked for it. */
  @Override
  public int hashCode() {
    return 31 * placement.hashCode() + separation.number();
  }

  /** The same of a paste that is mixed otherwise. */
  public Footprint with(Paste other) {
    return new Footprint(placement, separation, screen, other, image, frame);
  }
}

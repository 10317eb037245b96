package strikeoff.artwork;

import com.github.weisj.jsvg.renderer.output.Output;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.Paint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import strikeoff.document.GivenUp;

/**
 * Takes what a drawing draws as outlines in points of the film, instead of painting it: once for
 * all bands, with a bound on how much there may be and an end whenever nobody waits any more.
 */
final class SvgShapes implements Output {

  /** Corners of all outlines together: a tracing by machine of A2 has a third. */
  private static final int MOST_CORNERS = SvgPath.MOST_CORNERS;

  /**
   * Corners of one line that has a width: its outline has four times as many, and a round corner
   * more.
   */
  private static final int MOST_STROKED = 50_000;

  /** Further out, numbers of 32 bits no longer tell a point of the film from the next. */
  private static final double FARTHEST = 1e6;

  /** Copies of copies, with nothing in them, are work as well. */
  private static final int MOST_STEPS = 200_000;

  private static final double HALF = 0.5;

  /**
   * Layers over layers of a whole film are a few; of the largest one all these take two seconds.
   */
  private static final int MOST_TIMES = 40;

  private final Rectangle2D film;

  /** In order of painting. */
  private final List<Painted> all;

  private final Spent spent;
  private AffineTransform transform;
  private Stroke stroke;
  private Color colour;
  private Optional<Area> clip;
  private float opacity;

  /**
   * An area of one tone.
   *
   * @param clip what it is cut by; empty if by nothing
   */
  record Painted(Shape outline, Rectangle2D around, Optional<Area> clip, Color colour) {}

  /** What all groups of a drawing have taken together. */
  private static final class Spent {
    private int steps;
    private int corners;
    private double work;
    private double painted;
  }

  /**
   * @param toPoints from the drawing's coordinates to the film's points
   * @param film all of the film's points
   */
  SvgShapes(AffineTransform toPoints, Rectangle2D film) {
    this.film = film;
    this.all = new ArrayList<>();
    this.spent = new Spent();
    this.transform = new AffineTransform(toPoints);
    this.stroke = new BasicStroke();
    this.colour = Color.BLACK;
    this.clip = Optional.empty();
    this.opacity = 1;
  }

  private SvgShapes(SvgShapes parent) {
    this.film = parent.film;
    this.all = parent.all;
    this.spent = parent.spent;
    this.transform = new AffineTransform(parent.transform);
    this.stroke = parent.stroke;
    this.colour = parent.colour;
    this.clip = parent.clip;
    this.opacity = parent.opacity;
  }

  List<Painted> all() {
    return all;
  }

  private void step() {
    GivenUp.ifAsked();
    if (++spent.steps > MOST_STEPS) {
      throw new SvgTooMuch("more than " + MOST_STEPS + " groups and shapes, copies and all");
    }
  }

  @Override
  public void fillShape(Shape shape) {
    step();
    if (opacity * colour.getAlpha() / 255 < HALF) {
      return;
    }
    // As whole as it is painted: of numbers of 64 bits the JDK takes half before it fills them.
    Path2D outline = new Path2D.Float(shape, transform);
    // Room for twenty corners is made for any that has fewer.
    outline.trimToSize();
    count(outline);
    Rectangle2D around = outline.getBounds2D();
    if (!(Math.abs(around.getCenterX()) + around.getWidth() < FARTHEST)
        || !(Math.abs(around.getCenterY()) + around.getHeight() < FARTHEST)) {
      throw new SvgTooMuch("outlines more than 1000000 points of the film away; cut them");
    }
    spent.work += SvgWork.of(outline, around);
    requireWork(spent.work);
    spent.painted += SvgWork.painted(outline, around.createIntersection(film));
    if (spent.painted > MOST_TIMES * film.getWidth() * film.getHeight()) {
      throw new SvgTooMuch("shapes that paint the film over more than " + MOST_TIMES + " times");
    }
    all.add(new Painted(outline, around, clip.filter(by -> cuts(by, around)), colour));
  }

  /**
   * False of a rectangle that leaves the middle of each point in an outline, as the root's does.
   */
  private boolean cuts(Area by, Rectangle2D around) {
    double part = 0.25;
    Rectangle2D middles =
        around.createIntersection(
            new Rectangle2D.Double(
                part, part, film.getWidth() - 2 * part, film.getHeight() - 2 * part));
    return !by.isRectangular() || !middles.isEmpty() && !by.contains(middles);
  }

  private static void requireWork(double work) {
    if (work > SvgWork.MOST) {
      throw new SvgTooMuch("outlines that cross each other, or go up and down, too often");
    }
  }

  private void count(Shape outline) {
    for (PathIterator at = outline.getPathIterator(null); !at.isDone(); at.next()) {
      if (++spent.corners > MOST_CORNERS) {
        throw new SvgTooMuch("more than " + MOST_CORNERS + " corners, copies and all");
      }
    }
  }

  @Override
  public void drawShape(Shape shape) {
    step();
    int before = spent.corners;
    count(shape);
    if (spent.corners - before > MOST_STROKED) {
      throw new SvgTooMuch("a stroke of more than " + MOST_STROKED + " corners; expand it");
    }
    // Its outline goes up and down with it, on both sides: told before that takes memory.
    Rectangle2D around =
        transform
            .createTransformedShape(stroke.createStrokedShape(shape.getBounds2D()))
            .getBounds2D();
    requireWork(SvgWork.of(transform.createTransformedShape(shape), around));
    fillShape(stroke.createStrokedShape(shape));
  }

  @Override
  public void applyClip(Shape shape) {
    step();
    count(shape);
    Area area = new Area(transform.createTransformedShape(shape));
    clip.ifPresent(area::intersect);
    clip = Optional.of(area);
  }

  @Override
  public void setPaint(Paint paint) {
    // A film has no gradients: they were refused before.
    colour = paint instanceof Color plain ? plain : Color.GRAY;
  }

  @Override
  public void setPaint(Supplier<Paint> paint) {
    setPaint(paint.get());
  }

  @Override
  public void setStroke(Stroke next) {
    stroke = next;
  }

  @Override
  public Stroke stroke() {
    return stroke;
  }

  @Override
  public Output createChild() {
    step();
    return new SvgShapes(this);
  }

  @Override
  public SafeState safeState() {
    step();
    SvgShapes before = new SvgShapes(this);
    return () -> {
      transform = before.transform;
      stroke = before.stroke;
      colour = before.colour;
      clip = before.clip;
      opacity = before.opacity;
    };
  }

  @Override
  public Rectangle2D clipBounds() {
    double far = Float.MAX_VALUE / 4;
    return clip.map(Area::getBounds2D).orElse(new Rectangle2D.Double(-far, -far, 2 * far, 2 * far));
  }

  @Override
  public AffineTransform transform() {
    return new AffineTransform(transform);
  }

  @Override
  public void setTransform(AffineTransform next) {
    transform = new AffineTransform(next);
  }

  @Override
  public void applyTransform(AffineTransform more) {
    step();
    transform.concatenate(more);
  }

  @Override
  public void rotate(double angle) {
    transform.rotate(angle);
  }

  @Override
  public void scale(double along, double across) {
    transform.scale(along, across);
  }

  @Override
  public void translate(double along, double across) {
    transform.translate(along, across);
  }

  @Override
  public float currentOpacity() {
    return opacity;
  }

  @Override
  public void applyOpacity(float more) {
    opacity *= more;
  }

  @Override
  public void drawImage(BufferedImage image) {
    // Pictures were refused before.
  }

  @Override
  public void drawImage(Image image, ImageObserver observer) {
    // Pictures were refused before.
  }

  @Override
  public void drawImage(Image image, AffineTransform at, ImageObserver observer) {
    // Pictures were refused before.
  }

  @Override
  public void dispose() {
    // There is nothing to give back.
  }

  @Override
  public void debugPaint(Consumer<Graphics2D> painter) {
    // Nobody looks.
  }

  @Override
  public RenderingHints renderingHints() {
    return null;
  }

  @Override
  public Object renderingHint(RenderingHints.Key key) {
    return null;
  }

  @Override
  public void setRenderingHint(RenderingHints.Key key, Object value) {
    // Edges of a film are never smoothed.
  }

  @Override
  public Optional<Float> contextFontSize() {
    return Optional.empty();
  }

  @Override
  public boolean supportsFilters() {
    return false;
  }

  @Override
  public boolean supportsColors() {
    return true;
  }

  @Override
  public boolean isSoftClippingEnabled() {
    return false;
  }
}

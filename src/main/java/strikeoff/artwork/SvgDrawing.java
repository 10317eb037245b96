package strikeoff.artwork;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import strikeoff.document.GivenUp;
import strikeoff.plan.Artwork.Tone;

/**
 * A drawing (SVG 2), laid on a grid of points in bands. A point is of the tone that is painted over
 * its middle; nothing is smoothed, so that an edge is known to a point, as in a film.
 */
final class SvgDrawing implements Picture {

  /**
   * Points a millimetre unless the plan says otherwise: 600 an inch, as films are output. The
   * narrowest line that common meshes hold, 0.2 mm, is five of them.
   */
  private static final double USUAL = 600 / 25.4;

  /** Longer files are traced photographs; each letter of an outline takes many times its memory. */
  private static final int MOST_BYTES = 4 << 20;

  /** Points that are painted at once, a byte each. */
  private static final int AT_ONCE = 4 << 20;

  private static final int USES_IN_USES = 15;
  private static final int DEEPEST = 200;
  private static final int MOST_PATHS = 50_000;

  /** Held, or the JDK forgets that it is to be silent: what goes wrong is told in a sentence. */
  private static final Logger LIBRARY = Logger.getLogger("com.github.weisj.jsvg");

  static {
    LIBRARY.setLevel(Level.OFF);
  }

  private final SvgLook.Kept kept;
  private final Head head;

  private SvgDrawing(SvgLook.Kept kept, Head head) {
    this.kept = kept;
    this.head = head;
  }

  /**
   * Looks a drawing through.
   *
   * @param file the whole of it
   * @param wanted whose size it has, where it says none
   */
  static SvgDrawing of(byte[] file, Wanted wanted) throws UnreadablePicture {
    requireSize(file.length);
    SvgLook.Kept kept = SvgLook.through(file);
    double margins = 2 * wanted.margin().mm();
    double[] mm =
        kept.size()
            .mm()
            .orElseGet(
                () ->
                    new double[] {
                      wanted.size().along().mm() + margins, wanted.size().across().mm() + margins
                    });
    if (kept.size().mm().isEmpty() && !kept.size().isShapedAs(mm[0], mm[1])) {
      throw new UnreadablePicture(
          "this drawing doesn't say how large it is, and its coordinates aren't of the shape of the"
              + " separation's size; save it with a width and a height in mm");
    }
    double perMm = wanted.pointsPerMm().orElse(USUAL);
    long columns = Math.max(1, Math.round(mm[0] * perMm));
    long rows = Math.max(1, Math.round(mm[1] * perMm));
    Picture.requireSize(columns, rows);
    return new SvgDrawing(
        kept,
        new Head(
            (int) columns,
            (int) rows,
            kept.size().mm().map(m -> new Grid(columns / m[0], rows / m[1]))));
  }

  /** Before it is read, so that a large file is never held. */
  static void requireSize(long bytes) throws UnreadablePicture {
    if (bytes > MOST_BYTES) {
      throw new UnreadablePicture(
          "a drawing of "
              + ((bytes + (1 << 20) - 1) >> 20)
              + " MiB; at most "
              + (MOST_BYTES >> 20)
              + " MiB are taken in: save the film as PNG at 600/in");
    }
  }

  @Override
  public Head head() {
    return head;
  }

  @Override
  public void read(Tone prints, PointTaker points) throws UnreadablePicture {
    int columns = columns();
    int rows = rows();
    List<SvgShapes.Painted> shapes = shapes();
    int high = Math.max(1, Math.min(rows, AT_ONCE / columns));
    BufferedImage band = new BufferedImage(columns, high, BufferedImage.TYPE_BYTE_GRAY);
    byte[] inks = ((DataBufferByte) band.getRaster().getDataBuffer()).getData();
    byte[] row = new byte[columns];
    for (int y = 0; y < rows; y += high) {
      Arrays.fill(inks, (byte) 0);
      paint(shapes, band, y, prints);
      for (int i = 0; i < high && y + i < rows; i++) {
        System.arraycopy(inks, i * columns, row, 0, columns);
        points.row(y + i, 0, 1, row, columns);
      }
    }
  }

  private void paint(List<SvgShapes.Painted> shapes, BufferedImage band, int y, Tone prints) {
    Graphics2D to = band.createGraphics();
    to.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    to.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    to.translate(0, -y);
    for (SvgShapes.Painted shape : shapes) {
      GivenUp.ifAsked();
      if (shape.around().getMinY() < y + band.getHeight() && shape.around().getMaxY() > y) {
        to.setClip(shape.clip().orElse(null));
        int ink = PngSamples.ink(luma(shape.colour()), 255, prints);
        to.setColor(new Color(ink, ink, ink));
        to.fill(shape.outline());
      }
    }
    to.dispose();
  }

  private static int luma(Color colour) {
    return PngSamples.luma(colour.getRed(), colour.getGreen(), colour.getBlue());
  }

  private List<SvgShapes.Painted> shapes() throws UnreadablePicture {
    float width = (float) kept.size().box()[2];
    float height = (float) kept.size().box()[3];
    SvgShapes shapes =
        new SvgShapes(
            AffineTransform.getScaleInstance(columns() / width, rows() / height),
            new Rectangle2D.Double(0, 0, columns(), rows()));
    try {
      LoaderContext nothingOutside =
          LoaderContext.builder()
              .externalResourcePolicy(ResourcePolicy.DENY_ALL)
              .documentLimits(new DocumentLimits(DEEPEST, USES_IN_USES, MOST_PATHS))
              .build();
      SVGDocument drawing =
          new SVGLoader().load(() -> new SvgEvents(kept.tags()), null, nothingOutside);
      if (drawing != null) {
        drawing.renderWithPlatform(
            NullPlatformSupport.INSTANCE, shapes, new ViewBox(0, 0, width, height));
        return shapes.all();
      }
    } catch (GivenUp e) {
      throw e;
    } catch (SvgTooMuch e) {
      throw new UnreadablePicture(
          "this drawing has " + e.getMessage() + "; or save the film as PNG at 600/in");
    } catch (RuntimeException | StackOverflowError e) {
      // Told below.
    }
    GivenUp.ifAsked();
    throw new UnreadablePicture(
        "this drawing can't be drawn: it has too much in it; save the film as PNG at 600/in");
  }
}

package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import strikeoff.checks.Draws;
import strikeoff.plan.Artwork.Tone;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** Drawings of a pen, a rule, a turn and a class cover what exact geometry says that they cover. */
class SvgAreasTest {

  @Property(tries = 30, seed = Draws.ALIKE)
  void areasAreThoseOfExactGeometry(@ForAll long draw) throws Exception {
    Random random = new Random(draw);
    Area all = new Area();
    StringBuilder body = new StringBuilder("<style>.e{fill-rule:evenodd}.w{fill:#fff}</style>");
    for (int i = 0; i < 5; i++) {
      boolean evenOdd = random.nextBoolean();
      boolean white = i > 2 && random.nextBoolean();
      boolean stroked = random.nextBoolean();
      int turn = random.nextInt(360);
      Path2D path = new Path2D.Double(evenOdd ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
      StringBuilder d = new StringBuilder();
      for (int j = 0; j < 6; j++) {
        int x = 20 + random.nextInt(60);
        int y = 20 + random.nextInt(60);
        d.append(j == 0 ? "M" : "L").append(x).append(' ').append(y);
        if (j == 0) {
          path.moveTo(x, y);
        } else {
          path.lineTo(x, y);
        }
      }
      path.closePath();
      d.append('z');
      Shape shape =
          stroked ? new BasicStroke(3, 0, BasicStroke.JOIN_BEVEL).createStrokedShape(path) : path;
      AffineTransform at = AffineTransform.getRotateInstance(Math.toRadians(turn), 50, 50);
      at.scale(0.7, 0.9);
      Area area = new Area(at.createTransformedShape(shape));
      if (white && !stroked) {
        all.subtract(area);
      } else {
        all.add(area);
      }
      body.append("<g transform='rotate(").append(turn).append(" 50 50)'><path class='");
      body.append(evenOdd ? "e" : "").append(white && !stroked ? " w" : "");
      body.append("' transform='scale(.7,.9)' d='").append(d).append('\'');
      body.append(
          stroked
              ? " style='fill:none;stroke:#000;stroke-width:3;stroke-linejoin:bevel'/></g>"
              : "/></g>");
    }
    double exact = around(all);
    assertThat(read(body.toString())).isCloseTo(exact, within(3 + exact * 0.005));
  }

  /** The surveyor's formula; holes run the other way round. */
  private static double around(Area area) {
    double twice = 0;
    double[] to = new double[6];
    double[] first = new double[2];
    double[] from = new double[2];
    for (PathIterator at = area.getPathIterator(null, 0.01); !at.isDone(); at.next()) {
      int kind = at.currentSegment(to);
      if (kind == PathIterator.SEG_MOVETO) {
        first = to.clone();
      } else {
        double[] next = kind == PathIterator.SEG_CLOSE ? first : to;
        twice += from[0] * next[1] - next[0] * from[1];
        from = next.clone();
        continue;
      }
      from = to.clone();
    }
    return Math.abs(twice) / 2;
  }

  private static double read(String body) throws Exception {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm'"
            + " viewBox='0 0 100 100'>"
            + body
            + "</svg>";
    Picture picture =
        Pictures.head(
            new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
            new Wanted(
                "f.svg",
                Tone.DARK,
                false,
                Optional.of(10.0),
                new Length(0),
                new Pair(new Length(100), new Length(100))));
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    return open.bits().count() / 100.0;
  }
}

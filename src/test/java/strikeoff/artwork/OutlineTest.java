package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import strikeoff.artwork.Artworks.Looked;
import strikeoff.evidence.FilmPlace;

/** The outline around all that a film prints, against shapes that JTS works out. */
class OutlineTest {

  @TempDir private Path folder;

  private Geometry outline(Drawn film) throws IOException {
    Files.write(folder.resolve("f.png"), film.png());
    Looked.Seen seen = (Looked.Seen) new BesidePlan(folder).look(BesidePlan.wanted("f.png", 80));
    List<FilmPlace> corners = seen.artwork().outline();
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i < corners.size(); i++) {
      ring[i] = new Coordinate(corners.get(i).x().mm(), corners.get(i).y().mm());
    }
    ring[corners.size()] = ring[0];
    return new GeometryFactory().createPolygon(ring);
  }

  private static Drawn blank() {
    return new Drawn(100, 80, 254);
  }

  /** As it lies on the cloth, where the picture's upper edge is the far one. */
  private static Polygon fromBelow(double... corners) {
    for (int i = 1; i < corners.length; i += 2) {
      corners[i] = 80 - corners[i];
    }
    return Reeds.polygon(corners);
  }

  /** A cell is a millimetre, so that it reaches no more than that past what prints. */
  private static void around(Geometry outline, Geometry hull) {
    assertThat(hull.difference(outline.buffer(0.11)).getArea()).isZero();
    assertThat(outline.difference(hull.buffer(1.5)).getArea()).isZero();
    assertThat(outline.getArea()).isEqualTo(outline.convexHull().getArea());
  }

  @Test
  void aDiscIsAsFarAcrossOnAnyTurn() throws IOException {
    Geometry outline = outline(blank().with(Drawn.disc(50, 30, 40)));
    around(outline, new GeometryFactory().createPoint(new Coordinate(50, 50)).buffer(20, 32));
    for (int degrees = 0; degrees < 180; degrees += 15) {
      Envelope turned =
          AffineTransformation.rotationInstance(Math.toRadians(degrees))
              .transform(outline)
              .getEnvelopeInternal();
      // Square on, the film's own points tell; askew, a cell's corner sticks out at either end.
      double more = degrees % 90 == 0 ? 0.1 : 2.9;
      assertThat(turned.getWidth()).as("turned by %d°", degrees).isBetween(39.9, 40 + more);
    }
  }

  @Test
  void twoPartsAreTakenTogether() throws IOException {
    Drawn film = blank().with(Drawn.bar(20, 20, 10, 10, 0)).with(Drawn.bar(80, 60, 10, 10, 0));
    around(outline(film), fromBelow(15, 15, 25, 15, 85, 55, 85, 65, 75, 65, 15, 25));
  }

  @Test
  void allOfAFilmThatPrintsAllOver() throws IOException {
    Geometry outline = outline(blank().with((x, y) -> true));
    assertThat(outline.getNumPoints()).isEqualTo(5);
    assertThat(outline.getArea()).isCloseTo(8000, within(1e-6));
  }
}

package strikeoff.report.drawing;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import strikeoff.colour.MotifLook;
import strikeoff.day.Impression;
import strikeoff.day.facts.Timeline;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;

/**
 * Each placement's edge with its name. It is filled with the design's mean colour, which the style
 * sheet shows from afar only; one that the run leaves out is crossed out.
 */
final class Outlines {

  /** What is less than so many letters high has its number beside it. */
  private static final double SMALL = 3;

  private final Layout layout;
  private final double width;
  private final double letter;
  private final ColourSigns signs;
  private final Map<String, String> afar = new HashMap<>();
  private final Set<Integer> printed = new LinkedHashSet<>();

  Outlines(
      Layout layout,
      Timeline run,
      List<MotifLook> looks,
      ColourSigns signs,
      double width,
      double letter) {
    this.layout = layout;
    this.signs = signs;
    this.width = width;
    this.letter = letter;
    looks.forEach(look -> look.mean().ifPresent(mean -> afar.put(look.design(), mean.hex())));
    for (Impression impression : run.impressions()) {
      printed.add(impression.footprint().placement().id());
    }
  }

  Svg layer(boolean many) {
    Svg layer = Svg.group("motifs");
    if (many) {
      layout.arrangements().forEach((name, placements) -> layer.add(together(name, placements)));
    } else {
      layout.placements().forEach(placement -> layer.add(single(placement)));
    }
    Set<String> named = new LinkedHashSet<>();
    for (Placement placement : layout.placements()) {
      boolean first = named.add(placement.arrangement());
      if (first || !many) {
        name(layer, placement, first);
      }
    }
    StringBuilder crosses = new StringBuilder();
    if (!printed.isEmpty()) {
      layout.placements().stream()
          .filter(p -> !printed.contains(p.id()))
          .forEach(p -> cross(crosses, p.outline().getEnvelopeInternal()));
    }
    if (!crosses.isEmpty()) {
      layer.add(Svg.path(crosses.toString()).with("class", "never").titled("never printed"));
    }
    return layer;
  }

  private Svg single(Placement placement) {
    boolean never = !printed.isEmpty() && !printed.contains(placement.id());
    return filled(Svg.path(path(placement.outline(), width)), placement)
        .with("data-p", placement.id())
        .titled(FittedWords.shortened(placement.name(), 60) + (never ? ", never printed" : ""));
  }

  private Svg together(String name, List<Placement> placements) {
    StringBuilder path = new StringBuilder();
    placements.forEach(p -> path.append(path(p.outline(), width)));
    return filled(Svg.path(path.toString()), placements.get(0))
        .titled(FittedWords.shortened(name, 60) + ", " + placements.size() + " copies");
  }

  private Svg filled(Svg outline, Placement placement) {
    String mean = afar.get(placement.design());
    return (mean == null ? outline : outline.with("fill", mean)).with("class", "motif");
  }

  private void name(Svg layer, Placement placement, boolean first) {
    String words =
        first ? FittedWords.shortened(placement.name(), 18) : Integer.toString(placement.number());
    Envelope box = placement.outline().getEnvelopeInternal();
    boolean small = box.getHeight() < SMALL * letter;
    if (first || small || box.getWidth() >= letter * (0.5 + 0.62 * words.length())) {
      // What is small would be hidden: above it there is room, below it often a border. A picture
      // has its number below it, if there is cloth.
      boolean pictured = signs.picture(placement.design());
      boolean below = pictured && box.getMinY() > letter * 1.1;
      double y =
          small ? box.getMaxY() + letter * 0.25 : box.getMinY() + letter * (below ? -0.95 : 0.35);
      layer.add(Svg.text(box.centre().x, width - y, words).with("text-anchor", "middle"));
    }
  }

  private void cross(StringBuilder path, Envelope box) {
    String left = Svg.number(box.getMinX());
    path.append('M')
        .append(Svg.pair(box.getMinX(), width - box.getMinY()))
        .append('L')
        .append(Svg.pair(box.getMaxX(), width - box.getMaxY()))
        .append('M')
        .append(left)
        .append(' ')
        .append(Svg.number(width - box.getMaxY()))
        .append('L')
        .append(Svg.pair(box.getMaxX(), width - box.getMinY()));
  }

  /** A rectangle on the cloth as path data; y is turned so that the near edge lies below. */
  static String path(Geometry geometry, double width) {
    Coordinate[] corners = geometry.getCoordinates();
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < corners.length - 1; i++) {
      path.append(i == 0 ? 'M' : 'L').append(Svg.pair(corners[i].x, width - corners[i].y));
    }
    return path.append('z').toString();
  }
}

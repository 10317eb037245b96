package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.Film;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Reached;

/**
 * Prints too many to draw one by one: a colour of a set is one shape, with one stripe to each print
 * as wide as the colour's share, so that a cloth of ten thousand motifs stays a page one can send.
 */
final class ManyPrints {

  /** Above this a drawing of single prints no longer pays: nobody steps through them one by one. */
  static final int MOST = 1500;

  private ManyPrints() {}

  /** What is printed of one colour before another is, on one set. */
  private record Block(int step, int set, String arrangement, int colour) {}

  static List<Svg> of(List<Impression> impressions, double width) {
    Map<Block, List<Impression>> blocks = new LinkedHashMap<>();
    for (Impression impression : impressions) {
      Block block =
          new Block(
              impression.step(),
              impression.set(),
              impression.footprint().placement().arrangement(),
              impression.footprint().separation().number());
      blocks.computeIfAbsent(block, key -> new ArrayList<>()).add(impression);
    }
    List<Svg> shapes = new ArrayList<>();
    blocks.values().forEach(prints -> shapes.add(shape(prints, width)));
    return shapes;
  }

  private static Svg shape(List<Impression> prints, double width) {
    StringBuilder path = new StringBuilder();
    Moment lifted = prints.get(0).lifted();
    Reached frameSafe = prints.get(0).film().frameSafe();
    Reached liftSafe = prints.get(0).film().liftSafe();
    for (Impression print : prints) {
      stripe(path, print, width);
      Film film = print.film();
      lifted = lifted.later(print.lifted());
      frameSafe = later(frameSafe, film.frameSafe());
      liftSafe = later(liftSafe, film.liftSafe());
    }
    return Svg.path(path.toString())
        .with("fill", prints.get(0).footprint().paste().colour().hex())
        .with("data-a", lifted.seconds() / 60.0)
        .with("data-f", frameSafe.best().seconds() / 60.0)
        .with("data-l", liftSafe.best().seconds() / 60.0);
  }

  private static Reached later(Reached one, Reached other) {
    return one.best().compareTo(other.best()) >= 0 ? one : other;
  }

  private static void stripe(StringBuilder path, Impression print, double width) {
    Envelope image = print.footprint().image().getEnvelopeInternal();
    var separation = print.footprint().separation();
    double share = Math.min(1, separation.printed().squareCm() / separation.rectangle().squareCm());
    double offset = separation.number() == 1 ? 0 : image.getWidth() * (1 - share);
    path.append('M')
        .append(Svg.pair(Math.round(image.getMinX() + offset), Math.round(width - image.getMaxY())))
        .append('h')
        .append(Math.max(1, Math.round(image.getWidth() * share)))
        .append('v')
        .append(Math.round(image.getHeight()))
        .append('H')
        .append(Math.round(image.getMinX() + offset))
        .append('z');
  }
}

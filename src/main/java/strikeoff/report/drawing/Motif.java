package strikeoff.report.drawing;

import strikeoff.plan.Design;

/**
 * The sign for one colour of a design: stripes over its image as wide as the area it prints. A plan
 * says how much of the image takes paste but not where, so the sign shows areas truly and draws no
 * picture. The stripes of the next colour begin where those of the colour before end.
 */
final class Motif {

  private static final int REPEATS = 4;

  private Motif() {}

  /**
   * @return path data, with the design's near left corner at (0, width) and its far one at y = 0
   */
  static String stripes(Design design, Design.Separation colour) {
    double top = design.width().mm() - colour.y().mm() - colour.width().mm();
    double period = colour.length().mm() / REPEATS;
    double stripe = period * share(colour);
    double offset = period * startOf(design, colour);
    StringBuilder path = new StringBuilder();
    for (int repeat = 0; repeat < REPEATS; repeat++) {
      double from = repeat * period + offset;
      double to = Math.min(from + stripe, (repeat + 1) * period);
      append(path, colour, from, to, top);
      append(path, colour, repeat * period, from + stripe - period, top);
    }
    return path.toString();
  }

  private static void append(
      StringBuilder path, Design.Separation colour, double from, double to, double top) {
    if (to - from > 1e-9) {
      path.append('M')
          .append(Svg.pair(colour.x().mm() + from, top))
          .append('h')
          .append(Svg.number(to - from))
          .append('v')
          .append(Svg.number(colour.width().mm()))
          .append('h')
          .append(Svg.number(from - to))
          .append('z');
    }
  }

  private static double share(Design.Separation colour) {
    double image = colour.rectangle().squareCm();
    return image <= 0 ? 0 : Math.min(1, Math.max(0, colour.printed().squareCm() / image));
  }

  private static double startOf(Design design, Design.Separation colour) {
    double before = 0.08;
    for (Design.Separation earlier : design.separations()) {
      if (earlier.number() < colour.number()) {
        before += share(earlier);
      }
    }
    return before % 1;
  }
}

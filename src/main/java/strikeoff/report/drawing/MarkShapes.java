package strikeoff.report.drawing;

import java.util.List;
import strikeoff.findings.Severity;

/**
 * Shapes that tell the severities apart without colour: a stop has eight sides, a risk three,
 * advice is round.
 */
public final class MarkShapes {

  private static final String STOP = "M-10-10H10V10H-10z";
  private static final String RISK = "M0-12.5L12.5 9.5L-12.5 9.5z";
  private static final String ADVICE = "M-10 0A10 10 0 1 1 10 0A10 10 0 1 1-10 0z";

  private MarkShapes() {}

  /** A small picture of the shape for use in text; the word stands beside it. */
  public static Svg icon(Severity severity) {
    return Svg.window(-13, -13, 26, 26)
        .with("class", "shape " + severity.text())
        .with("aria-hidden", "true")
        .with("focusable", "false")
        .add(shape(severity));
  }

  static List<Svg> symbols() {
    return List.of(symbol(Severity.STOP), symbol(Severity.RISK), symbol(Severity.ADVICE));
  }

  /** A numbered mark centred on a point, its size following the letters around it. */
  static Svg mark(Mark mark, double x, double y) {
    return Svg.of("g")
        .with("class", "mark " + mark.severity().text())
        .titled("Finding " + mark.number() + ", " + mark.severity().text())
        .add(
            Svg.use("m-" + mark.severity().text())
                .with("x", x)
                .with("y", y)
                .with("width", "1.7em")
                .with("height", "1.7em"))
        .add(
            Svg.text(x, y, Integer.toString(mark.number()))
                .with("dy", mark.severity() == Severity.RISK ? "0.5em" : "0.35em")
                .with("text-anchor", "middle"));
  }

  private static Svg symbol(Severity severity) {
    return Svg.of("symbol")
        .with("id", "m-" + severity.text())
        .with("viewBox", "0 0 20 20")
        .with("overflow", "visible")
        .add(shape(severity));
  }

  private static Svg shape(Severity severity) {
    return Svg.path(
        switch (severity) {
          case STOP -> STOP;
          case RISK -> RISK;
          case ADVICE -> ADVICE;
        });
  }
}

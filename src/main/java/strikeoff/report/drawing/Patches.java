package strikeoff.report.drawing;

import strikeoff.plan.Colour;

/** Small drawings that stand in a line of text. */
public final class Patches {

  private Patches() {}

  /** A patch of a colour. */
  public static Svg of(Colour colour) {
    return Svg.window(0, 0, 24, 24)
        .with("class", "swatch")
        .with("aria-hidden", "true")
        .with("focusable", "false")
        .add(Svg.rect(1, 1, 22, 22).with("fill", colour.hex()));
  }

  /** A bar over a share from 0 to 1. */
  public static Svg bar(double share) {
    return Svg.window(0, 0, 100, 10)
        .with("class", "share")
        .with("preserveAspectRatio", "none")
        .with("aria-hidden", "true")
        .with("focusable", "false")
        .add(Svg.rect(0, 0, 100, 10).with("class", "whole"))
        .add(Svg.rect(0, 0, 100 * share, 10).with("class", "part"));
  }
}

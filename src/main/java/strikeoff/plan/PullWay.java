package strikeoff.plan;

import strikeoff.units.Length;

/**
 * Which way a squeegee is pulled over a screen. Who stands at the end of the frame pulls along its
 * length and the blade lies across; who stands at its long side pulls across, and the blade lies
 * along. Common practice, no source.
 */
public enum PullWay {
  ALONG("along the frame's length"),
  ACROSS("across the frame's width");

  private final String text;

  PullWay(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }

  /** The size that the blade lies along. */
  public Length underBlade(Length length, Length width) {
    return this == ALONG ? width : length;
  }

  /** The size that the blade travels. */
  public Length travelled(Length length, Length width) {
    return this == ALONG ? length : width;
  }
}

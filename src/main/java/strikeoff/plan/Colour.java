package strikeoff.plan;

/**
 * A colour as screens show it, in sRGB, as the plan names it.
 *
 * @param red 0–255
 * @param green 0–255
 * @param blue 0–255
 * @param written what the plan says: a hexadecimal triple or a CSS colour name
 */
public record Colour(int red, int green, int blue, String written) {

  public Colour {
    if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
      throw new IllegalArgumentException("not an sRGB colour: " + red + ", " + green + ", " + blue);
    }
  }

  /** As {@code #rrggbb}. */
  public String hex() {
    int rgb = red << 16 | green << 8 | blue;
    String digits = Integer.toHexString(0x1000000 | rgb);
    return "#" + digits.substring(1);
  }
}

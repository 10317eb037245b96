package strikeoff.artwork;

/**
 * The letters and numbers of a path (SVG 2, 9.3), read strictly and written plainly, so that no
 * reader can take them otherwise. A path with a mistake isn't drawn up to it, but refused.
 */
final class SvgPath {

  private static final String BROKEN = "it breaks off: save the drawing again";

  /** An arc that is so much longer than wide is a needle that takes long and prints nothing. */
  private static final double NEEDLE = 10_000;

  /** As many as all outlines of a drawing may have: told before they are held. */
  static final int MOST_CORNERS = 400_000;

  private final String text;
  private final StringBuilder plain;
  private int at;
  private int corners;

  private SvgPath(String text) {
    this.text = text;
    this.plain = new StringBuilder(text.length() + text.length() / 4);
  }

  static String plain(String text) throws SvgNotDrawn {
    SvgPath path = new SvgPath(text.strip());
    if (!path.text.isEmpty() && !path.text.equals("none")) {
      path.read();
    }
    return path.plain.toString();
  }

  private void read() throws SvgNotDrawn {
    if (text.charAt(0) != 'M' && text.charAt(0) != 'm') {
      throw new SvgNotDrawn(BROKEN);
    }
    while (at < text.length()) {
      char letter = text.charAt(at++);
      int numbers = numbers(letter);
      plain.append(letter);
      gap(false);
      if (numbers == 0) {
        continue;
      }
      boolean more = true;
      while (more) {
        if (++corners > MOST_CORNERS) {
          throw new SvgNotDrawn(
              "it has more than " + MOST_CORNERS + " corners: save the film as PNG at 600/in");
        }
        if (Character.toUpperCase(letter) == 'A') {
          arc();
        } else {
          for (int i = 0; i < numbers; i++) {
            number();
          }
        }
        more = at < text.length() && !Character.isLetter(text.charAt(at));
      }
      if (text.charAt(at - 1) == ',') {
        throw new SvgNotDrawn(BROKEN);
      }
    }
  }

  private static int numbers(char letter) throws SvgNotDrawn {
    return switch (letter) {
      case 'M', 'm', 'L', 'l', 'T', 't' -> 2;
      case 'H', 'h', 'V', 'v' -> 1;
      case 'C', 'c' -> 6;
      case 'S', 's', 'Q', 'q' -> 4;
      case 'A', 'a' -> 7;
      case 'Z', 'z' -> 0;
      default -> throw new SvgNotDrawn(BROKEN);
    };
  }

  private void arc() throws SvgNotDrawn {
    double along = Math.abs(number());
    double across = Math.abs(number());
    if (Math.max(along, across) > NEEDLE * Math.min(along, across) && along > 0 && across > 0) {
      throw new SvgNotDrawn("one of its arcs is a needle: draw it as a line");
    }
    number();
    flag();
    flag();
    number();
    number();
  }

  private void flag() throws SvgNotDrawn {
    if (at >= text.length() || (text.charAt(at) != '0' && text.charAt(at) != '1')) {
      throw new SvgNotDrawn(BROKEN);
    }
    plain.append(' ').append(text.charAt(at++));
    gap(true);
  }

  private double number() throws SvgNotDrawn {
    int from = at;
    if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
      at++;
    }
    int whole = digits();
    int part = 0;
    if (at < text.length() && text.charAt(at) == '.') {
      at++;
      part = digits();
    }
    if (whole + part == 0) {
      throw new SvgNotDrawn(BROKEN);
    }
    if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      at++;
      if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
        at++;
      }
      int power = digits();
      if (power == 0 || power > 3) {
        throw new SvgNotDrawn(BROKEN);
      }
    }
    double number = SvgNumbers.number(text.substring(from, at));
    plain.append(' ').append(SvgNumbers.text(number));
    gap(true);
    return number;
  }

  private int digits() {
    int from = at;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at - from;
  }

  private void gap(boolean comma) {
    boolean may = comma;
    while (at < text.length()) {
      char here = text.charAt(at);
      if (here == ',' && may) {
        may = false;
      } else if (here != ' ' && here != '\n' && here != '\t' && here != '\r') {
        return;
      }
      at++;
    }
  }
}

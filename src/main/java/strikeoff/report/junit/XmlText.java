package strikeoff.report.junit;

import java.util.Locale;

/** Makes any text fit for XML 1.0, which has no place for most control characters. */
final class XmlText {

  private XmlText() {}

  static String of(String text) {
    StringBuilder fit = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            point -> {
              if (isXml(point)) {
                fit.appendCodePoint(point);
              } else {
                fit.append(String.format(Locale.ROOT, "[U+%04X]", point));
              }
            });
    return fit.toString();
  }

  /**
   * Char of XML 1.0 (fifth edition), section 2.2; a carriage return would be read as a line end.
   */
  private static boolean isXml(int point) {
    return point == '\t'
        || point == '\n'
        || point >= 0x20 && point <= 0xD7FF
        || point >= 0xE000 && point <= 0xFFFD
        || point >= 0x10000;
  }
}

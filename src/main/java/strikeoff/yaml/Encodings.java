package strikeoff.yaml;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Knows the encodings that editors write besides UTF-8, with a byte-order mark or without. */
final class Encodings {

  /** What editors write on older machines; every byte of it means something. */
  static final Charset WINDOWS =
      Charset.isSupported("windows-1252")
          ? Charset.forName("windows-1252")
          : StandardCharsets.ISO_8859_1;

  private static final int[] UTF_32_BIG = {0x00, 0x00, 0xFE, 0xFF};
  private static final int[] UTF_32_LITTLE = {0xFF, 0xFE, 0x00, 0x00};
  private static final int[] UTF_16_BIG = {0xFE, 0xFF};
  private static final int[] UTF_16_LITTLE = {0xFF, 0xFE};

  private Encodings() {}

  /**
   * {@code UTF-16} or {@code UTF-32}; empty for UTF-8 and whatever else. A plan begins with ASCII
   * letters, so without a mark the zero bytes of its first two letters tell.
   */
  static Optional<String> otherThanUtf8(byte[] bytes) {
    // The mark of UTF-16, little end first, begins that of UTF-32.
    if (begins(bytes, UTF_32_BIG)
        || begins(bytes, UTF_32_LITTLE)
        || zeros(bytes, "0001" + "0001")
        || zeros(bytes, "1000" + "1000")) {
      return Optional.of("UTF-32");
    }
    return begins(bytes, UTF_16_BIG)
            || begins(bytes, UTF_16_LITTLE)
            || zeros(bytes, "0101")
            || zeros(bytes, "1010")
        ? Optional.of("UTF-16")
        : Optional.empty();
  }

  private static boolean begins(byte[] bytes, int[] mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  /** True if the first bytes are zero exactly where the pattern says 0. */
  private static boolean zeros(byte[] bytes, String pattern) {
    for (int i = 0; i < pattern.length(); i++) {
      if (i >= bytes.length || (bytes[i] == 0) != (pattern.charAt(i) == '0')) {
        return false;
      }
    }
    return true;
  }
}

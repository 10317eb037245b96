package strikeoff.document;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), which every Java has. */
public final class Sha256 {

  private Sha256() {}

  /** One that bytes are put into. */
  public static MessageDigest begun() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has it", e);
    }
  }

  /** That of all that a stream still holds, as hexadecimal digits; the stream stays open. */
  public static String of(InputStream in) throws IOException {
    MessageDigest digest = begun();
    byte[] some = new byte[1 << 16];
    for (int read = in.read(some); read >= 0; read = in.read(some)) {
      digest.update(some, 0, read);
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}

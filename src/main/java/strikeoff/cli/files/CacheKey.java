package strikeoff.cli.files;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Collection;
import java.util.HexFormat;
import strikeoff.document.Sha256;

/**
 * By what a kept result is found again: the SHA-256 of all that it depends on. Each part is told
 * apart by its name and its length, so that no two lists of parts run into one another.
 */
public final class CacheKey {

  private final MessageDigest digest = Sha256.begun();

  /** One more part. */
  public CacheKey put(String name, byte[] part) {
    for (byte[] bytes : new byte[][] {name.getBytes(StandardCharsets.UTF_8), part}) {
      digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
      digest.update(bytes);
    }
    return this;
  }

  /** The same with a text. */
  public CacheKey put(String name, String part) {
    return put(name, part.getBytes(StandardCharsets.UTF_8));
  }

  /** The same with several of them. */
  public CacheKey put(String name, Collection<String> parts) {
    put(name, Integer.toString(parts.size()));
    parts.forEach(part -> put("", part));
    return this;
  }

  /** Nothing can be put any more. */
  public byte[] bytes() {
    return digest.digest();
  }

  static String hex(byte[] bytes) {
    return HexFormat.of().formatHex(bytes);
  }
}

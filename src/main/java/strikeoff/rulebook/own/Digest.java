package strikeoff.rulebook.own;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256, by which compiled rules are found again and damage to them is noticed. */
final class Digest {

  private Digest() {}

  static MessageDigest begin() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  static byte[] of(byte[] bytes) {
    return begin().digest(bytes);
  }
}

package strikeoff.rulebook.own;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Tells what this user's program has compiled from what was put into the cache by somebody else: a
 * folder of plans may bring a cache along, and what lies in it would run. Each entry is sealed
 * (HMAC with SHA-256, RFC 2104) by a key that only the user can read, in the user's own home.
 */
final class CacheSeal {

  /** Bytes of a seal, and of the key. */
  static final int SIZE = 32;

  private static final String HMAC = "HmacSHA256";

  private static final Set<PosixFilePermission> OWNERS_ALONE =
      PosixFilePermissions.fromString("rw-------");

  private final byte[] key;

  private CacheSeal(byte[] key) {
    this.key = key;
  }

  /** The seal whose key is in a file, which is made if it isn't there; empty if it can't be. */
  static Optional<CacheSeal> of(Path file) {
    try {
      if (!isUsers(file)) {
        make(file);
      }
      byte[] key = Files.readAllBytes(file);
      return isUsers(file) && key.length == SIZE
          ? Optional.of(new CacheSeal(key))
          : Optional.empty();
    } catch (IOException | SecurityException | UnsupportedOperationException e) {
      return Optional.empty();
    }
  }

  /** What is unpacked or checked out can be read by others as well. */
  private static boolean isUsers(Path file) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) != SIZE) {
      return false;
    }
    PosixFileAttributeView view =
        Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (view == null) {
      return true;
    }
    PosixFileAttributes attributes = view.readAttributes();
    return OWNERS_ALONE.containsAll(attributes.permissions());
  }

  private static void make(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    // Made for its owner alone from the first byte on.
    Path part = Files.createTempFile(file.getParent(), "key-", "");
    byte[] fresh = new byte[SIZE];
    new SecureRandom().nextBytes(fresh);
    Files.write(part, fresh);
    Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
  }

  /** The entry with its seal before it. */
  byte[] sealed(String name, byte[] entry) {
    byte[] all = Arrays.copyOf(seal(name, entry), SIZE + entry.length);
    System.arraycopy(entry, 0, all, SIZE, entry.length);
    return all;
  }

  /** The entry behind its seal; empty unless this key sealed it under this name. */
  Optional<byte[]> opened(String name, byte[] sealed) {
    if (sealed.length < SIZE) {
      return Optional.empty();
    }
    byte[] entry = Arrays.copyOfRange(sealed, SIZE, sealed.length);
    return MessageDigest.isEqual(seal(name, entry), Arrays.copyOf(sealed, SIZE))
        ? Optional.of(entry)
        : Optional.empty();
  }

  private byte[] seal(String name, byte[] entry) {
    try {
      Mac mac = Mac.getInstance(HMAC);
      mac.init(new SecretKeySpec(key, HMAC));
      mac.update((name + "\n").getBytes(StandardCharsets.UTF_8));
      return mac.doFinal(entry);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java platform has " + HMAC, e);
    }
  }
}

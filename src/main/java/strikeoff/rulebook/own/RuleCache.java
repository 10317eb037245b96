package strikeoff.rulebook.own;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * Keeps compiled rules by what they were compiled from. Whoever deletes the folder, or a file in
 * it, only pays the next compilation; two runs at once never see each other's halves. What lies in
 * the folder is believed only if this user's program put it there.
 *
 * @param folder where to keep them; empty to keep nothing
 * @param key the file that holds the key which seals them, nowhere near plans; without one nothing
 *     is kept
 */
public record RuleCache(Optional<Path> folder, Optional<Path> key) {

  /** Keeps nothing. */
  public static final RuleCache NONE = new RuleCache(Optional.empty(), Optional.empty());

  /** Changes whenever rules are made from the same texts in another way. */
  private static final String FORM = "3";

  /** Many times what 500 rule files come to. */
  private static final int MOST_BYTES = 1 << 26;

  private Optional<CacheSeal> seal() {
    return folder.isEmpty() ? Optional.empty() : key.flatMap(CacheSeal::of);
  }

  /** The name under which the compiled form of these files is kept. */
  String key(List<RuleFile> files) {
    MessageDigest digest = Digest.begin();
    add(digest, FORM);
    add(digest, System.getProperty("java.version", "") + System.getProperty("java.vendor", ""));
    add(digest, org.drools.base.util.Drools.getFullVersion());
    add(digest, ProgramFile.digest());
    for (RuleFile file : files) {
      add(digest, file.name());
      add(digest, file.family());
      add(digest, file.text());
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  Optional<CompiledRules> find(String key) {
    Optional<CacheSeal> seal = seal();
    if (seal.isEmpty()) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(folder.orElseThrow().resolve(key))) {
      return seal.get().opened(key, in.readNBytes(MOST_BYTES)).flatMap(CompiledRules::of);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Keeps them if it can; a cache that can't be written is no reason to fail. */
  void keep(String key, CompiledRules rules) {
    Optional<CacheSeal> seal = seal();
    if (seal.isEmpty()) {
      return;
    }
    Path part = null;
    try {
      Files.createDirectories(folder.get());
      part = Files.createTempFile(folder.get(), "part-", "");
      Files.write(part, seal.get().sealed(key, rules.bytes()));
      Path place = folder.get().resolve(key);
      try {
        Files.move(part, place, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (IOException | SecurityException e) {
      drop(part);
    }
  }

  private static void drop(Path part) {
    try {
      if (part != null) {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      // It lies in a folder that is safe to delete.
    }
  }

  /** With its length, so that two texts never run into one another. */
  private static void add(MessageDigest digest, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
    digest.update(bytes);
  }
}

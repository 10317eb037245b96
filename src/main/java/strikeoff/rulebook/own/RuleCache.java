package strikeoff.rulebook.own;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * Keeps compiled rules by what they were compiled from. Whoever deletes the folder, or a file in
 * it, only pays the next compilation; two runs at once never see each other's halves.
 *
 * @param folder where to keep them; empty to keep nothing
 */
public record RuleCache(Optional<Path> folder) {

  /** Keeps nothing. */
  public static final RuleCache NONE = new RuleCache(Optional.empty());

  /** Changes whenever rules are made from the same texts in another way. */
  private static final String FORM = "2";

  /** The name under which the compiled form of these files is kept. */
  String key(List<RuleFile> files) {
    MessageDigest digest = Digest.begin();
    add(digest, FORM);
    add(digest, System.getProperty("java.version", "") + System.getProperty("java.vendor", ""));
    add(digest, org.drools.base.util.Drools.getFullVersion());
    add(digest, program());
    for (RuleFile file : files) {
      add(digest, file.name());
      add(digest, file.family());
      add(digest, file.text());
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  Optional<CompiledRules> find(String key) {
    if (folder.isEmpty()) {
      return Optional.empty();
    }
    try {
      return CompiledRules.of(Files.readAllBytes(folder.get().resolve(key)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Keeps them if it can; a cache that can't be written is no reason to fail. */
  void keep(String key, CompiledRules rules) {
    if (folder.isEmpty()) {
      return;
    }
    Path part = null;
    try {
      Files.createDirectories(folder.get());
      part = Files.createTempFile(folder.get(), "part-", "");
      Files.write(part, rules.bytes());
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

  /** Rules are compiled against the facts of one build; its version alone may stand for many. */
  private static String program() {
    String version = String.valueOf(RuleCache.class.getPackage().getImplementationVersion());
    CodeSource code = RuleCache.class.getProtectionDomain().getCodeSource();
    try {
      Path jar = code == null ? null : Path.of(code.getLocation().toURI());
      return jar != null && Files.isRegularFile(jar)
          ? version + " " + Files.size(jar) + " " + Files.getLastModifiedTime(jar).toMillis()
          : version;
    } catch (IOException | URISyntaxException | IllegalArgumentException e) {
      return version;
    }
  }

  /** With its length, so that two texts never run into one another. */
  private static void add(MessageDigest digest, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
    digest.update(bytes);
  }
}

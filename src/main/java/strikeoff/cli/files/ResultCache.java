package strikeoff.cli.files;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import strikeoff.check.FileTrouble;
import strikeoff.cli.text.FileNames;
import strikeoff.document.Sha256;

/**
 * A folder of results that were kept, each in a file of its own: what came of a plan, sealed
 * together with the key that it is found by. An entry whose seal is broken, as of one that was torn
 * or changed or put under another name, is as good as none. Runs may share the folder, also at the
 * same time. It speeds a run up and changes nothing: what can't be read or written is passed over.
 */
public final class ResultCache {

  /** Only such files are read, and only such ones are ever taken away. */
  private static final Pattern NAME = Pattern.compile("[0-9a-f]{64}\\.kept");

  private static final byte[] MARK = "strikeoff kept 1\n".getBytes(StandardCharsets.US_ASCII);
  private static final int SEAL = 32;

  /** A page has 2 MiB at most, and what is kept besides is no longer. */
  private static final int MOST_BYTES = 64 << 20;

  private final Path folder;
  private final byte[] secret;
  private final long most;
  private final Set<Path> used = ConcurrentHashMap.newKeySet();
  private final AtomicReference<String> trouble = new AtomicReference<>();

  /**
   * @param secret seals entries, so that nobody without it can make one; empty for a plain digest,
   *     which whoever can write here can make too
   * @param most bytes to keep
   */
  public ResultCache(Path folder, String secret, long most) {
    this.folder = folder;
    this.secret = secret.getBytes(StandardCharsets.UTF_8);
    this.most = most;
  }

  /**
   * What came of a plan.
   *
   * @param lines as they are told
   * @param outcome as JSON
   * @param pages those that were made, each as {@code Optional.empty()} if it wasn't
   */
  public record Entry(List<String> lines, String outcome, List<Optional<byte[]>> pages) {
    public Entry {
      lines = List.copyOf(lines);
      pages = List.copyOf(pages);
    }
  }

  /** What was kept under the key, if it is whole. */
  public Optional<Entry> find(byte[] key) {
    Path file = file(key);
    try {
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES) {
        return Optional.empty();
      }
      byte[] bytes = Files.readAllBytes(file);
      Optional<Entry> entry = opened(key, bytes);
      if (entry.isPresent()) {
        used.add(file);
      }
      return entry;
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  private Optional<Entry> opened(byte[] key, byte[] bytes) throws IOException {
    int head = MARK.length + SEAL;
    if (bytes.length < head) {
      return Optional.empty();
    }
    ByteBuffer all = ByteBuffer.wrap(bytes);
    ByteBuffer packed = all.slice(head, bytes.length - head);
    byte[] seal = new byte[SEAL];
    all.get(MARK.length, seal);
    if (!all.slice(0, MARK.length).equals(ByteBuffer.wrap(MARK))
        || !MessageDigest.isEqual(seal, seal(key, packed))) {
      return Optional.empty();
    }
    try (DataInputStream in =
        new DataInputStream(
            new InflaterInputStream(new ByteArrayInputStream(bytes, head, bytes.length - head)))) {
      int count = in.readInt();
      List<String> lines = new ArrayList<>();
      int left = MOST_BYTES;
      for (int i = 0; i < count; i++) {
        byte[] line = part(in, left);
        left -= line.length + Integer.BYTES;
        lines.add(new String(line, StandardCharsets.UTF_8));
      }
      String outcome = new String(part(in, left), StandardCharsets.UTF_8);
      List<Optional<byte[]>> pages = new ArrayList<>();
      for (int i = in.readUnsignedByte(); i > 0; i--) {
        pages.add(in.readBoolean() ? Optional.of(part(in, left)) : Optional.empty());
      }
      return Optional.of(new Entry(lines, outcome, pages));
    }
  }

  private static byte[] part(DataInputStream in, int most) throws IOException {
    int length = in.readInt();
    if (length < 0 || length > most) {
      throw new IOException("longer than anything that is kept");
    }
    byte[] bytes = in.readNBytes(length);
    if (bytes.length < length) {
      throw new IOException("it breaks off");
    }
    return bytes;
  }

  /** Keeps what came of a plan. */
  public void keep(byte[] key, Entry entry) {
    try {
      ByteArrayOutputStream packed = new ByteArrayOutputStream();
      Deflater fast = new Deflater(Deflater.BEST_SPEED);
      try (DataOutputStream out = new DataOutputStream(new DeflaterOutputStream(packed, fast))) {
        out.writeInt(entry.lines().size());
        for (String line : entry.lines()) {
          part(out, line.getBytes(StandardCharsets.UTF_8));
        }
        part(out, entry.outcome().getBytes(StandardCharsets.UTF_8));
        out.writeByte(entry.pages().size());
        for (Optional<byte[]> page : entry.pages()) {
          out.writeBoolean(page.isPresent());
          if (page.isPresent()) {
            part(out, page.get());
          }
        }
      } finally {
        fast.end();
      }
      ByteBuffer file = ByteBuffer.allocate(MARK.length + SEAL + packed.size());
      file.put(MARK)
          .put(seal(key, ByteBuffer.wrap(packed.toByteArray())))
          .put(packed.toByteArray());
      Files.createDirectories(folder);
      WholeFile.write(file(key), file.array());
      used.add(file(key));
    } catch (IOException e) {
      trouble.compareAndSet(null, FileTrouble.of(e));
    }
  }

  private static void part(DataOutputStream out, byte[] bytes) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  private byte[] seal(byte[] key, ByteBuffer packed) {
    try {
      if (secret.length == 0) {
        MessageDigest digest = Sha256.begun();
        digest.update(key);
        digest.update(packed.duplicate());
        return digest.digest();
      }
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(secret, "HmacSHA256"));
      mac.update(key);
      mac.update(packed.duplicate());
      return mac.doFinal();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every JDK has them", e);
    }
  }

  private Path file(byte[] key) {
    return folder.resolve(CacheKey.hex(key) + ".kept");
  }

  /** Why something could not be kept, if so. */
  public Optional<String> trouble() {
    return Optional.ofNullable(trouble.get());
  }

  /** An entry's file. */
  private record Kept(Path file, long size, FileTime made) {}

  /**
   * Takes entries away until the others have room: first those that this run had no use for, of
   * these the oldest.
   */
  public void tidy() {
    WholeFile.clear(folder, name -> NAME.matcher(name).matches());
    List<Kept> all = new ArrayList<>();
    long size = 0;
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.kept")) {
      for (Path file : files) {
        if (NAME.matcher(FileNames.last(file)).matches()
            && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
          Kept kept = new Kept(file, Files.size(file), Files.getLastModifiedTime(file));
          all.add(kept);
          size += kept.size();
        }
      }
      all.sort(
          Comparator.comparing((Kept kept) -> used.contains(kept.file()))
              .thenComparing(Kept::made)
              .thenComparing(Kept::file));
      for (Kept kept : all) {
        if (size <= most) {
          return;
        }
        Files.deleteIfExists(kept.file());
        size -= kept.size();
      }
    } catch (IOException | RuntimeException e) {
      // Another run may tidy as well, or nothing is kept here yet.
    }
  }
}

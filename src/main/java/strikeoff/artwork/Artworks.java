package strikeoff.artwork;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import strikeoff.document.Bounds;
import strikeoff.plan.Artwork;
import strikeoff.units.Pair;

/**
 * The pictures of a plan, each read once however often the plan is tried. What was measured is kept
 * by a file's bytes, so that plans that share a film measure it once. Threads may share it.
 */
public final class Artworks {

  private final Shelf shelf;

  /** Of this plan, by all that is asked. */
  private final Map<Wanted, Looked> looked = new ConcurrentHashMap<>();

  /** Of all plans of a run. */
  private final Map<Key, PictureMeasures> measured;

  private Artworks(Shelf shelf, Map<Key, PictureMeasures> measured) {
    this.shelf = shelf;
    this.measured = measured;
  }

  /** What came of a picture. */
  public sealed interface Looked {

    /**
     * It was measured.
     *
     * @param points how many it has, margin and all
     */
    record Seen(Artwork artwork, long points) implements Looked {}

    /** It can't be taken in, for this reason: words for whoever wrote the plan. */
    record Refused(String why) implements Looked {}
  }

  /** All that measures depend on: a picture, and how it is printed. */
  private record Key(
      String bytes,
      Artwork.Tone prints,
      boolean wrong,
      int alongMargin,
      int acrossMargin,
      Pair size) {}

  /** Of a plan that lies in no folder, as one from standard input. */
  public static Artworks nowhere() {
    return new Artworks(Shelf.NONE, new ConcurrentHashMap<>());
  }

  /**
   * Those beside a plan, with all that was measured so far; the same where they are those already,
   * and what was read once isn't read again.
   */
  public Artworks beside(Path plan) {
    Path folder = plan.toAbsolutePath().getParent();
    Shelf there =
        folder != null && Files.isRegularFile(plan) ? new FolderShelf(folder) : Shelf.NONE;
    return there.equals(shelf) ? this : new Artworks(there, measured);
  }

  /**
   * Those that come with the program.
   *
   * @param folder of its resources, between slashes
   */
  public Artworks packaged(String folder) {
    return new Artworks(new PackagedShelf(folder), measured);
  }

  /**
   * Reads and measures a picture.
   *
   * @param pointsLeft how many more a plan's pictures may have
   */
  public Looked look(Wanted wanted, Bounds bounds, long pointsLeft) {
    Looked known = looked.get(wanted);
    if (known == null) {
      try {
        known = read(wanted, bounds, pointsLeft);
        looked.put(wanted, known);
      } catch (UnreadablePicture e) {
        return new Looked.Refused(e.getMessage());
      } catch (IOException e) {
        return new Looked.Refused("this file can't be read");
      }
    }
    return known;
  }

  /** Where a picture lies or would lie; empty for what can't lie beside the plan. */
  public Optional<Path> path(String file) {
    return shelf.path(file);
  }

  /** The SHA-256 of a picture's bytes, or why there is none. */
  public String digest(String file, Bounds bounds) {
    try (InputStream in = shelf.open(file, bounds.artworkMib())) {
      return hash(in);
    } catch (UnreadablePicture | IOException e) {
      return String.valueOf(e.getMessage());
    }
  }

  private Looked.Seen read(Wanted wanted, Bounds bounds, long pointsLeft)
      throws IOException, UnreadablePicture {
    String bytes;
    try (InputStream in = shelf.open(wanted.file(), bounds.artworkMib())) {
      bytes = hash(in);
    }
    try (InputStream in = shelf.open(wanted.file(), bounds.artworkMib())) {
      Picture picture = Pictures.head(in);
      long points = (long) picture.columns() * picture.rows();
      if (points > bounds.megapixels() * 1_000_000L) {
        throw tooLarge(picture, "at most " + bounds.megapixels() + " million are taken in");
      }
      if (points > pointsLeft) {
        throw tooLarge(
            picture,
            "with those before it the plan has more than the "
                + bounds.artworkMegapixels()
                + " million that are taken in");
      }
      Placing placing = Placing.of(picture, wanted);
      Key key =
          new Key(
              bytes,
              wanted.prints(),
              wanted.wrong(),
              placing.alongMargin(),
              placing.acrossMargin(),
              wanted.size());
      PictureMeasures one = measured.get(key);
      if (one == null) {
        one = PictureMeasures.of(picture, wanted, placing);
        measured.put(key, one);
      }
      return new Looked.Seen(one.artwork(wanted, placing), points);
    }
  }

  private static UnreadablePicture tooLarge(Picture picture, String bound) {
    return new UnreadablePicture(
        "a picture of " + picture.columns() + " x " + picture.rows() + " points; " + bound);
  }

  private static String hash(InputStream in) throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] some = new byte[1 << 16];
      for (int read = in.read(some); read >= 0; read = in.read(some)) {
        digest.update(some, 0, read);
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JDK has it", e);
    }
  }
}

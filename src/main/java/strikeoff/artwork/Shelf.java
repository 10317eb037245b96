package strikeoff.artwork;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import strikeoff.document.Sha256;

/** Where a plan's pictures lie. */
interface Shelf {

  /**
   * Opens a picture.
   *
   * @param name as the plan writes it
   * @param mostMib beyond which a file isn't taken in
   * @throws UnreadablePicture if it lies somewhere else, isn't there or is too large
   */
  InputStream open(String name, int mostMib) throws IOException, UnreadablePicture;

  /** The SHA-256 of a picture's bytes, or why there is none. */
  default String digest(String name, int mostMib) {
    try (InputStream in = open(name, mostMib)) {
      return Sha256.of(in);
    } catch (UnreadablePicture | IOException e) {
      return String.valueOf(e.getMessage());
    }
  }

  /** Where it lies on a disk; empty if it lies on none, or can't lie here. */
  default Optional<Path> path(String name) {
    return Optional.empty();
  }

  /** Of a plan that lies in no folder. */
  Shelf NONE =
      (name, mostMib) -> {
        throw new UnreadablePicture(
            "artwork lies beside the plan's file, and this plan comes from none; check it by its file's"
                + " name, or write `covers`");
      };

  /**
   * Of something else that does.
   *
   * @param what as {@code the policy file}
   */
  static Shelf none(String what) {
    return (name, mostMib) -> {
      throw new UnreadablePicture(
          "artwork lies beside " + what + ", and this comes from none; name the file itself");
    };
  }
}

package strikeoff.artwork;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import strikeoff.document.Bounds;

/**
 * The folder of a studio's policy file: the films of its inventory lie there or below.
 *
 * @param folder empty of a policy that lies in none
 */
public record StudioFolder(Optional<Path> folder) {

  /** Of a policy that comes from no file. */
  public static final StudioFolder NOWHERE = new StudioFolder(Optional.empty());

  private static final String POLICY = "the policy file";

  /** That of a policy file. */
  public static StudioFolder of(Path policy) {
    return new StudioFolder(
        Optional.ofNullable(policy.toAbsolutePath().getParent())
            .filter(folder -> Files.isRegularFile(policy)));
  }

  Shelf shelf() {
    return folder.<Shelf>map(at -> new FolderShelf(at, POLICY)).orElse(Shelf.none(POLICY));
  }

  /** Where a film lies or would lie; empty for what can't lie here. */
  public Optional<Path> path(String file) {
    return shelf().path(file);
  }

  /** The SHA-256 of a film's bytes, or why there is none. */
  public String digest(String file, Bounds bounds) {
    return shelf().digest(file, bounds.artworkMib());
  }

  /**
   * Why a film can't be taken in, as far as its head tells: words for whoever keeps the inventory.
   *
   * @param sized whether it is known how large it is wanted
   * @return empty if nothing is wrong so far
   */
  public Optional<String> refuses(Wanted wanted, boolean sized, Bounds bounds) {
    try (InputStream in = shelf().open(wanted.file(), bounds.artworkMib())) {
      Picture picture = Pictures.head(in, wanted);
      if (sized || wanted.pointsPerMm().isPresent() || picture.grid().isPresent()) {
        Placing.of(picture, wanted);
      }
      return Optional.empty();
    } catch (UnreadablePicture e) {
      return Optional.of(e.getMessage());
    } catch (IOException e) {
      return Optional.of(Artworks.UNREAD);
    }
  }
}

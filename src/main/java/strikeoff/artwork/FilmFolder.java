package strikeoff.artwork;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import strikeoff.document.Bounds;
import strikeoff.plan.Artwork;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** The pictures of a folder, for a plan that isn't written yet. */
public final class FilmFolder {

  /** More are no folder of films. */
  public static final int MOST_FILES = 1000;

  /** Pictures by their names: those that are read, and those that people save films as besides. */
  private static final Pattern PICTURE =
      Pattern.compile(
          "(?i)[^.].*\\.(png|tiff?|pbm|svg|svgz|jpe?g|gif|bmp|pdf|e?ps|psd|webp|pgm|ppm)");

  private FilmFolder() {}

  /**
   * A picture by what its head says.
   *
   * @param name as the plan names it
   * @param says how large it is by its own resolution; empty if it doesn't say
   * @param refused why its head can't be taken in; empty if it can
   */
  public record Film(String name, Optional<Pair> says, Optional<String> refused) {}

  /** True of a folder that holds a picture. */
  public static boolean holdsPictures(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.limit(MOST_FILES).anyMatch(FilmFolder::isPicture);
    } catch (IOException | RuntimeException e) {
      return false;
    }
  }

  private static boolean isPicture(Path file) {
    return PICTURE.matcher(file.getFileName().toString()).matches() && !Files.isDirectory(file);
  }

  /**
   * The pictures of a folder, not of those below it, by their names; other files are passed over.
   *
   * @param plan the folder that the plan is to lie in
   * @param below the folder of films from there, with a slash between folders; empty if it is the
   *     same
   * @return empty if the folder has more than {@link #MOST_FILES} files and folders: which of them
   *     come first is the file system's affair
   */
  public static Optional<List<Film>> of(Path plan, String below, Bounds bounds) throws IOException {
    TreeSet<String> names = new TreeSet<>();
    try (Stream<Path> files = Files.list(plan.resolve(below))) {
      List<Path> all = files.limit(MOST_FILES + 1L).toList();
      if (all.size() > MOST_FILES) {
        return Optional.empty();
      }
      all.stream()
          .filter(FilmFolder::isPicture)
          .forEach(file -> names.add(file.getFileName().toString()));
    }
    Shelf shelf = new FolderShelf(plan, FolderShelf.PLAN);
    List<Film> films = new ArrayList<>();
    for (String name : names) {
      films.add(film(shelf, below.isEmpty() ? name : below + "/" + name, bounds));
    }
    return Optional.of(films);
  }

  private static Film film(Shelf shelf, String name, Bounds bounds) {
    Length any = new Length(100);
    Wanted wanted =
        new Wanted(
            name, Artwork.Tone.DARK, false, Optional.empty(), new Length(0), new Pair(any, any));
    try (InputStream in = shelf.open(name, bounds.artworkMib())) {
      Picture picture = Pictures.head(in, wanted);
      Optional<Pair> says = picture.grid().isEmpty() ? Optional.empty() : size(picture, wanted);
      return new Film(name, says, Optional.empty());
    } catch (UnreadablePicture e) {
      return new Film(name, Optional.empty(), Optional.of(e.getMessage()));
    } catch (IOException e) {
      return new Film(name, Optional.empty(), Optional.of("this file can't be read"));
    }
  }

  private static Optional<Pair> size(Picture picture, Wanted wanted) throws UnreadablePicture {
    return Placing.of(picture, wanted).says();
  }
}

package strikeoff.artwork;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/**
 * The folder that a plan or a policy lies in, with all below it. Nothing else is opened: no way up,
 * no link, no address, nothing but plain files.
 *
 * @param whose what lies in it, as {@code the plan}
 */
record FolderShelf(Path folder, String whose) implements Shelf {

  /** Of a plan. */
  static final String PLAN = "the plan";

  private static final int MIB = 1 << 20;
  private static final int MOST_LOOKED_AT = 1000;

  /** What some system takes for another place, a drive, a pattern or an address. */
  private static final Pattern ODD = Pattern.compile("[:*?\"<>|\\p{Cntrl}]");

  @Override
  public InputStream open(String name, int mostMib) throws IOException, UnreadablePicture {
    Path file = place(name);
    BasicFileAttributes attributes = attributes(file, name);
    if (attributes.size() > (long) mostMib * MIB) {
      throw new UnreadablePicture(
          "this file has "
              + (attributes.size() + MIB - 1) / MIB
              + " MiB; at most "
              + mostMib
              + " MiB are taken in; save it in black and white, packed");
    }
    return new FilmParts.OnDisk(
        FileChannel.open(file, Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)));
  }

  @Override
  public Optional<Path> path(String name) {
    try {
      return Optional.of(folder.resolve(String.join("/", steps(name, whose))));
    } catch (UnreadablePicture | InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** Where it lies; each folder on the way is looked at. */
  private Path place(String name) throws IOException, UnreadablePicture {
    List<String> steps = steps(name, whose);
    Path at = folder;
    try {
      for (String step : steps.subList(0, steps.size() - 1)) {
        at = at.resolve(step);
        BasicFileAttributes attributes = look(at, name);
        if (attributes.isSymbolicLink()) {
          throw link(at);
        }
        if (!attributes.isDirectory()) {
          throw missing(name, at.getParent(), step);
        }
      }
      return at.resolve(steps.get(steps.size() - 1));
    } catch (InvalidPathException e) {
      throw new UnreadablePicture(
          "this is no name that a file has here; name it in plain letters, as films/heron.png");
    }
  }

  static List<String> steps(String name, String whose) throws UnreadablePicture {
    List<String> steps = List.of(name.split("/", -1));
    if (steps.get(0).isEmpty() || steps.contains("..") || name.contains("://")) {
      throw elsewhere(whose);
    }
    if (name.indexOf('\\') >= 0) {
      throw new UnreadablePicture("between folders stands “/”, not “\\”, as in films/heron.png");
    }
    if (name.endsWith("/")) {
      throw new UnreadablePicture("this is a folder; name a picture in it");
    }
    if (steps.contains(".") || steps.contains("")) {
      throw new UnreadablePicture(
          "only names of folders and of the file stand here, as in films/heron.png: leave out “./” and"
              + " a second “/”");
    }
    Matcher odd = ODD.matcher(name);
    if (odd.find() || name.length() > Wanted.LONGEST_NAME) {
      throw new UnreadablePicture(
          "no file that is to be found on each system is called so: names have no : * ? \" < > | in"
              + " them, no line break, and at most "
              + Wanted.LONGEST_NAME
              + " letters");
    }
    return steps;
  }

  private static UnreadablePicture elsewhere(String whose) {
    return new UnreadablePicture(
        "artwork lies beside "
            + whose
            + " or in a folder below it, as films/heron.png does; “..”, “/” in"
            + " front and addresses are not followed");
  }

  private UnreadablePicture link(Path at) {
    return new UnreadablePicture(
        Script.quoted(within(at))
            + " is a link, which isn't followed; a film itself lies beside "
            + whose
            + " or in a folder below it: lay the file there that the link leads to");
  }

  private BasicFileAttributes attributes(Path file, String name)
      throws IOException, UnreadablePicture {
    BasicFileAttributes attributes = look(file, name);
    if (attributes.isSymbolicLink()) {
      throw link(file);
    }
    if (attributes.isDirectory()) {
      throw new UnreadablePicture("this is a folder; name a picture in it");
    }
    if (!attributes.isRegularFile()) {
      throw new UnreadablePicture(
          "this is no file that holds a picture but a pipe or a device; lay the film beside "
              + whose);
    }
    return attributes;
  }

  private BasicFileAttributes look(Path file, String name) throws IOException, UnreadablePicture {
    try {
      return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    } catch (NoSuchFileException e) {
      throw missing(name, file.getParent(), String.valueOf(file.getFileName()));
    }
  }

  private UnreadablePicture missing(String name, Path in, String last) {
    String before = in.equals(folder) ? "" : within(in) + "/";
    List<String> there = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(in)) {
      for (Path one : stream) {
        if (there.size() < MOST_LOOKED_AT) {
          there.add(before + one.getFileName());
        }
      }
    } catch (IOException | RuntimeException e) {
      there.clear();
    }
    return new UnreadablePicture(
        "there is no file "
            + Script.quoted(name)
            + " beside "
            + whose
            + Spelling.didYouMean(before + last, there.stream().sorted().toList()));
  }

  /** A folder's name as a plan writes it. */
  private String within(Path in) {
    return folder.relativize(in).toString().replace(in.getFileSystem().getSeparator(), "/");
  }
}

package strikeoff.rulebook.own;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the folder in which a studio keeps its own rules. */
public final class RuleFolder {

  private static final int DEEPEST = 8;
  private static final int MOST_FILES = 500;
  private static final int MOST_BYTES = 1 << 18;

  /** Ten times what as many rules as there may be take up. */
  private static final int MOST_TOGETHER = 1 << 23;

  /** What begins with a dot is hidden: what editors and file systems leave is nobody's rule. */
  private static final Pattern RULES = Pattern.compile("(?i)[^.].*\\.(drl|dslr|dsl)");

  /** As some programs save a file that is to end in .dslr. */
  private static final Pattern SAVED_AS =
      Pattern.compile("(?i)[^.].*\\.dslr\\.(txt|text|rtf|docx?|odt|md)");

  private static final Pattern FAMILY = Pattern.compile("[a-z]+");

  private RuleFolder() {}

  /** True if the file belongs to rules and not to plans. */
  public static boolean isRuleFile(Path file) {
    return RULES.matcher(file.getFileName().toString()).matches();
  }

  /**
   * All rule files below a folder, by name.
   *
   * @param name the folder as the user names it
   * @param taken families that can't be used again
   * @throws RuleMistakes if the folder or a file can't be read, or its name can't be part of an id
   */
  public static List<RuleFile> read(Path folder, String name, List<String> taken)
      throws RuleMistakes {
    List<RuleMistake> mistakes = new ArrayList<>();
    List<RuleFile> files = new ArrayList<>();
    boolean unread = false;
    int together = 0;
    for (Path path : paths(folder, name)) {
      String below = folder.relativize(path).toString().replace('\\', '/');
      String file = name + "/" + below;
      String family = folderName(path);
      Optional<String> code = noSentences(path);
      if (code.isPresent()) {
        mistakes.add(new RuleMistake(file, 0, code.get()));
        continue;
      }
      if (!FAMILY.matcher(family).matches()) {
        mistakes.add(
            new RuleMistake(
                file,
                0,
                "rules are called by their folder, whose name is one word of small letters a to z;"
                    + " “"
                    + family
                    + "” is none"));
      } else if (taken.contains(family)) {
        mistakes.add(
            new RuleMistake(
                file,
                0,
                "the folder “"
                    + family
                    + "” is called like a family of the built-in rules;"
                    + " give it another name"));
      }
      try {
        String text = text(path);
        files.add(new RuleFile(file, family, text));
        together += text.length();
        if (together > MOST_TOGETHER) {
          mistakes.add(
              new RuleMistake(
                  name,
                  0,
                  "more than " + (MOST_TOGETHER >> 20) + " MiB of rules; no more are read"));
          break;
        }
      } catch (CharacterCodingException e) {
        mistakes.add(new RuleMistake(file, 0, "this file isn't in UTF-8"));
      } catch (IOException e) {
        mistakes.add(new RuleMistake(file, 0, "this file can't be read: " + e.getMessage()));
        unread |= !Files.isRegularFile(path) || !Files.isReadable(path);
      }
    }
    if (files.isEmpty() && mistakes.isEmpty()) {
      mistakes.add(new RuleMistake(name, 0, "no .dslr file in this folder"));
    }
    if (!mistakes.isEmpty()) {
      throw new RuleMistakes(mistakes, unread);
    }
    return files;
  }

  /** Why a file holds no sentences, if it is of such a kind. */
  private static Optional<String> noSentences(Path path) {
    String file = path.getFileName().toString().toLowerCase(Locale.ROOT);
    if (SAVED_AS.matcher(file).matches()) {
      return Optional.of("the name of a file of rules ends in .dslr; rename this one");
    }
    if (Files.isDirectory(path)) {
      return Optional.of("this is a folder, called like a file of rules; give it another name");
    }
    if (file.endsWith(".drl")) {
      return Optional.of(
          "rules in code aren't run; write the rule in sentences, in a file that ends in .dslr: what"
              + " there is to say, and how, is in OWN-RULES.md and SENTENCES.md");
    }
    return file.endsWith(".dsl")
        ? Optional.of(
            "no sentences can be added; write what they stand for in the rule itself, as in “there is"
                + " a screen whose frame length is less than 30 cm”")
        : Optional.empty();
  }

  private static List<Path> paths(Path folder, String name) throws RuleMistakes {
    if (Files.isRegularFile(folder)) {
      throw mistake(name, "this is a file; name the folder that holds it", false);
    }
    try (Stream<Path> walk = Files.walk(folder, DEEPEST)) {
      List<Path> paths =
          walk.filter(p -> isSeen(folder, p))
              .filter(p -> isRuleFile(p) || SAVED_AS.matcher(p.getFileName().toString()).matches())
              .limit(MOST_FILES + 1L)
              .sorted()
              .toList();
      if (paths.size() > MOST_FILES) {
        throw mistake(name, "more than " + MOST_FILES + " rule files", false);
      }
      return paths;
    } catch (NoSuchFileException e) {
      throw mistake(name, "no such folder", false);
    } catch (IOException | UncheckedIOException e) {
      throw mistake(name, "this folder of rules can't be read", true);
    }
  }

  /** True if neither it nor a folder on the way to it is hidden. */
  private static boolean isSeen(Path folder, Path path) {
    for (Path name : folder.relativize(path)) {
      if (name.toString().isEmpty() || name.toString().startsWith(".")) {
        return false;
      }
    }
    return true;
  }

  private static RuleMistakes mistake(String name, String message, boolean unread) {
    return new RuleMistakes(List.of(new RuleMistake(name, 0, message)), unread);
  }

  private static String folderName(Path file) {
    Path parent = file.toAbsolutePath().normalize().getParent();
    return parent.getFileName() == null ? "" : parent.getFileName().toString();
  }

  private static String text(Path path) throws IOException {
    if (!Files.isRegularFile(path)) {
      // A rule that is left out in silence would find nothing for ever.
      throw new IOException("it is a pipe, a device, or a link that leads nowhere");
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new IOException("it is larger than " + MOST_BYTES / 1024 + " KiB");
      }
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }
  }
}

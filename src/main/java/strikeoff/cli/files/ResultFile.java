package strikeoff.cli.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import strikeoff.check.FileTrouble;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;
import strikeoff.report.json.JsonReading;
import strikeoff.report.outcome.Results;

/** Reads results that an earlier run wrote as JSON. */
public final class ResultFile {

  /** Ten thousand plans with twenty findings each. */
  private static final int MOST_BYTES = 256 << 20;

  private ResultFile() {}

  /** Why a file holds no results, and how the program then ends. */
  public static final class Unfit extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Exit exit;

    Unfit(String message, Exit exit) {
      super(message);
      this.exit = exit;
    }

    public Exit exit() {
      return exit;
    }
  }

  /** Without the mark that some editors put before UTF-8, which readers of JSON may pass over. */
  private static String text(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  public static Results read(Surroundings here, String file) throws Unfit {
    try {
      return read(here.resolve(file), file);
    } catch (NoSuchFileException | InvalidPathException e) {
      throw new Unfit(file + ": no such file", Exit.USAGE);
    } catch (IOException e) {
      throw new Unfit(file + ": this file can't be read: " + FileTrouble.of(e), Exit.FAULT);
    }
  }

  private static Results read(Path path, String file) throws IOException, Unfit {
    Optional<String> odd = OddFile.whatNamed(path);
    if (odd.isPresent()) {
      throw new IOException(odd.get());
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new Unfit(file + ": larger than " + (MOST_BYTES >> 20) + " MiB", Exit.UNREADABLE);
      }
      JsonReading.Read read = JsonReading.of(text(bytes));
      if (read instanceof JsonReading.Read.Bad bad) {
        throw new Unfit(file + ": no results of strikeoff: " + bad.why(), Exit.UNREADABLE);
      }
      return ((JsonReading.Read.Good) read).results();
    }
  }
}

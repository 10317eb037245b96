package strikeoff.checks;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * What a row proves. Only the first kind counts: a value that somebody else measured, tabulated or
 * worked out in another way, from a source that can be named and looked up.
 */
public enum Standing {
  /** From a named source in which ours has no part. */
  INDEPENDENT("independent"),
  /** As good, but the source has no public name, so nobody can look it up. */
  WEAK("weak: unnamed source"),
  /** One of our constants, held against the source that it was taken from. */
  CONSTANT("our constant"),
  /** The formula that we use as well, worked out once more. */
  FORMULA("our formula again"),
  /** A habit of the trade, or a value that nobody looked up. */
  UNSOURCED("no source");

  private final String text;

  Standing(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }

  /** The first line of {@code standings.yaml} that fits; a row that none fits proves little. */
  public static Standing of(CheckRow row) {
    if (row.status() == CheckRow.Status.COMMON_PRACTICE
        || row.status() == CheckRow.Status.FROM_MEMORY) {
      return UNSOURCED;
    }
    return LINES.stream()
        .filter(line -> line.fits(row))
        .map(Line::is)
        .findFirst()
        .orElse(row.status() == CheckRow.Status.PUBLISHED ? WEAK : FORMULA);
  }

  static boolean isUsed(Line line, List<CheckRow> rows) {
    return rows.stream().anyMatch(line::fits);
  }

  static List<Line> lines() {
    return LINES;
  }

  /**
   * What is said of a source's rows.
   *
   * @param source the beginning of the source as rows name it
   * @param row beginning of the quantity; empty for all
   * @param status of the rows meant; none for all
   * @param is what they prove
   */
  record Line(String source, String row, CheckRow.Status status, Standing is) {

    Line {
      row = row == null ? "" : row;
    }

    boolean fits(CheckRow check) {
      return check.source().startsWith(source)
          && check.quantity().startsWith(row)
          && (status == null || status == check.status());
    }
  }

  private static final List<Line> LINES = read();

  private static List<Line> read() {
    try (InputStream in = Standing.class.getResourceAsStream("standings.yaml")) {
      return new ObjectMapper(new YAMLFactory()).readValue(in, new TypeReference<>() {});
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package strikeoff.cli.text;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;

/**
 * Where the program runs; tests make their own.
 *
 * @param out findings and other results, in UTF-8
 * @param err complaints and progress, in UTF-8
 * @param in where a plan may be read from
 * @param environment variables by name
 * @param terminal true if a person watches: both output and input are a terminal
 * @param watched true if the error output is a terminal, where progress may be told
 * @param folder what relative paths start from
 * @param cores how many plans can be checked side by side
 */
public record Surroundings(
    PrintWriter out,
    PrintWriter err,
    InputStream in,
    Map<String, String> environment,
    boolean terminal,
    boolean watched,
    Path folder,
    int cores) {

  /** Most plans need a few MB; where there is less than this for each, a large one takes it all. */
  private static final long MEMORY_FOR_A_PLAN = 40L << 20;

  private static final int USUAL_WIDTH = 80;
  private static final int LEAST_WIDTH = 20;
  private static final int MOST_WIDTH = 200;

  public Surroundings {
    // Names that the platform's charset can't tell apart come as one.
    environment = Collections.unmodifiableMap(new HashMap<>(environment));
  }

  /** With all outputs on the same terminal, or on none. */
  public Surroundings(
      PrintWriter out,
      PrintWriter err,
      InputStream in,
      Map<String, String> environment,
      boolean terminal,
      Path folder,
      int cores) {
    this(out, err, in, environment, terminal, terminal, folder, cores);
  }

  /**
   * Plans in work at a time: one more than can run, so that no core waits for the next one, unless
   * there is too little memory for several.
   */
  public int plansAtOnce() {
    long fitting = Runtime.getRuntime().maxMemory() / MEMORY_FOR_A_PLAN;
    return (int) Math.max(1, Math.min(cores + 1, fitting));
  }

  /** Columns to write in: {@code COLUMNS}, within reason, else 80. */
  public int width() {
    String columns = environment.getOrDefault("COLUMNS", "");
    if (!columns.matches("[1-9][0-9]{0,5}")) {
      return USUAL_WIDTH;
    }
    return Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, Integer.parseInt(columns)));
  }

  /** True if colour is wanted when nobody says: on a terminal that can, unless NO_COLOR is set. */
  public boolean colourful() {
    return terminal
        && environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !environment.getOrDefault("TERM", "").equals("dumb");
  }

  /** A path as the user names it, from the folder the program runs in. */
  public Path resolve(String path) {
    return FileNames.resolve(folder, path);
  }
}

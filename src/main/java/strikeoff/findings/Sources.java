package strikeoff.findings;

/**
 * Says where a value comes from. Contributors write {@code from memory} beside what they could not
 * look up; whoever reads a report wants to know what that means for the figure.
 */
public final class Sources {

  private static final String MEMORY = "from memory";

  private Sources() {}

  /** The source as people are told it. */
  public static String shown(String source) {
    return source.contains(MEMORY)
        ? source
            .replace("cited " + MEMORY, "not checked again")
            .replace(MEMORY, "not checked against a source")
        : source;
  }
}

package strikeoff.day;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import strikeoff.document.Scalars;

/**
 * What a printer could write so that screens are washed out in time.
 *
 * @param by who washes; empty for the first of the crew, and between colours
 * @param step number of the step that it follows, or that is changed
 * @param changes between colours what else to write
 */
public record WashStep(
    List<String> screens, Optional<String> by, int step, When when, List<Change> changes) {

  /** When they are washed. */
  public enum When {
    /** By a step of its own. */
    AFTER_STEP,
    /** They stand within the step, so that it must be printed in two. */
    WITHIN_STEP,
    /** Within the step, while other colours are printed. */
    BETWEEN_COLOURS
  }

  private static final Pattern PLAIN = Pattern.compile("\\p{L}[\\p{L}\\p{N} _-]*");

  /** Words that YAML, or a step of washing, takes for something else. */
  private static final Set<String> TAKEN = Set.of("all", "true", "false", "yes", "no", "null");

  /**
   * What a step needs besides for its screens to be washed between colours.
   *
   * @param by who prints it alone, or who washes; empty where it is nobody's name that is written
   */
  public record Change(What what, Optional<String> by) {}

  public enum What {
    PRINTED_BY,
    NO_BEGINS,
    ORDER_BY_COLOUR,
    WASHED_BY
  }

  public WashStep {
    changes = List.copyOf(changes);
    screens = List.copyOf(screens);
  }

  /** As YAML takes it for a name. */
  public static String written(String name) {
    return PLAIN.matcher(name).matches() && !name.endsWith(" ") && !TAKEN.contains(name)
        ? name
        : Scalars.quoted(name);
  }
}

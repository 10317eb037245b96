package strikeoff.day;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a printer could write so that screens are washed out in time.
 *
 * @param with who washes, empty for the first of the crew; between colours what else to write
 * @param step number of the step that it follows, or that is changed
 */
public record WashStep(List<String> screens, String with, int step, When when) {

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

  public WashStep {
    screens = List.copyOf(screens);
  }

  /** What to write, and where. */
  public String text() {
    return switch (when) {
      case AFTER_STEP -> "write " + line() + " after step " + step;
      case WITHIN_STEP ->
          "print step " + step + " in two steps and write " + line() + " between them";
      case BETWEEN_COLOURS ->
          "write `wash between colours: yes`"
              + (with.isEmpty() ? "" : " and " + with)
              + " in step "
              + step;
    };
  }

  private String line() {
    List<String> names = screens.stream().map(WashStep::written).toList();
    String what = names.size() == 1 ? names.get(0) : "[" + String.join(", ", names) + "]";
    return with.isEmpty()
        ? "`- wash screen: " + what + "`"
        : "`- {wash screen: " + what + ", by: " + written(with) + "}`";
  }

  /** As YAML takes it for a name. */
  public static String written(String name) {
    return PLAIN.matcher(name).matches() && !name.endsWith(" ") && !TAKEN.contains(name)
        ? name
        : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}

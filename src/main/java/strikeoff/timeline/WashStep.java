package strikeoff.timeline;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A step that a printer could write to wash screens out.
 *
 * @param by who washes; empty for the first of the crew
 * @param after number of the step that it follows
 * @param within true if the screens stand within that step, so that it must be printed in two
 */
public record WashStep(List<String> screens, String by, int after, boolean within) {

  private static final Pattern PLAIN = Pattern.compile("\\p{L}[\\p{L}\\p{N} _-]*");

  /** Words that YAML, or a step of washing, takes for something else. */
  private static final Set<String> TAKEN = Set.of("all", "true", "false", "yes", "no", "null");

  public WashStep {
    screens = List.copyOf(screens);
  }

  /** What to write, and where. */
  public String text() {
    return within
        ? "print step " + after + " in two steps and write " + line() + " between them"
        : "write " + line() + " after step " + after;
  }

  private String line() {
    List<String> names = screens.stream().map(WashStep::written).toList();
    String what = names.size() == 1 ? names.get(0) : "[" + String.join(", ", names) + "]";
    return by.isEmpty()
        ? "`- wash screen: " + what + "`"
        : "`- {wash screen: " + what + ", by: " + written(by) + "}`";
  }

  /** As YAML takes it for a name. */
  private static String written(String name) {
    return PLAIN.matcher(name).matches() && !name.endsWith(" ") && !TAKEN.contains(name)
        ? name
        : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}

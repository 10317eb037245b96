package strikeoff.plan.yaml;

import java.util.List;
import java.util.regex.Pattern;
import strikeoff.yaml.Node;
import strikeoff.yaml.YamlReader;
import strikeoff.yaml.YamlReading;

/** By what a YAML file is known as a plan before it is read as one. */
public final class PlanMark {

  /** Any of them is enough, so that a plan with a slip in one of them is not passed over. */
  private static final List<String> KEYS =
      List.of("plan", "cloth", "screens", "pastes", "designs", "placements");

  private PlanMark() {}

  /** The same where nobody can tell how lines belong together. */
  private static final Pattern KEY_IN_A_LINE =
      Pattern.compile("[\"']?(?:" + String.join("|", KEYS) + ")[\"']?\\s*:.*");

  /**
   * False for a file that is plainly something else: it has no key that plans have. What can't be
   * decoded may be a plan.
   */
  public static boolean stands(byte[] bytes) {
    YamlReading reading = YamlReader.read(bytes);
    if (reading instanceof YamlReading.Document document) {
      return stands(document.root());
    }
    YamlReading.Faulty faulty = (YamlReading.Faulty) reading;
    return faulty.lines().isEmpty()
        || faulty.root().filter(PlanMark::stands).isPresent()
        || faulty.lines().stream().anyMatch(line -> KEY_IN_A_LINE.matcher(line).matches());
  }

  private static boolean stands(Node root) {
    return root instanceof Node.Mapping mapping
        && KEYS.stream().anyMatch(mapping.entries()::containsKey);
  }
}

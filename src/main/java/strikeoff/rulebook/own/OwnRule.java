package strikeoff.rulebook.own;

import java.util.List;
import strikeoff.findings.RuleInfo;

/**
 * A rule of the studio's own, as it stands in its file.
 *
 * @param info what it says of itself; its id is {@code folder/name}
 * @param file as the user would name it
 * @param line where the rule begins
 * @param text its lines
 */
public record OwnRule(RuleInfo info, String file, int line, List<String> text) {

  public OwnRule {
    text = List.copyOf(text);
  }

  public String id() {
    return info.id();
  }
}

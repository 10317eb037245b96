package strikeoff.rulebook.own;

import java.util.List;

/**
 * A rule of the studio's own, as it stands in its file.
 *
 * @param id {@code folder/name}
 * @param file as the user would name it
 * @param line where the rule begins
 * @param text its lines
 * @param limits names of the limits that its conditions read
 */
public record OwnRule(String id, String file, int line, List<String> text, List<String> limits) {

  public OwnRule {
    text = List.copyOf(text);
    limits = List.copyOf(limits);
  }
}

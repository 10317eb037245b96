package strikeoff.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.List;

/**
 * The limits that a packaged rule reads, by name. Its text is opened only when somebody asks: most
 * runs never do, and opening the text of every rule at start costs them more than linking some.
 */
final class LimitNames extends AbstractList<String> {

  private final String rule;
  private List<String> names;

  LimitNames(String rule) {
    this.rule = rule;
  }

  @Override
  public String get(int index) {
    return names().get(index);
  }

  @Override
  public int size() {
    return names().size();
  }

  private synchronized List<String> names() {
    if (names == null) {
      names = RuleText.limits(text());
    }
    return names;
  }

  private String text() {
    String name = "/rules/" + rule + "/rule.drl";
    try (InputStream in = LimitNames.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(
            "rule " + rule + " doesn't stand in its own folder " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

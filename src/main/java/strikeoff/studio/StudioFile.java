package strikeoff.studio;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.Position;
import strikeoff.findings.Severity;
import strikeoff.plan.yaml.Stock;
import strikeoff.policy.Default;
import strikeoff.policy.Limit;
import strikeoff.policy.UsualRecipe;

/**
 * One policy file.
 *
 * @param name the file as messages name it
 * @param title whose policy it is
 * @param limits by name, each with the place it is set at as its source
 * @param limitsAt where each limit stands in the file
 * @param defaults by name, likewise
 * @param severities what rules' findings count as instead, by rule
 * @param off rules that aren't judged, with the reason
 * @param accepting which findings may be accepted; empty if the file doesn't say
 * @param recipes what pastes are usually mixed from, as far as the file says so
 * @param marks how plans are marked, if the file says so
 * @param holdsBelow true if no file further down may change anything
 */
public record StudioFile(
    String name,
    String title,
    Map<String, Limit> limits,
    Map<String, Position> limitsAt,
    Map<String, Default<?>> defaults,
    Map<String, Setting<Severity>> severities,
    Map<String, Setting<String>> off,
    Optional<Setting<Accepting>> accepting,
    Stock stock,
    Map<UsualRecipe.For, UsualRecipe> recipes,
    Optional<Setting<Marks>> marks,
    boolean holdsBelow) {

  public StudioFile {
    limits = ordered(limits);
    limitsAt = ordered(limitsAt);
    defaults = ordered(defaults);
    severities = ordered(severities);
    off = ordered(off);
    recipes = Map.copyOf(recipes);
  }

  private static <T> Map<String, T> ordered(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}

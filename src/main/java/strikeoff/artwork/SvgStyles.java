package strikeoff.artwork;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The style sheets of a drawing, as far as an element, a class or an id alone choose (Selectors
 * Level 3), and which rule wins (CSS Cascading Level 3). Worked out here, so that what is drawn is
 * known to the last property; anything else is refused.
 */
final class SvgStyles {

  /** A drawing with a class for each of its inks, lines and layers has a hundredth of them. */
  private static final int MOST_RULES = 10_000;

  private static final String PLAINLY = "write it plainly, as fill:#000;stroke:none";

  private static final Pattern REMARK = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
  private static final Pattern RULE = Pattern.compile("\\G\\s*([^{}]+)\\{([^{}]*)\\}");
  private static final Pattern CHOICE = Pattern.compile("([.#]?)([A-Za-z_][A-Za-z0-9_-]*)");

  /** One after the other, each ends with a semicolon; quoted words hold none. */
  private static final Pattern DECLARATION =
      Pattern.compile(
          "\\s*(?:(-?[a-z][a-z-]*)\\s*:\\s*((?:[^;{}\"'\\\\!@<>/]|/(?!\\*)|\"[^;\"\\\\/]*\"|'[^;'\\\\/]*')+))?");

  private final Map<String, List<Rule>> rules = new HashMap<>();
  private int order;

  private record Rule(int weight, int order, Map<String, String> said) {}

  /** Takes a sheet in. */
  void add(String sheet) throws SvgNotDrawn {
    String plain = REMARK.matcher(sheet).replaceAll(" ").strip();
    if (plain.indexOf('\\') >= 0 || plain.indexOf('@') >= 0) {
      throw new SvgNotDrawn("write it without “@” and “\\”");
    }
    Matcher rule = RULE.matcher(plain);
    int end = 0;
    while (end < plain.length()) {
      if (!rule.find()) {
        throw new SvgNotDrawn(PLAINLY);
      }
      Map<String, String> said = said(rule.group(2));
      if (++order > MOST_RULES) {
        throw new SvgNotDrawn("it has more than " + MOST_RULES + " rules: flatten the drawing");
      }
      for (String each : rule.group(1).split(",", -1)) {
        Matcher choice = CHOICE.matcher(each.strip());
        if (!choice.matches()) {
          throw new SvgNotDrawn("choose by names of classes alone, or write it into the shapes");
        }
        int weight = choice.group(1).isEmpty() ? 0 : choice.group(1).equals(".") ? 1 : 2;
        rules
            .computeIfAbsent(each.strip(), k -> new ArrayList<>())
            .add(new Rule(weight, order, said));
      }
      end = rule.end();
    }
  }

  /** What the sheets say of an element; the strongest is said last. */
  Map<String, String> of(String element, String classes, String id) {
    if (rules.isEmpty()) {
      return Map.of();
    }
    List<Rule> chosen = new ArrayList<>(rules.getOrDefault(element, List.of()));
    for (String each : classes == null ? new String[0] : classes.strip().split("\\s+")) {
      chosen.addAll(rules.getOrDefault("." + each, List.of()));
    }
    chosen.addAll(rules.getOrDefault("#" + id, List.of()));
    chosen.sort(Comparator.comparingInt(Rule::weight).thenComparingInt(Rule::order));
    Map<String, String> said = new LinkedHashMap<>();
    chosen.forEach(rule -> said.putAll(rule.said()));
    return said;
  }

  /** Declarations by their names, of a rule or of a {@code style} attribute. */
  static Map<String, String> said(String text) throws SvgNotDrawn {
    Map<String, String> said = new LinkedHashMap<>();
    for (String each : REMARK.matcher(text).replaceAll(" ").split(";")) {
      Matcher declaration = DECLARATION.matcher(each.stripTrailing());
      if (!declaration.matches()) {
        throw new SvgNotDrawn(each.contains("!") ? "write it without “!important”" : PLAINLY);
      }
      String name = declaration.group(1);
      if (name == null) {
        continue;
      }
      if (!SvgRefusals.isProperty(name)) {
        throw new SvgNotDrawn("“" + name + "” isn't drawn here: flatten the drawing");
      }
      said.put(name, declaration.group(2).strip());
    }
    return said;
  }
}

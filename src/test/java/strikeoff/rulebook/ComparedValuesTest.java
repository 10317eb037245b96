package strikeoff.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What may be missing equals no text and no number: the engine takes such a comparison, and it
 * never holds, so that the rule is silent for ever.
 */
class ComparedValuesTest {

  private static final Pattern IMPORT = Pattern.compile("(?m)^import\\s+([\\w.$]+)");
  private static final Pattern TEXTS = Pattern.compile("\"[^\"\\n]*\"");
  private static final Pattern FACT =
      Pattern.compile("(?:(\\$\\w+)\\s*:\\s*)?\\b([A-Z]\\w*)\\s*\\(");
  private static final Pattern NAMED = Pattern.compile("(\\$\\w+)\\s*:\\s*([\\w.()]+)\\s*(?=[,)])");
  private static final Pattern COMPARED =
      Pattern.compile(
          "([\\w.$\"]+(?:\\(\\))?)\\s*(==|!=|<=|>=|<|>|contains|memberOf)\\s*([\\w.$\"]+(?:\\(\\))?)");

  /** What a rule compares, and what of that can never be alike. */
  private static final class Conditions {
    private final Map<String, Class<?>> kinds = new HashMap<>();
    private final Map<String, Class<?>> named = new HashMap<>();
    private final List<String> vain = new ArrayList<>();
    private int compared;

    Conditions(String drl) throws ReflectiveOperationException {
      for (Matcher m = IMPORT.matcher(drl); m.find(); ) {
        Class<?> kind = Class.forName(m.group(1));
        kinds.put(kind.getSimpleName(), kind);
      }
      String bare = TEXTS.matcher(drl.replaceAll("(?m)//.*$", "")).replaceAll("\"\"");
      String conditions = bare.replaceAll("(?s).*?\\bwhen\\b(.*?)\\bthen\\b.*", "$1");
      for (Matcher fact = FACT.matcher(conditions); fact.find(); ) {
        Class<?> kind = kinds.get(fact.group(2));
        if (kind != null) {
          if (fact.group(1) != null) {
            named.put(fact.group(1), kind);
          }
          of(kind, inside(conditions, fact.end()));
        }
      }
    }

    private void of(Class<?> fact, String constraints) {
      for (Matcher name = NAMED.matcher(constraints + ")"); name.find(); ) {
        kind(fact, name.group(2)).ifPresent(kind -> named.put(name.group(1), kind));
      }
      for (Matcher m = COMPARED.matcher(constraints); m.find(); ) {
        Optional<Class<?>> left = kind(fact, m.group(1));
        Optional<Class<?>> right = kind(fact, m.group(3));
        compared += left.isPresent() || right.isPresent() ? 1 : 0;
        if (perhaps(left) != perhaps(right)) {
          vain.add(m.group());
        }
      }
    }

    private static boolean perhaps(Optional<Class<?>> kind) {
      return kind.filter(k -> k.getName().startsWith(Optional.class.getName())).isPresent();
    }

    /** Of a value of a fact, or of one that was named before; empty for what is written out. */
    private Optional<Class<?>> kind(Class<?> fact, String path) {
      List<String> steps = new ArrayList<>(List.of(path.replace("()", "").split("\\.")));
      Class<?> at = fact;
      if (path.startsWith("$")) {
        at = named.get(steps.remove(0));
      }
      for (String step : steps) {
        if (at == null) {
          return Optional.empty();
        }
        at = value(at, step);
      }
      return Optional.ofNullable(at);
    }

    private static Class<?> value(Class<?> of, String name) {
      String capital = name.isEmpty() ? "" : name.substring(0, 1).toUpperCase() + name.substring(1);
      for (Method method : of.getMethods()) {
        if (method.getParameterCount() == 0
            && List.of(name, "get" + capital, "is" + capital).contains(method.getName())) {
          return method.getReturnType();
        }
      }
      return null;
    }
  }

  /** What stands from a place to the bracket that closes there. */
  private static String inside(String text, int from) {
    int open = 1;
    int to = from;
    while (open > 0) {
      open += text.charAt(to) == '(' ? 1 : text.charAt(to) == ')' ? -1 : 0;
      to++;
    }
    return text.substring(from, to - 1);
  }

  @Test
  void noRuleComparesWhatMayBeMissingWithATextOrANumber() throws Exception {
    List<String> vain = new ArrayList<>();
    int compared = 0;
    for (Path file : rules()) {
      Conditions conditions = new Conditions(Files.readString(file));
      conditions.vain.forEach(one -> vain.add(file + ": " + one));
      compared += conditions.compared;
    }
    assertThat(vain).isEmpty();
    assertThat(compared).as("comparisons that were looked at").isGreaterThan(200);
  }

  private static List<Path> rules() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      return files.filter(f -> f.endsWith("rule.drl")).sorted().toList();
    }
  }

  /** A fact of which a part may be missing. */
  public record Dried(Optional<String> with, Optional<String> on, String by, double minutes) {}

  private static List<String> vain(String conditions) throws ReflectiveOperationException {
    return new Conditions(
            "import " + Dried.class.getName() + "\nrule \"x\" when " + conditions + " then end")
        .vain;
  }

  @Test
  void suchAComparisonIsSeen() throws Exception {
    String kind = Dried.class.getSimpleName();
    assertThat(vain(kind + "(with == \"a fan\")")).containsExactly("with == \"\"");
    assertThat(vain(kind + "(minutes > 1, with() != by)")).containsExactly("with() != by");
    assertThat(vain(kind + "($b : by) " + kind + "($b == on)")).containsExactly("$b == on");
    assertThat(vain("$d : " + kind + "($w : with) " + kind + "($w == $d.by)")).hasSize(1);
    assertThat(vain(kind + "(with == on, by == \"Wren\", minutes < 3, with.present == true)"))
        .isEmpty();
  }
}

package strikeoff.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import strikeoff.evidence.Evidence;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Words;
import strikeoff.policy.Limit;
import strikeoff.policy.LimitKinds;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** Holds every rule's folder to the form that all rules have. */
class RuleCatalogueTest {

  private static final Path RULES = Path.of("rules");

  private static final Pattern NAME = Pattern.compile("(?m)^rule\\s+\"([^\"]+)\"");
  private static final Pattern IMPORT = Pattern.compile("(?m)^import\\s+([\\w.]+)\\s*;?\\s*$");
  private static final Pattern BINDING = Pattern.compile("(\\$\\w+)\\s*:\\s*([A-Z]\\w*)\\s*\\(");
  private static final Pattern HANDED =
      Pattern.compile("(?<=[(,])\\s*(\\$\\w+)\\s*:\\s*[a-z]\\w*\\s*(?=[,)])");

  private static final Pattern REPORT =
      Pattern.compile("reporter\\.report\\(\\s*drools\\.getRule\\(\\)\\s*,([^;]*)\\)\\s*;");
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w$.])(\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?)[lLdDfF]?(?![\\w])");
  private static final Pattern FORBIDDEN =
      Pattern.compile(
          "\\b(salience|modify|insert|insertLogical|update|delete|retract|println|eval|System"
              + "|no-loop|lock-on-active|agenda-group|ruleflow-group|halt|setFocus)\\b");

  /** A pattern up to its bracket: whether it asks for absence, and the kind of fact. */
  private static final Pattern OPENING =
      Pattern.compile("(\\bnot\\s+)?(?<![\\w.])([A-Z]\\w*)\\s*\\(");

  /** A part of a pattern that only names a value for later. */
  private static final Pattern NAMED = Pattern.compile("\\$\\w+\\s*:\\s*[\\w.]+");

  private static final Policy POLICY = PolicyReader.builtIn();
  private static final Rulebook RULEBOOK = Rulebook.builtIn();

  @TestFactory
  Stream<DynamicTest> everyRuleHasItsForm() {
    return folders().stream().map(id -> DynamicTest.dynamicTest(id, () -> check(id)));
  }

  private static void check(String id) {
    String drl = read(RULES.resolve(id).resolve("rule.drl"));
    assertThat(NAME.matcher(drl).results().map(m -> m.group(1)))
        .as("one rule a file, called like its folder")
        .containsExactly(id);
    assertThat(RULES.resolve(id).resolve("example.yaml")).exists();
    RuleInfo info = RULEBOOK.rule(id).orElseThrow();
    metadata(info);
    String bare = withoutTextAndComments(drl);
    assertThat(FORBIDDEN.matcher(bare).results().map(MatchResult::group))
        .as("a judging rule reports and does nothing else")
        .isEmpty();
    assertThat(NUMBER.matcher(conditions(bare)).results().map(MatchResult::group))
        .as("thresholds are limits of the policy, not literals")
        .allMatch(number -> Set.of("0", "1", "0.0", "1.0").contains(number));
    assertThat(judges(conditions(bare)))
        .as("a condition beyond that there is such a fact: the rule judges, not what derived it")
        .isTrue();
    assertThat(info.limits()).as("limits of the policy").isSubsetOf(POLICY.limits().keySet());
    placeholders(info, drl);
  }

  /** True if conditions say more of facts than that they are there. */
  private static boolean judges(String conditions) {
    Matcher opening = OPENING.matcher(conditions);
    boolean judges = false;
    while (opening.find()) {
      boolean absence = opening.group(1) != null;
      boolean limit = opening.group(2).equals("Limit");
      judges |= absence || !limit && isAsked(inside(conditions, opening.end()));
    }
    return judges;
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

  /** True if one of the parts is more than a name for a value. */
  private static boolean isAsked(String constraints) {
    return Stream.of(constraints.split(","))
        .map(String::strip)
        .anyMatch(part -> !part.isEmpty() && !NAMED.matcher(part).matches());
  }

  @Test
  void aFactThatIsThereIsNoCondition() {
    assertThat(judges("$x : Lay()")).isFalse();
    assertThat(judges("$l : Limit(name == \"\", $most : amount)\n$x : Lay($s : seam)")).isFalse();
    assertThat(judges("$x : Lay(overlap > 0)")).isTrue();
    assertThat(judges("$x : Lay(!padded, $s : seam)")).isTrue();
    assertThat(judges("$x : Lay($s : seam)\nnot Seam(name == $s)")).isTrue();
    assertThat(judges("$x : Lay(over.above(0) || !(under))")).isTrue();
  }

  private static void metadata(RuleInfo info) {
    for (String text :
        List.of(info.summary(), info.because(), info.message(), info.remedy(), info.source())) {
      assertThat(text).isNotBlank().doesNotContain("\n").isEqualTo(text.strip());
      assertThat(text).as("a typing slip").doesNotContain("  ", "TODO", "...");
    }
    assertThat(info.summary()).as("a few words, no sentence").doesNotEndWith(".");
    assertThat(info.summary().length()).isLessThanOrEqualTo(100);
    for (String sentence : List.of(info.because(), info.message(), info.remedy())) {
      assertThat(sentence).as("whole sentences, the last one perhaps a fact's").matches(".*[.}]$");
    }
    assertThat(Words.placeholders(info.message() + info.remedy()))
        .allMatch(name -> !name.isBlank());
  }

  /** The types of what the rule reports, by its imports and bindings, can fill its templates. */
  private static void placeholders(RuleInfo info, String drl) {
    Map<String, Class<?>> imports = new LinkedHashMap<>();
    for (MatchResult one : IMPORT.matcher(drl).results().toList()) {
      Class<?> type = type(one.group(1));
      imports.put(type.getSimpleName(), type);
    }
    Map<String, Class<?>> bindings = new LinkedHashMap<>();
    BINDING.matcher(drl).results().forEach(b -> bindings.put(b.group(1), imports.get(b.group(2))));
    // A limit that a fact hands over, bound inside its pattern.
    HANDED.matcher(drl).results().forEach(b -> bindings.putIfAbsent(b.group(1), Limit.class));
    Matcher report = REPORT.matcher(drl);
    assertThat(report.find()).as("calls reporter.report(drools.getRule(), …)").isTrue();
    List<Class<?>> types = new ArrayList<>();
    for (String argument : report.group(1).split(",")) {
      Class<?> type = bindings.get(argument.strip());
      assertThat(type).as("reports bound facts, not %s", argument.strip()).isNotNull();
      types.add(type);
    }
    assertThat(Evidence.class).isAssignableFrom(types.get(0));
    assertThat(report.find()).as("reports once").isFalse();
    for (String template : List.of(info.message(), info.remedy())) {
      assertThat(Words.placeholders(template))
          .as("placeholders of “%s” that %s lack", template, types)
          .allMatch(name -> Words.canFill(name, types));
    }
  }

  private static Class<?> type(String name) {
    String binary = name;
    while (true) {
      try {
        return Class.forName(binary);
      } catch (ClassNotFoundException e) {
        int dot = binary.lastIndexOf('.');
        if (dot < 0) {
          throw new AssertionError("no type " + name, e);
        }
        binary = binary.substring(0, dot) + "$" + binary.substring(dot + 1);
      }
    }
  }

  @Test
  void theFoldersAreTheRules() {
    assertThat(RULEBOOK.rules()).extracting(RuleInfo::id).containsExactlyElementsOf(folders());
  }

  @Test
  void theFamiliesAreTheFolders() {
    Set<String> families = new TreeSet<>();
    folders().forEach(id -> families.add(id.substring(0, id.indexOf('/'))));
    assertThat(new TreeSet<>(PolicyReader.families())).containsAll(families);
  }

  @Test
  void everyLimitIsReadByARuleOrByADerivation() {
    Set<String> read = new HashSet<>(LimitKinds.names());
    RULEBOOK.rules().forEach(rule -> read.addAll(rule.limits()));
    assertThat(read).isEqualTo(POLICY.limits().keySet());
  }

  /**
   * A limit that a rule compares with is read by that rule alone; where a derivation needs it as
   * well, it hands it over with its fact, so that both go by one reading. These are left: what a
   * model or the clock goes by whatever is judged, and what a remedy is computed from that is tried
   * on the whole plan.
   */
  private static final Map<String, String> READ_TWICE =
      Map.ofEntries(
          Map.entry(
              "cloth/protein-soda",
              "the usual bath of a remedy is no stronger than silk and wool stand"),
          Map.entry("fixing/alkali-low-per-dye", "what a remedy weighs in is enough for the dye"),
          Map.entry(
              "fixing/coolest-heat-set", "a binder cooler than that sets as slowly as at that"),
          Map.entry(
              "fixing/coolest-steam",
              "a group is fixed by steam from there on, whatever is judged"),
          Map.entry("fixing/hopeless-below", "colder, the model of fixing gives no time"),
          Map.entry(
              "fixing/hottest-machine",
              "a washing machine gets no hotter, whatever the fibre stands"),
          Map.entry(
              "fixing/temperature-tolerance",
              "the model of fixing trusts a stated time so far from its temperature"),
          Map.entry("layout/closing-tolerance", "how many repeats are laid goes by it"),
          Map.entry(
              "media/dry-after-bath",
              "the clock lets cloth dry so long where the plan says nothing"),
          Map.entry(
              "order/fairly-dark",
              "told to whatever lies under a colour, of which a rule sees one"),
          Map.entry(
              "order/partly-lost",
              "millions of prints lie on others in part, and facts are made of these"),
          Map.entry(
              "screens/coarsest-mesh", "what a mesh may be meant for is a mesh that there is"),
          Map.entry(
              "screens/finest-mesh", "the mesh that a remedy names is one that paste goes through"),
          Map.entry("screens/finest-woven", "what a mesh may be meant for is a mesh that there is"),
          Map.entry(
              "seams/away-after-sewing",
              "the bound of a proposed run counts on no more prints after the sewing"),
          Map.entry(
              "time/few-minutes-over",
              "a remedy is tried on the whole day, which may run over so little"));

  private static final Pattern COMPARED =
      Pattern.compile("Limit\\(\\s*name == \"([^\"]+)\"\\s*,\\s*\\$\\w+\\s*:\\s*amount");

  @Test
  void aLimitThatARuleComparesHasOneReader() {
    Set<String> compared = new TreeSet<>();
    for (String id : folders()) {
      String drl = read(RULES.resolve(id).resolve("rule.drl"));
      COMPARED.matcher(drl).results().forEach(limit -> compared.add(limit.group(1)));
    }
    compared.retainAll(LimitKinds.names());
    assertThat(compared).as("limits that Java reads too").isEqualTo(READ_TWICE.keySet());
  }

  @Test
  void everyLimitSaysWhyAndFromWhere() {
    assertThat(POLICY.limits().values())
        .extracting(Limit::why, Limit::source)
        .allSatisfy(
            words -> {
              assertThat(words.toList().get(0).toString()).isNotBlank();
              assertThat(words.toList().get(1).toString()).isNotBlank();
            });
  }

  private static String conditions(String bare) {
    int when = bare.indexOf("\nwhen");
    int then = bare.indexOf("\nthen");
    assertThat(when).as("when").isPositive();
    assertThat(then).as("then").isGreaterThan(when);
    return bare.substring(when, then);
  }

  private static String withoutTextAndComments(String drl) {
    return drl.replaceAll("(?m)^\\s*//.*$", "").replaceAll("\"[^\"\\n]*\"", "\"\"");
  }

  private static List<String> folders() {
    return files(RULES, "rule.drl").stream()
        .map(file -> RULES.relativize(file.getParent()).toString().replace('\\', '/'))
        .sorted()
        .toList();
  }

  private static List<Path> files(Path folder, String ending) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(f -> f.getFileName().toString().endsWith(ending)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

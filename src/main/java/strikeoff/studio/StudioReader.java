package strikeoff.studio;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import strikeoff.artwork.StudioFolder;
import strikeoff.document.Position;
import strikeoff.findings.Severity;
import strikeoff.plan.yaml.Stock;
import strikeoff.plan.yaml.UsualRecipes;
import strikeoff.policy.Default;
import strikeoff.policy.DefaultKind;
import strikeoff.policy.DefaultKinds;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Parsed;
import strikeoff.units.Quantity;
import strikeoff.units.Script;
import strikeoff.units.Spelling;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;
import strikeoff.yaml.YamlReader;
import strikeoff.yaml.YamlReading;

/** Reads a policy file as strictly as a plan: every mistake at once, each with its place. */
public final class StudioReader {

  private static final int MOST_POINTS = 1000;

  /** Hundredths are fine enough for any class. */
  private static final Pattern POINTS = Pattern.compile("[0-9]{1,6}(\\.[0-9]{1,2})?");

  private static final Map<String, Severity> SEVERITIES = new LinkedHashMap<>();

  static {
    for (Severity severity : Severity.values()) {
      SEVERITIES.put(severity.text(), severity);
    }
  }

  private final String name;
  private final Policy builtIn;
  private final Collection<String> rules;
  private final boolean othersNotRun;
  private final StudioFolder folder;
  private final Reading reading = new Reading();
  private final Map<String, Position> limitsAt = new LinkedHashMap<>();

  private StudioReader(
      String name,
      Policy builtIn,
      Collection<String> rules,
      boolean othersNotRun,
      StudioFolder folder) {
    this.folder = folder;
    this.othersNotRun = othersNotRun;
    this.name = name;
    this.builtIn = builtIn;
    this.rules = rules;
  }

  /**
   * @param name the file as messages name it
   * @param bytes UTF-8
   * @param builtIn what it changes
   * @param rules ids of all rules there are
   */
  public static StudioReading read(
      String name, byte[] bytes, Policy builtIn, Collection<String> rules) {
    return read(name, bytes, builtIn, rules, false, StudioFolder.NOWHERE);
  }

  /**
   * @param othersNotRun true if the studio has own rules that aren't run this time, so that what a
   *     file says of rules of another family than the built-in ones means nothing
   * @param folder where the file lies, with the films of its inventory
   */
  public static StudioReading read(
      String name,
      byte[] bytes,
      Policy builtIn,
      Collection<String> rules,
      boolean othersNotRun,
      StudioFolder folder) {
    if (YamlReader.read(bytes) instanceof YamlReading.Document document) {
      StudioReader reader = new StudioReader(name, builtIn, rules, othersNotRun, folder);
      StudioFile file = reader.file(document.root());
      return reader.reading.problems().none()
          ? new StudioReading.Read(file)
          : new StudioReading.Faulty(name, reader.reading.problems().sorted());
    }
    return new StudioReading.Faulty(name, ((YamlReading.Faulty) YamlReader.read(bytes)).problems());
  }

  /** The folder of own rules that a file names, before anything else of it is read. */
  public static Optional<String> ownRules(byte[] bytes) {
    return ownRulesAt(bytes).map(Node.Scalar::text);
  }

  /** Where a file names it. */
  public static Position ownRulesPosition(byte[] bytes) {
    return ownRulesAt(bytes).orElseThrow().at();
  }

  private static Optional<Node.Scalar> ownRulesAt(byte[] bytes) {
    return YamlReader.read(bytes) instanceof YamlReading.Document document
            && document.root() instanceof Node.Mapping root
            && root.entries().get("own rules") != null
            && root.entries().get("own rules").value() instanceof Node.Scalar folder
        ? Optional.of(folder)
        : Optional.empty();
  }

  private StudioFile file(Node root) {
    Fields f = Fields.of(Item.root(root), "a studio's policy", reading);
    String title = f.required("studio", ValueKinds.text("whose policy this is", 200));
    f.optional("own rules", ValueKinds.text("a folder", 500));
    StudioFile file =
        new StudioFile(
            name,
            title,
            each(f, "limits", "the limits", this::limit),
            limitsAt,
            each(f, "defaults", "the defaults", this::standard),
            each(f, "severities", "the severities", this::severity),
            each(f, "off", "the rules that are off", this::off),
            f.item("accept").map(i -> new Setting<>(accepting(f), where(i))),
            Stock.read(f, builtIn, name, folder),
            UsualRecipes.read(f, builtIn, name),
            f.item("marks").map(i -> new Setting<>(marks(i), where(i))),
            f.optional("holds below", ValueKinds.yesNo()).orElse(false));
    f.done();
    return file;
  }

  private interface Entry<T> {
    Optional<T> read(String key, Fields all, Item item);
  }

  private <T> Map<String, T> each(Fields root, String key, String what, Entry<T> entry) {
    Map<String, T> read = new LinkedHashMap<>();
    root.under(key, what)
        .ifPresent(
            f ->
                f.each(i -> i)
                    .forEach((k, i) -> entry.read(k, f, i).ifPresent(v -> read.put(k, v))));
    return read;
  }

  private Optional<Limit> limit(String key, Fields all, Item item) {
    Limit limit = builtIn.limits().get(key);
    if (limit == null) {
      all.wrongKey(key, unknown("limit", key, builtIn.limits().keySet()));
      return Optional.empty();
    }
    limitsAt.put(key, item.key());
    Expected<? extends Quantity> value = QuantityKinds.quantity(limit.value().getClass());
    String where = where(item);
    if (!(item.node() instanceof Node.Mapping)) {
      return all.optional(key, value).map(v -> new Limit(key, v, limit.why(), "set by " + where));
    }
    Fields f = Fields.of(item, "a limit", reading);
    Quantity given = f.required("value", value);
    String why = f.optional("why", ValueKinds.text("a sentence", 2000)).orElse(limit.why());
    String source =
        f.optional("source", ValueKinds.text("a source", 2000)).map(s -> s + "; ").orElse("");
    f.done();
    return Optional.of(new Limit(key, given, why, source + "set by " + where));
  }

  /** Quantities, whole numbers and yes or no: what can be held against the value it replaces. */
  private Optional<Default<?>> standard(String key, Fields all, Item item) {
    Default<?> standard = builtIn.defaults().get(key);
    if (standard == null) {
      all.wrongKey(key, unknown("default", key, builtIn.defaults().keySet()));
      return Optional.empty();
    }
    return all.optional(key, like(standard, "set by " + where(item)));
  }

  private static Expected<Default<?>> like(Default<?> standard, String source) {
    String name = standard.name();
    if (standard.value() instanceof Boolean) {
      return ValueKinds.yesNo().map(yes -> new Default<>(name, yes, yes ? "yes" : "no", source));
    }
    DefaultKind kind = DefaultKinds.kind(name).orElseThrow();
    return ValueKinds.scalar(
        "a value such as " + standard.text(),
        standard,
        text ->
            kind.isMeasured()
                ? kind.read(name, text, source)
                : Parsed.refused(
                    "this default can't be set in a policy; plans write it themselves"));
  }

  private Optional<Setting<Severity>> severity(String key, Fields all, Item item) {
    known(key, all);
    return all.optional(key, ValueKinds.word("stop, risk or advice", SEVERITIES))
        .map(s -> new Setting<>(s, where(item)));
  }

  private Optional<Setting<String>> off(String key, Fields all, Item item) {
    known(key, all);
    return all.optional(key, ValueKinds.text("the reason why it is off", 500))
        .map(s -> new Setting<>(s, where(item)));
  }

  private void known(String rule, Fields all) {
    if (!isKnown(rule)) {
      all.wrongKey(rule, unknown("rule", rule, rules));
    }
  }

  private boolean isKnown(String rule) {
    if (rules.contains(rule)) {
      return true;
    }
    int slash = rule.indexOf('/');
    return othersNotRun
        && slash > 0
        && rules.stream().noneMatch(r -> r.startsWith(rule.substring(0, slash + 1)));
  }

  private Marks marks(Item item) {
    Fields f = Fields.of(item, "the marks", reading);
    int full = f.required("full", points(1));
    Map<Severity, Integer> severities = new EnumMap<>(Severity.class);
    SEVERITIES.forEach(
        (word, severity) ->
            f.optional(word, points(0)).ifPresent(p -> severities.put(severity, p)));
    Map<String, Integer> named =
        each(
            f,
            "rules",
            "points by rule or family",
            (key, all, i) -> {
              if (!isKnown(key) && !isFamily(key)) {
                List<String> known = new ArrayList<>(families());
                known.addAll(rules);
                all.wrongKey(key, unknown("rule or family", key, known));
                return Optional.empty();
              }
              return all.optional(key, points(0));
            });
    boolean eachFinding = f.optional("each finding", ValueKinds.yesNo()).orElse(false);
    f.done();
    return new Marks(full, severities, named, eachFinding);
  }

  private List<String> families() {
    return rules.stream().map(r -> r.substring(0, r.indexOf('/'))).distinct().toList();
  }

  /** One of the studio's own may be among rules that aren't run. */
  private boolean isFamily(String name) {
    return families().contains(name) || othersNotRun && name.matches("[a-z-]+");
  }

  /** Points, in hundredths. */
  private static Expected<Integer> points(int least) {
    String words = "points from " + least + " to " + MOST_POINTS + ", such as 4 or 0.5";
    return ValueKinds.scalar(
        words,
        least,
        text -> {
          if (!POINTS.matcher(text).matches()) {
            return Parsed.refused(
                words + " were expected, and " + Script.quoted(text) + " is none");
          }
          int hundredths = new BigDecimal(text).movePointRight(2).intValueExact();
          return hundredths < 100 * least || hundredths > 100 * MOST_POINTS
              ? Parsed.refused(words + " were expected")
              : Parsed.value(hundredths);
        });
  }

  private Accepting accepting(Fields f) {
    Expected<String> rule =
        ValueKinds.scalar(
            "all, none or a rule's name",
            "none",
            text ->
                text.equals("all") || text.equals("none") || isKnown(text)
                    ? Parsed.value(text)
                    : Parsed.refused(unknown("rule", text, rules)));
    List<String> named = new ArrayList<>(f.required("accept", ValueKinds.oneOrMore(rule)));
    if (named.size() > 1 && (named.contains("all") || named.contains("none"))) {
      f.wrong("accept", "“all” and “none” stand alone");
    }
    if (named.contains("all")) {
      return Accepting.ALL;
    }
    named.remove("none");
    return Accepting.only(named.stream().distinct().toList());
  }

  private static String unknown(String what, String name, Collection<String> known) {
    return "no " + what + " is called " + Script.quoted(name) + Spelling.didYouMean(name, known);
  }

  private String where(Item item) {
    return name + ", line " + item.key().line();
  }
}

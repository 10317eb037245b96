package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.findings.Words;
import strikeoff.rulebook.RuleText;
import strikeoff.units.Parsed;
import strikeoff.units.Phrase;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/** Reads one rule that is written in sentences and writes it as the compiler takes it. */
final class SentenceRule {

  private static final Pattern SAY = Pattern.compile("(?i)say\\s+(\\S+?)\\s*:\\s*(.*)");
  private static final Pattern SAID =
      Pattern.compile("(?i)(because|mend|source|summary)\\s*:\\s*(.*)");
  private static final Pattern SOMETHING = Pattern.compile("(\\p{L}+)\\s*:\\s*(.*)");

  /** As {@link KnownWords} says it. */
  private static final Pattern UNKNOWN = Pattern.compile("no [a-z ]+ is called “([^”]*)”");

  private static final List<String> THINGS = List.of("because", "mend", "source", "summary");
  private static final List<String> SEVERITIES = List.of("stop", "risk", "advice");
  private static final String WHOLE = "strikeoff.described.WholePlan";

  private final RuleFile file;
  private final Vocabulary words;
  private final List<RuleMistake> mistakes;
  private final int line;
  private final String name;
  private final List<Condition> conditions = new ArrayList<>();
  private final List<Integer> conditionsAt = new ArrayList<>();
  private final Map<String, String> said = new LinkedHashMap<>();
  private final Map<String, Integer> saidAt = new LinkedHashMap<>();
  private String last = "";

  /** True once a condition was not understood: what it finds is then not known either. */
  private boolean unsure;

  /** True while the line that lines with a dash would belong to was not understood. */
  private boolean lost;

  SentenceRule(RuleFile file, Vocabulary words, List<RuleMistake> mistakes, int line, String name) {
    this.file = file;
    this.words = words;
    this.mistakes = mistakes;
    this.line = line;
    this.name = name;
  }

  /** As {@code beginners/fine-mesh}. */
  String id() {
    String slug =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-").replaceAll("^-+|-+$", "");
    return file.family() + "/" + slug;
  }

  void condition(int at, String text) {
    if (text.startsWith("-")) {
      if (lost) {
        return;
      }
      if (conditions.isEmpty()) {
        wrong(at, "a line that begins with “-” says more about the line before it");
        return;
      }
      Condition before = conditions.get(conditions.size() - 1);
      Parsed<List<String>> more = Condition.more(text.substring(1).strip(), before.type(), words);
      if (more instanceof Parsed.Refused<List<String>> refused) {
        unsure = true;
        misread(at, refused.message());
      } else {
        List<String> all = new ArrayList<>(before.constraints());
        all.addAll(more.toOptional().orElseThrow());
        conditions.set(conditions.size() - 1, new Condition(before.type(), all, before.absent()));
      }
      return;
    }
    Parsed<Condition> read = Condition.read(text, words);
    lost = read instanceof Parsed.Refused;
    if (read instanceof Parsed.Refused<Condition> refused) {
      unsure = true;
      misread(at, refused.message());
    } else {
      conditions.add(read.toOptional().orElseThrow());
      conditionsAt.add(at);
    }
  }

  /** True if the line belongs after “then”. */
  static boolean isConsequence(String text) {
    return SAY.matcher(text).matches() || SAID.matcher(text).matches();
  }

  void consequence(int at, String written) {
    Matcher slip = SOMETHING.matcher(written);
    String text = written;
    if (slip.matches() && !isConsequence(written)) {
      String word = slip.group(1).toLowerCase(Locale.ROOT);
      Optional<String> meant = Spelling.nearest(word, THINGS);
      if (meant.isPresent()) {
        wrong(at, Script.quoted(word) + " is not known here; did you mean “" + meant.get() + "”?");
        text = meant.get() + ": " + slip.group(2);
      }
    }
    Matcher say = SAY.matcher(text);
    Matcher other = SAID.matcher(text);
    if (say.matches()) {
      String severity = say.group(1).toLowerCase(Locale.ROOT);
      if (!SEVERITIES.contains(severity)) {
        wrong(
            at,
            "“say stop: …”, “say risk: …” or “say advice: …” was expected; "
                + Script.quoted(say.group(1))
                + " is none of them"
                + Spelling.didYouMean(severity, SEVERITIES));
      }
      put(at, "severity", severity);
      put(at, "message", say.group(2));
      last = "message";
    } else if (other.matches()) {
      last = other.group(1).toLowerCase(Locale.ROOT);
      put(at, last.equals("mend") ? "remedy" : last, other.group(2));
      last = last.equals("mend") ? "remedy" : last;
    } else if (last.isEmpty()) {
      wrong(
          at,
          Script.quoted(text)
              + " is nothing a rule can do; the nearest is “"
              + words.nearest(
                  text, List.of("say stop: …", "say risk: …", "say advice: …", "because: …"))
              + "”");
    } else {
      said.merge(last, text, (a, b) -> a + " " + b);
    }
  }

  private void put(int at, String key, String text) {
    if (said.containsKey(key)) {
      wrong(at, "this is said a second time; a rule says each thing once");
    }
    said.put(key, text.strip());
    saidAt.put(key, at);
  }

  /** Closes the rule: tells what it lacks. */
  void done() {
    if (!id().matches("[a-z]+/" + RuleText.FAULT)) {
      wrong(
          line,
          "a rule's name is a few words of the letters a to z; this one is " + Script.quoted(name));
    }
    if (conditions.isEmpty() && !unsure) {
      wrong(line, "the rule has no sentence after “when”");
    }
    if (!unsure) {
      Answerable.never(conditions).forEach((which, why) -> wrong(conditionsAt.get(which), why));
    }
    lacks("message", "say stop: …", "what is wrong");
    lacks("because", "because: …", "why it matters");
    lacks("remedy", "mend: …", "what to do about it");
    List<Class<?>> types = types();
    for (String key : List.of("message", "remedy")) {
      for (String gap : Words.placeholders(said.getOrDefault(key, ""))) {
        if (!unsure && types.stream().noneMatch(type -> Sayable.has(type, gap))) {
          wrong(saidAt.getOrDefault(key, line), unfillable(gap, types));
        }
      }
    }
  }

  private static String unfillable(String gap, List<Class<?>> types) {
    List<String> known = Sayable.names(types);
    String meant = Spelling.didYouMean(gap, known);
    return "{"
        + gap
        + "} names no value of what the rule found"
        + (meant.isEmpty() ? "; there are " + String.join(", ", known) : meant);
  }

  private void lacks(String key, String form, String what) {
    if (said.getOrDefault(key, "").isBlank()) {
      wrong(line, "the rule doesn't say " + what + ": “" + form + "” belongs after “then”");
    }
  }

  private List<Class<?>> types() {
    List<Class<?>> types = new ArrayList<>();
    conditions.stream().filter(c -> !c.absent()).forEach(c -> types.add(c.type()));
    if (types.isEmpty()) {
      types.add(whole());
    }
    return types;
  }

  /** Names of the fact classes that the rule's text needs. */
  Set<String> imports() {
    Set<String> names = new LinkedHashSet<>();
    conditions.forEach(c -> names.add(c.type().getName()));
    names.add(WHOLE);
    return names;
  }

  private static Class<?> whole() {
    try {
      return Class.forName(WHOLE);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The rule as the compiler takes it. */
  List<String> drl() {
    List<String> drl = new ArrayList<>();
    drl.add("rule " + Kind.quoted(id()));
    annotation(drl, "severity", "");
    annotation(drl, "summary", Phrase.capital(name));
    annotation(drl, "because", "");
    annotation(drl, "message", "");
    annotation(drl, "remedy", "");
    annotation(drl, "source", "a rule of the studio's own, in " + file.name());
    drl.add("when");
    List<String> found = new ArrayList<>();
    for (int i = 0; i < conditions.size(); i++) {
      Condition condition = conditions.get(i);
      drl.add("  " + condition.drl("$fact" + i));
      if (!condition.absent()) {
        found.add("$fact" + i);
      }
    }
    if (found.isEmpty()) {
      drl.add("  $plan : WholePlan()");
      found.add("$plan");
    }
    drl.add("then");
    drl.add("  reporter.report(drools.getRule(), " + String.join(", ", found) + ");");
    drl.add("end");
    return drl;
  }

  private void annotation(List<String> drl, String key, String otherwise) {
    drl.add("  @" + key + "(" + Kind.quoted(said.getOrDefault(key, otherwise)) + ")");
  }

  /** A word that isn't known is told where it stands in its line. */
  private void misread(int at, String message) {
    Matcher unknown = UNKNOWN.matcher(message);
    int column = 0;
    if (unknown.find()) {
      String written = file.text().lines().skip(at - 1L).findFirst().orElse("");
      column = written.indexOf(unknown.group(1)) + 1;
    }
    mistakes.add(new RuleMistake(file.name(), at, column, message));
  }

  private void wrong(int at, String message) {
    mistakes.add(new RuleMistake(file.name(), at, message));
  }
}

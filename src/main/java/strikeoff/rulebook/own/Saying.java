package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import strikeoff.described.WholePlan;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.findings.Words;
import strikeoff.policy.Limit;
import strikeoff.units.Phrase;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/** What a rule says when its conditions hold: the lines after “then”. */
final class Saying {

  private static final Pattern SAY = Pattern.compile("(?i)say\\s+(\\S+?)\\s*:\\s*(.*)");
  private static final Pattern SAID =
      Pattern.compile("(?i)(because|mend|source|summary)\\s*:\\s*(.*)");
  private static final Pattern SOMETHING = Pattern.compile("(\\p{L}+)\\s*:\\s*(.*)");

  /** More than anybody reads beside a place of a plan. */
  private static final int LONGEST = 1000;

  private static final List<String> THINGS = List.of("because", "mend", "source", "summary");
  private static final List<String> SEVERITIES = List.of("stop", "risk", "advice");

  private final RuleFile file;
  private final Vocabulary words;
  private final List<RuleMistake> mistakes;
  private final int rule;
  private final Map<String, String> said = new LinkedHashMap<>();
  private final Map<String, Integer> saidAt = new LinkedHashMap<>();
  private final Set<String> tooLong = new HashSet<>();
  private String last = "";

  /**
   * @param rule the line where the rule begins
   */
  Saying(RuleFile file, Vocabulary words, List<RuleMistake> mistakes, int rule) {
    this.file = file;
    this.words = words;
    this.mistakes = mistakes;
    this.rule = rule;
  }

  /** True if the line belongs after “then”. */
  static boolean isConsequence(String text) {
    return SAY.matcher(text).matches() || SAID.matcher(text).matches();
  }

  /** A line after “then”. */
  void line(int at, String written) {
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
      said.merge(last, text, (a, b) -> b.isEmpty() ? a : a + " " + b);
    }
    if (said.getOrDefault(last, "").length() > LONGEST) {
      if (tooLong.add(last)) {
        wrong(at, "what a rule says has at most " + LONGEST + " letters up to its next word");
      }
      said.put(last, said.get(last).substring(0, LONGEST));
    }
  }

  private void put(int at, String key, String text) {
    if (said.containsKey(key)) {
      wrong(
          at,
          "this is said a second time, first in line "
              + saidAt.get(key)
              + "; a rule says each thing once");
    }
    said.put(key, text.strip());
    saidAt.put(key, at);
  }

  /** Tells what must be said and isn't. */
  void complete() {
    lacks("message", "say stop: …", "what is wrong");
    lacks("because", "because: …", "why it matters");
    lacks("remedy", "mend: …", "what to do about it");
  }

  /**
   * Tells of braces that name no value. Whichever way a rule is met, what it says must be known.
   *
   * @param ways the types of what is found, for each way
   */
  void fillable(List<List<Class<?>>> ways) {
    gaps(
        gap ->
            ways.stream()
                .filter(types -> !Sayable.canSay(gap, types))
                .findFirst()
                .map(types -> unfillable(gap, types)));
  }

  /** The same where it isn't known what the rule finds: of braces that nothing could fill. */
  void fillableByAnything() {
    List<Class<?>> all = new ArrayList<>();
    for (int times = 0; times < 2; times++) {
      words.openings().forEach(opening -> all.add(opening.type()));
      all.addAll(List.of(WholePlan.class, Counted.class, Total.class));
    }
    all.addAll(Collections.nCopies(9, Limit.class));
    List<Class<?>> types = all;
    gaps(
        gap ->
            Sayable.canSay(gap, types)
                ? Optional.empty()
                : Optional.of("{" + gap + "} names no value of anything that a rule can find"));
  }

  private void gaps(Function<String, Optional<String>> wrongWith) {
    for (String key : said.keySet()) {
      String text = Sayable.withoutLiteral(said.get(key));
      int at = saidAt.getOrDefault(key, rule);
      List<String> gaps = Words.placeholders(text).stream().distinct().toList();
      if (Words.withoutPlaceholders(text).matches(".*[{}].*")) {
        wrong(at, "a brace has no partner here; a brace itself is written twice, {{ or }}");
      } else if (!gaps.isEmpty() && !key.equals("message") && !key.equals("remedy")) {
        wrong(
            at,
            "only “say” and “mend” tell values; this is told of the rule, whatever it finds. A brace"
                + " itself is written twice, {{ or }}");
      } else {
        gaps.forEach(gap -> wrongWith.apply(gap).ifPresent(why -> wrong(at, why)));
      }
    }
  }

  /** All of it, for a rule of a name. */
  RuleInfo info(String id, String name, List<String> limits) {
    return new RuleInfo(
        id,
        Stream.of(Severity.values())
            .filter(severity -> severity.text().equals(said.get("severity")))
            .findFirst()
            .orElse(Severity.ADVICE),
        Sayable.braces(said.getOrDefault("summary", Phrase.capital(name))),
        Sayable.braces(said.getOrDefault("because", "")),
        said.getOrDefault("message", ""),
        said.getOrDefault("remedy", ""),
        Sayable.braces(
            said.getOrDefault("source", "a rule of the studio's own, in " + file.name())),
        limits);
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
      wrong(rule, "the rule doesn't say " + what + ": “" + form + "” belongs after “then”");
    }
  }

  private void wrong(int at, String message) {
    mistakes.add(new RuleMistake(file.name(), at, message));
  }
}
